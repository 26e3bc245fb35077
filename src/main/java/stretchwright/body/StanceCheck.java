package stretchwright.body;

import java.util.OptionalDouble;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;

/** Whether the waist in front and behind, and the figure as it was named, go with the measures. */
final class StanceCheck {
    /** Front, side and back of one waist differ in height by at most so much of middle size (no source). */
    private static final double MOST = 60;

    /** A named figure contradicts a measure that is off the other way by more than this, mm (no source). */
    private static final double CONTRARY = 20;

    /** And a waist height by more than this, mm: the tape itself. */
    private static final double CONTRARY_HEIGHT = 5;

    private static final String FRONT = "wearer.measurements.front waist height";
    private static final String BACK = "wearer.measurements.back waist height";
    private static final String FIGURE = "wearer.figure shifts.";

    private final Body body;
    private final Stance stance;
    private final Findings findings;

    private StanceCheck(Body body, Findings findings) {
        this.body = body;
        this.stance = body.stance();
        this.findings = findings;
    }

    /** Whether nothing was found. */
    static boolean pass(Body body, Findings findings) {
        int before = findings.all().size();
        StanceCheck check = new StanceCheck(body, findings);
        check.waists();
        body.stance().variations().keySet().forEach(check::figure);
        return findings.all().size() == before;
    }

    private void waists() {
        OptionalDouble front = stance.frontWaist();
        OptionalDouble back = stance.backWaist();
        if (front.isEmpty() && back.isEmpty()) {
            return;
        }
        if (!body.isGiven(Measure.WAIST_HEIGHT)) {
            findings.add(
                    front.isPresent() ? FRONT : BACK, Tell.said("stance.no-side"), Tell.said("stance.no-side-help"));
            return;
        }
        double side = body.mm(Measure.WAIST_HEIGHT);
        double most = MOST * body.size();
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
        return body.isGiven(Measure.BACK_CROTCH_LENGTH) && body.isGiven(Measure.TOTAL_CROTCH_LENGTH)
                ? body.mm(Measure.BACK_CROTCH_LENGTH) - Body.BACK_OF_CROTCH * body.mm(Measure.TOTAL_CROTCH_LENGTH)
                : 0;
    }

    private double backAbove() {
        return stance.backAbove(body.mm(Measure.WAIST_HEIGHT));
    }

    private void lengths(Variation named, boolean contradicted) {
        if (contradicted) {
            findings.add(
                    FIGURE + named.word(),
                    Tell.said(
                            "stance.lengths",
                            named.said(),
                            Part.length(body.mm(Measure.BACK_CROTCH_LENGTH)),
                            Part.length(body.mm(Measure.TOTAL_CROTCH_LENGTH)),
                            Part.length(Body.BACK_OF_CROTCH * body.mm(Measure.TOTAL_CROTCH_LENGTH))),
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
                            Part.length(body.mm(Measure.WAIST_HEIGHT))),
                    Tell.said("stance.figure-help"));
        }
    }
}
