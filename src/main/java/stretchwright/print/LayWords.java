package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Hand;

/**
 * What is written into one piece of the lay: its number in the order of cutting, its name with left or right, which
 * way up, and how far both ends of its grain lie from the edge. The words stand level or upright on either side of the
 * grain arrow, where they can be largest.
 */
final class LayWords {
    private static final double LARGEST = 4;

    /** Smaller is not tried; a piece too small for it gets its words at this size, over its outline. */
    private static final double SMALLEST = 1.2;

    private static final double DISTANCE = 2.2;

    /** From the arrow: past the weights on its left, past its heads on its right. */
    private static final double ASIDE = 3.2;

    private static final double BIG = 11;

    private final Canvas canvas;
    private final CuttingGuide.Step step;
    private final String name;
    private final List<Point> ends;
    private final Point middle;
    private final double arrow;
    private final Polygon outline;

    LayWords(Canvas canvas, CuttingGuide.Step step, String name, Point from, Point to, List<Point> outline) {
        this.canvas = canvas;
        this.step = step;
        this.name = name;
        ends = List.of(from, to);
        middle = from.towards(to, 0.5);
        arrow = from.distance(to);
        this.outline = Polygon.either(outline);
    }

    /** A place for the words: a box, and whether they stand upright in it. */
    private record Place(Box box, boolean upright) {}

    void write() {
        List<Box> distances = distances();
        for (double size = LARGEST; size >= SMALLEST; size -= 0.2) {
            for (Place place : places(size)) {
                if (inside(place.box()) && clear(place.box(), distances)) {
                    block(place, size);
                    big(place.box(), distances);
                    return;
                }
            }
        }
        block(places(SMALLEST).get(2), SMALLEST);
    }

    /** Written at both ends of the arrow, or once where it is too short for two lines; gives what they cover. */
    private List<Box> distances() {
        boolean once = arrow < 2.4 * DISTANCE
                && step.fromEdge().get(0).equals(step.fromEdge().get(1));
        List<Box> covered = new ArrayList<>();
        for (int i = 0; i < (once ? 1 : 2); i++) {
            String words = "\u2190 " + Amounts.number(step.fromEdge().get(i), 1);
            double lift = once ? -0.8 : ends.get(i).y() > middle.y() ? -1.8 : 0.2;
            double y = (once ? middle : ends.get(i)).y() + lift;
            double wide = Letters.width(words, DISTANCE);
            double right = ends.get(i).x() + 1.2;
            boolean fits = outline.contains(new Point(right + wide + 0.5, y + 0.4 * DISTANCE));
            double x = fits ? right : ends.get(i).x() - ASIDE + 0.4 - wide;
            canvas.text(Writing.at(Ink.LABEL, x, y, DISTANCE, words));
            covered.add(new Box(x, y - 0.3, x + wide, y + DISTANCE));
        }
        return covered;
    }

    private double wide(double size) {
        return Math.max(2 * size + Letters.width(name, size), Letters.width(ClothWords.side(step), 0.7 * size));
    }

    /** Level left and right of the arrow, upright left and right of it, and beyond the distances. */
    private List<Place> places(double size) {
        double wide = wide(size);
        double high = 2.2 * size;
        double beyond =
                2.4 + Letters.width("\u2190 " + Amounts.number(step.fromEdge().get(0), 1), DISTANCE);
        Box all = outline.box();
        double half = arrow / 2 + 1;
        return List.of(
                level(middle.x() - ASIDE - wide, wide, high),
                level(middle.x() + ASIDE, wide, high),
                upright(middle.x() - ASIDE - high, wide, high),
                upright(middle.x() + ASIDE, wide, high),
                level(middle.x() + beyond, wide, high),
                upright(middle.x() + beyond, wide, high),
                centred(all, (middle.y() + half + all.maxY()) / 2, wide, high),
                centred(all, (middle.y() - half + all.minY()) / 2, wide, high));
    }

    /** Above or below the arrow. */
    private static Place centred(Box all, double y, double wide, double high) {
        double x = (all.minX() + all.maxX()) / 2;
        return new Place(new Box(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2), false);
    }

    private Place level(double x, double wide, double high) {
        return new Place(new Box(x, middle.y() - high / 2, x + wide, middle.y() + high / 2), false);
    }

    private Place upright(double x, double wide, double high) {
        return new Place(new Box(x, middle.y() - wide / 2, x + high, middle.y() + wide / 2), true);
    }

    /** Off the arrow with its weights, and off the distances. */
    private boolean clear(Box box, List<Box> distances) {
        Box line = new Box(middle.x() - ASIDE + 0.4, middle.y() - arrow / 2, middle.x() + 1.2, middle.y() + arrow / 2);
        return !box.meets(line) && distances.stream().noneMatch(box.grown(0.7)::meets);
    }

    /** With a little air: every millimetre of its border lies in the piece. */
    private boolean inside(Box box) {
        Box air = box.grown(0.6);
        int steps = (int) Math.ceil(Math.max(air.width(), air.height()));
        return IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> (double) i / steps)
                .allMatch(t -> {
                    double x = air.minX() + t * air.width();
                    double y = air.minY() + t * air.height();
                    return outline.contains(new Point(x, air.minY()))
                            && outline.contains(new Point(x, air.maxY()))
                            && outline.contains(new Point(air.minX(), y))
                            && outline.contains(new Point(air.maxX(), y));
                });
    }

    /** Number in a ring and name, below them the side. */
    private void block(Place place, double size) {
        Box box = place.box();
        Point corner = place.upright() ? new Point(box.maxX(), box.minY()) : new Point(box.minX(), box.minY());
        double turn = place.upright() ? 90 : 0;
        double base = 1.15 * size;
        Point ring = corner.plus(new Point(0.85 * size, base + 0.35 * size).turned(turn));
        canvas.line(
                Ink.GRAIN,
                IntStream.range(0, 24)
                        .mapToObj(
                                i -> new Point(0.85 * size, 0).turned(15.0 * i).plus(ring))
                        .toList(),
                true);
        Point digit = ring.plus(new Point(0, -0.28 * size).turned(turn));
        canvas.text(
                new Writing(Ink.LABEL, digit, turn, 0.85 * size, Writing.Align.MIDDLE, String.valueOf(step.number())));
        Point first = corner.plus(new Point(2 * size, base).turned(turn));
        canvas.text(new Writing(Ink.LABEL, first, turn, size, Writing.Align.START, name));
        Point second = corner.plus(new Point(0, 0.1 * size).turned(turn));
        canvas.text(new Writing(Ink.LABEL, second, turn, 0.7 * size, Writing.Align.START, ClothWords.side(step)));
    }

    /** L or R to be seen from afar, on the other side of the arrow, where there is room. */
    private void big(Box words, List<Box> distances) {
        if (step.hand() != Hand.LEFT && step.hand() != Hand.RIGHT && step.hand() != Hand.PAIR) {
            return;
        }
        String mark = step.hand().mark();
        boolean right = words.minX() < middle.x();
        for (double size = BIG; size >= LARGEST + 1; size -= 0.5) {
            double wide = Letters.width(mark, size);
            double x = right ? middle.x() + ASIDE : middle.x() - ASIDE - wide;
            Box box = new Box(x, middle.y() - 0.4 * size, x + wide, middle.y() + 0.4 * size);
            if (inside(box) && clear(box, distances)) {
                canvas.text(Writing.at(Ink.LABEL, x, middle.y() - 0.35 * size, size, mark));
                return;
            }
        }
    }
}
