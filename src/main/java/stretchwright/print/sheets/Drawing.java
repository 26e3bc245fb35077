package stretchwright.print.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stretchwright.ground.Box;
import stretchwright.ground.Corners;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.SizeLine;
import stretchwright.print.kit.Writing;

/** A drawing that remembers its lines and lettering, to be drawn again elsewhere or asked what is where. */
final class Drawing implements Canvas {
    /** Something drawn, and the size it belongs to, if to one alone. */
    private record Step(Optional<SizeLine> size, Consumer<Canvas> drawn) {}

    /** What takes up room: a line, or the outline of lettering. */
    private record Shape(Box box, Corners corners, boolean closed) {}

    private final List<Step> strokes = new ArrayList<>();
    private final List<Step> writings = new ArrayList<>();
    private Optional<SizeLine> size = Optional.empty();
    private final List<Shape> shapes = new ArrayList<>();

    @Override
    public void line(Ink ink, List<Point> points, boolean closed) {
        List<Point> there = List.copyOf(points);
        strokes.add(new Step(size, c -> c.line(ink, there, closed)));
        keep(points, closed);
    }

    @Override
    public void text(Writing writing) {
        writings.add(new Step(size, c -> c.text(writing)));
        keep(writing.outline(), true);
    }

    @Override
    public void in(SizeLine one, Runnable inside) {
        size = Optional.of(one);
        inside.run();
        size = Optional.empty();
    }

    /** Lines first, then lettering; what belongs to one size in one go. */
    void drawOn(Canvas canvas) {
        for (List<Step> steps : List.of(strokes, writings)) {
            int from = 0;
            for (int to = 1; to <= steps.size(); to++) {
                if (to == steps.size() || !steps.get(to).size.equals(steps.get(from).size)) {
                    draw(steps.subList(from, to), canvas);
                    from = to;
                }
            }
        }
    }

    private static void draw(List<Step> steps, Canvas canvas) {
        Runnable all = () -> steps.forEach(s -> s.drawn.accept(canvas));
        steps.get(0).size.ifPresentOrElse(size -> canvas.in(size, all), all);
    }

    /** How many drawn segments reach into the box; lettering counts by its outline. */
    int crossings(Box box) {
        int count = 0;
        for (Shape s : shapes) {
            count += s.box.meets(box) ? Crossing.count(box, s.corners, s.closed) : 0;
        }
        return count;
    }

    /** Whether nothing drawn reaches into the box. */
    boolean leavesClear(Box box) {
        for (Shape s : shapes) {
            if (s.box.meets(box) && Crossing.meets(box, s.corners, s.closed)) {
                return false;
            }
        }
        return true;
    }

    private void keep(List<Point> points, boolean closed) {
        shapes.add(new Shape(Box.around(points), Corners.of(points), closed));
    }
}
