package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Findings;

/**
 * The items of an instance as kinds of parts: each in the rotation in which it is lowest, how many copies of it, and
 * what it would cost to lay them with care.
 *
 * <p>What cannot be laid, or not with the memory of a desk, becomes a finding here.
 */
final class Kinds {
    /** Corners of all copies together; more would take minutes to write and to draw. */
    private static final long MOST_CORNERS = 2_000_000;
    /** Corners of all items in all rotations together. */
    private static final long MOST_TURNED = 5_000_000;
    /** Comparisons of corners that bottom-left gets through in about a second, of spiky outlines in two. */
    private static final double QUICK = 2.5e7;
    /** The same for cutting outlines into slabs; a corner costs as much as all corners of its outline. */
    private static final double QUICK_CUT = 1e7;

    /** Smaller batches leave more cloth between them than rows do. */
    private static final int LEAST_BATCH = 12;
    /** Two copies are laid into each other where the outline has no more corners, in the first so many rotations. */
    private static final int PAIR_CORNERS = 60;

    private static final int PAIR_ROTATIONS = 8;
    /** Comparisons of corners while that is tried, for all kinds together: a second at most. */
    private static final double PAIR_COST = 3e8;

    /** A search would not get far with more. */
    private static final int MOST_COPIES = 2000;
    /** The squares of the corners of all copies together. */
    private static final double MOST_CHECKED = 4e8;

    final StripScale scale;
    final List<Turned> lowest = new ArrayList<>();
    final int[] demand;
    private final StripInstance instance;
    private long copies;
    private double wide;
    private double read;
    private double cut;
    private double checked;

    private Kinds(StripInstance instance) {
        this.instance = instance;
        this.scale = StripScale.of(instance);
        this.demand =
                instance.items().stream().mapToInt(StripInstance.Item::demand).toArray();
    }

    static Optional<Kinds> of(StripInstance instance, Findings findings) {
        Kinds kinds = new Kinds(instance);
        if (kinds.fewEnough(findings)) {
            instance.items().forEach(item -> kinds.add(item, findings));
        }
        return findings.isEmpty() ? Optional.of(kinds) : Optional.empty();
    }

    private boolean fewEnough(Findings findings) {
        long corners = 0;
        long turned = 0;
        for (StripInstance.Item item : instance.items()) {
            long own = item.polygon().points().size();
            corners += own * item.demand();
            turned += own * instance.rotations().size();
        }
        if (corners > MOST_CORNERS) {
            findings.add(
                    "items",
                    Tell.said("corners.many", Tell.count(corners), Tell.count(MOST_CORNERS)),
                    Tell.said("corners.fewer"));
        }
        if (turned > MOST_TURNED) {
            findings.add(
                    "rotations",
                    Tell.said("rotations.many", Tell.count(turned), Tell.count(MOST_TURNED)),
                    Tell.said("rotations.fewer"));
        }
        return corners <= MOST_CORNERS && turned <= MOST_TURNED;
    }

    private void add(StripInstance.Item item, Findings findings) {
        Turned best = null;
        int fitting = 0;
        for (double rotation : instance.rotations()) {
            Turned turned = Turned.of(item, rotation, scale);
            if (!turned.exact()) {
                findings.add(
                        "items." + item.id(),
                        Tell.said("item.large", Tell.units(instance.stripHeight())),
                        Tell.said("item.nearer"));
                return;
            }
            if (turned.flat()) {
                findings.add(
                        "items." + item.id(),
                        Tell.said("item.small", Tell.units(instance.stripHeight())),
                        Tell.said("item.leave-out"));
                return;
            }
            if (turned.width() <= scale.width()) {
                fitting++;
                best = best == null || turned.height() < best.height() ? turned : best;
            }
        }
        if (best == null) {
            findings.add(
                    "items." + item.id(),
                    Tell.said("item.high", Tell.units(instance.stripHeight())),
                    Tell.said("item.lower"));
            return;
        }
        lowest.add(best);
        double corners = best.x.length;
        copies += item.demand();
        wide += (double) item.demand() * best.width() / scale.width();
        read += item.demand() * fitting * corners;
        checked += item.demand() * corners * corners;
        cut += fitting * corners * corners;
    }

    long copies() {
        return copies;
    }

    /** Whether laying the parts bottom-left takes about a second at most. */
    boolean few() {
        return cost(copies) <= QUICK && cut <= QUICK_CUT;
    }

    /** How many parts at a time can be laid bottom-left so that all take about a second; 0 where that is too few. */
    int batch() {
        int size = LEAST_BATCH;
        while (cost(size + 1) <= QUICK && size < copies) {
            size++;
        }
        return cost(size) <= QUICK && cut <= QUICK_CUT ? size : 0;
    }

    /**
     * Of n parts laid at a time each is tried at some 150 places, and two for each part that lies there, and compared
     * each time with those in its columns, half of the n in the mean.
     */
    private double cost(double n) {
        return n * (75 + 4 / 3.0 * n) * Math.min(1, 2 * wide / copies) * read;
    }

    private Optional<Pair> pair(int kind, List<Double> rotations) {
        StripInstance.Item item = instance.items().get(kind);
        List<Turned> seconds =
                rotations.stream().map(r -> Turned.of(item, r, scale)).toList();
        return Pair.of(lowest.get(kind), seconds, scale.width());
    }

    /** Whether the exact check of what a search finds would take no more than seconds. */
    boolean searchable() {
        return copies <= MOST_COPIES && checked <= MOST_CHECKED;
    }

    Rows rows() {
        return Rows.lay(lowest, pairs(), demand, scale.width());
    }

    /** Of each kind the best pair of copies; none of kinds that come once or have too many corners, nor where all is too much. */
    private List<Optional<Pair>> pairs() {
        List<Double> rotations =
                instance.rotations().stream().limit(PAIR_ROTATIONS).toList();
        List<Optional<Pair>> out = new ArrayList<>();
        double tried = 0;
        for (int k = 0; k < demand.length; k++) {
            double corners = lowest.get(k).x.length;
            double cost = rotations.size() * Math.pow(corners, 4);
            boolean worth = demand[k] >= 2 && corners <= PAIR_CORNERS && tried + cost <= PAIR_COST;
            tried += worth ? cost : 0;
            out.add(worth ? pair(k, rotations) : Optional.empty());
        }
        return out;
    }

    /** The item's part in all rotations in which it fits. */
    Part part(int kind) {
        return scale.part(kind, instance.items().get(kind), instance.rotations());
    }
}
