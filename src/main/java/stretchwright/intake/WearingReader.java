package stretchwright.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The history after wearing, from what was given: what was found at each try-on and what was changed then. */
public final class WearingReader {
    public static final String SECTION = "after wearing";

    /** Who has tried on so often should measure again. */
    public static final int MOST = WornKeys.MOST;

    private WearingReader() {}

    /** Year, month, day: that they sort, not that the calendar has the day. */
    public static boolean isDate(String text) {
        return WornKeys.isDate(text);
    }

    static List<WearingEntry> read(Given given, Keys table) {
        Key<List<Answers>> history = WornKeys.history(table.all());
        List<WearingEntry> out = new ArrayList<>();
        given.each(history).forEach(one -> entry(one, table).ifPresent(out::add));
        return out;
    }

    private static Optional<WearingEntry> entry(Given one, Keys table) {
        Optional<WearingSymptom> symptom = one.get(WornKeys.SYMPTOM).flatMap(WearingSymptom::of);
        symptom.filter(WearingSymptom::asks)
                .filter(s -> !one.has(WornKeys.ANSWER))
                .ifPresent(s -> one.add(WornKeys.ANSWER, Tell.said("answer.missing"), Tell.said("answer.write")));
        Map<WearingKey, Double> change = new LinkedHashMap<>();
        table.all().stream()
                .flatMap(k -> k.worn().stream())
                .map(Worn::key)
                .forEach(key -> one.get(WornKeys.change(key)).ifPresent(by -> change.put(key, by)));
        Optional<String> date = one.get(WornKeys.DATE);
        return date.isEmpty() || symptom.isEmpty() || change.isEmpty()
                ? Optional.empty()
                : Optional.of(new WearingEntry(
                        date.get(),
                        symptom.get().word(),
                        one.get(WornKeys.ANSWER).orElse(""),
                        change));
    }
}
