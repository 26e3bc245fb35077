package stretchwright.print;

import java.util.List;
import stretchwright.ground.Point;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Hand;

/**
 * What is written into one piece of the lay: its name, its number in the order of cutting, left or right, which way
 * up, and how far both ends of its grain lie from the edge.
 */
final class LayWords {
    /** A piece's name: at most, and at least before it is written upright instead, mm. */
    private static final double NAME = 4;

    private static final double SMALLEST = 2.4;
    private static final double SMALL = 2.8;
    private static final double DISTANCE = 2.2;
    private static final double BIG = 11;
    private static final double RING = 2.4;

    private final Canvas canvas;
    private final CuttingGuide.Step step;
    private final List<Point> ends;
    private final Point middle;
    private final double arrow;
    private final double left;
    private final double right;

    LayWords(Canvas canvas, CuttingGuide.Step step, Point from, Point to, List<Point> outline) {
        this.canvas = canvas;
        this.step = step;
        ends = List.of(from, to);
        middle = from.towards(to, 0.5);
        arrow = from.distance(to);
        left = middle.x() - edge(middle, outline, true);
        right = edge(middle, outline, false) - middle.x();
    }

    void write(String name) {
        for (int i = 0; i < Math.min(2, step.fromEdge().size()); i++) {
            double lift = ends.get(i).y() > middle.y() ? -1.8 : 0.2;
            canvas.text(Writing.at(Ink.LABEL, ends.get(i).x() + 1.2, ends.get(i).y() + lift, DISTANCE, distance(i)));
        }
        double size = Math.min(NAME, NAME * (left - 2.5) / Letters.width(name, NAME));
        boolean level = size >= SMALLEST;
        if (level) {
            label(new Point(-2.8, -size / 3), 0, size, Writing.Align.END, name);
        } else {
            double along = Math.min(SMALL, SMALL * arrow / Letters.width(name, SMALL));
            label(new Point(-2.8, 0), 90, Math.max(1.8, along), Writing.Align.MIDDLE, name);
        }
        if (arrow > 24 && level && right > 14) {
            tall(size);
        } else if (right > 14) {
            flat();
        } else {
            narrow();
        }
    }

    private String distance(int end) {
        return "\u2190 " + Amounts.number(step.fromEdge().get(end), 1);
    }

    /** A large piece: the number above its name, the side below, L or R large on the other side of the arrow. */
    private void tall(double size) {
        String side = ClothWords.side(step);
        double room = Math.min(2.6, 2.6 * (left - 3.5) / Letters.width(side, 2.6));
        label(new Point(-2.8, -size / 3 - 1.5 * room - 0.6), 0, room, Writing.Align.END, side);
        number(new Point(-2.8 - RING, size + RING));
        if (step.hand() == Hand.LEFT || step.hand() == Hand.RIGHT || step.hand() == Hand.PAIR) {
            String mark = step.hand().mark();
            double big = Math.min(BIG, BIG * (right - 6) / Letters.width(mark, BIG));
            label(new Point(3, -big / 3), 0, big, Writing.Align.START, mark);
        }
    }

    /** A low, wide one: number and side right of the distances. */
    private void flat() {
        double x = 2.2 + Letters.width(distance(0), DISTANCE) + RING;
        number(new Point(x, 0));
        String side = ClothWords.side(step);
        double room = right - x - RING - 2;
        double size = Math.min(2.4, 2.4 * room / Letters.width(side, 2.4));
        label(new Point(x + RING + 1, -size / 3), 0, Math.max(1.2, size), Writing.Align.START, side);
    }

    /** A narrow one: upright, on the other side of the arrow. */
    private void narrow() {
        number(new Point(RING + 1, 0));
        String side = ClothWords.side(step);
        double room = arrow / 2 - RING - 3;
        double size = Math.max(1.2, Math.min(DISTANCE, DISTANCE * room / Letters.width(side, DISTANCE)));
        label(new Point(1.2 + size, -RING - 1), 90, size, Writing.Align.END, side);
    }

    private void number(Point away) {
        Point c = middle.plus(away);
        List<Point> ring = java.util.stream.IntStream.range(0, 24)
                .mapToObj(i -> new Point(RING, 0).turned(15.0 * i).plus(c))
                .toList();
        canvas.line(Ink.GRAIN, ring, true);
        canvas.text(Writing.middle(Ink.LABEL, c.x(), c.y() - 1.05, 3, String.valueOf(step.number())));
    }

    private void label(Point away, double degrees, double size, Writing.Align align, String words) {
        canvas.text(new Writing(Ink.LABEL, middle.plus(away), degrees, size, align, words));
    }

    /** Where the outline is crossed first, going level from a place inside it; far away where it is not. */
    private static double edge(Point from, List<Point> outline, boolean toLeft) {
        double nearest = toLeft ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            if ((a.y() > from.y()) != (b.y() > from.y())) {
                double x = a.towards(b, (from.y() - a.y()) / (b.y() - a.y())).x();
                if (toLeft && x < from.x()) {
                    nearest = Math.max(nearest, x);
                } else if (!toLeft && x > from.x()) {
                    nearest = Math.min(nearest, x);
                }
            }
        }
        return nearest;
    }
}
