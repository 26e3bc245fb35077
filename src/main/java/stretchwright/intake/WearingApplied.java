package stretchwright.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;

/** The make once all changes after wearing are made; together they stay within their bounds, or a finding says to measure again. */
public final class WearingApplied {
    private static final String KEY = WearingReader.SECTION + ".change.";

    private final Findings findings;
    private MakeFile make;

    private WearingApplied(MakeFile make, Findings findings) {
        this.make = make;
        this.findings = findings;
    }

    /** @return the make with its history; empty where findings say why not */
    public static Optional<MakeFile> on(MakeFile plain, List<WearingEntry> history, Findings findings) {
        return on(plain, history, Table.keys(), findings);
    }

    static Optional<MakeFile> on(MakeFile plain, List<WearingEntry> history, Keys table, Findings findings) {
        WearingApplied applied = new WearingApplied(plain, findings);
        Map<WearingKey, Double> sums = sums(history);
        table.all().forEach(row -> applied.apply(row, sums));
        return findings.isEmpty() ? Optional.of(applied.make.worn(applied.make.style(), history)) : Optional.empty();
    }

    /** What all entries together change. */
    public static Map<WearingKey, Double> sums(List<WearingEntry> history) {
        Map<WearingKey, Double> sums = new LinkedHashMap<>();
        history.forEach(e -> e.change().forEach((key, mm) -> sums.merge(key, mm, Double::sum)));
        return sums;
    }

    private <T> void apply(Key<T> row, Map<WearingKey, Double> sums) {
        Optional<Worn<T>> worn = row.worn();
        Double sum = worn.map(w -> sums.get(w.key())).orElse(null);
        if (worn.isEmpty() || sum == null) {
            return;
        }
        WearingKey key = worn.get().key();
        Worn.Hindrance hindrance = worn.get().hindered().apply(make);
        if (!key.isChoice() && !key.range().holds(sum)) {
            findings.add(
                    KEY + key.word(),
                    Tell.said(
                            "worn.sum",
                            Part.signed(sum),
                            Part.signed(key.range().least()),
                            Part.signed(key.range().most())),
                    Tell.said("worn.measure"));
        } else if (!hindrance.wrong().isNothing()) {
            findings.add(KEY + key.word(), hindrance.wrong(), hindrance.right());
        } else {
            change(row, worn.get(), sum);
        }
    }

    private <T> void change(Key<T> row, Worn<T> worn, double sum) {
        Optional<T> becomes = worn.becomes().or(() -> added(row, worn.key(), sum));
        becomes.ifPresent(value -> make = row.lens().set().orElseThrow().apply(make, value));
    }

    /** Changes are added to lengths only. */
    @SuppressWarnings("unchecked")
    private <T> Optional<T> added(Key<T> row, WearingKey key, double sum) {
        Key<Double> length = (Key<Double>) row;
        double mm = length.lens().get().apply(make).orElse(0.0) + sum;
        Range range = ((LengthKind) (Kind<?>) row.kind()).range();
        if (!range.holds(mm)) {
            findings.add(
                    KEY + key.word(),
                    Tell.said("worn.beyond", Part.text(row.path()), Part.signed(mm)),
                    Tell.said("worn.measure"));
            return Optional.empty();
        }
        return Optional.of((T) (Double) mm);
    }
}
