package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Writing;

/** Fills pages from the top down; each has a foot with its number. */
final class BookletWriter {
    private static final double FOOT = 6;

    private final List<BookletPage> finished = new ArrayList<>();
    private final String whose;
    private List<Consumer<Canvas>> page = new ArrayList<>();
    private String bookmark = "";
    private double y;

    BookletWriter(String whose) {
        this.whose = whose;
        begin();
    }

    static Box room() {
        Box all = BookletPage.ROOM;
        return new Box(all.minX(), all.minY() + FOOT, all.maxX(), all.maxY());
    }

    double left() {
        return y - room().minY();
    }

    boolean fresh() {
        return y > room().maxY() - 1;
    }

    double y() {
        return y;
    }

    void turn() {
        finished.add(new BookletPage(bookmark, page));
        page = new ArrayList<>();
        begin();
    }

    private void begin() {
        bookmark = "";
        y = room().maxY();
        double foot = BookletPage.ROOM.minY() + 1.2;
        String number = String.valueOf(finished.size() + 1);
        page.add(c -> c.text(Writing.at(Ink.LABEL, BookletPage.ROOM.minX(), foot, PlanPdf.TEXT, whose)));
        Point end = new Point(BookletPage.ROOM.maxX(), foot);
        page.add(c -> c.text(new Writing(Ink.LABEL, end, 0, PlanPdf.TEXT, Writing.Align.END, number)));
    }

    void bookmark(String words) {
        bookmark = bookmark.isEmpty() ? words : bookmark + "; " + words;
    }

    /** Space that the drawing fills; nothing else is written there. */
    void drawing(double height, Consumer<Canvas> drawn) {
        page.add(drawn);
        y -= height;
    }

    void gap(double height) {
        y -= height;
    }

    void also(Consumer<Canvas> drawn) {
        page.add(drawn);
    }

    /** Paragraphs; what does not fit goes on overleaf. */
    void write(List<Para> paras) {
        for (Para para : paras) {
            double height = para.height(room().width());
            if (height > left() && !fresh()) {
                turn();
            }
            double top = y;
            page.add(c -> new Column(c, room().minX(), top, room().width()).write(para));
            y -= height;
        }
    }

    List<BookletPage> pages() {
        if (!fresh()) {
            turn();
        }
        return List.copyOf(finished);
    }
}
