package stretchwright.print.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Hand;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Writing;

/**
 * What is written into one piece of the lay: its number in the order of cutting, its name with left or right, which
 * way up, and how far both ends of its grain lie from the edge. The words stand level or upright beside the grain arrow
 * or beyond its ends, where they can be largest. A piece too small for words that can be read gets its number alone.
 */
final class LayWords {
    private static final double LARGEST = 4;

    /** The second line is 0.7 of it: smaller than 1.7 mm is not read at the table. */
    private static final double SMALLEST = 2.4;

    private static final List<Double> DISTANCES = List.of(2.2, 1.8);

    /** From the arrow: past the weights on its left, past its heads on its right. */
    private static final double ASIDE = 3.4;

    private static final double BIG = 11;

    private final Canvas canvas;
    private final CuttingGuide.Step step;
    private final String name;
    private final Unit unit;
    private final List<Point> ends;
    private final Point middle;
    private final double arrow;
    private final Polygon outline;

    LayWords(Canvas canvas, CuttingGuide.Step step, String name, Unit unit, List<Point> ends, List<Point> outline) {
        this.canvas = canvas;
        this.step = step;
        this.name = name;
        this.unit = unit;
        this.ends = ends;
        middle = ends.get(0).towards(ends.get(1), 0.5);
        arrow = ends.get(0).distance(ends.get(1));
        this.outline = Polygon.either(outline);
    }

    /** A place for the words: a box, and whether they stand upright in it. */
    private record Place(Box box, boolean upright) {}

    /** False where not all of it could be written: then it must be said elsewhere. */
    boolean write() {
        List<Box> distances = distances();
        for (double size = LARGEST; size >= SMALLEST - 1e-9; size -= 0.2) {
            Optional<Place> place = places(size)
                    .filter(p -> inside(p.box()) && clear(p.box(), distances))
                    .findFirst();
            if (place.isPresent()) {
                block(place.get(), size);
                big(place.get().box(), distances);
                return !distances.isEmpty();
            }
        }
        number(distances);
        return false;
    }

    /** At each end of the arrow, or once where it is too short for two lines, if there is room; gives what they cover. */
    private List<Box> distances() {
        boolean once = arrow < 2.4 * DISTANCES.get(0)
                && step.fromEdge().get(0).equals(step.fromEdge().get(1));
        List<Box> covered = new ArrayList<>();
        for (int i = 0; i < (once ? 1 : 2); i++) {
            String words = distance(i);
            double lift = once ? -0.8 : ends.get(i).y() > middle.y() ? -1.8 : 0.2;
            Point end = (once ? middle : ends.get(i)).plus(new Point(0, lift));
            DISTANCES.stream()
                    .flatMap(size -> Stream.of(
                            Writing.at(Ink.LABEL, end.x() + 1.2, end.y(), size, words),
                            Writing.at(
                                    Ink.LABEL,
                                    end.x() - ASIDE + 0.4 - Letters.width(words, size),
                                    end.y(),
                                    size,
                                    words)))
                    .filter(w -> inside(box(w), 0.2))
                    .findFirst()
                    .ifPresent(w -> {
                        canvas.text(w);
                        covered.add(box(w));
                    });
        }
        return covered;
    }

    private static Box box(Writing w) {
        return new Box(
                w.at().x(),
                w.at().y() - 0.1,
                w.at().x() + Letters.width(w.words(), w.size()),
                w.at().y() + 0.75 * w.size());
    }

    private String distance(int end) {
        return "\u2190 " + Amounts.bare(step.fromEdge().get(end), unit);
    }

    private double wide(double size) {
        return Math.max(2 * size + Letters.width(name, size), Letters.width(ClothWords.side(step), 0.7 * size));
    }

