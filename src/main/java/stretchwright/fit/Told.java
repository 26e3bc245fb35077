package stretchwright.fit;

import java.util.List;
import stretchwright.fabric.CurveSpread;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * A pressure as it is told, mmHg: the range of 8 in 10 in few digits, its ends outward to 1, above 10 to 2.
 *
 * @param likely the middle, which most garments lie near
 * @param wide more than {@link #WIDE} between the ends: only the upper one is told
 * @param weighed whether a strip was weighed, so that weighing one would not narrow it
 */
public record Told(long low, long high, long likely, boolean wide, boolean weighed) {
    /** High over low. */
    private static final double WIDE = 4;

    private static final double FINE_UP_TO = 10;
    private static final int COARSE = 2;

    /** What people can picture: "about 1 in 5". */
    private record Odds(double chance, Said said) {}

    private static final List<Odds> ODDS = List.of(
            new Odds(0.1, Tell.said("chance.one-in", Part.count(10))),
            new Odds(0.2, Tell.said("chance.one-in", Part.count(5))),
            new Odds(1.0 / 3, Tell.said("chance.one-in", Part.count(3))),
            new Odds(0.5, Tell.said("chance.one-in", Part.count(2))),
            new Odds(2.0 / 3, Tell.said("chance.in", Part.count(2), Part.count(3))),
            new Odds(0.8, Tell.said("chance.in", Part.count(4), Part.count(5))),
            new Odds(0.9, Tell.said("chance.in", Part.count(9), Part.count(10))),
            new Odds(1, Tell.said("chance.nearly-all")));

    public static Told of(LevelFit l) {
        double low = Laplace.toMmHg(l.likely().pressureLow());
        double high = Laplace.toMmHg(l.likely().pressureHigh());
        long from = low <= FINE_UP_TO ? (long) Math.floor(low) : COARSE * (long) Math.floor(low / COARSE);
        long to = high <= FINE_UP_TO ? (long) Math.ceil(high) : COARSE * (long) Math.ceil(high / COARSE);
        long likely = Math.round(Laplace.toMmHg(l.pressure()));
        boolean wide = high > WIDE * low;
        return new Told(from, to, likely, wide, l.likely().tensionSpread() <= CurveSpread.WEIGHED);
    }

    /** "about 3 to 7 mmHg, most likely 5", or "up to 6 mmHg; weigh a strip to know". */
    public Said said() {
        if (high <= 1) {
            return Tell.said("range.hardly");
        }
        if (wide) {
            return weighed
                    ? Tell.said("range.up-to", Part.count(high))
                    : Tell.said("range.up-to-weigh", Part.count(high));
        }
        return Tell.said("range.from-to", Part.count(low), Part.count(high), Part.count(likely));
    }

    /** "about 1 in 5": the nearest of a few. */
    static Said chance(double chance) {
        Odds nearest = ODDS.get(0);
        for (Odds each : ODDS) {
            if (Math.abs(each.chance - chance) < Math.abs(nearest.chance - chance)) {
                nearest = each;
            }
        }
        return nearest.said;
    }
}
