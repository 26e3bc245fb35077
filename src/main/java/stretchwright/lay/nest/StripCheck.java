package stretchwright.lay.nest;

import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Whether a layout on a strip holds: all copies are there, none reaches beyond the strip, no two overlap. Exact, and
 * shares nothing with the search.
 *
 * <p>Outlines are compared only where their boxes overlap; a tree of the boxes finds those (whole units below 2^53 are
 * exact in its doubles). Two outlines are compared from the place of one of them, so the strip may be of any length.
 */
public final class StripCheck {
    /** A copy of a kind where it lies: its outline, moved by (x, y). */
    public record Placed(int kind, Turned outline, long x, long y) {
        private long begin() {
            return y + outline.minY;
        }

        private long end() {
            return y + outline.maxY;
        }

        private Envelope box() {
            return new Envelope(x + outline.minX, x + outline.maxX, begin(), end());
        }

        private boolean overlaps(Placed other) {
            return x + outline.minX < other.x + other.outline.maxX
                    && other.x + other.outline.minX < x + outline.maxX
                    && begin() < other.end()
                    && other.begin() < end()
                    && Overlap.between(
                            outline.x,
                            outline.y,
                            Outline.moved(other.outline.x, other.x - x),
                            Outline.moved(other.outline.y, other.y - y));
        }
    }

    private StripCheck() {}

    /** Throws where the layout does not hold, which would be an error of the search. */
    public static void mustHold(List<Placed> placed, int[] demand, long width, long length) {
        int[] copies = new int[demand.length];
        for (Placed p : placed) {
            copies[p.kind]++;
            must(
                    p.x + p.outline.minX >= 0 && p.x + p.outline.maxX <= width && p.begin() >= 0 && p.end() <= length,
                    "a piece reaches beyond the strip");
        }
        for (int k = 0; k < demand.length; k++) {
            must(copies[k] == demand[k], "a demand is not met");
        }
        must(!overlap(placed), "two pieces overlap");
    }

    private static boolean overlap(List<Placed> placed) {
        STRtree boxes = new STRtree();
        for (int i = 0; i < placed.size(); i++) {
            boxes.insert(placed.get(i).box(), i);
        }
        boxes.build();
        return IntStream.range(0, placed.size())
                .parallel()
                .anyMatch(i -> overlap(placed, i, boxes.query(placed.get(i).box())));
    }

    private static boolean overlap(List<Placed> placed, int i, List<?> near) {
        return near.stream().anyMatch(j -> (Integer) j < i && placed.get(i).overlaps(placed.get((Integer) j)));
    }

    private static void must(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException("the layout does not hold: " + otherwise);
        }
    }
}
