package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Box;
import stretchwright.pattern.Level;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** What a maker should know of the parts of a leg and of its pockets. */
final class PartsJudge {
    /** Over the knee the skin of a deep bend grows by 40 % of 200 mm (trade-values section 3, tool default). */
    private static final double KNEE_GROWS = 80;

    private PartsJudge() {}

    static List<Verdict> of(Pattern pattern, Style style) {
        List<Verdict> out = new ArrayList<>();
        Parts parts = style.parts();
        pattern.pieces().stream()
                .filter(p -> p.name().endsWith("side panel"))
                .findFirst()
                .ifPresent(p -> panel(p, out));
        if (parts.kneeShaping()) {
            knee(pattern, out);
        }
        pads(parts, Level.Name.HIP, out);
        pads(parts, Level.Name.KNEE, out);
        pads(parts, Level.Name.CROTCH, out);
        if (parts.has(Parts.Pocket.Kind.PHONE)) {
            out.add(new Verdict(
                    NOTE,
                    Parts.Pocket.Kind.PHONE.piece(),
                    "One pocket is cut, for the leg on which it is wanted; 200 g in it pull at the band with every jump, and a fall"
                            + " on a telephone hurts.",
                    "Leave it empty for jumps, or add a firmer band."));
        }
        return out;
    }

    private static void panel(Piece panel, List<Verdict> out) {
        Box box = panel.cutLine().box();
        out.add(new Verdict(
                NOTE,
                panel.name(),
                "The side panel stretches with the leg, so a second colour must stretch as the first does.",
                text(
                        "For one, name the panel under fabric.contrasts: 2 strips of %.0f mm by %.0f mm along the selvage.",
                        Math.ceil(box.width()), Math.ceil(box.height()))));
    }

    private static void knee(Pattern pattern, List<Verdict> out) {
        double ease = Math.abs(pattern.seam(Seam.Role.INSEAM).orElseThrow().ease());
        out.add(new Verdict(
                NOTE,
                "knee shaping",
                text(
                        "The front is %.0f mm longer over the knee than the back. The skin there grows by about %.0f mm in a deep"
                                + " bend: the cloth's stretch and its sliding must give the rest.",
                        ease, KNEE_GROWS),
                "Ease it in between the two notches of each seam; where it gathers, ease in less."));
    }

    /** By which share the front over the knee is longer than drafted without shaping; 0 where it is not shaped. */
    static double kneeShare(Pattern pattern) {
        double front = 0;
        double back = 0;
        for (Piece piece : pattern.legs()) {
            double zone = zone(piece);
            front = piece.name().endsWith("front leg") ? zone : front;
            back = piece.name().endsWith("back leg") ? zone : back;
        }
        return front > 0 && back > 0 ? (front - back) / (front + back) : 0;
    }

    private static double zone(Piece piece) {
        double low = Double.NaN;
        double high = Double.NaN;
        for (Notch n : piece.notches()) {
            if (n.edge().equals("side edge")) {
                low = n.name().equals("below knee") ? n.along() : low;
                high = n.name().equals("above knee") ? n.along() : high;
            }
        }
        return Double.isNaN(low) || Double.isNaN(high) ? 0 : Math.abs(high - low);
    }

    private static void pads(Parts parts, Level.Name level, List<Verdict> out) {
        double more = parts.bulge(level);
        if (more > 0) {
            out.add(new Verdict(
                    NOTE,
                    level == Level.Name.CROTCH ? "thigh" : level.word(),
                    text(
                            "What is worn in the pockets is taken to add %.0f mm to the girth here (1.5 times its thickness"
                                    + " each; people give 1 to 2): draft and fit check reckon with it.",
                            more),
                    "Measure the girth with it in place. A pocket only holds a pad: whether the pad protects is for its maker"
                            + " to say."));
        }
    }
}
