package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;

/**
 * The widths of a leg from the seat fold down, made even, and the inseams they give with a crotch line of some width above
 * them. Below the knee the leg is even about a line that lies half as far off x = 0 as the crotch line's middle; from the
 * knee up that line leans over to it, so that the leg hangs straight.
 */
final class LegCurves {
    /** Slopes must differ by this much at the mid-thigh, the knee and the calf, so that the inseam stays a curve. */
    private static final double MARGIN = 0.06;

    /**
     * Where a pressure is planned, the leg may narrow faster below the mid-thigh than above it, as most thighs do: by so much of
     * slope, 6 degrees on either inseam (no source: docs/maths/draft.md, the leg).
     */
    private static final double BELLY = 0.2;

    /** Above the fold the leg grows on to the crotch line so many times as fast as it does at the fold (no source: docs/maths/draft.md). */
    private static final double GROWS_ON = 1.25;

    /** And by at most this share of the thigh (no source: as in the girth profile). */
    private static final double MOST_GROWTH = 0.05;

    /** Chords of the inseam; at a radius of 500 mm a chord of 6 mm leaves the curve by 0.01 mm. */
    private static final double STEP = 6;

    /** In the flare, which may bend with 60 mm. */
    private static final double FLARE_STEP = 3;

    /** And down from its upper end, where it bends most. */
    private static final double FINE = 1.5;

    private static final double FINE_BELOW = 12;

    /** The last bit above the lower edge runs square to it, so that the sewn end and its allowance lie flat. */
    private static final double SQUARE_END = 8;

    /** The same of a flare, which comes in upright. */
    private static final double LEVEL_END = 2;

    private static final int THROAT_ROUNDS = 12;

    private final LegLine line;
    private final Frame frame;
    private final Shifts shifts;
    private final double[] height;
    private final double[] width;
    private final double[] noTighter;
    private final double narrowHalf;
    private final boolean roomy;

    /** How fast one edge runs out at the throat, going up; with it the turn below is a parabola. */
    private final double intoTurn;

    /**
     * @param thigh the leg is at least so wide at the fold, mm
     */
    LegCurves(LegLine line, Frame frame, Order order, double thigh) {
        this.line = line;
        this.frame = frame;
        this.shifts = order.moves().shifts();
        this.roomy = thigh > 0;
        Holding holding = order.holding();
        int n = line.leg().size();
        noTighter = new double[n];
        height = line.leg().stream().mapToDouble(Node::height).toArray();
        double[] wanted = line.leg().stream().mapToDouble(Node::width).toArray();
        wanted[0] = Math.max(wanted[0], thigh);
        boolean[] firm = new boolean[n];
        for (int i = 0; i < n; i++) {
            firm[i] = line.leg().get(i).firm();
        }
        int knee = kneeIndex();
        double lean = frame.crotchMiddle(wanted[0] * (1 + MOST_GROWTH), Frame.FRONT_EXTENSION_SHARE)
                / 2
                / (line.crotch() - height[knee]);
        double[] margin = new double[Math.max(0, n - 2)];
        for (int i = 0; i < n - 2; i++) {
            margin[i] = bellied(holding, line.leg().get(i + 1)) ? -BELLY : MARGIN + (i + 1 == knee ? 2 * lean : 0);
        }
        double[] even = wanted.clone();
        double[] least = least(holding);
        least[0] = Math.max(least[0], thigh);
        // steeper, the crotch line would not be wide enough for the curve to go on bending outwards
        double steepest = MOST_GROWTH * wanted[0] / (GROWS_ON * foldBelow());
        double drop = 0;
        double throatSlope = 0;
        double turn = line.turn() - (line.flare().isPresent() ? 0 : SQUARE_END);
        for (int round = 0; round < THROAT_ROUNDS; round++) {
            wanted[n - 1] = line.narrow().width() + 2 * drop;
            least[n - 1] = wanted[n - 1];
            even = ValleyFit.fit(height, wanted, least, firm, Math.min(knee, n - 2), margin, steepest);
            throatSlope = ShapeCurve.evenSlopes(height, even, 1)[n - 1] / 2;
            drop = turn * throatSlope / 2;
        }
        width = even;
        double end = width[n - 1] / 2 - drop + line.wider() / 2;
        for (int round = 0; line.wider() != 0 && round < THROAT_ROUNDS; round++) {
            width[n - 1] = 2 * (end + turn * throatSlope / 2);
            throatSlope = ShapeCurve.evenSlopes(height, width, 1)[n - 1] / 2;
        }
        intoTurn = throatSlope;
        narrowHalf = end;
    }

