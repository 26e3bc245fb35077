package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Grid;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Style;

/** Why the leg's lower edge lies where it lies. */
final class HemReasons {
    private static final String SOURCE = "docs/maths/draft.md, hems; common practice, no source";

    private HemReasons() {}

    static List<Reason> of(Order order, List<Leg> legs, List<Piece> pieces) {
        List<Reason> out = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            Order own = order.on(legs.get(i).order().body());
            height(own, pieces.get(i).name(), legs.get(i).line().hemHeight(), out);
            drop(own, pieces.get(i).name(), out);
            length(own, pieces.get(i), out);
        }
        return out;
    }

    private static void height(Order order, String leg, double flat, List<Reason> out) {
        List<Input> inputs = new ArrayList<>();
        String rule = order.boot().map(b -> overBoot(order, b, inputs)).orElseGet(() -> onBody(order, inputs));
        inputs.add(new Input(ReductionReasons.ALONG, 100 * order.reductions().along(), "%", ReductionReasons.ALONG));
        out.add(new Reason(leg + ": hem height", Grid.snap(flat), "(" + rule + ") x (1 - along)", inputs, SOURCE));
    }

    private static String overBoot(Order order, Boot boot, List<Input> inputs) {
        LowerEnd.Hem hem = order.style().lower().hem();
        inputs.add(measure(order, Measure.ANKLE_BONE_HEIGHT));
        if (hem == LowerEnd.Hem.OVER_LACES || hem == LowerEnd.Hem.OVER_HEEL) {
            inputs.add(new Input("ankle to hem", boot.ankleToHem(), "mm", "measured"));
            return "ankle bone height - ankle to hem";
        }
        inputs.add(new Input("ankle to top", boot.ankleToTop(), "mm", boot.topEstimated() ? "estimated" : "measured"));
        if (hem == LowerEnd.Hem.INSIDE_BOOT) {
            inputs.add(measure(order, Measure.ANKLE_HEIGHT));
            return "the lower of ankle height and ankle bone height + ankle to top - 20";
        }
        return "ankle bone height + ankle to top - 25, the rise of a hem in a lunge";
    }

    private static String onBody(Order order, List<Input> inputs) {
        return switch (order.style().leg()) {
            case OVER_BOOT, ANKLE, STIRRUP -> {
                inputs.add(measure(order, Measure.ANKLE_HEIGHT));
                yield "ankle height";
            }
            case CALF -> {
                inputs.add(measure(order, Measure.CALF_HEIGHT));
                yield "calf height - 40: a hem on the fullest part would climb off it";
            }
            case KNEE -> {
                inputs.add(measure(order, Measure.KNEE_HEIGHT));
                yield "knee height + 60: a hem on the kneecap would rub";
            }
            case SHORT -> {
                inputs.add(measure(order, Measure.CROTCH_HEIGHT));
                inputs.add(measure(order, Measure.KNEE_HEIGHT));
                yield "halfway between crotch height and knee height";
            }
        };
    }

    /** How long the lower edge is, and what made it so: the girth it lies on, and what must pass it. */
    private static void length(Order order, Piece leg, List<Reason> out) {
        List<Input> inputs = new ArrayList<>();
        Optional<Boot> over = order.boot().filter(b -> order.style().lower().outsideBoot());
        String rule =
                over.map(b -> lengthOver(order, b, inputs)).orElseGet(() -> lengthOnLeg(order, leg.name(), inputs));
        inputs.add(new Input("stretch across", 100 * order.fabric().stretchAcross(), "%", "fabric"));
        out.add(new Reason(
                leg.name() + ": hem length", leg.edge("hem").length(), rule, inputs, "docs/maths/draft.md, hems"));
    }

    private static String lengthOver(Order order, Boot boot, List<Input> inputs) {
        LowerEnd.Hem hem = order.style().lower().hem();
        boolean low = hem == LowerEnd.Hem.OVER_LACES || hem == LowerEnd.Hem.OVER_HEEL;
        inputs.add(
                low
                        ? new Input("hem girth", boot.hemGirth(), "mm", "boot")
                        : new Input(
                                "girth 25 mm below the boot's top", boot.girthBelowTop(LowerEnd.LUNGE), "mm", "boot"));
        inputs.add(new Input(ReductionReasons.HEM, 100 * order.reductions().hem(), "%", ReductionReasons.HEM));
        String girth = (low ? "hem girth" : "girth there") + " x (1 - hem reduction)";
        String pass = "";
        if (low) {
            inputs.add(new Input("heel girth", boot.heelGirth(), "mm", "boot"));
            pass = "the larger of it and heel girth / (1 + 0.85 x stretch across)";
        }
        if (boot.overLaced()) {
            inputs.add(new Input("what must pass", boot.widestOverLaced(), "mm", "boot"));
            pass += (pass.isEmpty() ? "" : "; ")
                    + "widened up to the boot's own girth for what must pass the leg pulled over the laced boot";
        }
        return pass.isEmpty() ? girth : girth + "; " + pass;
    }

    private static String lengthOnLeg(Order order, String leg, List<Input> inputs) {
        inputs.add(HoldReasons.input(Level.Name.ANKLE, order.holding(), leg));
        boolean passes = order.boot().isPresent()
                || order.style().leg() == Style.Leg.ANKLE
                || order.style().leg() == Style.Leg.STIRRUP;
        if (!passes) {
            return "the leg's girth at the hem height x (1 - reduction)";
        }
        inputs.add(measure(order, Measure.ANKLE_GIRTH));
        inputs.add(measure(order, Measure.HEEL_GIRTH));
        return "the larger of the leg's girth there (at the ankle: ankle girth) x (1 - reduction) and heel girth /"
                + " (1 + 0.85 x stretch across), so that the heel passes";
    }

    private static void drop(Order order, String leg, List<Reason> out) {
        double drop = order.style().lower().hemDrop();
        if (drop > 0) {
            out.add(new Reason(
                    leg + ": hem drop",
                    drop,
                    "the hem at the heel lies this much lower than at the instep, half of it to either side of its"
                            + " height at the inner ankle; makers use 30 to 60 mm",
                    List.of(new Input("hem drop", drop, "mm", "style")),
                    SOURCE));
        }
    }

    static Input measure(Order order, Measure measure) {
        String from = order.body().isGiven(measure) ? "measured" : "estimated";
        return new Input(measure.term(), order.body().mm(measure), "mm", from);
    }
}
