package stretchwright.print.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.PageReader;
import stretchwright.print.kit.PageReader.Stroke;
import stretchwright.print.kit.SampleJob;

/** The projector's pages read back: true size, thick, and the same dark and light. */
class ProjectorPdfTest {
    private static final double THICK = 4 * Ink.CUT.width();

    private static List<List<Stroke>> pages(Job job) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(ProjectorPdf.of(job).bytes())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(3);
            return List.of(
                    PageReader.strokes(pdf.getPage(0)),
                    PageReader.strokes(pdf.getPage(1)),
                    PageReader.strokes(pdf.getPage(2)));
        }
    }

    @Test
    void everyPieceIsDrawnAtTrueSize() throws IOException {
        Job job = SampleJob.on("A4");
        List<Stroke> cut = pages(job).get(1).stream()
                .filter(s -> Math.abs(s.width() - THICK) < 0.01 && s.points().size() > 2)
                .toList();
        for (Piece piece : job.pattern().pieces()) {
            List<Point> run = PieceDrawing.cutRuns(piece).get(0);
            assertThat(cut).as(piece.name().word()).anyMatch(s -> alike(s.points(), run));
        }
    }

    /** The same points, moved together; float numbers in the file leave some 0.001 mm. */
    private static boolean alike(List<Point> drawn, List<Point> meant) {
        if (drawn.size() < meant.size()) {
            return false;
        }
        Point move = drawn.get(0).minus(meant.get(0));
        for (int i = 0; i < meant.size(); i++) {
            if (drawn.get(i).distance(meant.get(i).plus(move)) > 0.05) {
                return false;
            }
        }
        return true;
    }

    /** By hand: 3, 4, 5. */
    @Test
    void theFrameToMeasureIs400By300() throws IOException {
        List<Stroke> calibration = pages(SampleJob.on("A4")).get(0);
        assertThat(calibration)
                .filteredOn(Stroke::closed)
                .extracting(Stroke::box)
                .anySatisfy(b -> {
                    assertThat(b.width()).isCloseTo(400, org.assertj.core.api.Assertions.within(0.05));
                    assertThat(b.height()).isCloseTo(300, org.assertj.core.api.Assertions.within(0.05));
                });
        assertThat(calibration)
                .anyMatch(s -> s.points().size() == 2
                        && Math.abs(s.points().get(0).distance(s.points().get(1)) - 500) < 0.05);
    }

    @Test
    void lightOnDarkIsTheSameDrawing() throws IOException {
        List<List<Stroke>> pages = pages(SampleJob.on("A4"));
        assertThat(pages.get(2).stream().map(Stroke::box).map(Box::toString).toList())
                .isEqualTo(pages.get(1).stream()
                        .map(Stroke::box)
                        .map(Box::toString)
                        .toList());
        assertThat(pages.get(2)).allMatch(s -> s.grey() >= 0.5);
        assertThat(pages.get(1)).allMatch(s -> s.grey() <= 0.55);
    }
}
