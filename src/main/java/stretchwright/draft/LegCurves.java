package stretchwright.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Level;

/**
 * The two inseams. Below the knee the leg is even about a line that lies half as far off x = 0 as the crotch line's
 * middle; from the knee up that line leans over to it, so that the leg hangs straight.
 */
final class LegCurves {
    /** Slopes must differ by this much at the mid-thigh, the knee and the calf, so that the inseam stays a curve. */
    private static final double MARGIN = 0.12;

    /** Chords of the inseam; at a radius of 500 mm a chord of 6 mm leaves the curve by 0.01 mm. */
    private static final double STEP = 6;

    /** The last bit above the lower edge runs square to it, so that the sewn end and its allowance lie flat. */
    private static final double SQUARE_END = 8;

    private static final int THROAT_ROUNDS = 12;

    private final LegLine line;
    private final double[] height;
    private final double[] half;
    private final double[] centre;
    private final double narrowHalf;

    /** @param steepest the most that the leg's width may grow per mm of height at the crotch line */
    LegCurves(LegLine line, Frame frame, Holding holding, double steepest) {
        this.line = line;
        int n = line.leg().size();
        height = line.leg().stream().mapToDouble(Node::height).toArray();
        double[] wanted = line.leg().stream().mapToDouble(Node::width).toArray();
        boolean[] firm = new boolean[n];
        for (int i = 0; i < n; i++) {
            firm[i] = line.leg().get(i).firm();
        }
        int knee = kneeIndex();
        double middle = frame.crotchMiddle(wanted[0]);
        double lean = middle / 2 / (height[0] - height[knee]);
        double[] margin = new double[Math.max(0, n - 2)];
        for (int i = 0; i < n - 2; i++) {
            margin[i] = MARGIN + (i + 1 == knee ? 2 * lean : 0);
        }
        double[] width = wanted.clone();
        double[] least = least(holding);
        double drop = 0;
        double turn = line.turn() - (line.flare().isPresent() ? 0 : SQUARE_END);
        for (int round = 0; round < THROAT_ROUNDS; round++) {
            wanted[n - 1] = line.narrow().width() + 2 * drop;
            least[n - 1] = wanted[n - 1];
            width = ValleyFit.fit(height, wanted, least, firm, Math.min(knee, n - 2), margin, steepest);
            drop = turn * throatSlope(width) / 4;
        }
        half = new double[n];
        centre = new double[n];
        middle = frame.crotchMiddle(width[0]);
        for (int i = 0; i < n; i++) {
            half[i] = width[i] / 2;
            double up = Math.max(0, (height[i] - height[knee]) / (height[0] - height[knee]));
            centre[i] = middle / 2 * (1 + up);
        }
        narrowHalf = half[n - 1] - drop;
    }

    /**
     * What pose, comfort and the blood's way back allow. The thigh is held against the calf as planned: against the calf as it
     * becomes, a calf that the curve widens would widen the thigh, and that again the calf.
     */
    private double[] least(Holding holding) {
        double[] least = new double[height.length];
        OptionalDouble calf = OptionalDouble.empty();
        for (int i = height.length - 1; i >= 0; i--) {
            Node node = line.leg().get(i);
            if (node.level() == null || node.firm()) {
                continue;
            }
            least[i] = holding.at(node.level()).least();
            if (node.level() == Level.Name.CALF) {
                calf = OptionalDouble.of(node.width());
            } else if (node.level() == Level.Name.MID_THIGH || node.level() == Level.Name.CROTCH) {
                double narrowest =
                        holding.narrowestThigh(node.level(), calf, line.narrow().width());
                least[i] = Math.max(least[i], narrowest);
            }
        }
        return least;
    }

    /** Where the middle line stops leaning: the knee, or the lower end of a leg that ends above it. */
    private int kneeIndex() {
        for (int i = 0; i < line.leg().size(); i++) {
            if (line.leg().get(i).level() == Level.Name.KNEE) {
                return i;
            }
        }
        return line.leg().size() - 1;
    }

