package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Shift;

/** Where the lower end of the leg lies on the wearer, mm above the bare foot's floor. */
final class HemHeights {
    /** A hem inside the boot ends at least this far below the boot's top edge, mm, or it works its way out (same). */
    static final double INSIDE = 20;

    /** The edge of a hem at the sole stays 5 to 10 mm above it, mm: blade and ground cut it (same). */
    static final double ABOVE_SOLE = 8;

    /** A hem on the fullest part of the calf climbs off it: it ends this far below, mm (common practice, no source). */
    static final double BELOW_CALF = 40;

    /** A hem on the kneecap rubs: it ends this far above its middle, mm (common practice, no source). */
    static final double ABOVE_KNEE = 60;

    private HemHeights() {}

    /** Height of the boot's top edge. */
    static double bootTop(Body body, Boot boot) {
        return body.mm(Measure.ANKLE_BONE_HEIGHT) + boot.ankleToTop();
    }

    /** The leg's own lower edge at the inseam; for a whole boot that of the leg above its cover. Below 0: lifted. */
    static Ruled of(Order order) {
        Ruled height = order.boot().map(b -> overBoot(order, b)).orElseGet(() -> onBody(order));
        double lower = order.lowered(false);
        return order.moves().told(height.with(height.value() - lower).with(order.along()), Shift.HEM, Shift.SIDE_HEM);
    }

    private static Ruled overBoot(Order order, Boot boot) {
        Body body = order.body();
        Input bone = Inputs.measure(body, Measure.ANKLE_BONE_HEIGHT);
        return switch (order.style().lower().hem()) {
            case INSIDE_BOOT ->
                height(
                        Math.min(body.mm(Measure.ANKLE_HEIGHT), bootTop(body, boot) - INSIDE),
                        Tell.said("rule.hem-inside", Part.length(INSIDE)),
                        bone,
                        Inputs.toTop(boot),
                        Inputs.measure(body, Measure.ANKLE_HEIGHT));
            case TO_COLLAR, WHOLE_BOOT ->
                height(
                        bootTop(body, boot) - LowerEnd.LUNGE,
                        Tell.said("rule.hem-collar", Part.length(LowerEnd.LUNGE)),
                        bone,
                        Inputs.toTop(boot));
            case OVER_LACES, OVER_HEEL ->
                height(
                        body.mm(Measure.ANKLE_BONE_HEIGHT) - boot.ankleToHem(),
                        Tell.said("rule.hem-over"),
                        bone,
                        Inputs.measured(Tell.said("input.ankle-to-hem"), boot.ankleToHem()));
        };
    }

    private static Ruled onBody(Order order) {
        Body body = order.body();
        return switch (order.style().leg()) {
            case OVER_BOOT, ANKLE, STIRRUP ->
                height(
                        body.mm(Measure.ANKLE_HEIGHT),
                        Tell.said("rule.hem-ankle"),
                        Inputs.measure(body, Measure.ANKLE_HEIGHT));
            case CALF ->
                height(
                        body.mm(Measure.CALF_HEIGHT) - BELOW_CALF,
                        Tell.said("rule.hem-calf", Part.length(BELOW_CALF)),
                        Inputs.measure(body, Measure.CALF_HEIGHT));
            case KNEE ->
                height(
                        body.mm(Measure.KNEE_HEIGHT) + ABOVE_KNEE,
                        Tell.said("rule.hem-knee", Part.length(ABOVE_KNEE)),
                        Inputs.measure(body, Measure.KNEE_HEIGHT));
            case SHORT ->
                height(
                        (body.mm(Measure.CROTCH_HEIGHT) + body.mm(Measure.KNEE_HEIGHT)) / 2,
                        Tell.said("rule.hem-short"),
                        Inputs.measure(body, Measure.CROTCH_HEIGHT),
                        Inputs.measure(body, Measure.KNEE_HEIGHT));
        };
    }

    private static Ruled height(double onWearer, Said rule, Input... inputs) {
        return Ruled.of(onWearer, rule, Tell.said("source.hems-practice"), inputs);
    }
}
