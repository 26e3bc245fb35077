package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All copies in rows across the strip, by their boxes or, where that is shorter, by the boxes of pairs laid into each other.
 *
 * @param placed the copies, those of one kind together, in the order of the kinds
 */
record Rows(List<StripCheck.Placed> placed, long length) {
    /**
     * @param outlines one of each kind, none wider than the strip
     * @param pairs of each kind; empty where two copies are no better laid into each other
     * @param demand copies of each
     */
    static Rows lay(List<Turned> outlines, List<Optional<Pair>> pairs, int[] demand, long width) {
        Rows single =
                of(outlines, pairs.stream().map(p -> Optional.<Pair>empty()).toList(), demand, width);
        if (pairs.stream().noneMatch(Optional::isPresent)) {
            return single;
        }
        return Stream.of(single, of(outlines, pairs, demand, width))
                .min(Comparator.comparingLong(Rows::length))
                .orElseThrow();
    }

    /** For each kind its pairs and what is left over of it, laid together and told apart again. */
    private static Rows of(List<Turned> outlines, List<Optional<Pair>> pairs, int[] demand, long width) {
        List<Turned> boxes = new ArrayList<>();
        int[] counts = new int[2 * demand.length];
        for (int k = 0; k < demand.length; k++) {
            Turned alone = outlines.get(k);
            boxes.add(pairs.get(k).map(Pair::box).orElse(alone));
            boxes.add(alone);
            counts[2 * k] = pairs.get(k).isPresent() ? demand[k] / 2 : 0;
            counts[2 * k + 1] = demand[k] - 2 * counts[2 * k];
        }
        Shelves.Origins laid = Shelves.lay(boxes, counts, width);
        List<StripCheck.Placed> placed = new ArrayList<>();
        int at = 0;
        for (int k = 0; k < demand.length; k++) {
            for (int i = 0; i < counts[2 * k]; i++, at++) {
                Pair pair = pairs.get(k).orElseThrow();
                long x = laid.x()[at];
                long y = laid.y()[at];
                placed.add(new StripCheck.Placed(k, pair.first(), x, y));
                placed.add(new StripCheck.Placed(k, pair.second(), x + pair.dx(), y + pair.dy()));
            }
            for (int i = 0; i < counts[2 * k + 1]; i++, at++) {
                placed.add(new StripCheck.Placed(k, outlines.get(k), laid.x()[at], laid.y()[at]));
            }
        }
        return new Rows(List.copyOf(placed), laid.length());
    }
}
