package stretchwright.print.sheets;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.ground.Box;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Writing;

/**
 * What is seen from across the table: FRONT and BACK beside their edges, and an arrow across the grain for the stretch that
 * goes around the body. Each stands where nothing is drawn, as large as there is room for, and is left out where there is none.
 */
final class FrontAndBack {
    private static final double[] LETTERS = {14, 11, 9, 7, 5.5, 4};
    private static final double[] ARROWS = {120, 90, 60, 40, 25};
    private static final double[] INSETS = {1, 4, 8, 13, 19, 26};
    private static final double AIR = 2;
    private static final double STEP = 6;
    private static final double HEAD = 4;

    /** The words begin at this share of the edge, from its upper end: where the leg is widest. */
    private static final double FIRST = 0.15;

    /** Wanted height of the arrow within the piece, from below: clear of the label, which wants the middle. */
    private static final double UP = 0.78;

    private final Piece piece;
    private final Motion motion;
    private final Polygon inside;
    private final Drawing drawing;

    /** @param motion from the piece's own coordinates to those of the drawing */
    FrontAndBack(Piece piece, Motion motion, Drawing drawing) {
        this.piece = piece;
        this.motion = motion;
        this.inside = new Polygon(motion.apply(piece.sewLine().points()));
        this.drawing = drawing;
    }

    void words() {
        edge(EdgeName.FRONT_INSEAM, EdgeName.FRONT_EDGE).ifPresent(e -> beside(e, Phrases.of("piece.front")));
        edge(EdgeName.BACK_INSEAM, EdgeName.BACK_EDGE).ifPresent(e -> beside(e, Phrases.of("piece.back")));
    }

    private Optional<Edge> edge(EdgeName... names) {
        return piece.name().kind().isOfLeg()
                ? Stream.of(names).filter(piece::has).findFirst().map(piece::edge)
                : Optional.empty();
    }

    private void beside(Edge edge, String name) {
        String word = name.toUpperCase(Locale.ROOT);
        Path line = new Path(motion.apply(edge.line().points()));
        Path down = line.start().y() > line.end().y() ? line : line.reversed();
        boolean toRight = line.directionAt(line.length() / 2).left().x() > 0;
        for (double size : LETTERS) {
            double high = Letters.width(word, size) + 2 * AIR;
            double wide = 1.05 * size + 2 * AIR;
            for (double along = FIRST * down.length(); along < down.length(); along += STEP) {
                double top = down.at(along).y();
                for (double inset : INSETS) {
                    Optional<Box> box = box(down, top, high, wide, inset, toRight);
                    if (box.isPresent() && isFree(box.get())) {
                        write(box.get(), size, word);
                        return;
                    }
                }
            }
        }
    }

    /** An upright box below a height, so far inside the edge; empty where the edge ends before it. */
    private static Optional<Box> box(Path edge, double top, double high, double wide, double inset, boolean toRight) {
        double low = top - high;
        if (low <= edge.end().y() || top >= edge.start().y()) {
            return Optional.empty();
        }
        double[] xs = Stream.concat(
                        edge.points().stream().filter(p -> p.y() <= top && p.y() >= low),
                        Stream.of(edge.at(edge.alongAtHeight(top)), edge.at(edge.alongAtHeight(low))))
                .mapToDouble(Point::x)
                .sorted()
                .toArray();
        double x = toRight ? xs[xs.length - 1] + inset : xs[0] - inset - wide;
        return Optional.of(new Box(x, low, x + wide, top));
    }

    private boolean isFree(Box box) {
        return inside.contains(box.centre()) && drawing.leavesClear(box);
    }

    private void write(Box box, double size, String word) {
        Point at = new Point(box.maxX() - AIR - 0.2 * size, (box.minY() + box.maxY()) / 2);
        drawing.text(new Writing(Ink.LABEL, at, 90, size, Writing.Align.MIDDLE, word));
    }

    /**
     * The arrow of greatest stretch.
     *
     * @param words beside it
     */
    void arrow(String words) {
        Box room = inside.box();
        Point wanted = new Point(room.centre().x(), room.minY() + UP * room.height());
        for (double length : ARROWS) {
            double size = Math.min(length > 50 ? 5 : 3.5, 3.5 * length / Letters.width(words, 3.5));
            Optional<Box> box = nearest(wanted, length + 2 * AIR, HEAD + size + 2 * AIR);
            if (size >= 2 && box.isPresent()) {
                arrow(box.get(), size, words);
                return;
            }
        }
    }

    private Optional<Box> nearest(Point wanted, double wide, double high) {
        Box room = inside.box();
        double step = Math.max(3, Math.min(room.width(), room.height()) / 40);
        Box best = null;
        double nearest = Double.MAX_VALUE;
        for (double y = room.minY(); y + high <= room.maxY(); y += step) {
            for (double x = room.minX(); x + wide <= room.maxX(); x += step) {
                Box box = new Box(x, y, x + wide, y + high);
                double off = box.centre().distance(wanted);
                if (off < nearest && isFree(box)) {
                    best = box;
                    nearest = off;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private void arrow(Box box, double size, String words) {
        double y = box.minY() + AIR + HEAD / 2;
        Point left = new Point(box.minX() + AIR, y);
        Point right = new Point(box.maxX() - AIR, y);
        drawing.line(Ink.GRAIN, List.of(left, right), false);
        head(left, HEAD);
        head(right, -HEAD);
        drawing.text(Writing.middle(Ink.GRAIN, box.centre().x(), y + HEAD / 2, size, words));
    }

    private void head(Point tip, double back) {
        Point inwards = tip.plus(new Point(back, 0));
        Point aside = new Point(0, 0.35 * HEAD);
        drawing.line(Ink.GRAIN, List.of(inwards.plus(aside), tip, inwards.minus(aside)), false);
    }
}
