package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Strain;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/**
 * The three openings. What an opening may stretch is the smaller of the cloth's stretch across and what its seam
 * stands before a thread breaks (trade-values section 5: the smaller of fabric and hem stitch decides).
 */
final class Openings {
    private Openings() {}

    static List<FitReport.Opening> of(
            Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style, Set<Machine> machines) {
        double seam = Machine.forSeam(machines).extensibility();
        double hemSeam = pattern.hasCuff() ? seam : Machine.forHem(machines).extensibility();
        double cloth = fabric.test().stretchAcross();
        List<FitReport.Opening> out = new ArrayList<>();
        double band = width(pattern, Level.Name.WAIST);
        boolean joined = pattern.seam(Seam.Role.WAISTBAND_JOIN).isPresent();
        double bandSeam = joined ? seam : Machine.forHem(machines).extensibility();
        out.add(opening(OpeningName.WAISTBAND_OVER_HIPS, band, body.mm(Measure.HIP_GIRTH), Math.min(cloth, bandSeam)));
        double heel = boot.filter(b -> style.lower().outsideBoot())
                .map(b -> widestOver(b, body, style.lower().hem()))
                .orElseGet(() -> widestBelow(body, style));
        double hem = width(pattern, Level.Name.HEM);
        if (boot.isPresent() && boot.get().overLaced() && style.lower().outsideBoot()) {
            hem = Math.min(hem, narrowestAtAll(pattern));
        }
        out.add(opening(OpeningName.HEM_OVER_HEEL, hem, heel, Math.min(cloth, hemSeam)));
        boolean rolled =
                boot.isPresent() && !boot.get().overLaced() && style.lower().outsideBoot();
        double leg = Math.max(body.mm(Measure.CALF_GIRTH), body.mm(Measure.HEEL_GIRTH));
        out.add(opening(
                OpeningName.LEG_OVER_CALF, rolled ? narrowest(pattern) : narrowestDownToCalf(pattern), leg, cloth));
        return out;
    }

    /**
     * What a hem over a boot is pulled over. Put on first and rolled down it passes the boot's heel where it reaches
     * below it, else the bare heel and the boot's top; pulled over the laced boot it passes heel, guard or wheels, and
     * a hem round the sole the plate as well, laid flat.
     */
    private static double widestOver(Boot boot, Body body, LowerEnd.Hem hem) {
        if (boot.overLaced()) {
            double plate =
                    hem == LowerEnd.Hem.WHOLE_BOOT ? 2 * boot.sole().plate().orElse(0) : 0;
            return Math.max(boot.widestOverLaced(), plate);
        }
        return hem == LowerEnd.Hem.TO_COLLAR
                ? Math.max(body.mm(Measure.HEEL_GIRTH), boot.topGirth())
                : boot.heelGirth();
    }

    /** What a hem without a boot is pulled over: the heel, and for a leg that ends above the calf the calf and knee too. */
    private static double widestBelow(Body body, Style style) {
        double heel = body.mm(Measure.HEEL_GIRTH);
        return switch (style.leg()) {
            case OVER_BOOT, ANKLE, STIRRUP, CALF -> heel;
            case KNEE, SHORT -> Math.max(heel, Math.max(body.mm(Measure.CALF_GIRTH), body.mm(Measure.KNEE_GIRTH)));
        };
    }

    private static FitReport.Opening opening(OpeningName name, double relaxed, double mustPass, double allowed) {
        double needed = Math.max(0, Strain.of(relaxed, mustPass));
        return new FitReport.Opening(name, relaxed, mustPass, needed, allowed, needed <= allowed);
    }

    /** What is pulled up past the calf: the leg from the crotch down to the calf's own level. */
    private static double narrowestDownToCalf(Pattern pattern) {
        return pattern.levels().stream()
                .filter(l -> !l.name().wholeBody() && l.name().compareTo(Level.Name.CALF) <= 0)
                .mapToDouble(Level::width)
                .min()
                .orElseThrow();
    }

    /** Pulled over the laced boot all of the leg passes it, from the crotch to the hem. */
    private static double narrowestAtAll(Pattern pattern) {
        return pattern.levels().stream()
                .filter(l -> !l.name().wholeBody())
                .mapToDouble(Level::width)
                .min()
                .orElseThrow();
    }

    /** The narrowest flat width of the leg below the knee: rolled up for lacing, all of it lies round the calf. */
    private static double narrowest(Pattern pattern) {
        return pattern.levels().stream()
                .filter(l -> l.name().compareTo(Level.Name.KNEE) > 0)
                .mapToDouble(Level::width)
                .min()
                .orElseThrow();
    }

    private static double width(Pattern pattern, Level.Name name) {
        return pattern.level(name).orElseThrow().width();
    }
}
