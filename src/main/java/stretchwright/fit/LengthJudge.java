package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.text;

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
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** How long the leg is and must be: standing, with the knee bent, in the boot, for a child that grows. */
final class LengthJudge {
    private LengthJudge() {}

    static List<Verdict> of(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        List<Verdict> out = new ArrayList<>();
        double flat = 1 - pattern.reductions().along();
        double hem = pattern.level(Level.Name.HEM).orElseThrow().height();
        double standing = body.mm(Measure.CROTCH_HEIGHT) - hem / flat;
        double cut = standing * flat;
        boolean overKnee = hem / flat < body.mm(Measure.KNEE_HEIGHT);
        double extra = overKnee ? BentKnee.extra(body) : 0;
        String over = boot.filter(b -> style.lower().outsideBoot())
                .map(b -> text(
                        ", %.0f mm of it over the boot",
                        body.mm(Measure.ANKLE_BONE_HEIGHT) + b.ankleToTop() - hem / flat))
                .orElse("");
        double growth = style.lower().growth();
        String grown = growth > 0 ? text(", and %.0f mm more to let down for growth", growth) : "";
        String bent = overKnee
                ? text(" With the knee bent deeply the front needs about %.0f mm (estimated).", standing + extra)
                : "";
        String ask = overKnee
                ? text(
                        "Measure from the top of the thigh over the knee to the shin, standing and in the deepest bend:"
                                + " the cloth follows up to %.0f %% more than standing; beyond it cut the leg longer at"
                                + " the line marked for it.",
                        Judge.percent(flat * (1 + fabric.test().stretchAlong()) - 1))
                : "";
        out.add(new Verdict(
                NOTE,
                "leg length",
                text("From the crotch to the hem the leg is %.0f mm as cut, for %.0f mm standing", cut, standing) + over
                        + grown + "." + bent,
                ask));
        if (body.figure() == Figure.CHILD && growth == 0) {
            out.add(
                    new Verdict(
                            NOTE,
                            "leg length",
                            "The wearer is a child and grows; no length is kept for it.",
                            style.lower().cuffHeight().isPresent() || style.leg() == Style.Leg.STIRRUP
                                    ? "Measure again before the next pair."
                                    : "With a plain level hem \"growth\" keeps some in the turned hem, such as growth: 20 mm."));
        }
        return out;
    }
}
