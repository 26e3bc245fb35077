package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.BentKnee;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Grid;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Level;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.WhichLeg;

/** How long the leg is and must be: as cut, standing, with the knee bent, in the boot, and with growth let down. */
final class LengthPlan {
    private static final Said SOURCE = Tell.said("source.length");

    private LengthPlan() {}

    /** @param legs orders of each leg; where both are alike, of one */
    static List<Reason> reasons(List<Order> legs, List<Level> levels) {
        List<Reason> out = new ArrayList<>();
        levels.stream()
                .filter(l -> l.name() == Level.Name.HEM)
                .forEach(hem -> plan(legs.get(hem.leg() == WhichLeg.RIGHT ? legs.size() - 1 : 0), hem, out));
        return out;
    }

    private static void plan(Order order, Level hem, List<Reason> out) {
        Body body = order.body();
        double flat = 1 - order.reductions().along();
        double standing = body.mm(Measure.CROTCH_HEIGHT) - hem.height() / flat;
        Input crotch = Inputs.measure(body, Measure.CROTCH_HEIGHT);
        Input end = new Input(Tell.said("input.hem-on-wearer"), hem.height() / flat, "mm", order.its(What.HEM_HEIGHT));
        out.add(plan(standing, Tell.said("rule.length-standing"), crotch, end).reason(order.its(What.LENGTH_STANDING)));
        Input stands = Inputs.length(order.its(What.LENGTH_STANDING), standing);
        double cut = standing * flat;
        out.add(plan(cut, Tell.said("rule.length-cut"), stands, order.along()).reason(order.its(What.LENGTH_AS_CUT)));
        out.add(plan(
                        standing + BentKnee.extra(body),
                        Tell.said("rule.length-bent"),
                        stands,
                        Inputs.measure(body, Measure.KNEE_GIRTH))
                .reason(order.its(What.LENGTH_BENT)));
        order.boot()
                .filter(b -> order.style().lower().outsideBoot())
                .ifPresent(b -> out.add(overBoot(order, b, standing)));
        double growth = order.style().lower().growth();
        if (growth > 0) {
            Input asCut = Inputs.length(order.its(What.LENGTH_AS_CUT), cut);
            Input kept = Inputs.style(Tell.said("input.growth"), growth);
            out.add(plan(cut + growth, Tell.said("rule.length-growth"), asCut, kept)
                    .reason(order.its(What.LENGTH_WITH_GROWTH_LET_DOWN)));
        }
    }

    private static Reason overBoot(Order order, Boot boot, double standing) {
        Body body = order.body();
        double toTop = body.mm(Measure.CROTCH_HEIGHT) - HemHeights.bootTop(body, boot);
        return plan(
                        standing - toTop,
                        Tell.said("rule.length-over-boot"),
                        Inputs.length(order.its(What.LENGTH_STANDING), standing),
                        Inputs.measure(body, Measure.ANKLE_BONE_HEIGHT),
                        Inputs.toTop(boot))
                .reason(order.its(What.LENGTH_OVER_THE_BOOT));
    }

    private static Ruled plan(double mm, Said rule, Input... inputs) {
        return Ruled.of(Grid.snap(mm), rule, SOURCE, inputs);
    }
}
