package stretchwright.many;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Measuring;
import stretchwright.boot.Boot;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Style;

/**
 * What every body of a survey is drafted in: a style, a fabric, and a boot that grows with the wearer.
 *
 * @param boot of a wearer with the heel girth below; each wearer's is larger or smaller by their own
 */
record SurveyCase(
        String name, Fabric fabric, Optional<Boot> boot, double heelGirth, Style style, Set<Machine> machines) {
    /** Where no make file is named: an invented figure boot, 400 mm round heel and instep on a bare heel of 305 mm. */
    private static final Boot USUAL_BOOT =
            new Boot("figure skate", 290, 400, 385, 140, 80, false, Boot.Dressing.LEG_FIRST);

    private static final double USUAL_HEEL = 305;

    /** Usable width of common stretch knits (common practice, no source). */
    private static final double USUAL_WIDTH = 1470;

    /** Three styles in two cloths: one that suits leggings (60 % across, 45 % along), one too stiff for most (30 %, 20 %). */
    static List<SurveyCase> usual() {
        List<SurveyCase> cases = new ArrayList<>();
        for (double[] stretch : new double[][] {{0.60, 0.45}, {0.30, 0.20}}) {
            cases.add(usual("over boot", Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32)), stretch));
            cases.add(usual("ankle", Style.usual(Style.Leg.ANKLE), stretch));
            cases.add(usual("short", Style.usual(Style.Leg.SHORT), stretch));
        }
        return cases;
    }

    private static SurveyCase usual(String name, Style style, double[] stretch) {
        String label = String.format(Locale.ROOT, "%s, %.0f/%.0f %%", name, 100 * stretch[0], 100 * stretch[1]);
        return new SurveyCase(
                label,
                cloth(label, stretch[0], stretch[1]),
                Optional.of(USUAL_BOOT),
                USUAL_HEEL,
                style,
                Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
    }

    private static Fabric cloth(String name, double across, double along) {
        return new Fabric(
                new Fabric.Quality(OptionalDouble.empty(), 0, 0),
                new Fabric.Roll(name, USUAL_WIDTH, OptionalDouble.empty(), true, 0, Optional.empty(), ClothShape.WHOLE),
                new Fabric.Test(
                        across,
                        along,
                        LoadCurve.assumed(across),
                        LoadCurve.assumed(along),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
    }

    /** A make file's own fabric, boot, style and machines; its wearer only tells what heel its boot was measured on. */
    static SurveyCase of(MakeFile make) {
        Body wearer = Measuring.body(make.measured(), new Findings(make.file())).orElseThrow();
        return new SurveyCase(
                make.file(), make.fabric(), make.boot(), wearer.mm(Measure.HEEL_GIRTH), make.style(), make.machines());
    }

    Optional<Boot> bootFor(Body body) {
        double factor = body.mm(Measure.HEEL_GIRTH) / heelGirth;
        return boot.map(b -> b.scaled(factor));
    }
}
