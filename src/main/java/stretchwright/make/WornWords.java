package stretchwright.make;

import java.util.List;
import java.util.Map;
import stretchwright.ground.Part;
import stretchwright.ground.Part.Join;
import stretchwright.ground.Said;
import stretchwright.intake.WearingEntry;
import stretchwright.intake.WearingKey;

/** What was changed after wearing, as it is told. */
public final class WornWords {
    private WornWords() {}

    /** "back waist: -10 mm", in the maker's unit. */
    public static Part change(Map<WearingKey, Double> change) {
        List<Said> all = change.entrySet().stream()
                .map(e -> Tell.said(
                        "worn.change",
                        Part.text(e.getKey().word()),
                        e.getKey().isChoice() ? Part.text(e.getKey().choice()) : Part.signed(e.getValue())))
                .toList();
        return Part.listed(Join.COMMA, all);
    }

    static Said entry(WearingEntry e) {
        Part date = Part.text(e.date());
        Part symptom = Part.text(e.symptom());
        return e.answer().isEmpty()
                ? Tell.said("why.worn-symptom", date, symptom, change(e.change()))
                : Tell.said("why.worn-answered", date, symptom, Part.text(e.answer()), change(e.change()));
    }
}
