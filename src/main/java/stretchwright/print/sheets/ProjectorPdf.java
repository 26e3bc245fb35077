package stretchwright.print.sheets;

import java.util.List;
import java.util.function.UnaryOperator;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.PdfCanvas;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Tag;

/**
 * The pattern for a projector above the table: a page to calibrate by, then all pieces on one page at true size with thick
 * lines, dark on light and light on dark. Procedure and limits: common practice, no source.
 */
public final class ProjectorPdf {
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

    public static Document of(Job job) {
        ProjectorPdf pdf = new ProjectorPdf(job);
        try (PdfFile file = new PdfFile(Phrases.of("projector.title", job.make()))) {
            pdf.calibration(file.page(pdf.width, pdf.height).thick(THICK));
            file.bookmark(Phrases.of("projector.calibrate"));
            pdf.pieces(file.page(pdf.width, pdf.height).thick(THICK));
            file.bookmark(Phrases.of("projector.dark"));
            pdf.pieces(file.page(pdf.width, pdf.height).inverse().thick(THICK));
            file.bookmark(Phrases.of("projector.light"));
            return file.finished("pattern-projector.pdf", "pattern for a projector");
        }
    }

    private void pieces(PdfCanvas page) {
        page.spoken(
                Tag.FIGURE,
                Phrases.of("projector.shows"),
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
                        Phrases.of("foot.whose", job.make(), job.wearer()),
                        Phrases.of("projector.1"),
                        Phrases.of("projector.2"),
                        Phrases.of("projector.3"),
                        Phrases.of("projector.4"),
                        Phrases.of("projector.next"),
                        Phrases.of("projector.caution"))
                .forEach(text -> words.write(new Para(TEXT, 0, 3, text)));
    }
}