    /** Level left and right of the arrow, upright left and right of it, beyond the distances, beyond its ends. */
    private Stream<Place> places(double size) {
        double wide = wide(size);
        double high = 2.2 * size;
        double beyond = 2.4 + Letters.width(distance(0), DISTANCES.get(0));
        Box all = outline.box();
        double half = arrow / 2 + 1;
        double above = (middle.y() + half + all.maxY()) / 2;
        double below = (middle.y() - half + all.minY()) / 2;
        double x = (all.minX() + all.maxX()) / 2;
        return Stream.of(
                level(middle.x() - ASIDE - wide, middle.y(), wide, high),
                level(middle.x() + ASIDE, middle.y(), wide, high),
                upright(middle.x() - ASIDE - high, middle.y(), wide, high),
                upright(middle.x() + ASIDE, middle.y(), wide, high),
                level(middle.x() + beyond, middle.y(), wide, high),
                upright(middle.x() + beyond, middle.y(), wide, high),
                level(x - wide / 2, above, wide, high),
                level(x - wide / 2, below, wide, high),
                upright(x - high / 2, above, wide, high),
                upright(x - high / 2, below, wide, high),
                upright(middle.x() - high / 2, above, wide, high),
                upright(middle.x() - high / 2, below, wide, high));
    }

    private static Place level(double x, double y, double wide, double high) {
        return new Place(new Box(x, y - high / 2, x + wide, y + high / 2), false);
    }

    private static Place upright(double x, double y, double wide, double high) {
        return new Place(new Box(x, y - wide / 2, x + high, y + wide / 2), true);
    }

    /** Off the arrow with its weights, and off the distances. */
    private boolean clear(Box box, List<Box> distances) {
        Box line = new Box(middle.x() - ASIDE + 0.4, middle.y() - arrow / 2, middle.x() + 1.2, middle.y() + arrow / 2);
        return !box.meets(line) && distances.stream().noneMatch(box.grown(0.7)::meets);
    }

    /** The ring beside the arrow, where nothing else stands if there is such a place; else on the arrow. */
    private void number(List<Box> distances) {
        double size = SMALLEST;
        double r = 0.85 * size;
        Box all = outline.box();
        Point ring = IntStream.rangeClosed(0, 40)
                .boxed()
                .flatMap(j -> IntStream.rangeClosed(0, 40)
                        .mapToObj(i ->
                                new Point(all.minX() + i / 40.0 * all.width(), all.minY() + j / 40.0 * all.height())))
                .filter(p -> {
                    Box box = new Box(p.x() - r, p.y() - r, p.x() + r, p.y() + r);
                    return inside(box, 0.1) && clear(box, distances);
                })
                .findFirst()
                .orElse(middle);
        ring(ring, size, 0);
    }

    private boolean inside(Box box) {
        return inside(box, 0.6);
    }

    /** With a little air: every millimetre of its border lies in the piece. */
    private boolean inside(Box box, double by) {
        Box air = box.grown(by);
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
        ring(ring, size, turn);
        Point first = corner.plus(new Point(2 * size, base).turned(turn));
        canvas.text(new Writing(Ink.LABEL, first, turn, size, Writing.Align.START, name));
        Point second = corner.plus(new Point(0, 0.1 * size).turned(turn));
        canvas.text(new Writing(Ink.LABEL, second, turn, 0.7 * size, Writing.Align.START, ClothWords.side(step)));
    }

    private void ring(Point centre, double size, double turn) {
        canvas.line(
                Ink.GRAIN,
                IntStream.range(0, 24)
                        .mapToObj(
                                i -> new Point(0.85 * size, 0).turned(15.0 * i).plus(centre))
                        .toList(),
                true);
        Point digit = centre.plus(new Point(0, -0.28 * size).turned(turn));
        canvas.text(
                new Writing(Ink.LABEL, digit, turn, 0.85 * size, Writing.Align.MIDDLE, String.valueOf(step.number())));
    }

    /** L or R to be seen from afar, on the other side of the arrow, where there is room. */
    private void big(Box words, List<Box> distances) {
        if (step.hand() != Hand.LEFT && step.hand() != Hand.RIGHT && step.hand() != Hand.PAIR) {
            return;
        }
        String mark = Voice.plain().say(step.hand().mark());
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
