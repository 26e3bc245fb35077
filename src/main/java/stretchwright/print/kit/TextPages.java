package stretchwright.print.kit;

import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.kit.Column.Para;

/** Pages of text in one column, each with a foot that says what it is; turned when the next block does not fit. */
public final class TextPages {
    private static final double FOOT = 6;
    private static final double FOOT_SIZE = 3;
    private static final double HEAD = 5.5;
    private static final double TEXT = 3.8;

    private final PdfFile file;
    private final Paper sheet;
    private final String whose;
    private final String title;
    private final Box room;
    private Canvas page;
    private Column column;
    private int number;

    /** @param title of the document, as in its foot: "sewing plan" */
    public TextPages(PdfFile file, Paper sheet, Job job, String title) {
        this(file, sheet, Phrases.of("foot.whose", job.make(), job.wearer()), title);
    }

    /** @param whose it is, as in its foot */
    public TextPages(PdfFile file, Paper sheet, String whose, String title) {
        this.file = file;
        this.sheet = sheet;
        this.whose = whose;
        this.title = title;
        room = new Box(0, 0, sheet.width(), sheet.height()).grown(-2 * Tiles.MARGIN);
        page = file.page(sheet.width(), sheet.height());
        column = begun();
    }

    public Box room() {
        return room;
    }

    public Canvas page() {
        return page;
    }

    /** Height of the line that is written next. */
    public double y() {
        return column.y();
    }

    public void goOnAt(double y) {
        column = new Column(page, room.minX(), y, room.width());
    }

    /** A new page where less than this is left; a page that has nothing yet is not turned. */
    public void need(double height) {
        if (column.y() - height < room.minY() && column.y() < room.maxY() - 1) {
            turn();
        }
    }

    /** Keeps the paragraphs together, and so much below them, unless they are taller than a page. */
    public void block(List<Para> paras, double more) {
        need(height(paras) + more);
        write(paras);
    }

    public double height(List<Para> paras) {
        return Column.height(paras, room.width());
    }

    public void write(List<Para> paras) {
        for (Para para : paras) {
            if (column.y() - para.height(room.width()) < room.minY()) {
                turn();
            }
            column.write(para);
        }
    }

    /** Of a section; on the page on which that begins. */
    public void heading(String words) {
        block(List.of(new Para(HEAD, 0, 5, words)), 3 * HEAD);
    }

    public void text(String words) {
        write(List.of(new Para(TEXT, 0, 1.5, words)));
    }

    public void turn() {
        page = file.page(sheet.width(), sheet.height());
        column = begun();
    }

    private Column begun() {
        number++;
        double foot = room.minY() - FOOT;
        page.text(Writing.at(Ink.FAINT, room.minX(), foot, FOOT_SIZE, whose));
        page.text(new Writing(
                Ink.FAINT,
                new Point(room.maxX(), foot),
                0,
                FOOT_SIZE,
                Writing.Align.END,
                Phrases.of("foot.page", title, String.valueOf(number))));
        return new Column(page, room.minX(), room.maxY(), room.width());
    }
}
