package stretchwright.settle;

import java.util.List;
import java.util.OptionalDouble;
import stretchwright.balance.Hoop;
import stretchwright.balance.Ring;
import stretchwright.balance.Tension;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** Band and cuff of half a garment: rings of their own stiffness at the ends of the tube. */
final class Hoops {
    private final Pattern pattern;
    private final Style style;

    Hoops(Pattern pattern, Style style) {
        this.pattern = pattern;
        this.style = style;
    }

    /** Length of the legs' top edge, all round. */
    double topEdge() {
        return pattern.seam(Seam.Role.WAISTBAND_JOIN)
                .map(s -> s.sides().get(0).length())
                .orElseGet(() -> pattern.level(Level.Name.WAIST).orElseThrow().width());
    }

    /** Where it is joined; in a lower rise half its height above, a casing half below. */
    Hoop band(Guess guess, TopTrial top, Tension round) {
        TopEnd.Band band = style.top().band();
        double below = band.shape() == TopEnd.Band.Shape.CASING
                ? band.height() / 2
                : -Math.min(band.height() / 2, style.dropBelowWaist());
        return new Hoop(
                round,
                top.band().orElse(bandWidth()) / 2,
                band.height(),
                guess.layers(),
                guess.elastic() * top.pull(),
                guess.skin(),
                below);
    }

    /** All round; of a contoured band the mean of both edges. */
    private double bandWidth() {
        double upper = pattern.level(Level.Name.WAIST).orElseThrow().width();
        double lower = pattern.seam(Seam.Role.WAISTBAND_JOIN)
                .map(s -> s.sides().get(1).length())
                .orElse(upper);
        return (lower + upper) / 2;
    }

    /** A folded cuff below the leg; a turned hem is one more layer on its own cloth. */
    Hoop cuff(Guess guess, List<Ring> leg, Tension round) {
        Ring last = leg.get(leg.size() - 1);
        double width = pattern.level(Level.Name.HEM).map(Level::width).orElse(last.restWidth());
        OptionalDouble cuff = style.cuffHeight();
        return cuff.isPresent()
                ? new Hoop(round, width, cuff.getAsDouble(), guess.layers(), 0, last.friction(), cuff.getAsDouble() / 2)
                : new Hoop(
                        round,
                        width,
                        style.lower().turnUp(),
                        guess.layers() - 1,
                        0,
                        last.friction(),
                        -style.lower().turnUp() / 2);
    }
}
