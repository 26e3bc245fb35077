package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.BentKnee;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** How long the leg is and must be: standing, with the knee bent, in the boot, for a child that grows. */
final class LengthJudge {
    /** For growth, named as an example, mm. */
    private static final double KEPT = 20;

    private LengthJudge() {}

    static List<Verdict> of(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        List<Verdict> out = new ArrayList<>();
        double flat = 1 - pattern.reductions().along();
        double hem = pattern.level(Level.Name.HEM).orElseThrow().height();
        double standing = body.mm(Measure.CROTCH_HEIGHT) - hem / flat;
        double cut = standing * flat;
        boolean overKnee = hem / flat < body.mm(Measure.KNEE_HEIGHT);
        double extra = overKnee ? BentKnee.extra(body) : 0;
        Optional<Part> over = boot.filter(b -> style.lower().outsideBoot())
                .map(b -> Part.length(body.mm(Measure.ANKLE_BONE_HEIGHT) + b.ankleToTop() - hem / flat));
        double growth = style.lower().growth();
        Said bent = overKnee ? Tell.said("length.bent", Part.length(standing + extra)) : Said.NOTHING;
        Said ask = overKnee
                ? Tell.said(
                        "length.bent-help", Part.share(flat * (1 + fabric.test().stretchAlong()) - 1))
                : Said.NOTHING;
        Said leg = over.map(o -> overBoot(Part.length(cut), Part.length(standing), o, growth))
                .orElseGet(() -> plain(Part.length(cut), Part.length(standing), growth));
        out.add(new Verdict(NOTE, Tell.said("about.leg-length"), leg.and(bent), ask));
        if (body.figure() == Figure.CHILD && growth == 0) {
            out.add(new Verdict(
                    NOTE,
                    Tell.said("about.leg-length"),
                    Tell.said("length.child"),
                    style.lower().cuffHeight().isPresent() || style.leg() == Style.Leg.STIRRUP
                            ? Tell.said("length.child-again-help")
                            : Tell.said("length.child-growth-help", Part.length(KEPT))));
        }
        return out;
    }

    private static Said plain(Part cut, Part standing, double growth) {
        return growth > 0
                ? Tell.said("length.leg-growing", cut, standing, Part.length(growth))
                : Tell.said("length.leg", cut, standing);
    }

    private static Said overBoot(Part cut, Part standing, Part over, double growth) {
        return growth > 0
                ? Tell.said("length.leg-over-boot-growing", cut, standing, over, Part.length(growth))
                : Tell.said("length.leg-over-boot", cut, standing, over);
    }
}
