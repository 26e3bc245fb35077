package stretchwright.print.sheets;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Unit;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Writing;

/** One piece drawn in its own coordinates, true to scale: lines, notches, grain, marks, names and label. */
public final class PieceDrawing {
    /** Ticks of a double notch, mm apart. */
    static final double NOTCH_GAP = 4;

    private static final double NOTCH_LENGTH = 5;
    private static final double SMALL = 2.8;
    private static final double HEAD = 4;

    /** Where along an edge its name is written: at the first of these shares that is free. */
    private static final List<Double> EDGE_NAMES = List.of(0.35, 0.39, 0.31, 0.43, 0.27, 0.47, 0.23, 0.55, 0.65);

    private static final double BESIDE_NAME = 5;

    /** Where along the grain line its words stand: at the first of these shares that is free. */
    private static final List<Double> MIDDLES =
            List.of(0.5, 0.47, 0.53, 0.44, 0.56, 0.41, 0.59, 0.38, 0.62, 0.33, 0.67, 0.27, 0.73);

    private final Piece piece;
    private final String around;
    private final Canvas drawing;

    private PieceDrawing(Piece piece, String around, Canvas drawing) {
        this.drawing = drawing;
        this.piece = piece;
        this.around = around;
    }

    static Drawing of(Job job, Piece piece) {
        Drawing drawing = new Drawing();
        lines(piece, drawing);
        words(piece, job.around(), Optional.of(job.unit()), drawing);
        around(piece, LaidCloth.most(job.fabric()), new Motion(0, Point.ORIGIN), drawing, PieceLabel.words(job, piece));
        return drawing;
    }

    /** FRONT and BACK, the arrow of the stretch around, and the label; on a small piece the label comes first. */
    static void around(Piece piece, String stretch, Motion motion, Drawing drawing, List<String> label) {
        FrontAndBack large = new FrontAndBack(piece, motion, drawing);
        Polygon inside = new Polygon(motion.apply(piece.sewLine().points()));
        boolean leg = piece.name().kind().isOfLeg();
        large.words();
        if (leg) {
            large.arrow(stretch);
        }
        PieceLabel.draw(label, inside, drawing);
        if (!leg) {
            large.arrow(stretch);
        }
    }

    /** What differs from size to size: outline, notches and marks, without a word. */
    static void lines(Piece piece, Canvas canvas) {
        PieceDrawing d = new PieceDrawing(piece, "", canvas);
        d.outline();
        piece.notches().forEach(d::notch);
        piece.marks().forEach(d::mark);
    }

    /**
     * What is said on a piece, with fold and grain.
     *
     * @param unit that widths are told in; empty where several sizes lie over each other
     */
    static void words(Piece piece, String around, Optional<Unit> unit, Canvas canvas) {
        PieceDrawing d = new PieceDrawing(piece, around, canvas);
        d.fold();
        piece.notches().forEach(d::nameNotch);
        d.grain(piece.grain().from(), piece.grain().to());
        piece.marks().forEach(new MarkWords(piece, unit, canvas)::name);
        piece.edges().forEach(d::edgeName);
    }

    /** The cut line without the fold: along a fold nothing is cut. */
    public static List<List<Point>> cutRuns(Piece piece) {
        return Folded.fold(piece).isPresent()
                ? Folded.runs(piece, piece.cutLine())
                : List.of(piece.cutLine().points());
    }

    private static boolean onFold(Point a, Point b) {
        return a.x() == 0 && b.x() == 0;
    }

    private void outline() {
        List<List<Point>> runs = cutRuns(piece);
        boolean closed = runs.size() == 1
                && runs.get(0).size() == piece.cutLine().points().size()
                && !piece.onFold();
        runs.forEach(run -> drawing.line(Ink.CUT, run, closed));
        drawing.line(Ink.SEW, piece.sewLine().points(), true);
    }

    private void fold() {
        for (Edge edge : piece.edges()) {
            Point a = edge.line().start();
            Point b = edge.line().end();
            if (piece.onFold() && onFold(a, b)) {
                fold(Math.min(a.y(), b.y()), Math.max(a.y(), b.y()));
            }
        }
    }

    private void fold(double low, double high) {
        double inset = 9;
        double quarter = (high - low) / 4;
        Point foot = new Point(inset, low + quarter / 2);
        Point head = new Point(inset, high - quarter / 2);
        drawing.line(Ink.FOLD, new Point(0, low), new Point(0, high));
        drawing.line(Ink.GRAIN, foot, head);
        arrow(foot, new Point(1, foot.y()));
        arrow(head, new Point(1, head.y()));
        along(foot, head, -1, Phrases.of("piece.on-fold"));
    }

    private void notch(Notch notch) {
        double allowance = piece.edge(notch.edge()).allowance();
        Point edge = notch.at().plus(notch.outward().times(allowance));
        // a tick that reached the sew line would be a hole in the seam
        double depth = Math.min(NOTCH_LENGTH, Math.max(1, allowance - 1));
        Point aside = notch.outward().left().times(notch.mark() == Notch.Mark.DOUBLE ? NOTCH_GAP / 2 : 0);
        tick(edge.plus(aside), notch.outward(), depth);
        if (notch.mark() == Notch.Mark.DOUBLE) {
            tick(edge.minus(aside), notch.outward(), depth);
        }
    }

