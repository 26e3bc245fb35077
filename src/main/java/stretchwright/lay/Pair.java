package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Two copies laid into each other, corner on corner, in the least common box: of a wedge the second lies head to foot
 * beside the first.
 *
 * @param dx where the second's origin lies, from the first's
 */
record Pair(Turned first, Turned second, long dx, long dy) {
    /** A pair that saves less than this share of two boxes is none. */
    private static final double WORTH = 0.02;

    private record Place(Turned second, long dx, long dy, double area) {}

    /**
     * The best pair no wider than the strip; none where two boxes take no more.
     *
     * @param seconds the outline in the rotations allowed
     */
    static Optional<Pair> of(Turned first, List<Turned> seconds, long width) {
        double most = (1 - WORTH) * 2 * first.width() * first.height();
        List<Place> places = new ArrayList<>();
        for (Turned second : seconds) {
            for (int i = 0; i < first.x.length; i++) {
                for (int j = 0; j < second.x.length; j++) {
                    Place place = place(first, second, first.x[i] - second.x[j], first.y[i] - second.y[j], width);
                    if (place.area <= most) {
                        places.add(place);
                    }
                }
            }
        }
        places.sort(Comparator.comparingDouble(Place::area));
        return places.stream()
                .filter(p -> !Overlap.between(first.x, first.y, moved(p.second.x, p.dx), moved(p.second.y, p.dy)))
                .findFirst()
                .map(p -> new Pair(first, p.second, p.dx, p.dy));
    }

    private static Place place(Turned first, Turned second, long dx, long dy, long width) {
        long wide = Math.max(first.maxX, second.maxX + dx) - Math.min(first.minX, second.minX + dx);
        long high = Math.max(first.maxY, second.maxY + dy) - Math.min(first.minY, second.minY + dy);
        return new Place(second, dx, dy, wide <= width ? (double) wide * high : Double.POSITIVE_INFINITY);
    }

    private static long[] moved(long[] values, long by) {
        long[] out = new long[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = values[i] + by;
        }
        return out;
    }

    /** Their common box, with the first's origin. */
    Turned box() {
        long minX = Math.min(first.minX, second.minX + dx);
        long maxX = Math.max(first.maxX, second.maxX + dx);
        long minY = Math.min(first.minY, second.minY + dy);
        long maxY = Math.max(first.maxY, second.maxY + dy);
        return new Turned(0, new long[] {minX, maxX, maxX, minX}, new long[] {minY, minY, maxY, maxY});
    }
}
