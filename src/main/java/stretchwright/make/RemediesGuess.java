package stretchwright.make;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Style;

/**
 * The amount that the limits of the fit check let expect, so that few trials find the least one. A guess only: every
 * amount offered is drafted and judged.
 */
final class RemediesGuess {
    /** The fit check's limits: half of the stretch standing, 85 % of it passing, recovery from 90 %, bands up to 140 mm. */
    private static final double STANDING = 0.5;

    private static final double PASSING = 0.85;
    private static final double RECOVERY = 90;
    private static final double HIGHEST_BAND = 140;

    private RemediesGuess() {}

    static int of(ChangeLever lever, Verdict v, FitReport before, MakeFile make) {
        if (lever.name().startsWith(ChangeCloth.MORE)) {
            boolean across = lever.name().endsWith("across");
            double now = across ? make.fabric().stretchAcross() : make.fabric().stretchAlong();
            OptionalDouble needed = needed(RemediesKey.place(v), before);
            return needed.isEmpty()
                    ? lever.most()
                    : (int) Math.ceil(100 * needed.getAsDouble()) - (int) Math.floor(100 * now + 1e-9);
        }
        if (lever.name().startsWith(ChangeStyle.WIDER)) {
            double mm = missing(RemediesKey.place(v), before, make.fabric().stretchAcross());
            return mm > 0 ? (int) Math.ceil(mm) : lever.most();
        }
        if (lever.name().equals(ChangeCloth.RECOVERS)) {
            return (int) Math.ceil(RECOVERY - 100 * make.fabric().recovery().orElse(1));
        }
        Style style = make.style();
        return lever.name().equals(ChangeStyle.LOWER_BAND)
                ? (int) Math.ceil(style.bandHeight() - style.dropBelowWaist() - HIGHEST_BAND)
                : lever.most();
    }

    /** Flat width that is missing, mm; 0 where the place is not known. */
    private static double missing(String place, FitReport fit, double stretch) {
        return DoubleStream.concat(
                        fit.openings().stream()
                                .filter(o -> o.opening().equals(place))
                                .mapToDouble(o -> o.mustPass() / (1 + PASSING * o.allowed()) - o.relaxed()),
                        fit.levels().stream()
                                .filter(l -> l.place().equals(place))
                                .mapToDouble(l -> l.girth() / (1 + STANDING * stretch) - l.width()))
                .max()
                .orElse(0);
    }

    /** Stretch that would do if the pattern stayed as it is. */
    private static OptionalDouble needed(String place, FitReport fit) {
        return DoubleStream.concat(
                        fit.openings().stream()
                                .filter(o -> o.opening().equals(place))
                                .mapToDouble(o -> o.needed() / PASSING),
                        DoubleStream.concat(
                                fit.poses().stream()
                                        .filter(p -> (p.region() + " " + p.direction()).equals(place))
                                        .mapToDouble(FitReport.Pose::needed),
                                fit.levels().stream()
                                        .filter(l -> l.place().equals(place))
                                        .mapToDouble(l -> l.across() / STANDING)))
                .max();
    }
}
