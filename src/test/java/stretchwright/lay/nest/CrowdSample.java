package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;

/** Parts of an instance crowded on nine tenths of their bottom-left length, for measuring what the search is made of. */
public final class CrowdSample {
    private static final double SHORTENED = 0.9;
    private static final int MANY = 10_000;

    final List<Part> parts = new ArrayList<>();
    public final Bed bed;
    public final Layout layout;
    final Crowd crowd;
    public final RandomStream random = RandomStream.of(1, "crowd sample");
    public final long width;
    private final Crowd.Snapshot crowded;

    public CrowdSample(StripInstance instance) {
        Kinds kinds = Kinds.of(instance, new Findings("sample")).orElseThrow();
        width = kinds.scale.width();
        for (int k = 0; k < kinds.demand.length; k++) {
            parts.addAll(Collections.nCopies(kinds.demand[k], kinds.part(k)));
        }
        bed = Bed.of(parts, Strip.plain(width), 0).orElseThrow();
        layout = first();
        crowd = new Crowd(bed, layout.length());
        crowd.start(layout);
        crowd.length = Math.max(bed.shortest, Math.floor(SHORTENED * layout.length()));
        for (int i = 0; i < crowd.n; i++) {
            int v = bed.within(i, crowd.variant[i], crowd.length);
            double y = Math.rint((crowd.y[i] + bed.minY[v]) * SHORTENED) - bed.minY[v];
            crowd.move(i, v, crowd.x[i], bed.onY(v, y, crowd.length));
        }
        crowded = crowd.snapshot();
    }

    /** One pass of bottom-left, the largest first. */
    public Layout first() {
        List<Part> order = parts.stream()
                .sorted(Comparator.comparingDouble(p -> -p.area()))
                .toList();
        Layout first = new BottomLeft(Strip.plain(width), false).lay(order, Long.MAX_VALUE);
        if (first == null) {
            throw new IllegalStateException("no layout");
        }
        return first.of(parts);
    }

    public List<StripCheck.Placed> placed() {
        return layout.spots().stream()
                .map(s -> new StripCheck.Placed(
                        s.part().kind(), Turned.of(s.part().variants().get(s.variant())), s.x(), s.y()))
                .toList();
    }

    /** The weighted overlap of a random part at a random place. */
    public double place() {
        int i = random.below(crowd.n);
        int v = bed.within(i, bed.variants[i][random.below(bed.variants[i].length)], crowd.length);
        double px = Math.rint(random.between(bed.fromX[v], bed.toX[v]));
        double py = Math.rint(random.between(-bed.minY[v], crowd.length - bed.maxY[v]));
        return crowd.weighed(i, v, px, py, Double.POSITIVE_INFINITY);
    }

    /** One round of moving all parts that overlap, from the same crowd each time. */
    public boolean pass() {
        crowd.restore(crowded);
        return new Separation(crowd, new Mover(crowd, random), random, () -> false).separate(1, 1);
    }

    /** Places tried in a second on this thread, without a limit at which a try ends early. */
    public double placesPerSecond() {
        long end = System.nanoTime() + 1_000_000_000L;
        long start = System.nanoTime();
        long count = 0;
        double sum = 0;
        while (System.nanoTime() < end) {
            for (int k = 0; k < MANY; k++) {
                sum += place();
            }
            count += MANY;
        }
        if (!(sum >= 0)) {
            throw new IllegalStateException("an overlap was " + sum);
        }
        return count / ((System.nanoTime() - start) / 1e9);
    }
}
