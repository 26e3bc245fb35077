package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.BentKnee;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Grid;
import stretchwright.pattern.Level;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;

/** How long the leg is and must be: as cut, standing, with the knee bent, in the boot, and with growth let down. */
final class LengthPlan {
    private static final String SOURCE = "docs/maths/draft.md, length of the leg";

    private LengthPlan() {}

    static List<Reason> reasons(Order order, List<Level> levels) {
        List<Reason> out = new ArrayList<>();
        levels.stream().filter(l -> l.name() == Level.Name.HEM).forEach(hem -> {
            Body body = hem.leg().isEmpty()
                    ? order.body()
                    : order.body()
                            .leg(
                                    hem.leg().equals("left")
                                            ? stretchwright.body.Side.LEFT
                                            : stretchwright.body.Side.RIGHT);
            plan(order.on(body), hem, out);
        });
        return out;
    }

    private static void plan(Order order, Level hem, List<Reason> out) {
        Body body = order.body();
        String leg = (hem.leg() + " leg").strip() + ": ";
        double flat = 1 - order.reductions().along();
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double standing = crotch - hem.height() / flat;
        Input along = new Input(ReductionReasons.ALONG, 100 * order.reductions().along(), "%", ReductionReasons.ALONG);
        Input crotchHeight = HemReasons.measure(order, Measure.CROTCH_HEIGHT);
        Input hemHeight = new Input("hem height on the wearer", hem.height() / flat, "mm", leg + "hem height");
        add(out, leg + "length standing", standing, "crotch height - hem height", List.of(crotchHeight, hemHeight));
        Input stands = new Input("length standing", standing, "mm", leg + "length standing");
        double cut = standing * flat;
        add(out, leg + "length as cut", cut, "length standing x (1 - along)", List.of(stands, along));
        double bent = standing + BentKnee.extra(body);
        add(
                out,
                leg + "length bent",
                bent,
                "length standing + 0.40 x 200 / 365 x knee girth: the front of the knee in a squat, after Kirk and"
                        + " Ibrahim 1966 (from memory); estimated, measure it on the wearer",
                List.of(stands, HemReasons.measure(order, Measure.KNEE_GIRTH)));
        order.boot()
                .filter(b -> order.style().lower().outsideBoot())
                .ifPresent(b -> inBoot(order, b, leg, standing, out));
        double growth = order.style().lower().growth();
        if (growth > 0) {
            add(
                    out,
                    leg + "length with growth let down",
                    cut + growth,
                    "length as cut + growth kept in the turned hem",
                    List.of(
                            new Input("length as cut", cut, "mm", leg + "length as cut"),
                            new Input("growth", growth, "mm", "style")));
        }
    }

    private static void inBoot(Order order, Boot boot, String leg, double standing, List<Reason> out) {
        double toTop = order.body().mm(Measure.CROTCH_HEIGHT) - HemHeights.bootTop(order.body(), boot);
        add(
                out,
                leg + "length over the boot",
                standing - toTop,
                "length standing - (crotch height - ankle bone height - ankle to top): what lies over the boot, and"
                        + " does not bend with the ankle",
                List.of(
                        new Input("length standing", standing, "mm", leg + "length standing"),
                        HemReasons.measure(order, Measure.ANKLE_BONE_HEIGHT),
                        new Input(
                                "ankle to top",
                                boot.ankleToTop(),
                                "mm",
                                boot.topEstimated() ? "estimated" : "measured")));
    }

    private static void add(List<Reason> out, String dimension, double mm, String rule, List<Input> inputs) {
        out.add(new Reason(dimension, Grid.snap(mm), rule, inputs, SOURCE));
    }
}
