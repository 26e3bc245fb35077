package stretchwright.body;

import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;

/** Whether the waist in front and behind, and the figure as it was named, go with the measures. */
final class StanceCheck {
    /** Front, side and back of one waist differ in height by at most so much on a body whose hip is 965 mm (no source). */
    private static final double MOST = 60;

    private static final double MIDDLE_HIP = 965;

    /** A named figure contradicts a measure that is off the other way by more than this, mm (no source). */
    private static final double CONTRARY = 20;

    /** And a waist height by more than this, mm: the tape itself. */
    private static final double CONTRARY_HEIGHT = 5;

    /** Of the crotch length, behind: mean of the women of 1988, 0.506 to 0.512. */
    private static final double BACK_OF_CROTCH = 0.51;

    private static final String FRONT = "wearer.measurements.front waist height";
    private static final String BACK = "wearer.measurements.back waist height";
    private static final String FIGURE = "wearer.figure shifts.";

    private final Stance stance;
    private final Map<Measure, Value> values;
    private final Findings findings;

    private StanceCheck(Stance stance, Map<Measure, Value> values, Findings findings) {
        this.stance = stance;
        this.values = values;
        this.findings = findings;
    }

    /** Whether nothing was found. */
    static boolean pass(Stance stance, Map<Measure, Value> values, Findings findings) {
        int before = findings.all().size();
        StanceCheck check = new StanceCheck(stance, values, findings);
        check.waists();
        stance.variations().keySet().forEach(check::figure);
        return findings.all().size() == before;
    }

    private void waists() {
        OptionalDouble front = stance.frontWaist();
        OptionalDouble back = stance.backWaist();
        if (front.isEmpty() && back.isEmpty()) {
            return;
        }
        if (!given(Measure.WAIST_HEIGHT)) {
            findings.add(
                    front.isPresent() ? FRONT : BACK, Tell.said("stance.no-side"), Tell.said("stance.no-side-help"));
            return;
        }
        double side = mm(Measure.WAIST_HEIGHT);
        double most = MOST * mm(Measure.HIP_GIRTH) / MIDDLE_HIP;
        boolean near = true;
        if (front.isPresent() && Math.abs(front.getAsDouble() - side) > most) {
            apart(FRONT, front.getAsDouble(), side, most);
            near = false;
        }
        if (back.isPresent() && Math.abs(back.getAsDouble() - side) > most) {
            apart(BACK, back.getAsDouble(), side, most);
            near = false;
        }
        if (near
                && front.isPresent()
                && back.isPresent()
                && Math.abs(front.getAsDouble() - back.getAsDouble()) > most) {
            findings.add(
                    BACK,
                    Tell.said(
                            "stance.crosses",
                            Part.length(back.getAsDouble()),
                            Part.length(front.getAsDouble()),
                            Part.length(most).atMost()),
                    Tell.said("stance.waists-help"));
        }
    }

    private void apart(String key, double height, double side, double most) {
        findings.add(
                key,
                Tell.said(
                        "stance.apart",
                        Part.length(height),
                        Part.length(side),
                        Part.length(most).atMost()),
                Tell.said("stance.waists-help"));
    }

    private void figure(Variation named) {
        named.contrary()
                .filter(other -> stance.variations().containsKey(other) && named.compareTo(other) < 0)
                .ifPresent(other -> findings.add(
                        FIGURE + other.word(),
                        Tell.said("stance.contrary", other.said(), named.said()),
                        Tell.said("stance.contrary-help")));
        switch (named) {
            case FULL_SEAT -> lengths(named, longerBehind() < -CONTRARY);
            case FLAT_SEAT -> lengths(named, longerBehind() > CONTRARY);
            case FULL_FRONT -> lengths(named, longerBehind() > CONTRARY);
            case SWAYED_BACK -> back(named, backAbove() > CONTRARY_HEIGHT);
            case STRAIGHT_BACK -> back(named, backAbove() < -CONTRARY_HEIGHT);
            case THIGHS_FORWARD, KNOCK_KNEES, BOW_LEGS -> {}
        }
    }

    /** What the back crotch length measured is longer than usual for its total, mm. */
    private double longerBehind() {
        return given(Measure.BACK_CROTCH_LENGTH) && given(Measure.TOTAL_CROTCH_LENGTH)
                ? mm(Measure.BACK_CROTCH_LENGTH) - BACK_OF_CROTCH * mm(Measure.TOTAL_CROTCH_LENGTH)
                : 0;
    }

    private double backAbove() {
        return stance.backAbove(mm(Measure.WAIST_HEIGHT));
    }

    private void lengths(Variation named, boolean contradicted) {
        if (contradicted) {
            findings.add(
                    FIGURE + named.word(),
                    Tell.said(
                            "stance.lengths",
                            named.said(),
                            Part.length(mm(Measure.BACK_CROTCH_LENGTH)),
                            Part.length(mm(Measure.TOTAL_CROTCH_LENGTH)),
                            Part.length(BACK_OF_CROTCH * mm(Measure.TOTAL_CROTCH_LENGTH))),
                    Tell.said("stance.figure-help"));
        }
    }

    private void back(Variation named, boolean contradicted) {
        if (contradicted) {
            findings.add(
                    FIGURE + named.word(),
                    Tell.said(
                            "stance.back-height",
                            named.said(),
                            Part.length(stance.backWaist().orElseThrow()),
                            Part.length(mm(Measure.WAIST_HEIGHT))),
                    Tell.said("stance.figure-help"));
        }
    }

    private boolean given(Measure measure) {
        Value value = values.get(measure);
        return value != null && value.origin() == Value.Origin.GIVEN;
    }

    private double mm(Measure measure) {
        return java.util.Objects.requireNonNull(values.get(measure)).mm();
    }
}
