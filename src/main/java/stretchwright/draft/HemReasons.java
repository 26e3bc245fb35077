package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Grid;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;

/** Why the leg's lower edge lies where it lies. */
final class HemReasons {
    private static final String SOURCE = "docs/maths/draft.md, hems; common practice, no source";

    private HemReasons() {}

    static List<Reason> of(Draft.Order order, List<Leg> legs, List<Piece> pieces) {
        List<Reason> out = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            Draft.Order own = order.on(legs.get(i).order().body());
            height(own, pieces.get(i).name(), legs.get(i).line().hemHeight(), out);
            drop(own, pieces.get(i).name(), out);
        }
        return out;
    }

    private static void height(Draft.Order order, String leg, double flat, List<Reason> out) {
        List<Input> inputs = new ArrayList<>();
        String rule = order.boot().map(b -> overBoot(order, b, inputs)).orElseGet(() -> onBody(order, inputs));
        inputs.add(new Input("along", 100 * order.reductions().along(), "%", "fabric"));
        out.add(new Reason(leg + ": hem height", Grid.snap(flat), "(" + rule + ") x (1 - along)", inputs, SOURCE));
    }

    private static String overBoot(Draft.Order order, Boot boot, List<Input> inputs) {
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

    private static String onBody(Draft.Order order, List<Input> inputs) {
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

    private static void drop(Draft.Order order, String leg, List<Reason> out) {
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

    static Input measure(Draft.Order order, Measure measure) {
        String from = order.body().isGiven(measure) ? "measured" : "estimated";
        return new Input(measure.term(), order.body().mm(measure), "mm", from);
    }
}
