package stretchwright.advice;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.fit.Subject;
import stretchwright.ground.Part;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Style;

/**
 * The amount that the limits of the fit check let expect, so that few trials find the least one. A guess only: every
 * amount offered is drafted and judged.
 */
final class RemediesGuess {
    /** The fit check's limits: half of the stretch standing, 85 % of it passing, recovery from 90 %, bands up to 140 mm. */
    private static final double STANDING = 0.5;

    private static final double PASSING = 0.85;
    private static final double BARES_SKIN = 40;
    private static final double RECOVERY = 90;
    private static final double HIGHEST_BAND = 140;

    private RemediesGuess() {}

    static int of(ChangeLever lever, Verdict v, FitReport before, MakeFile make) {
        Fabric fabric = make.fabric();
        Style style = make.style();
        ChangeSteps steps = new ChangeSteps(make.unit());
        return switch (lever.way()) {
            case MORE_ACROSS -> more(v, before, fabric.test().stretchAcross()).orElse(lever.most());
            case MORE_ALONG -> more(v, before, fabric.test().stretchAlong()).orElse(lever.most());
            case WIDER -> {
                double mm = missing(v.place(), before, fabric.test().stretchAcross());
                yield mm > 0 ? steps.reaching(mm) : lever.most();
            }
            case RECOVERING ->
                (int) Math.ceil(RECOVERY - 100 * fabric.test().recovery().orElse(1));
            case LOWER_BAND -> steps.reaching(style.bandHeight() - style.dropBelowWaist() - HIGHEST_BAND);
            case HIGHER_BACK -> v.kind() == Subject.Kind.BAND_SLIPS ? higherBack(before, style, steps) : lever.most();
            case OTHER -> lever.most();
        };
    }

    /** What the back slips beyond what bares skin, with half its spread: then it is no caution. */
    private static int higherBack(FitReport before, Style style, ChangeSteps steps) {
        return before.settles()
                .map(r -> r.middle().back() - style.top().backRaise() + r.backSpread() / 2 - BARES_SKIN)
                .map(mm -> steps.reaching(Math.max(1, mm)))
                .orElse(1);
    }

    /** Points of stretch that are missing; empty where the place is not known. */
    private static OptionalInt more(Verdict v, FitReport before, double now) {
        OptionalDouble needed = needed(v.place(), before);
        return needed.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of((int) Math.ceil(100 * needed.getAsDouble()) - (int) Math.floor(100 * now + 1e-9));
    }

    /** Flat width that is missing, mm; 0 where the place is not known. */
    private static double missing(Part place, FitReport fit, double stretch) {
        return DoubleStream.concat(
                        fit.openings().stream()
                                .filter(o -> o.opening().said().equals(place))
                                .mapToDouble(o -> o.mustPass() / (1 + PASSING * o.allowed()) - o.relaxed()),
                        fit.levels().stream()
                                .filter(l -> l.place().equals(place))
                                .mapToDouble(l -> l.girth() / (1 + STANDING * stretch) - l.width()))
                .max()
                .orElse(0);
    }

    /** Stretch that would do if the pattern stayed as it is. */
    private static OptionalDouble needed(Part place, FitReport fit) {
        return DoubleStream.concat(
                        fit.openings().stream()
                                .filter(o -> o.opening().said().equals(place))
                                .mapToDouble(o -> o.needed() / PASSING),
                        DoubleStream.concat(
                                fit.poses().stream()
                                        .filter(p -> p.place().equals(place))
                                        .mapToDouble(FitReport.Pose::enough),
                                fit.levels().stream()
                                        .filter(l -> l.place().equals(place))
                                        .mapToDouble(l -> l.across() / STANDING)))
                .max();
    }
}
