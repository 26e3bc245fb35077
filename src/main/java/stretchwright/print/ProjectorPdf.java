package stretchwright.print;

import java.util.List;
import java.util.function.UnaryOperator;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.Column.Para;

/**
 * The pattern for a projector above the table: a page to calibrate by, then all pieces on one page at true size with thick
 * lines, dark on light and light on dark. Procedure and limits: common practice, no source.
 */
final class ProjectorPdf {
    /** Cut lines of 2 mm are seen from a standing height; thinner ones flicker in a coarse raster. */
    private static final double THICK = 4;

    private static final double GAP = SideBySide.GAP;
    private static final double SQUARE = 50;
    /** The rectangle that is measured, mm; its diagonals are 500 long: 3, 4, 5. */
    private static final double WIDE = 400;

    private static final double HIGH = 300;
    private static final double TEXT = 7;

    private final Job job;
    private final SideBySide row;
    private final double width;
    private final double height;

    private ProjectorPdf(Job job) {
        this.job = job;
        row = SideBySide.of(job.pattern().pieces());
        width = Math.max(row.width(), 2 * GAP + 2 * WIDE + GAP);
        height = Math.max(row.height(), HIGH + 2 * GAP);
    }

    static Document of(Job job) {
        ProjectorPdf pdf = new ProjectorPdf(job);
        try (PdfFile file = new PdfFile(job.make() + " - pattern for a projector")) {
            pdf.calibration(file.page(pdf.width, pdf.height).thick(THICK));
            file.bookmark("Calibrate");
            pdf.pieces(file.page(pdf.width, pdf.height).thick(THICK));
            file.bookmark("Dark on light");
            pdf.pieces(file.page(pdf.width, pdf.height).inverse().thick(THICK));
            file.bookmark("Light on dark");
            return file.finished("pattern-projector.pdf", "pattern for a projector");
        }
    }

    private void pieces(PdfCanvas page) {
        page.spoken(
                Tag.FIGURE,
                "All pieces side by side at true size.",
                () -> row.spots()
                        .forEach(s -> PieceDrawing.of(job, s.piece()).drawOn(new Motion(0, s.move()).on(page))));
    }

    private void calibration(PdfCanvas page) {
        Box frame = new Box(GAP, GAP, GAP + WIDE, GAP + HIGH);
        UnaryOperator<Point> put = p -> p.plus(new Point(GAP, GAP));
        for (double x = SQUARE; x < WIDE; x += SQUARE) {
            page.line(Ink.FAINT, put.apply(new Point(x, 0)), put.apply(new Point(x, HIGH)));
        }
        for (double y = SQUARE; y < HIGH; y += SQUARE) {
            page.line(Ink.FAINT, put.apply(new Point(0, y)), put.apply(new Point(WIDE, y)));
        }
        page.line(Ink.CUT, frame.corners(), true);
        page.line(Ink.SEW, put.apply(Point.ORIGIN), put.apply(new Point(WIDE, HIGH)));
        page.line(Ink.SEW, put.apply(new Point(0, HIGH)), put.apply(new Point(WIDE, 0)));
        Column words = new Column(page, GAP + WIDE + GAP, GAP + HIGH, WIDE);
        List.of(
                        job.make() + " - for " + job.wearer(),
                        "1. Show this page at 100 % (actual size), the projector square to the table, its own keystone"
                                + " correction off.",
                        "2. Change the zoom of the page until the frame measures 400 mm by 300 mm on the table, and each"
                                + " square 50 mm: in the middle and at all four edges.",
                        "3. Measure both diagonals: 500 mm each. If they differ, the projector stands askew: turn or shim"
                                + " it, do not stretch the picture.",
                        "4. Accept 1 mm in 400. Note the zoom. Then go to the next page without touching it, and measure"
                                + " again before cutting: the table must not have moved.",
                        "The next pages hold all pieces side by side at true size; move the page, never the zoom. Cut along"
                                + " the middle of the thick line.",
                        "Fasten the projector so that it cannot fall; keep its cord off the table and the cutter; do not"
                                + " look into the lamp.")
                .forEach(text -> words.write(new Para(TEXT, 0, 3, text)));
    }
}
