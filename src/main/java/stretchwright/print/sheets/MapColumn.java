package stretchwright.print.sheets;

import java.util.List;
import stretchwright.ground.Box;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfCanvas;
import stretchwright.print.kit.PdfFile;

/** Words beside the squares and the map of the first page; what finds no room there goes on over the width of further pages. */
final class MapColumn {
    private final PdfFile file;
    private final Paper sheet;
    private PdfCanvas page;
    private Box room;
    private Column column;

    /** @param room on the first page */
    MapColumn(PdfFile file, Paper sheet, PdfCanvas page, Box room) {
        this.file = file;
        this.sheet = sheet;
        this.page = page;
        this.room = room;
        column = begun(room.maxY());
    }

    /** Keeps the paragraphs together, and so much below them, where a page can hold them. */
    void block(List<Para> paras, double below) {
        double height = Column.height(paras, room.width()) + below;
        if (column.y() - height < room.minY() && column.y() < room.maxY() - 1) {
            turn();
        }
        paras.forEach(column::write);
    }

    Canvas page() {
        return page;
    }

    double left() {
        return room.minX();
    }

    double width() {
        return room.width();
    }

    /** Height of the line that is written next. */
    double y() {
        return column.y();
    }

    /** Leaves room for what is drawn. */
    void down(double height) {
        column = begun(column.y() - height);
    }

    /** What is left of the page, or a further page where that is lower than this. */
    Box rest(double least) {
        if (column.y() - room.minY() < least) {
            turn();
        }
        return new Box(room.minX(), room.minY(), room.maxX(), column.y() - 2);
    }

    private void turn() {
        page = file.page(sheet.width(), sheet.height());
        room = page.sheet().grown(-sheet.margin());
        page.clip(room);
        column = begun(room.maxY());
    }

    private Column begun(double top) {
        return new Column(page, room.minX(), top, room.width());
    }
}
