package stretchwright.ground;

import java.util.Arrays;

/**
 * A smooth curve through values at places that rise, without a bulge or hollow between them; level at its first place, beyond
 * its ends the value of that end.
 *
 * <p>Maths: that of {@link MonotoneCubic} (Fritsch and Carlson, SIAM J. Numer. Anal. 17, 1980; slopes after Fritsch and Butland, SIAM J.
 * Sci. Stat. Comput. 5, 1984).
 */
public final class MonotoneCurve {
    private final double[] places;
    private final double[] values;
    private final double[] slopes;

    /** @throws IllegalArgumentException where there are fewer than two places, or they do not rise */
    public MonotoneCurve(double[] places, double[] values) {
        boolean rise = places.length > 1 && places.length == values.length;
        for (int i = 1; rise && i < places.length; i++) {
            rise = places[i] > places[i - 1];
        }
        if (!rise) {
            throw new IllegalArgumentException("the places of a curve must rise: " + Arrays.toString(places));
        }
        this.places = places.clone();
        this.values = values.clone();
        this.slopes = MonotoneCubic.slopes(places, values);
        slopes[0] = 0;
    }

    public double at(double place) {
        int last = places.length - 1;
        if (place <= places[0]) {
            return values[0];
        }
        if (place >= places[last]) {
            return values[last];
        }
        int i = 0;
        while (place > places[i + 1]) {
            i++;
        }
        double h = places[i + 1] - places[i];
        double t = (place - places[i]) / h;
        double rest = 1 - t;
        return rest * rest * (1 + 2 * t) * values[i]
                + t * t * (3 - 2 * t) * values[i + 1]
                + h * t * rest * (rest * slopes[i] - t * slopes[i + 1]);
    }
}
