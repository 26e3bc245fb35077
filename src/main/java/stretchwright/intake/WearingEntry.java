package stretchwright.intake;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One try-on that led to a change.
 *
 * @param date as written, year-month-day
 * @param symptom one of the known ones
 * @param answer "yes" or "no" where the symptom asks something, else empty
 * @param change in mm; 1 for a choice
 */
public record WearingEntry(String date, String symptom, String answer, Map<WearingKey, Double> change) {
    public WearingEntry {
        change = Collections.unmodifiableMap(new LinkedHashMap<>(change));
    }

    /** "{back waist: -10 mm}", as YAML. */
    public String changeText() {
        return change.entrySet().stream()
                .map(e -> e.getKey().word() + ": " + e.getKey().shown(e.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }
}
