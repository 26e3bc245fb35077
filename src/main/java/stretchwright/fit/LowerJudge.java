package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/** What concerns the lower end: hem and blade, dressing, strap, and the usual cautions (common practice). */
final class LowerJudge {
    /** Heel block 50, sole 10, blade mount 50 mm: estimates of skaters, low confidence; ask the boot. */
    static final double BLADE_LIFT = 110;

    /** Beyond tape error, mm. */
    private static final double TAPE = 20;

    private LowerJudge() {}

    static List<Verdict> of(Pattern pattern, Body body, Optional<Boot> boot, Style style) {
        List<Verdict> out = new ArrayList<>();
        boot.filter(b -> style.lower().outsideBoot()).ifPresent(b -> over(pattern, body, b, style, out));
        boot.flatMap(b -> hemNote(style)).ifPresent(out::add);
        if (boot.isPresent() && boot.get().topEstimated()) {
            out.add(new Verdict(
                    NOTE,
                    "boot top",
                    text(
                            "The boot's top is taken to stand %.0f mm above the ankle bone.",
                            boot.get().ankleToTop()),
                    "Measure it and write it as \"ankle to top\"."));
        }
        pattern.notions().stream().filter(n -> n.name().equals("strap")).forEach(n -> out.add(strap(n)));
        if (style.leg() == Style.Leg.STIRRUP) {
            out.add(new Verdict(
                    NOTE,
                    "strap",
                    "The strap's length is reckoned from hem height and foot length and not measured.",
                    "Pin it under the arch before sewing the second end; take it off if the foot turns numb."));
        }
        return out;
    }

    /** What else can be done where a hem cannot pass the laced boot by stretch. */
    static String orElse(Optional<Boot> boot, Pattern pattern, List<FitReport.Opening> openings) {
        if (boot.isEmpty() || !boot.get().overLaced()) {
            return "";
        }
        String upTo = openings.stream()
                .filter(o -> o.opening().equals(Openings.HEM))
                .findFirst()
                .map(o -> openUpTo(pattern, o.mustPass() / (1 + Judge.EASY_SHARE * o.allowed())))
                .orElse("");
        return " Or put the legs on first and roll them down (boot.dressing: leg first), or have the leg open by a zip,"
                + " hook tape or a wrap" + upTo + ".";
    }

    /** Up to where the leg is wide enough for the boot: the tube above an opening has to pass it as well. */
    private static String openUpTo(Pattern pattern, double wide) {
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
                return text(" from the hem %.0f mm up, where it is %.0f mm wide", (height - hem) / flat, wide);
            }
        }
        return " all the way up";
    }

    private static void over(Pattern pattern, Body body, Boot boot, Style style, List<Verdict> out) {
        double below = -lowest(pattern, style);
        if (below > BLADE_LIFT) {
            out.add(new Verdict(
                    below > BLADE_LIFT + TAPE ? STOP : CAUTION,
                    Subject.of(Subject.Kind.LOW_HEM, "hem"),
                    text(
                            "The hem would end %.0f mm below the floor of the bare foot; heel, sole and blade or wheels together"
                                    + " lift it by about %.0f mm at most. A hem in the blade makes the wearer fall.",
                            below, BLADE_LIFT),
                    text(
                            "Set ankle to hem to %.0f mm or less, and measure it on the boot.",
                            boot.ankleToHem() - (below - BLADE_LIFT))));
        }
        if (boot.overLaced() && boot.guardGirth().isEmpty()) {
            out.add(new Verdict(
                    CAUTION,
                    Openings.HEM,
                    "The leg is pulled over the laced boot, and what must pass below the heel was not measured: blade,"
                            + " guard or wheels, and toe.",
                    "Measure the longest loop round heel, guard or wheels, and instep, and write it as boot.guard"
                            + " girth."));
        }
        out.add(new Verdict(
                NOTE,
                "hem",
                "The finished hem must end above the blade holder or the wheels, with no loose cloth and no hanging ends.",
                "Try it with the boot on before skating; the rink's or club's rules come first."));
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
            Edge hem = leg.edge("hem");
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
                note(
                        "The leg ends inside the boot: a seam ridge under the tongue presses.",
                        "Sew the lowest 150 mm of the inseam flat, turn its allowance to the outside of the leg, and"
                                + " let the hem lie without a fold.");
            case TO_COLLAR ->
                note(
                        text("The hem lies %.0f mm below the boot's top, which a lunge uses up.", LowerEnd.LUNGE),
                        "If a gap shows in a deep lunge, cut the leg longer at the line marked for it.");
            case OVER_HEEL ->
                note(
                        text(
                                "The hem is %.0f mm lower at the heel than at the instep.",
                                style.lower().hemDrop()),
                        "The foot points to the front inseam's side: the notch \"instep\" comes to the front on both"
                                + " legs.");
            case WHOLE_BOOT ->
                Optional.of(new Verdict(
                        CAUTION,
                        "hem",
                        "The cover goes down to 8 mm above the sole. Its edge is worn by ice and ground and can be cut"
                                + " by the blade; cloth under the sole trips the wearer.",
                        "Look at edge and elastic before every session and replace the cover when the edge is worn; keep"
                                + " blade, plate and toe stop clear. The rink's or club's rules come first."));
        };
    }

    private static Optional<Verdict> note(String message, String remedy) {
        return Optional.of(new Verdict(NOTE, "hem", message, remedy));
    }

    private static Verdict strap(Notion strap) {
        return new Verdict(
                CAUTION,
                "strap",
                text(
                        "The strap under the arch is firm elastic, %.0f mm wide, cut %.0f mm long for a way of %.0f mm; it"
                                + " lies in the gap between the mounts and can be taken off.",
                        strap.width(), strap.cut(), strap.worn()),
                "Never under the heel block or across the blade edge; no hanging ends. Look at it before every session"
                        + " and replace it when it is cut or slack.");
    }
}
