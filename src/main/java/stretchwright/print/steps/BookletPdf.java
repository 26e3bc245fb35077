package stretchwright.print.steps;

import java.util.List;
import java.util.Locale;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfCanvas;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Tiles;

/** The booklet as single pages, and two up on office paper to be printed on both sides, turned on the short edge. */
public final class BookletPdf {
    /** What is written on a page keeps this from the sheet's edge, mm. */
    private static final double KEPT = 10.5;

    private BookletPdf() {}

    public static Document pages(Job job) {
        try (PdfFile file = new PdfFile(Phrases.of("booklet.title", job.make()))) {
            for (BookletPage page : Booklet.pages(job)) {
                page.on(file.page(BookletPage.WIDTH, BookletPage.HEIGHT));
                if (!page.bookmark().isEmpty()) {
                    file.bookmark(page.bookmark());
                }
            }
            return file.finished("sewing-booklet.pdf", "sewing booklet");
        }
    }

    public static Document imposed(Job job) {
        Paper sheet = job.office().turned();
        List<BookletPage> pages = Booklet.pages(job);
        try (PdfFile file = new PdfFile(Phrases.of("booklet.title-fold", job.make()))) {
            for (Imposition.Side side : Imposition.sides(pages.size())) {
                PdfCanvas canvas = file.page(sheet.width(), sheet.height());
                page(pages, side.left()).on(moved(canvas, left(sheet), sheet));
                page(pages, side.right()).on(moved(canvas, right(sheet), sheet));
                double middle = sheet.width() / 2;
                canvas.line(
                        Ink.JOIN,
                        new Point(middle, Tiles.MARGIN + 0.5),
                        new Point(middle, sheet.height() - Tiles.MARGIN - 0.5));
            }
            return file.finished(imposedName(job), "sewing booklet to fold");
        }
    }

    public static String imposedName(Job job) {
        return "sewing-booklet-" + job.office().turned().name().toLowerCase(Locale.ROOT) + ".pdf";
    }

    private static BookletPage page(List<BookletPage> pages, int number) {
        return number <= pages.size() ? pages.get(number - 1) : BookletPage.BLANK;
    }

    private static Canvas moved(Canvas canvas, double x, Paper sheet) {
        return new Motion(0, new Point(x, (sheet.height() - BookletPage.HEIGHT) / 2)).on(canvas);
    }

    /** In the middle of its half, or where that is too narrow, as near to the fold as its margin asks. */
    static double left(Paper sheet) {
        return Math.max((sheet.width() / 2 - BookletPage.WIDTH) / 2, KEPT - BookletPage.ROOM.minX());
    }

    static double right(Paper sheet) {
        return sheet.width() - BookletPage.WIDTH - left(sheet);
    }
}
