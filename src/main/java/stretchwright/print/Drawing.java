package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;

/** A drawing that remembers its lines and lettering, to be drawn again elsewhere or asked what is where. */
final class Drawing implements Canvas {
    private record Stroke(Ink ink, List<Point> points, boolean closed) {}

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Writing> writings = new ArrayList<>();

    @Override
    public void line(Ink ink, List<Point> points, boolean closed) {
        strokes.add(new Stroke(ink, List.copyOf(points), closed));
    }

    @Override
    public void text(Writing writing) {
        writings.add(writing);
    }

    void drawOn(Canvas canvas) {
        strokes.forEach(s -> canvas.line(s.ink, s.points, s.closed));
        writings.forEach(canvas::text);
    }

    /** How many drawn segments reach into the box; lettering counts by its outline. */
    int crossings(Box box) {
        int count = 0;
        for (Stroke s : strokes) {
            count += Crossing.count(box, s.points, s.closed);
        }
        for (Writing w : writings) {
            count += Crossing.count(box, w.outline(), true);
        }
        return count;
    }
}
