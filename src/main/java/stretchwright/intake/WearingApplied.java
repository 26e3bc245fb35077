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

    private void apply(Key<?> row, Map<WearingKey, Double> sums) {
        row.worn().filter(w -> sums.containsKey(w.key())).ifPresent(w -> apply(w, sums.getOrDefault(w.key(), 0.0)));
    }

    private void apply(Worn<?> worn, double sum) {
        WearingKey key = worn.key();
        Worn.Outcome outcome = key.isChoice() || key.range().holds(sum)
                ? worn.change().apply(make, sum)
                : Worn.Outcome.beyond(Tell.said(
                        "worn.sum",
                        Part.signed(sum),
                        Part.signed(key.range().least()).atLeast(),
                        Part.signed(key.range().most()).atMost()));
        if (outcome.make().isEmpty()) {
            findings.add(KEY + key.word(), outcome.wrong(), outcome.right());
        }
        make = outcome.make().orElse(make);
    }
}
