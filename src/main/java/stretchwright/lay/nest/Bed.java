package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a search works on, fixed for its whole run: every variant's outline, box and places allowed, and the no-fit
 * polygons between them, in whole units.
 *
 * <p>Parts of one kind share their variants. What is taken on the strip are parts too, after all others, that never move. Arrays by variant number: the inner loops read nothing else.
 */
public final class Bed {
    /** More corners than this make the search slow. */
    private static final int MANY = 24;
    /** Beyond these a search would not get far, or need more memory than a desk has to spare. */
    private static final int MOST_PARTS = 2000;

    private static final int MOST_CORNERS = 400;
    private static final int MOST_CONVEX = 20_000;

    final long width;
    /** Variant numbers of each part, and of what is taken. */
    final int[][] variants;
    /** Parts with equal numbers are alike. */
    final int[] kind;

    final double[] area;
    /** Square root of a variant's area over the mean of all parts'; 1 for what is taken. */
    final double[] bulk;

    final double[] minX;
    final double[] minY;
    final double[] maxX;
    final double[] maxY;
    /** Least and greatest x at which a variant lies on the cloth. */
    final double[] fromX;

    final double[] toX;
    /** Least y at which a variant may lie, and the step from there. */
    final double[] fromY;

    final double[] stepY;
    public final NoFits noFits;
    final List<Part> parts;
    /** The variant of each part that is lowest. */
    final int[] lowest;
    /** No layout of the outlines searched with is shorter: the highest part in its lowest variant, or what is proved. */
    final double shortest;
    /** A search that has come down to this is over: nothing shorter is left to be found. */
    final double enough;

    private final int movable;

    private final List<List<long[][]>> convex;

    private Bed(List<Part> parts, Strip strip, double tolerance, long floor, long enough) {
        this.parts = List.copyOf(parts);
        this.width = strip.width();
        this.movable = parts.size();
        List<Shape> shapes = new ArrayList<>();
        List<Across> across = new ArrayList<>();
        List<Beat> beats = new ArrayList<>();
        Map<Integer, int[]> byKind = new HashMap<>();
        variants = new int[movable + strip.taken().size()][];
        kind = new int[parts.size()];
        area = new double[parts.size()];
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            kind[i] = part.kind();
            area[i] = part.area();
            variants[i] = byKind.computeIfAbsent(part.kind(), k -> {
                int[] numbers = new int[part.variants().size()];
                for (int v = 0; v < numbers.length; v++) {
                    numbers[v] = shapes.size();
                    shapes.add(outline(part, part.variants().get(v).exact(), tolerance));
                    across.add(part.across());
                    beats.add(part.variants().get(v).beat());
                }
                return numbers;
            });
        }
        for (Shape taken : strip.taken()) {
            variants[movable + shapes.size() - across.size()] = new int[] {shapes.size()};
            shapes.add(taken);
        }
        double mean = Arrays.stream(area).average().orElseThrow();
        bulk = IntStream.range(0, shapes.size())
                .mapToDouble(v -> v < across.size() ? Math.sqrt(shapes.get(v).area() / mean) : 1)
                .toArray();
        minX = shapes.stream().mapToDouble(s -> s.minX).toArray();
        minY = shapes.stream().mapToDouble(s -> s.minY).toArray();
        maxX = shapes.stream().mapToDouble(s -> s.maxX).toArray();
        maxY = shapes.stream().mapToDouble(s -> s.maxY).toArray();
        fromX = new double[shapes.size()];
        toX = new double[shapes.size()];
        fromY = new double[shapes.size()];
        stepY = new double[shapes.size()];
        for (int v = 0; v < across.size(); v++) {
            fromX[v] = across.get(v).least(shapes.get(v));
            toX[v] = across.get(v).greatest(shapes.get(v));
            fromY[v] = beats.get(v).from(-shapes.get(v).minY);
            stepY[v] = beats.get(v).every();
        }
        convex = shapes.stream().allMatch(s -> s.corners() <= MOST_CORNERS)
                ? shapes.stream().map(Convex::parts).toList()
                : List.of();
        noFits = new NoFits(convex);
        lowest = Arrays.stream(variants, 0, movable)
                .mapToInt(own -> Arrays.stream(own)
                        .boxed()
                        .min(Comparator.comparingDouble(this::leastTop))
                        .orElseThrow())
                .toArray();
        shortest = Math.max(
                floor, Arrays.stream(lowest).mapToDouble(this::leastTop).max().orElseThrow());
        this.enough = Math.max(enough, shortest);
    }

    /**
     * Empty where a search would not get far, or could not tell touching from overlapping.
     *
     * @param tolerance outlines with many corners are searched with by enclosing ones, nowhere farther off than this
     */
    public static Optional<Bed> of(List<Part> parts, Strip strip, double tolerance) {
        return of(parts, strip, tolerance, 0, 0);
    }

    /**
     * @param floor a length that no layout goes below: none shorter is tried for
     * @param enough the same, known by other means: a search that reaches it is over, but steps are taken as if it were not known
     */
    public static Optional<Bed> of(List<Part> parts, Strip strip, double tolerance, long floor, long enough) {
        if (parts.size() > MOST_PARTS) {
            return Optional.empty();
        }
        Bed bed = new Bed(parts, strip, tolerance, floor, enough);
        return bed.searchable() ? Optional.of(bed) : Optional.empty();
    }

    private boolean searchable() {
        int count = convex.stream().mapToInt(List::size).sum();
        double extent = 0;
        double edge = 0;
        for (List<long[][]> outline : convex) {
            for (long[][] part : outline) {
                edge = Math.max(edge, NoFit.longestEdge(part));
                for (long[] coordinates : part) {
                    for (long c : coordinates) {
                        extent = Math.max(extent, Math.abs((double) c));
                    }
                }
            }
        }
        return count > 0 && count <= MOST_CONVEX && 2 * extent * 2 * edge <= NoFit.EXACT;
    }

    private double leastTop(int v) {
        return fromY[v] + maxY[v];
    }

    /** The variant itself, or the part's lowest where it does not lie within the length. */
    int within(int i, int v, double length) {
        return leastTop(v) <= length ? v : lowest[i];
    }

    /** The place across nearest to this one. */
    double onX(int v, double x) {
        return Math.rint(Math.max(fromX[v], Math.min(toX[v], x)));
    }

    /** The place along nearest to this one: within the length, and on the beat. */
    double onY(int v, double y, double length) {
        double step = stepY[v];
        double greatest =
                step == 1 ? length - maxY[v] : fromY[v] + Math.floor((length - maxY[v] - fromY[v]) / step) * step;
        double inside = Math.max(fromY[v], Math.min(greatest, y));
        return step == 1 ? Math.rint(inside) : fromY[v] + Math.rint((inside - fromY[v]) / step) * step;
    }

    /** Parts of at least this share of the largest area. */
    List<Integer> large(double share) {
        double largest = Arrays.stream(area).max().orElseThrow();
        return IntStream.range(0, movable)
                .filter(i -> area[i] >= share * largest)
                .boxed()
                .toList();
    }

    private static Shape outline(Part part, Shape exact, double tolerance) {
        Shape enclosing = exact.corners() <= MANY ? exact : Enclosing.of(exact, tolerance);
        return part.across().holds(enclosing) ? enclosing : exact;
    }

    /** The parts that move. */
    int movable() {
        return movable;
    }

    /** All parts, those that never move last. */
    int all() {
        return variants.length;
    }
}
