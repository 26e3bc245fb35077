package stretchwright.lay.nest;

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

    /**
     * The best pair no wider than the strip; none where two boxes take no more.
     *
     * @param seconds the outline in the rotations allowed
     */
    static Optional<Pair> of(Turned first, List<Turned> seconds, long width) {
        double most = (1 - WORTH) * 2 * first.width() * first.height();
        List<Pair> pairs = new ArrayList<>();
        for (Turned second : seconds) {
            for (int i = 0; i < first.x.length; i++) {
                for (int j = 0; j < second.x.length; j++) {
                    Pair pair = new Pair(first, second, first.x[i] - second.x[j], first.y[i] - second.y[j]);
                    if (pair.box().width() <= width && pair.area() <= most) {
                        pairs.add(pair);
                    }
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::area));
        return pairs.stream().filter(p -> !p.overlap()).findFirst();
    }

    private double area() {
        Turned box = box();
        return (double) box.width() * box.height();
    }

    private boolean overlap() {
        return Overlap.between(first.x, first.y, Outline.moved(second.x, dx), Outline.moved(second.y, dy));
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
