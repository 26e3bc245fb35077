package stretchwright.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a search works on, fixed for its whole run: every variant's outline, box and places allowed across, and the
 * no-fit polygons between them, in whole units.
 *
 * <p>Parts of one kind share their variants. Arrays by variant number: the inner loops read nothing else.
 */
final class Bed {
    /** More corners than this make the search slow. */
    private static final int MANY = 24;
    /** Beyond these a search would not get far, or need more memory than a desk has to spare. */
    private static final int MOST_PARTS = 2000;

    private static final int MOST_CORNERS = 400;
    private static final int MOST_CONVEX = 1000;

    final long width;
    /** Variant numbers of each part. */
    final int[][] variants;
    /** Parts with equal numbers are alike. */
    final int[] kind;

    final double[] area;
    final double[] minX;
    final double[] minY;
    final double[] maxX;
    final double[] maxY;
    /** Least and greatest x at which a variant lies on the cloth. */
    final double[] fromX;

    final double[] toX;
    final NoFits noFits;
    final List<Part> parts;
    /** The variant of each part that is lowest. */
    final int[] lowest;
    /** No layout of the outlines searched with is shorter than the tallest part in its lowest variant. */
    final double tallest;

    private final List<List<long[][]>> convex;

    private Bed(List<Part> parts, long width, double tolerance) {
        this.parts = List.copyOf(parts);
        this.width = width;
        List<Shape> shapes = new ArrayList<>();
        List<Boolean> atFold = new ArrayList<>();
        Map<Integer, int[]> byKind = new HashMap<>();
        variants = new int[parts.size()][];
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
                    shapes.add(outline(part.variants().get(v).exact(), tolerance));
                    atFold.add(part.atFold());
                }
                return numbers;
            });
        }
        minX = shapes.stream().mapToDouble(s -> s.minX).toArray();
        minY = shapes.stream().mapToDouble(s -> s.minY).toArray();
        maxX = shapes.stream().mapToDouble(s -> s.maxX).toArray();
        maxY = shapes.stream().mapToDouble(s -> s.maxY).toArray();
        fromX = new double[shapes.size()];
        toX = new double[shapes.size()];
        for (int v = 0; v < fromX.length; v++) {
            fromX[v] = atFold.get(v) ? 0 : -minX[v];
            toX[v] = atFold.get(v) ? 0 : width - maxX[v];
        }
        convex = shapes.stream().allMatch(s -> s.corners() <= MOST_CORNERS)
                ? shapes.stream().map(Convex::parts).toList()
                : List.of();
        noFits = new NoFits(convex);
        lowest = Arrays.stream(variants)
                .mapToInt(own -> Arrays.stream(own)
                        .boxed()
                        .min(Comparator.comparingDouble(this::height))
                        .orElseThrow())
                .toArray();
        tallest = Arrays.stream(lowest).mapToDouble(this::height).max().orElseThrow();
    }

    /**
     * Empty where a search would not get far, or could not tell touching from overlapping.
     *
     * @param tolerance outlines with many corners are searched with by enclosing ones, nowhere farther off than this
     */
    static Optional<Bed> of(List<Part> parts, long width, double tolerance) {
        if (parts.size() > MOST_PARTS) {
            return Optional.empty();
        }
        Bed bed = new Bed(parts, width, tolerance);
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

    private double height(int v) {
        return maxY[v] - minY[v];
    }

    /** The variant itself, or the part's lowest where it is taller than the length. */
    int within(int i, int v, double length) {
        return height(v) <= length ? v : lowest[i];
    }

    /** Parts of at least this share of the largest area. */
    List<Integer> large(double share) {
        double largest = Arrays.stream(area).max().orElseThrow();
        return IntStream.range(0, parts())
                .filter(i -> area[i] >= share * largest)
                .boxed()
                .toList();
    }

    private Shape outline(Shape exact, double tolerance) {
        Shape enclosing = exact.corners() <= MANY ? exact : Enclosing.of(exact, tolerance);
        return enclosing.width() <= width ? enclosing : exact;
    }

    int parts() {
        return variants.length;
    }
}
