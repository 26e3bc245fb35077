package stretchwright.print.cards;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.TestSquares;
import stretchwright.print.kit.Tiles;
import stretchwright.print.kit.Writing;

/** One sheet of a card: a title, the test squares in the lower right corner, and a hand for small drawings. */
final class CardPage {
    static final double TEXT = Letters.AT_THE_MACHINE;
    static final double SMALL = 3.2;
    private static final double TITLE = 6.5;

    private final Canvas page;
    private final Box room;

    /**
     * A new sheet.
     *
     * @param inset of the title: a scale as high as the sheet stands beside it
     */
    CardPage(PdfFile file, Paper sheet, double inset, String title, String foot) {
        page = file.page(sheet.width(), sheet.height());
        file.bookmark(title);
        room = new Box(0, 0, sheet.width(), sheet.height()).grown(-Tiles.MARGIN);
        page.text(Writing.at(Ink.LABEL, room.minX() + inset, room.maxY() - TITLE, TITLE, title));
        page.text(Writing.at(Ink.LABEL, room.minX(), room.minY() - 5, SMALL, foot));
        TestSquares.draw(page, room.maxX() - TestSquares.SIDE, room.minY());
    }

    Canvas canvas() {
        return page;
    }

    Box room() {
        return room;
    }

    /** Below the title. */
    double top() {
        return room.maxY() - TITLE - 4;
    }

    /** Paragraphs from the top down; gives the height reached. */
    double words(double x, double top, double width, String... paragraphs) {
        Column column = new Column(page, x, top, width);
        for (String words : paragraphs) {
            column.write(new Para(TEXT, 0, 1.2, words));
        }
        return column.y();
    }

    void label(double x, double y, double size, String words) {
        page.text(Writing.at(Ink.LABEL, x, y, size, words));
    }

    void middle(double x, double y, double size, String words) {
        page.text(Writing.middle(Ink.LABEL, x, y, size, words));
    }

    /** A word and a line to write on. */
    void blank(double x, double y, double width, String words) {
        label(x, y, SMALL, words);
        page.line(Ink.LABEL, new Point(x + Letters.width(words, SMALL) + 2, y - 0.6), new Point(x + width, y - 0.6));
    }

    /** Ruled cells, the first row with its heads; from the top down. */
    void table(double x, double top, double[] widths, double row, List<List<String>> rows, double size) {
        double wide = 0;
        for (double w : widths) {
            wide += w;
        }
        for (int r = 0; r <= rows.size(); r++) {
            page.line(Ink.LABEL, new Point(x, top - r * row), new Point(x + wide, top - r * row));
        }
        double left = x;
        for (int c = 0; c <= widths.length; c++) {
            page.line(Ink.LABEL, new Point(left, top), new Point(left, top - rows.size() * row));
            for (int r = 0; r < rows.size() && c < widths.length; r++) {
                page.text(Writing.middle(
                        Ink.LABEL,
                        left + widths[c] / 2,
                        top - r * row - row / 2 - 0.35 * size,
                        size,
                        rows.get(r).get(c)));
            }
            left += c < widths.length ? widths[c] : 0;
        }
    }

    void rectangle(double x, double y, double width, double height) {
        page.line(
                Ink.CLOTH,
                List.of(
                        new Point(x, y),
                        new Point(x + width, y),
                        new Point(x + width, y + height),
                        new Point(x, y + height)),
                true);
    }

    /** Solid black: lines that overlap. */
    void black(double x, double y, double width, double height) {
        lines(x, y, width, height, 0.35);
    }

    /** Lines as wide as the gaps between them: half of the light. */
    void grey(double x, double y, double width, double height) {
        lines(x, y, width, height, 2 * Ink.CUT.width());
    }

    private void lines(double x, double y, double width, double height, double step) {
        double half = Ink.CUT.width() / 2;
        double last = y + height - half;
        for (double at = y + half; at < last; at += step) {
            page.line(Ink.CUT, new Point(x, at), new Point(x + width, at));
        }
        page.line(Ink.CUT, new Point(x, last), new Point(x + width, last));
    }

    void arrow(double x1, double y1, double x2, double y2) {
        Point tip = new Point(x2, y2);
        Point back = new Point(x1, y1).minus(tip);
        double length = Math.hypot(back.x(), back.y());
        Point head = new Point(back.x() * 3 / length, back.y() * 3 / length);
        page.line(Ink.GRAIN, new Point(x1, y1), tip);
        page.line(Ink.GRAIN, tip.plus(head.turned(22)), tip, tip.plus(head.turned(-22)));
    }

    void ellipse(double x, double y, double halfWidth, double halfHeight) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 48; i++) {
            double a = i * StrictMath.PI / 24;
            points.add(new Point(x + halfWidth * StrictMath.cos(a), y + halfHeight * StrictMath.sin(a)));
        }
        page.line(Ink.CLOTH, points, true);
    }

    void path(double x, double y, double... offsets) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < offsets.length; i += 2) {
            points.add(new Point(x + offsets[i], y + offsets[i + 1]));
        }
        page.line(Ink.CLOTH, points, false);
    }

    /** Cloth with its two directions: selvages left and right, across between them, along beside them. */
    void directions(double x, double y) {
        rectangle(x, y, 44, 30);
        page.line(Ink.SEW, new Point(x + 2, y), new Point(x + 2, y + 30));
        page.line(Ink.SEW, new Point(x + 42, y), new Point(x + 42, y + 30));
        arrow(x + 22, y + 8, x + 5, y + 8);
        arrow(x + 22, y + 8, x + 39, y + 8);
        middle(x + 22, y + 9.5, SMALL, Phrases.of("card.across"));
        arrow(x + 10, y + 16, x + 10, y + 28);
        label(x + 12, y + 20, SMALL, Phrases.of("card.along"));
        middle(x + 22, y - 4, SMALL, Phrases.of("card.selvages"));
    }
}
