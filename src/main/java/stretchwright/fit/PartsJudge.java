package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Box;
import stretchwright.ground.Part;
import stretchwright.pattern.Level;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
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
                .filter(p -> p.name().is(PieceKind.SIDE_PANEL))
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
                    Parts.Pocket.Kind.PHONE.piece().said(),
                    Tell.said("parts.phone"),
                    Tell.said("parts.phone-help")));
        }
        return out;
    }

    private static void panel(Piece panel, List<Verdict> out) {
        Box box = panel.cutLine().box();
        out.add(new Verdict(
                NOTE,
                panel.name().said(),
                Tell.said("parts.panel"),
                Tell.said(
                        "parts.panel-help",
                        Part.length(Math.ceil(box.width())),
                        Part.length(Math.ceil(box.height())))));
    }

    private static void knee(Pattern pattern, List<Verdict> out) {
        double ease = Math.abs(pattern.seam(Seam.Role.INSEAM).orElseThrow().ease());
        out.add(new Verdict(
                NOTE,
                Tell.said("about.knee-shaping"),
                Tell.said("parts.knee", Part.length(ease)).and(Tell.said("parts.knee-skin", Part.length(KNEE_GROWS))),
                Tell.said("parts.knee-help")));
    }

    private static void pads(Parts parts, Level.Name level, List<Verdict> out) {
        double more = parts.bulge(level);
        if (more > 0) {
            out.add(new Verdict(
                    NOTE,
                    level == Level.Name.CROTCH ? Tell.said("about.thigh") : Terms.of(level),
                    Tell.said("parts.pads", Part.length(more)),
                    Tell.said("parts.pads-help")));
        }
    }
}