    private static boolean bellied(Holding holding, Node node) {
        return node.level() == Level.Name.MID_THIGH
                && holding.at(node.level()).wanted().isPresent();
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
            if (node.level() == null || holding.at(node.level()).bound() == LevelHold.Bound.HARD) {
                continue;
            }
            least[i] = holding.at(node.level()).least();
            if (node.level() == Level.Name.CALF) {
                calf = OptionalDouble.of(node.width());
            } else if (node.level() == Level.Name.MID_THIGH || node.level() == Level.Name.CROTCH) {
                double narrowest =
                        holding.narrowestThigh(node.level(), calf, line.narrow().width());
                noTighter[i] = narrowest;
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

    /** Whether the thigh was cut wider for the room that the seat needs. */
    boolean isRoomy() {
        return roomy;
    }

    /** Whether the leg was cut so wide at a level that it presses no more than below it. */
    boolean isNoTighter(Level.Name level) {
        for (int i = 0; i < height.length; i++) {
            if (line.leg().get(i).level() == level) {
                return width[i] > line.leg().get(i).width() && width[i] <= noTighter[i] * (1 + Held.SAME);
            }
        }
        return false;
    }

    /** Width of the leg at the seat fold, mm. */
    double thighWidth() {
        return width[0];
    }

    /** The width that the leg grows to on the crotch line, mm. */
    double grown() {
        double slope = ShapeCurve.slopes(height, width)[0];
        return width[0] + Math.min(Math.max(0, GROWS_ON * slope * foldBelow()), MOST_GROWTH * width[0]);
    }

    /** By how much the leg was made wider at a level by hand, mm. */
    double moved(Level.Name level) {
        for (int i = 0; i < height.length; i++) {
            if (line.leg().get(i).level() == level) {
                return moved(i, -1) + moved(i, 1);
            }
        }
        return 0;
    }

    /** How far one edge is moved out at a node: by its own shift, and by that of the crotch point, down to nothing at the knee. */
    private double moved(int node, int side) {
        boolean front = side < 0;
        double crotchPoint = shifts.at(front ? Shift.FRONT_CROTCH_POINT : Shift.BACK_CROTCH_POINT);
        Level.Name level = line.leg().get(node).level();
        Optional<Shift> own = level == null ? Optional.empty() : front ? Shift.front(level) : Shift.back(level);
        return aboveKnee(node) * crotchPoint + own.map(shifts::at).orElse(0.0);
    }

    /** 1 at the crotch line, 0 at the knee and below. */
    private double aboveKnee(int node) {
        double knee = height[kneeIndex()];
        return Math.max(0, (height[node] - knee) / (line.crotch() - knee));
    }

    /** From the crotch line down to the fold, mm. */
    double foldBelow() {
        return line.crotch() - height[0];
    }

    /** From the crotch line down to the level below the fold, mm. */
    double firstInterval() {
        return line.crotch() - height[1];
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

    /**
     * The inseams under a crotch line of this width.
     *
     * @param share of the crotch extension that lies in front
     */
    Inseam side(int side, double crotchWidth, double share) {
        return new Inseam(side, crotchWidth, frame.crotchMiddle(crotchWidth, share));
    }

    /** One inseam: how far it lies out from x = 0 at each height. Side -1 is the front, 1 the back. */
    final class Inseam {
        private final int side;
        private final ShapeCurve upper;
        private final ShapeCurve lower;
        private final Optional<FlareCurve> flare;
        private @Nullable Tail tail;

        /** From a height down. */
        private record Tail(double top, double length) {}

        private Inseam(int side, double crotchWidth, double middle) {
            this.side = side;
            int n = height.length;
            double[] y = new double[n + 1];
            double[] out = new double[n + 1];
            y[0] = line.crotch();
            double crotchPoint = shifts.at(side < 0 ? Shift.FRONT_CROTCH_POINT : Shift.BACK_CROTCH_POINT);
            out[0] = crotchWidth / 2 + side * middle + crotchPoint;
            for (int i = 0; i < n; i++) {
                y[i + 1] = height[i];
                out[i + 1] = width[i] / 2 + side * middle / 2 * (1 + aboveKnee(i)) + moved(i, side);
            }
            double[] d = ShapeCurve.evenSlopes(y, out, 2, intoTurn);
            upper = new ShapeCurve(y, out, d);
            double shift = side * middle / 2;
            Node narrow = line.narrow();
            List<double[]> nodes = new ArrayList<>();
            nodes.add(new double[] {y[n], out[n], d[n]});
            double level = narrow.height() + (line.flare().isPresent() ? 0 : SQUARE_END);
            nodes.add(new double[] {level, narrowHalf + shift, 0});
            if (line.flare().isEmpty()) {
                nodes.add(new double[] {endHeight(), endWidth() / 2 + shift, 0});
            }
            flare = line.flare()
                    .map(f -> new FlareCurve(
                            narrow.height(), f.height() + LEVEL_END, narrowHalf + shift, f.width() / 2 + shift));
            lower = new ShapeCurve(column(nodes, 0), column(nodes, 1), column(nodes, 2));
        }

        /** How far out at a height, mm. */
        double out(double y) {
            if (y >= height[height.length - 1]) {
                return upper.at(y);
            }
            return y < line.narrow().height() && flare.isPresent() ? flare.get().at(y) : lower.at(y);
        }

        /** How fast it runs outwards going up: dx/dy, positive outwards. */
        double flare(double y) {
            return upper.slopeAt(y);
        }

        /** From so far below the crotch line down to the lower edge. */
        Path from(double below) {
            List<Point> points = new ArrayList<>();
            for (double y : heights(line.crotch() - below)) {
                points.add(point(y));
            }
            return new Path(points);
        }

        private Point point(double y) {
            return new Point(side * out(y), y);
        }

        /** Of {@link #from}: below the highest stop that no lowering reaches it is measured once. */
        double length(double below) {
            Tail rest = tail();
            Point last = null;
            double sum = 0;
            for (double y : heights(line.crotch() - below)) {
                if (y < rest.top()) {
                    break;
                }
                Point next = point(y);
                sum += last == null ? 0 : last.distance(next);
                last = next;
            }
            return sum + rest.length();
        }

        private Tail tail() {
            if (tail == null) {
                double low = line.crotch() - Inseams.most(LegCurves.this) - FINE_BELOW;
                double top = Double.NEGATIVE_INFINITY;
                for (double h : height) {
                    top = h <= Math.min(low, height[1]) ? Math.max(top, h) : top;
                }
                double from = top;
                double length = top == Double.NEGATIVE_INFINITY
                        ? 0
                        : new Path(heights(line.crotch()).stream()
                                        .filter(y -> y <= from)
                                        .map(this::point)
                                        .toList())
                                .length();
                tail = new Tail(top, length);
            }
            return tail;
        }
    }

    private static double[] column(List<double[]> rows, int k) {
        return rows.stream().mapToDouble(r -> r[k]).toArray();
    }

    /** Where the inseam is sampled, from the top down: every node, and evenly between. */
    private List<Double> heights(double top) {
        TreeSet<Double> stops = new TreeSet<>();
        for (double h : height) {
            stops.add(h);
        }
        stops.add(line.narrow().height());
        stops.add(endHeight() + (line.flare().isPresent() ? LEVEL_END : SQUARE_END));
        stops.add(endHeight());
        stops.removeIf(h -> h > top - FINE / 2);
        stops.add(top);
        if (height[0] > top - FINE_BELOW) {
            stops.add(top - FINE_BELOW);
        }
        List<Double> out = new ArrayList<>();
        Double above = null;
        for (double stop : stops.descendingSet()) {
            if (above != null) {
                boolean bends = above > Math.min(height[0], top - FINE_BELOW);
                boolean flares =
                        line.flare().isPresent() && above <= line.narrow().height();
                int parts = (int) Math.ceil((above - stop) / (bends ? FINE : flares ? FLARE_STEP : STEP));
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
