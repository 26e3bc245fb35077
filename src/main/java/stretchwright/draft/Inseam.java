package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/** One inseam of a leg: how far it lies out from x = 0 at each height. Side -1 is the front, 1 the back. */
final class Inseam {
    private final int side;
    private final InseamStops stops;
    private final ShapeCurve upper;
    private final ShapeCurve lower;
    private final Optional<FlareCurve> flare;

    /** Of the part that no lowering reaches; measured when it is first asked for. */
    private @Nullable Double tail;

    /**
     * @param upper down to the last level
     * @param lower from there to the narrow, or to the lower edge
     * @param flare from the narrow down
     */
    Inseam(int side, InseamStops stops, ShapeCurve upper, ShapeCurve lower, Optional<FlareCurve> flare) {
        this.side = side;
        this.stops = stops;
        this.upper = upper;
        this.lower = lower;
        this.flare = flare;
    }

    /** How far out at a height, mm. */
    double out(double y) {
        if (y >= stops.lastLevel()) {
            return upper.at(y);
        }
        return y < stops.narrow() && flare.isPresent() ? flare.get().at(y) : lower.at(y);
    }

    /** How fast it runs outwards going up: dx/dy, positive outwards. */
    double flare(double y) {
        return upper.slopeAt(y);
    }

    /** From so far below the crotch line down to the lower edge. */
    Path from(double below) {
        return path(stops.from(below));
    }

    /** The length of {@link #from}, with what every lowering leaves as it is measured once. */
    double length(double below) {
        List<Double> above = new ArrayList<>();
        for (double y : stops.from(below)) {
            above.add(y);
            if (y <= stops.untouched()) {
                break;
            }
        }
        return path(above).length() + tail();
    }

    private double tail() {
        Double known = tail;
        if (known == null) {
            List<Double> rest =
                    stops.from(0).stream().filter(y -> y <= stops.untouched()).toList();
            known = rest.size() < 2 ? 0 : path(rest).length();
            tail = known;
        }
        return known;
    }

    private Path path(List<Double> heights) {
        return new Path(heights.stream().map(y -> new Point(side * out(y), y)).toList());
    }
}
