package stretchwright.print.sheets;

import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Writing;

/** One piece drawn in its own coordinates, true to scale: lines, notches, grain, marks, names and label. */
public final class PieceDrawing {
    /** Ticks of a double notch, mm apart. */
    static final double NOTCH_GAP = 4;

    private static final double NOTCH_LENGTH = 5;
    private static final double SMALL = 2.8;
    private static final double HEAD = 4;

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
        words(piece, job.around(), drawing);
        PieceLabel.draw(PieceLabel.words(job, piece), piece.sewLine(), drawing);
        return drawing;
    }

    /** What differs from size to size: outline, notches and marks, without a word. */
    static void lines(Piece piece, Canvas canvas) {
        PieceDrawing d = new PieceDrawing(piece, "", canvas);
        d.outline();
        piece.notches().forEach(d::notch);
        piece.marks().forEach(d::mark);
    }

    /** What is said on a piece, with fold and grain. */
    static void words(Piece piece, String around, Canvas canvas) {
        PieceDrawing d = new PieceDrawing(piece, around, canvas);
        d.fold();
        piece.notches().forEach(d::nameNotch);
        d.grain(piece.grain().from(), piece.grain().to());
        piece.marks().forEach(d::nameMark);
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
        double upright = notch.outward().x() >= 0 ? degrees : degrees - 180;
        Point lowered = in.plus(new Point(0, -0.35 * SMALL).turned(upright));
        drawing.text(new Writing(
                Ink.NOTCH,
                lowered,
                upright,
                SMALL,
                align,
                Phrases.said(notch.name().said())));
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
        Point at = from.towards(to, 0.5).plus(direction.left().times(side * away));
        double degrees = Math.toDegrees(StrictMath.atan2(direction.y(), direction.x()));
        drawing.text(new Writing(Ink.GRAIN, at, degrees, size, Writing.Align.MIDDLE, words));
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

    private void nameMark(Mark mark) {
        if (mark.kind() == Mark.Kind.PLACEMENT) {
            placement(mark);
            return;
        }
        Path line = mark.line();
        Point a = line.start().x() <= line.end().x() ? line.start() : line.end();
        Point b = line.start().x() <= line.end().x() ? line.end() : line.start();
        double length = a.distance(b);
        double share = Math.min(0.3, 26 / Math.max(length, 26));
        Point direction = b.minus(a).unit();
        Point at = a.towards(b, share).plus(direction.left().times(1.2));
        double degrees = Math.toDegrees(StrictMath.atan2(direction.y(), direction.x()));
        drawing.text(new Writing(
                Ink.MARK,
                at,
                degrees,
                SMALL,
                Writing.Align.START,
                Phrases.said(mark.name().said())));
    }

    /** The name in the upper left corner of the outline, below its opening. */
    private void placement(Mark mark) {
        Box box = Box.around(mark.line().points());
        String name = Phrases.said(mark.name().said());
        String words = mark.name().isPocket() ? Phrases.of("piece.pocket", name) : name;
        double size = Math.min(SMALL, SMALL * 0.9 * box.width() / Letters.width(words, SMALL));
        Point at = new Point(box.minX() + 2, box.maxY() - 2 - size);
        drawing.text(new Writing(Ink.MARK, at, 0, size, Writing.Align.START, words));
    }

    private void edgeName(Edge edge) {
        if (piece.onFold()
                && edge.allowance() == 0
                && edge.line().start().x() == 0
                && edge.line().end().x() == 0) {
            return;
        }
        double share = 0.35;
        double along = edge.length() * share;
        String name = Phrases.said(edge.name().said());
        if (edge.length() < 1.5 * Letters.width(name, SMALL)) {
            return;
        }
        Point direction = edge.line().directionAt(along);
        boolean upright = direction.x() > 1e-9 || (Math.abs(direction.x()) <= 1e-9 && direction.y() > 0);
        double degrees = Math.toDegrees(StrictMath.atan2(direction.y(), direction.x()));
        double inside = upright ? 2.2 : 2.2 + 0.75 * SMALL;
        Point at = edge.line().at(along).plus(direction.left().times(inside));
        drawing.text(new Writing(Ink.SEW, at, upright ? degrees : degrees - 180, SMALL, Writing.Align.MIDDLE, name));
    }
}
