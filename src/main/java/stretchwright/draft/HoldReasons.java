package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.fabric.Laplace;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.LevelHold.Bound;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;

/** Why so much is taken off a girth, level by level. */
final class HoldReasons {
    /** A width changed by more than this share of itself was decided by something else than the plan. */
    private static final double SAME = 0.001;

    private static final String SOURCE = "docs/maths/draft.md, Hold";

    private HoldReasons() {}

    /** Levels that this leg is drafted at, and with the first leg the hip. */
    static List<Reason> of(Order order, String leg, List<Level> levels) {
        List<Reason> out = new ArrayList<>();
        for (Level level : levels) {
            if (level.name() == Level.Name.HIP || Holding.LEG.contains(level.name())) {
                out.add(reason(order, level.name(), leg));
            }
        }
        boolean ankle = levels.stream().anyMatch(l -> l.name() == Level.Name.ANKLE);
        if (!ankle) {
            out.add(reason(order, Level.Name.ANKLE, leg));
        }
        return out;
    }

    static String name(Level.Name level, String leg) {
        return level == Level.Name.HIP ? ReductionReasons.ACROSS : leg + ": reduction at the " + level.word();
    }

    static Input input(Level.Name level, Holding holding, String leg) {
        return new Input(name(level, leg), 100 * holding.at(level).reduction(), "%", name(level, leg));
    }

    private static Reason reason(Order order, Level.Name level, String leg) {
        Holding.At at = order.holding().at(level);
        List<Input> inputs = new ArrayList<>();
        String rule = rule(order, level, leg, at, inputs);
        return new Reason(name(level, leg), 100 * at.reduction(), "%", rule + bound(at.bound()), inputs, SOURCE);
    }

    private static String bound(Bound bound) {
        return bound == Bound.NONE || bound == Bound.HARD ? "" : "; bounded by " + bound.words();
    }

    private static String rule(Order order, Level.Name level, String leg, Holding.At at, List<Input> inputs) {
        if (at.bound() == Bound.HARD) {
            return "over something hard nothing is taken off";
        }
        Hold hold = order.style().hold();
        if (hold instanceof Hold.Fixed share) {
            inputs.add(new Input("fixed reduction", 100 * share.across(), "%", "style"));
            return "the same share off every girth";
        }
        Input stretch = new Input("stretch across", 100 * order.fabric().stretchAcross(), "%", "fabric");
        if (at.wanted().isPresent()) {
            inputs.add(new Input(
                    "pressure wanted, " + hold.words() + " hold",
                    Laplace.toMmHg(at.wanted().getAsDouble()),
                    "mmHg",
                    "style"));
            inputs.add(LegReasons.measure(order.body(), girth(level)));
            inputs.add(stretch);
            return "the strain e whose tension T gives p = 2 pi T / girth by the load curve; e / (1 + e)";
        }
        if (!order.fabric().loadAcross().isAssumed()) {
            inputs.add(input(Level.Name.CROTCH, order.holding(), leg));
            return "above the crotch the cloth runs on as it is stretched at the thigh";
        }
        inputs.add(stretch);
        if (order.fabric().wrapped().isPresent()) {
            inputs.add(new Input("wrap test", 100 * order.fabric().wrapped().getAsDouble(), "%", "fabric"));
            return "as the cloth was comfortable in the wrap test for a medium hold; light four fifths, firm four thirds of that"
                    + " strain";
        }
        inputs.add(new Input("share for " + hold.words() + " hold", 100 * Reducing.share(hold.named()), "%", "style"));
        return "standing, the cloth is stretched by e = share x stretch across, at most 25 %; the reduction is e / (1 + e)";
    }

    private static Measure girth(Level.Name level) {
        return level == Level.Name.HIP ? Measure.HIP_GIRTH : Holding.girth(level);
    }

    /** What decided each width, once the pattern is drawn: the plan, or the curve, or the room that the seat needs. */
    static List<LevelHold> holds(Order order, Frame frame, String side, List<Level> levels) {
        List<LevelHold> out = new ArrayList<>();
        for (Level level : levels) {
            if (level.name() != Level.Name.HIP && !Holding.LEG.contains(level.name())) {
                continue;
            }
            Holding.At at = order.holding().at(level.name());
            String leg = level.name() == Level.Name.HIP ? "" : side;
            boolean room = level.name() == Level.Name.CROTCH && frame.crotchWidth(at.width()) > at.width();
            Bound bound = room ? Bound.FRAME : decided(order, level, at);
            out.add(new LevelHold(level.name(), leg, at.reduction(), at.wanted(), bound));
        }
        return out;
    }

    private static Bound decided(Order order, Level level, Holding.At at) {
        double change = level.width() / at.width() - 1;
        if (Math.abs(change) <= SAME || at.bound() != Bound.NONE) {
            return at.bound();
        }
        if (change > 0 && level.width() <= at.least() * (1 + SAME)) {
            return at.keeps();
        }
        if (level.name() != Level.Name.ANKLE) {
            return Bound.SHAPE;
        }
        return order.hemStretch() < order.fabric().stretchAcross() ? Bound.SEAM : Bound.PASSING;
    }
}
