package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;

/** A drawing that remembers its lines and lettering, to be drawn again elsewhere or asked what is where. */
final class Drawing implements Canvas {
    private record Stroke(Ink ink, List<Point> points, boolean closed) {}

    /** What takes up room: a line, or the outline of lettering. */
    private record Shape(Box box, List<Point> points, boolean closed) {}

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Writing> writings = new ArrayList<>();
    private final List<Shape> shapes = new ArrayList<>();

    @Override
    public void line(Ink ink, List<Point> points, boolean closed) {
        strokes.add(new Stroke(ink, List.copyOf(points), closed));
        keep(points, closed);
    }

    @Override
    public void text(Writing writing) {
        writings.add(writing);
        keep(writing.outline(), true);
    }

    void drawOn(Canvas canvas) {
        strokes.forEach(s -> canvas.line(s.ink, s.points, s.closed));
        writings.forEach(canvas::text);
    }

    /** How many drawn segments reach into the box; lettering counts by its outline. */
    int crossings(Box box) {
        return shapes.stream()
                .filter(s -> s.box.meets(box))
                .mapToInt(s -> Crossing.count(box, s.points, s.closed))
                .sum();
    }

    /** Whether nothing drawn reaches into the box. */
    boolean leavesClear(Box box) {
        return shapes.stream().noneMatch(s -> s.box.meets(box) && Crossing.count(box, s.points, s.closed) > 0);
    }

    private void keep(List<Point> points, boolean closed) {
        shapes.add(new Shape(Box.around(points), points, closed));
    }
}
