package stretchwright.exchange;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;

/** Boxes side by side in columns, none nearer to another than the gap: by how much each is moved. */
final class Rows {
    private Rows() {}

    /**
     * In the order given, from the lower left: upwards as long as the height allows, then in a new column.
     *
     * @param height nothing stands higher than this, or than the highest box
     */
    static List<Point> moves(List<Box> boxes, double height, double gap) {
        double most =
                Math.max(height, boxes.stream().mapToDouble(Box::height).max().orElse(0));
        List<Point> out = new ArrayList<>();
        double x = 0;
        double y = 0;
        double wide = 0;
        for (Box box : boxes) {
            if (y > 0 && y + box.height() > most) {
                x += wide + gap;
                y = 0;
                wide = 0;
            }
            out.add(new Point(x - box.minX(), y - box.minY()));
            y += box.height() + gap;
            wide = Math.max(wide, box.width());
        }
        return out;
    }
}
