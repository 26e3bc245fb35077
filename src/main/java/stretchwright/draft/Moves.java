package stretchwright.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Variation;
import stretchwright.pattern.Moved;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Reason.Origin;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;
import stretchwright.pattern.Style;

/**
 * What moves points of the leg beside the measures: the maker's own shifts, and the figure as it was named. Which points a
 * figure moves is makers' habit for trousers and tights, no source: docs/maths/draft.md, "Figures".
 *
 * @param moved by whom and why
 * @param shifts all together
 */
record Moves(List<Moved> moved, Shifts shifts) {
    static Moves of(Body body, Style style) {
        List<Moved> moved = new ArrayList<>();
        style.shifts()
                .by()
                .forEach((shift, mm) ->
                        moved.add(new Moved(Tell.said("moved.own"), Moved.BY_HAND, mm, Shifts.of(shift, mm))));
        body.stance()
                .variations()
                .forEach((named, mm) -> moved.add(new Moved(
                        named.said(), named.word(), mm, isMeasured(named, body) ? Shifts.NONE : shifts(named, mm))));
        Shifts all = moved.stream().map(Moved::shifts).reduce(Shifts.NONE, Shifts::and);
        return new Moves(List.copyOf(moved), all);
    }

    /** Whether the measures given hold it already: then it moves nothing, or it would count twice. */
    private static boolean isMeasured(Variation named, Body body) {
        boolean lengths = body.isGiven(Measure.TOTAL_CROTCH_LENGTH) && body.isGiven(Measure.BACK_CROTCH_LENGTH);
        return switch (named) {
            case FULL_SEAT, FLAT_SEAT -> lengths;
            case FULL_FRONT -> lengths || body.stance().frontWaist().isPresent();
            case SWAYED_BACK, STRAIGHT_BACK ->
                lengths || body.stance().backWaist().isPresent();
            case THIGHS_FORWARD, KNOCK_KNEES, BOW_LEGS -> false;
        };
    }

    private static Shifts shifts(Variation named, double mm) {
        Map<Shift, Double> by = new EnumMap<>(Shift.class);
        switch (named) {
            case FULL_SEAT -> {
                by.put(Shift.BACK_CROTCH_POINT, mm);
                by.put(Shift.BACK_WAIST, mm);
            }
            case FLAT_SEAT -> {
                by.put(Shift.BACK_CROTCH_POINT, -mm);
                by.put(Shift.BACK_WAIST, -mm);
            }
            case FULL_FRONT -> by.put(Shift.FRONT_WAIST, mm);
            case SWAYED_BACK -> by.put(Shift.BACK_WAIST, -mm);
            case STRAIGHT_BACK -> by.put(Shift.BACK_WAIST, mm);
            case THIGHS_FORWARD -> {
                by.put(Shift.FRONT_CROTCH_POINT, mm);
                by.put(Shift.BACK_CROTCH_POINT, -mm);
            }
            case KNOCK_KNEES -> {
                by.put(Shift.HEM, mm);
                by.put(Shift.SIDE_HEM, -mm);
            }
            case BOW_LEGS -> by.put(Shift.SIDE_HEM, mm);
        }
        return new Shifts(by);
    }

    /** Centre front so much higher than usual, mm: as asked for, and for the figure. */
    double frontRaise(Style style) {
        return style.top().frontRaise() + shifts.at(Shift.FRONT_WAIST);
    }

    double backRaise(Style style) {
        return style.top().backRaise() + shifts.at(Shift.BACK_WAIST);
    }

    /** Longer crotch seam for moved crotch points, mm. */
    double seamInFront() {
        return shifts.at(Shift.FRONT_CROTCH_POINT) + shifts.at(Shift.CROTCH_LINE);
    }

    double seamBehind() {
        return shifts.at(Shift.BACK_CROTCH_POINT) + shifts.at(Shift.CROTCH_LINE);
    }

    /** The rule with everything told that moved these points. */
    Ruled told(Ruled ruled, Shift... points) {
        Ruled out = ruled;
        for (Shift point : points) {
            for (Moved one : moved) {
                double mm = one.shifts().at(point);
                if (mm != 0) {
                    out = out.with(new Input(Tell.said("input.moved", point.said(), one.by()), mm, "mm", Origin.STYLE));
                }
            }
        }
        return out;
    }
}
