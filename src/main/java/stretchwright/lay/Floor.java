package stretchwright.lay;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import stretchwright.lay.nest.Outline;
import stretchwright.lay.nest.Sections;
import stretchwright.lay.nest.Shape;

/**
 * A length that no lay of these cuttings on this width can go below; every bound is proved in docs/maths/lay.md.
 *
 * <p>The largest of: the tallest piece; what lines across the cloth can hold (area is one of these; pieces too wide to
 * lie side by side another); what lines along the cloth can hold; what must lie beside or above the pieces at the
 * fold. All of them read only the lengths of a piece's sections, which mirroring and half a turn do not change.
 */
final class Floor {
    /** Rounding of the double sums, generously; taken off every bound. */
    private static final double ROUNDING = 1e-9;
    /** The same in units, before rounding up to a whole one (the length of a lay is a whole number of units). */
    private static final double NEAR = 1e-3;
    /** Rules of each kind by which a line is shared out; more hardly raise the bound. */
    private static final int RULES = 8;
    /** Lengths tried for the bound along the cloth, from all pieces above each other down to what is proved. */
    private static final int TRIALS = 64;

    private static final int HALVINGS = 12;
    /** Columns of a piece compared with the pieces at the fold. */
    static final int COLUMNS = 48;

    /** Rounding of a tilted outline to whole units takes off no more than this at an edge, in units. */
    private static final double EDGE = 0.71;

    private Floor() {}

    /**
     * @param tilt how far the grain may stand off the selvage, degrees
     * @return in units
     */
    static long under(List<Cut> cuts, long width, double tilt) {
        return under(cuts, width, tilt, () -> false);
    }

    /** @param stop cuts it short: what is proved until then holds */
    static long under(List<Cut> cuts, long width, double tilt, BooleanSupplier stop) {
        return tilt == 0 ? straight(cuts, width, stop) : tilted(cuts, width, Math.toRadians(tilt));
    }

    /** Sections change with the tilt; the area does not, nor much how far two corners of a piece lie from each other along the cloth. */
    private static long tilted(List<Cut> cuts, long width, double tilt) {
        double area = 0;
        double tallest = 0;
        for (Cut cut : cuts) {
            Shape shape = Shape.of(cut.outline());
            area += shape.area() - EDGE * Outline.around(shape);
            tallest = Math.max(tallest, cut.atFold() ? shape.height() : Outline.reach(shape, tilt) - 2 * EDGE);
        }
        return (long) Math.ceil(Math.max(area / width, tallest) * (1 - ROUNDING) - NEAR);
    }

    private static long straight(List<Cut> cuts, long width, BooleanSupplier stop) {
        List<Shape> shapes = cuts.stream().map(c -> Shape.of(c.outline())).toList();
        List<Sections> across =
                shapes.stream().map(s -> Sections.of(s.rows, s.y)).toList();
        List<Sections> along =
                shapes.stream().map(s -> Sections.of(s.columns, s.x)).toList();
        double proved = shapes.stream().mapToLong(Shape::height).max().orElseThrow();
        proved = Math.max(proved, taken(across, width) * (1 - ROUNDING));
        double stacked = shapes.stream().mapToLong(Shape::height).sum();
        proved = Math.max(proved, longestImpossible(along, width, proved, stacked, stop) * (1 - ROUNDING));
        proved = stop.getAsBoolean() ? proved : Math.max(proved, besideFold(cuts, shapes, width) * (1 - ROUNDING));
        return (long) Math.ceil(proved - NEAR);
    }

    /** The most sweep length that all sections together take of lines of this length, over all rules. */
    private static double taken(List<Sections> all, double line) {
        double most = 0;
        for (int k = 0; k <= RULES; k++) {
            double least = line * k / (2 * RULES);
            most = Math.max(
                    most,
                    all.stream()
                            .mapToDouble(s -> s.takenLeavingOut(least, line))
                            .sum());
        }
        for (int k = 1; k <= RULES; k++) {
            int steps = k;
            most = Math.max(
                    most,
                    all.stream().mapToDouble(s -> s.takenInSteps(steps, line)).sum());
        }
        return most;
    }

    /**
     * The longest length found at which the lines along the cloth are too short for the pieces: more of the width is
     * taken than there is. No lay of that length exists, and so none shorter.
     */
    private static double longestImpossible(
            List<Sections> along, long width, double proved, double stacked, BooleanSupplier stop) {
        double longest = proved;
        double next = stacked;
        for (int k = TRIALS; k > 0 && next == stacked && !stop.getAsBoolean(); k--) {
            double length = proved + (stacked - proved) * (k - 1) / TRIALS;
            if (impossible(along, width, length)) {
                longest = length;
                next = proved + (stacked - proved) * k / TRIALS;
            }
        }
        for (int k = 0; k < HALVINGS && longest > proved && !stop.getAsBoolean(); k++) {
            double middle = (longest + next) / 2;
            if (impossible(along, width, middle)) {
                longest = middle;
            } else {
                next = middle;
            }
        }
        return longest;
    }

    private static boolean impossible(List<Sections> along, long width, double length) {
        return taken(along, length) > width * (1 + ROUNDING);
    }

    /** Some column of the cloth holds the pieces at the fold and part of any other piece, wherever that lies. */
    private static double besideFold(List<Cut> cuts, List<Shape> shapes, long width) {
        double[] atFold = new double[(int) width];
        for (int i = 0; i < cuts.size(); i++) {
            for (int x = 0; cuts.get(i).atFold() && x < Math.min(width, shapes.get(i).maxX); x++) {
                atFold[x] += shapes.get(i).columns.section(x + 0.5);
            }
        }
        double most = Arrays.stream(atFold).max().orElse(0);
        for (int i = 0; i < cuts.size(); i++) {
            if (!cuts.get(i).atFold()) {
                most = Math.max(most, leastBeside(atFold, shapes.get(i)));
            }
        }
        return most;
    }

    /**
     * Over all places across and both turns of a shape, the least of the fullest column. The column that was too full at the
     * place before is mostly too full here as well, so it is asked first.
     */
    static double leastBeside(double[] atFold, Shape shape) {
        int[] column = new int[COLUMNS];
        int[] mirrored = new int[COLUMNS];
        double[] section = new double[COLUMNS];
        int widest = Math.toIntExact(shape.width());
        for (int c = 0; c < COLUMNS; c++) {
            column[c] = Math.toIntExact(shape.width() * c / COLUMNS);
            mirrored[c] = widest - 1 - column[c];
            section[c] = shape.columns.section(shape.minX + column[c] + 0.5);
        }
        double least = Double.POSITIVE_INFINITY;
        int full = 0;
        int fullTurned = 0;
        for (int left = 0; left + widest <= atFold.length; left++) {
            if (section[full] + atFold[left + column[full]] < least) {
                full = fullest(section, atFold, left, column);
                least = Math.min(least, section[full] + atFold[left + column[full]]);
            }
            if (section[fullTurned] + atFold[left + mirrored[fullTurned]] < least) {
                fullTurned = fullest(section, atFold, left, mirrored);
                least = Math.min(least, section[fullTurned] + atFold[left + mirrored[fullTurned]]);
            }
        }
        return Double.isInfinite(least) ? 0 : least;
    }

    private static int fullest(double[] section, double[] atFold, int left, int[] column) {
        int fullest = 0;
        for (int c = 1; c < COLUMNS; c++) {
            if (section[c] + atFold[left + column[c]] > section[fullest] + atFold[left + column[fullest]]) {
                fullest = c;
            }
        }
        return fullest;
    }
}
