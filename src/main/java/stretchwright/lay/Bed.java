package stretchwright.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    private final int mostCorners;
    final NoFits noFits;
    final List<Part> parts;
    /** No layout is shorter than its tallest part in its lowest variant. */
    final double tallest;

    /** @param tolerance outlines with many corners are searched with by enclosing ones, nowhere farther off than this */
    Bed(List<Part> parts, long width, double tolerance) {
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
        mostCorners = shapes.stream().mapToInt(Shape::corners).max().orElse(0);
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
        noFits = new NoFits(shapes);
        tallest = Arrays.stream(variants)
                .mapToDouble(own -> Arrays.stream(own)
                        .mapToDouble(v -> maxY[v] - minY[v])
                        .min()
                        .orElseThrow())
                .max()
                .orElseThrow();
    }

    /** Corners of the outline with most of them. */
    int mostCorners() {
        return mostCorners;
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
