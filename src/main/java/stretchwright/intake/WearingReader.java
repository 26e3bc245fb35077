package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the section "after wearing": what was found at each try-on and what was changed then. */
public final class WearingReader {
    public static final String SECTION = "after wearing";
    private static final List<String> KEYS = List.of("date", "symptom", "answer", "change");
    private static final String EXAMPLE =
            "- {date: 2026-01-31, symptom: band slides down, change: {ease at crotch: 10 mm}}";

    /** Who has tried on so often should measure again. */
    public static final int MOST = 40;

    private WearingReader() {}

    static List<WearingEntry> read(Section top) {
        List<WearingEntry> out = new ArrayList<>();
        for (Section s : top.sections(SECTION, KEYS, MOST, EXAMPLE)) {
            entry(s).ifPresent(out::add);
        }
        return out;
    }

    private static Optional<WearingEntry> entry(Section s) {
        s.require("date", "2026-01-31");
        s.require("symptom", "band slides down");
        s.require("change", "{ease at crotch: 10 mm}");
        Optional<String> date = s.text("date").filter(d -> isDate(s, d));
        Optional<WearingSymptom> symptom = s.text("symptom").flatMap(w -> symptom(s, w));
        Optional<String> answer = s.choice("answer", List.of("yes", "no"), a -> a);
        symptom.filter(WearingSymptom::asks)
                .filter(w -> !s.has("answer"))
                .ifPresent(w -> s.add(
                        "answer", "is missing, and this symptom needs one.", "Write answer: yes, or answer: no."));
        Map<WearingKey, Double> change = s.section("change", WearingKey.words())
                .map(WearingReader::change)
                .orElse(Map.of());
        return date.isEmpty() || symptom.isEmpty() || change.isEmpty()
                ? Optional.empty()
                : Optional.of(new WearingEntry(date.get(), symptom.get().word(), answer.orElse(""), change));
    }

    /** Year, month, day: that they sort, not that the calendar has the day. */
    public static boolean isDate(String text) {
        return text.matches("[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])");
    }

    private static boolean isDate(Section s, String text) {
        if (!isDate(text)) {
            s.add("date", Echo.quoted(text) + " is not a date.", "Write year-month-day: 2026-01-31.");
            return false;
        }
        return true;
    }

    private static Optional<WearingSymptom> symptom(Section s, String words) {
        Optional<WearingSymptom> symptom = WearingSymptom.of(words);
        if (symptom.isEmpty()) {
            s.add(
                    "symptom",
                    Echo.quoted(words) + " is not a symptom that is known here.",
                    Nearest.to(words, WearingSymptom.names())
                            .map(n -> "Is \"" + n + "\" meant?")
                            .orElse("The command after, with the make file alone, lists them."));
        }
        return symptom;
    }

    private static Map<WearingKey, Double> change(Section s) {
        Map<WearingKey, Double> out = new EnumMap<>(WearingKey.class);
        for (WearingKey key : WearingKey.values()) {
            if (key.isChoice()) {
                s.choice(key.word(), List.of(key.choice()), c -> c).ifPresent(c -> out.put(key, 1.0));
            } else {
                OptionalDouble mm = s.signedLength(key.word(), key.range());
                mm.ifPresent(v -> out.put(key, v));
            }
        }
        if (s.names().isEmpty()) {
            s.add("", "changes nothing.", "Known are: " + String.join(", ", WearingKey.words()) + ".");
        }
        return out;
    }
}
