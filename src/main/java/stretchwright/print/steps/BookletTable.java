package stretchwright.print.steps;

import java.util.List;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;

/** A ruled table in the booklet; a row that does not fit stands overleaf. */
final class BookletTable {
    private static final double GAP = 1.5;

    private final BookletWriter book;
    private final double[] widths;

    BookletTable(BookletWriter book, double[] widths) {
        this.book = book;
        this.widths = widths.clone();
    }

    void row(List<String> cells, double least) {
        double height = least;
        for (int i = 0; i < widths.length; i++) {
            height = Math.max(height, cell(cells, i).height(widths[i] - 2 * GAP) + 2);
        }
        if (height > book.left()) {
            book.turn();
        }
        double top = book.y();
        double high = height;
        book.drawing(high, c -> draw(c, cells, top, high));
    }

    private static Para cell(List<String> cells, int column) {
        return new Para(PlanPdf.TEXT, 0, 0.5, cells.get(column));
    }

    private void draw(Canvas canvas, List<String> cells, double top, double height) {
        double x = BookletWriter.room().minX();
        for (int i = 0; i < widths.length; i++) {
            canvas.line(
                    Ink.LABEL,
                    List.of(
                            new Point(x, top),
                            new Point(x + widths[i], top),
                            new Point(x + widths[i], top - height),
                            new Point(x, top - height)),
                    true);
            if (!cells.get(i).isBlank()) {
                new Column(canvas, x + GAP, top, widths[i] - 2 * GAP).write(cell(cells, i));
            }
            x += widths[i];
        }
    }
}