    private void tick(Point from, Point outward, double depth) {
        drawing.line(Ink.NOTCH, from, from.minus(outward.times(depth)));
    }

    private void nameNotch(Notch notch) {
        Point in = notch.at()
                .minus(notch.outward().times(2))
                .plus(notch.outward().left().times(notch.outward().x() >= 0 ? -2.6 : 2.6));
        Writing.Align align = notch.outward().x() >= 0 ? Writing.Align.END : Writing.Align.START;
        double degrees = Math.toDegrees(
                StrictMath.atan2(notch.outward().y(), notch.outward().x()));
        double leaning = notch.outward().x() >= 0 ? degrees : degrees - 180;
        double upright = isBesideLine(notch.at()) ? 0 : leaning;
        Point lowered = in.plus(new Point(0, -0.35 * SMALL).turned(upright));
        drawing.text(new Writing(
                Ink.NOTCH,
                lowered,
                upright,
                SMALL,
                align,
                Phrases.said(notch.name().said())));
    }

    /** Where a line inside ends at a notch the notch's name stands level, below the line. */
    private boolean isBesideLine(Point at) {
        return piece.marks().stream()
                .filter(m -> m.kind() == Mark.Kind.LEVEL)
                .map(Mark::line)
                .anyMatch(l -> l.start().distance(at) < BESIDE_NAME || l.end().distance(at) < BESIDE_NAME);
    }

    private void grain(Point from, Point to) {
        arrow(from, to);
        arrow(to, from);
        drawing.line(Ink.GRAIN, from, to);
        String all = Phrases.of("piece.grain-around", around);
        if (Letters.width(all, SMALL) < 0.8 * from.distance(to)) {
            along(from, to, 1, all);
        } else {
            along(from, to, 1, Phrases.of("piece.grain"));
            along(from, to, -1, around);
        }
    }

    /** Lettering along a line, on its left (1) or right (-1), made smaller where the line is short. */
    private void along(Point from, Point to, int side, String words) {
        double room = 0.9 * from.distance(to);
        double size = Math.min(3.5, 3.5 * room / Letters.width(words, 3.5));
        Point direction = to.minus(from).unit();
        double away = side > 0 ? 1.2 : 1.2 + 0.75 * size;
        Point at = from.towards(to, free(from, to, Letters.width(words, size)))
                .plus(direction.left().times(side * away));
        double degrees = Math.toDegrees(StrictMath.atan2(direction.y(), direction.x()));
        drawing.text(new Writing(Ink.GRAIN, at, degrees, size, Writing.Align.MIDDLE, words));
    }

    /** Where between two points words as long as that stand clear of the lines across: as near to the middle as they can. */
    private double free(Point from, Point to, double width) {
        double near = width / 2 + 1;
        return MIDDLES.stream()
                .filter(share -> width < 2 * Math.min(share, 1 - share) * from.distance(to))
                .filter(share -> piece.marks().stream()
                        .filter(m -> m.kind() == Mark.Kind.LEVEL)
                        .noneMatch(m -> Math.abs(m.line().start().y()
                                        - from.towards(to, share).y())
                                < near))
                .findFirst()
                .orElse(0.5);
    }

    /** A head at the second point. */
    private void arrow(Point from, Point tip) {
        Point back = from.minus(tip).unit().times(Math.min(HEAD, from.distance(tip) / 3));
        Point wide = back.left().times(0.35);
        drawing.line(Ink.GRAIN, tip.plus(back).plus(wide), tip, tip.plus(back).minus(wide));
        drawing.line(Ink.GRAIN, from, tip);
    }

    private void mark(Mark mark) {
        drawing.line(
                mark.kind() == Mark.Kind.FOLD ? Ink.FOLD : Ink.MARK, mark.line().points(), false);
    }

    private void edgeName(Edge edge) {
        if (piece.onFold()
                && edge.allowance() == 0
                && edge.line().start().x() == 0
                && edge.line().end().x() == 0) {
            return;
        }
        String name = Phrases.said(edge.name().said());
        double width = Letters.width(name, SMALL);
        if (edge.length() < 1.5 * width) {
            return;
        }
        double along = edge.length()
                * EDGE_NAMES.stream()
                        .filter(share -> isFree(edge, edge.length() * share, width / 2 + BESIDE_NAME))
                        .findFirst()
                        .orElse(EDGE_NAMES.get(0));
        Point direction = edge.line().directionAt(along);
        boolean upright = direction.x() > 1e-9 || (Math.abs(direction.x()) <= 1e-9 && direction.y() > 0);
        double degrees = Math.toDegrees(StrictMath.atan2(direction.y(), direction.x()));
        double inside = upright ? 2.2 : 2.2 + 0.75 * SMALL;
        Point at = edge.line().at(along).plus(direction.left().times(inside));
        drawing.text(new Writing(Ink.SEW, at, upright ? degrees : degrees - 180, SMALL, Writing.Align.MIDDLE, name));
    }

    /** Whether neither a notch nor the end of a line inside lies so near to a place on an edge. */
    private boolean isFree(Edge edge, double along, double near) {
        Point at = edge.line().at(along);
        return piece.notches().stream()
                        .filter(n -> n.edge() == edge.name())
                        .noneMatch(n -> Math.abs(n.along() - along) < near)
                && piece.marks().stream()
                        .map(Mark::line)
                        .noneMatch(l -> l.start().distance(at) < near || l.end().distance(at) < near);
    }
}
