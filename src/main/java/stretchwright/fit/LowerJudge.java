package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/** What concerns the lower end: hem and blade, dressing, strap, and the usual cautions (common practice). */
final class LowerJudge {
    /** Heel block 50, sole 10, blade mount 50 mm: estimates of skaters, low confidence; ask the boot. */
    static final double BLADE_LIFT = 110;

    /** Beyond tape error, mm. */
    private static final double TAPE = 20;

    /** Up from a hem inside the boot, under the tongue, mm. */
    private static final double SEWN_FLAT = 150;

    /** A cover's edge stands off the ground by this, mm. */
    private static final double OVER_SOLE = 8;

    private LowerJudge() {}

    static List<Verdict> of(Pattern pattern, Body body, Optional<Boot> boot, Style style) {
        List<Verdict> out = new ArrayList<>();
        boot.filter(b -> style.lower().outsideBoot()).ifPresent(b -> over(pattern, body, b, style, out));
        boot.flatMap(b -> hemNote(style)).ifPresent(out::add);
        if (boot.isPresent() && boot.get().topEstimated()) {
            out.add(new Verdict(
                    NOTE,
                    Tell.said("about.boot-top"),
                    Tell.said("lower.boot-top", Part.length(boot.get().ankleToTop())),
                    Tell.said("lower.boot-top-help")));
        }
        pattern.notions().stream().filter(n -> n.name() == NotionName.STRAP).forEach(n -> out.add(strap(n)));
        if (style.leg() == Style.Leg.STIRRUP) {
            out.add(new Verdict(
                    NOTE, Tell.said("about.strap"), Tell.said("lower.stirrup"), Tell.said("lower.stirrup-help")));
        }
        return out;
    }

    /** What else can be done where a hem cannot pass the laced boot by stretch. */
    static Said orElse(Optional<Boot> boot, Pattern pattern, FitReport.Opening hem) {
        return boot.filter(Boot::overLaced)
                .map(b -> openUpTo(pattern, hem.mustPass() / (1 + Judge.EASY_SHARE * hem.allowed())))
                .orElse(Said.NOTHING);
    }

    /** Up to where the leg is wide enough for the boot: the tube above an opening has to pass it as well. */
    private static Said openUpTo(Pattern pattern, double wide) {
        List<Level> legs = pattern.levels().stream()
                .filter(l -> !l.name().wholeBody())
                .sorted(Comparator.comparingDouble(l -> -l.height()))
                .toList();
        double hem = legs.get(legs.size() - 1).height();
        for (int i = 0; i < legs.size(); i++) {
            if (legs.get(i).width() < wide) {
                if (i == 0) {
                    break;
                }
                Level above = legs.get(i - 1);
                Level below = legs.get(i);
                double share = (wide - below.width()) / (above.width() - below.width());
                double height = below.height() + Math.min(1, share) * (above.height() - below.height());
                double flat = 1 - pattern.reductions().along();
                return Tell.said("lower.open-up-to", Part.length((height - hem) / flat), Part.length(wide));
            }
        }
        return Tell.said("lower.open-all-the-way");
    }

    private static void over(Pattern pattern, Body body, Boot boot, Style style, List<Verdict> out) {
        double below = -lowest(pattern, style);
        if (below > BLADE_LIFT) {
            out.add(new Verdict(
                    below > BLADE_LIFT + TAPE ? STOP : CAUTION,
                    Subject.of(Subject.Kind.LOW_HEM, Tell.said("about.hem")),
                    Tell.said("lower.low", Part.length(below), Part.length(BLADE_LIFT))
                            .and(Tell.said("lower.blade")),
                    Tell.said(
                            "lower.low-help",
                            Part.length(boot.ankleToHem() - (below - BLADE_LIFT))
                                    .atMost())));
        }
        if (boot.overLaced() && boot.guardGirth().isEmpty()) {
            out.add(new Verdict(
                    CAUTION,
                    OpeningName.HEM_OVER_HEEL.said(),
                    Tell.said("lower.guard"),
                    Tell.said("lower.guard-help")));
        }
        out.add(new Verdict(
                NOTE, Tell.said("about.hem"), Tell.said("lower.over-boot"), Tell.said("lower.over-boot-help")));
    }

    /** Lowest point of the finished edge, in mm over the bare foot's floor: over the heel the hem hangs lower behind. */
    private static double lowest(Pattern pattern, Style style) {
        double flat = 1 - pattern.reductions().along();
        double least = pattern.levels().stream()
                .filter(l -> l.name() == Level.Name.HEM)
                .mapToDouble(l -> l.height())
                .min()
                .orElseThrow();
        double edge = Double.POSITIVE_INFINITY;
        for (Piece leg : pattern.legs()) {
            Edge hem = leg.edge(EdgeName.HEM);
            double y =
                    hem.line().points().stream().mapToDouble(p -> p.y()).min().orElseThrow();
            edge = Math.min(edge, y - style.cuffHeight().orElse(0));
        }
        return Math.min(least, edge) / flat;
    }

    private static Optional<Verdict> hemNote(Style style) {
        LowerEnd.Hem hem = style.lower().hem();
        return switch (hem) {
            case OVER_LACES -> Optional.empty();
            case INSIDE_BOOT ->
                note(Tell.said("lower.inside-boot"), Tell.said("lower.inside-boot-help", Part.length(SEWN_FLAT)));
            case TO_COLLAR ->
                note(Tell.said("lower.to-collar", Part.length(LowerEnd.LUNGE)), Tell.said("lower.to-collar-help"));
            case OVER_HEEL ->
                note(
                        Tell.said("lower.over-heel", Part.length(style.lower().hemDrop())),
                        Tell.said("lower.over-heel-help"));
            case WHOLE_BOOT ->
                Optional.of(new Verdict(
                        CAUTION,
                        Tell.said("about.hem"),
                        Tell.said("lower.whole-boot", Part.length(OVER_SOLE)).and(Tell.said("lower.whole-boot-edge")),
                        Tell.said("lower.whole-boot-help")));
        };
    }

    private static Optional<Verdict> note(Said message, Said remedy) {
        return Optional.of(new Verdict(NOTE, Tell.said("about.hem"), message, remedy));
    }

    private static Verdict strap(Notion strap) {
        return new Verdict(
                CAUTION,
                Tell.said("about.strap"),
                Tell.said(
                        "lower.strap",
                        Part.length(strap.width()),
                        Part.length(strap.cut()),
                        Part.length(strap.ends()),
                        Part.length(strap.lap()),
                        Part.length(strap.free()),
                        Part.length(strap.worn()),
                        Part.share(strap.worn() / strap.free() - 1)),
                Tell.said("lower.strap-help"));
    }
}
