package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

    /** The last bit above the lower edge runs square to it, so that the sewn end and its allowance lie flat. */
    static final double SQUARE_END = 8;

    /** The same of a flare, which comes in upright. */
    static final double LEVEL_END = 2;

    private static final int THROAT_ROUNDS = 12;

    private final LegLine line;
    private final Frame frame;
    private final Shifts shifts;
    private final double[] height;
    private final double[] width;
    private final double[] noTighter;
    private final InseamStops stops;
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
        stops = new InseamStops(line, height, Inseams.most(firstInterval()));
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
     * @param side -1 for the front, 1 for the back
     * @param share of the crotch extension that lies in front
     */
    Inseam side(int side, double crotchWidth, double share) {
        double middle = frame.crotchMiddle(crotchWidth, share);
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
        double shift = side * middle / 2;
        return new Inseam(
                side,
                stops,
                new ShapeCurve(y, out, d),
                lower(new double[] {y[n], out[n], d[n]}, shift),
                line.flare()
                        .map(f -> new FlareCurve(
                                line.narrow().height(),
                                f.height() + LEVEL_END,
                                narrowHalf + shift,
                                f.width() / 2 + shift)));
    }

    /** From the last level down to the narrow, or to the lower edge. */
    private ShapeCurve lower(double[] last, double shift) {
        List<double[]> nodes = new ArrayList<>();
        nodes.add(last);
        double level = line.narrow().height() + (line.flare().isPresent() ? 0 : SQUARE_END);
        nodes.add(new double[] {level, narrowHalf + shift, 0});
        if (line.flare().isEmpty()) {
            nodes.add(new double[] {endHeight(), endWidth() / 2 + shift, 0});
        }
        return new ShapeCurve(column(nodes, 0), column(nodes, 1), column(nodes, 2));
    }

    private static double[] column(List<double[]> rows, int k) {
        return rows.stream().mapToDouble(r -> r[k]).toArray();
    }
}