    /** Narrowing per mm at the throat: the parabola through the chord above it, so that it bends the same way. */
    private double throatSlope(double[] width) {
        double[] d = ShapeCurve.slopes(height, width);
        return d[d.length - 1];
    }

    /** Height from the crotch line down to the next level. */
    double firstInterval() {
        return height[0] - height[1];
    }

    /** How fast the leg's width grows per mm of height at the crotch line. */
    double steepness() {
        double[] width = Arrays.stream(half).map(h -> 2 * h).toArray();
        return ShapeCurve.slopes(height, width)[0];
    }

    double crotchWidth() {
        return 2 * half[0];
    }

    double narrowWidth() {
        return 2 * narrowHalf;
    }

    double endWidth() {
        return line.flare().map(Node::width).orElse(narrowWidth());
    }

    double endHeight() {
        return line.flare().orElse(line.narrow()).height();
    }

    /** Middle of the leg below the knee. */
    double lowerCentre() {
        return centre[centre.length - 1];
    }

    /** One side from the crotch point down to the lower edge; side -1 is the front, 1 the back. */
    Path inseam(int side, double drop) {
        Side s = new Side(side, drop);
        List<Point> points = new ArrayList<>();
        for (double y : heights(drop)) {
            points.add(s.at(y));
        }
        return new Path(points);
    }

    /** How fast the side runs outwards going up, at the crotch point: dx/dy, positive outwards. */
    double flareAtCrotch(int side, double drop) {
        return new Side(side, drop).upper.slopeAtTop();
    }

    /** Half-width of one side measured from x = 0, as a curve over the height. */
    private final class Side {
        final int side;
        final ShapeCurve upper;
        final ShapeCurve lower;

        Side(int side, double drop) {
            this.side = side;
            int n = height.length;
            double[] y = height.clone();
            y[0] -= drop;
            double[] out = new double[n];
            for (int i = 0; i < n; i++) {
                out[i] = half[i] + side * centre[i];
            }
            double[] d = ShapeCurve.slopes(y, out);
            upper = new ShapeCurve(y, out, d);
            double shift = side * lowerCentre();
            Node narrow = line.narrow();
            List<double[]> nodes = new ArrayList<>();
            nodes.add(new double[] {y[n - 1], out[n - 1], d[n - 1]});
            double level = narrow.height() + (line.flare().isPresent() ? 0 : SQUARE_END);
            nodes.add(new double[] {level, narrowHalf + shift, 0});
            line.flare().ifPresent(f -> nodes.add(new double[] {f.height() + SQUARE_END, f.width() / 2 + shift, 0}));
            nodes.add(new double[] {endHeight(), endWidth() / 2 + shift, 0});
            lower = new ShapeCurve(column(nodes, 0), column(nodes, 1), column(nodes, 2));
        }

        Point at(double y) {
            double throat = height[height.length - 1];
            return new Point(side * (y >= throat ? upper.at(y) : lower.at(y)), y);
        }
    }

    private static double[] column(List<double[]> rows, int k) {
        return rows.stream().mapToDouble(r -> r[k]).toArray();
    }

    /** Where the inseam is sampled, from the top down: every node, and evenly between. */
    private List<Double> heights(double drop) {
        TreeSet<Double> stops = new TreeSet<>();
        for (int i = 1; i < height.length; i++) {
            stops.add(height[i]);
        }
        double top = height[0] - drop;
        stops.add(top);
        stops.add(line.narrow().height());
        stops.add(endHeight() + SQUARE_END);
        stops.add(endHeight());
        List<Double> out = new ArrayList<>();
        Double above = null;
        for (double stop : stops.descendingSet()) {
            if (above != null) {
                int parts = (int) Math.ceil((above - stop) / STEP);
                for (int i = 1; i < parts; i++) {
                    out.add(above + (stop - above) * i / parts);
                }
            }
            out.add(stop);
            above = stop;
        }
        return out;
    }
}
