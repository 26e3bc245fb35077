package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;

/** Rows of the history after wearing. What may be changed follows from the rows that say so. */
final class WornKeys {
    /** Who has tried on so often should measure again. */
    static final int MOST = 40;

    /** A day, as year, month and day. */
    static final KnownKind DAY = new KnownKind(
            WornKeys::isDate, "date.is-not", "date.write", List.of(), Schemas.matching("^[0-9]{4}-[0-9]{2}-[0-9]{2}$"));

    static final Key<String> DATE =
            Key.of("date", DAY, "2026-01-31").worded("worn.date").needed();

    static final Key<String> SYMPTOM = Key.of(
                    "symptom",
                    new KnownKind(
                            word -> WearingSymptom.of(word).isPresent(),
                            "symptom.is-not",
                            "symptom.write",
                            WearingSymptom.names(),
                            Schemas.text()),
                    "band slides down")
            .worded("worn.symptom")
            .needed();

    static final Key<String> ANSWER = Row.choice("answer", ChoiceKind.of(List.of("yes", "no"), a -> a), "\"yes\"")
            .worded("worn.answer")
            .needing(Need.when("needed.answer"));

    static final Key<Boolean> CHANGE = Key.of(
                    "change", new SectionKind(false, Optional.empty(), false), "{ease at crotch: 10 mm}")
            .worded("worn.change")
            .needed();

    private WornKeys() {}

    /** Year, month, day: that they sort, not that the calendar has the day. */
    static boolean isDate(String text) {
        return text.matches("[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])");
    }

    /** The row of the history for a table of these rows. */
    static Key<List<Answers>> history(List<Key<?>> rows) {
        List<Key<?>> inside = new ArrayList<>(List.of(DATE, SYMPTOM, ANSWER, CHANGE));
        rows.stream().flatMap(k -> k.worn().stream()).forEach(w -> inside.add(change(w.key())));
        return Row.sections(
                "after wearing",
                inside,
                MOST,
                "[{date: 2026-01-31, symptom: band slides down, change: {ease at crotch: 10 mm}}]");
    }

    /** The row of one change; of a choice the value is 1. */
    static Key<Double> change(WearingKey key) {
        String path = "change." + key.word();
        Kind<Double> kind = key.isChoice()
                ? ChoiceKind.of(List.of(1.0), one -> key.choice())
                : new LengthKind(key.range(), Optional.empty(), true);
        String example = key.isChoice() ? key.choice() : key.range().most() > 0 ? "5 mm" : "-5 mm";
        return Key.of(path, kind, example).worded("worn.key", Part.text(key.word()));
    }
}
