package stretchwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.print.PageReader.Stroke;
import stretchwright.print.Tiles.Tile;

/** Other margins and overlaps than the usual. */
class PaperEdgesTest {
    /** By hand: 210 - 2 x 5 = 200 shown; steps of 200 edge to edge, of 180 with 20. */
    @Test
    void sheetsStandSideBySideByTheirOverlap() {
        Tiles edgeToEdge = new Tiles(Paper.named("A4").with(5, 0).orElseThrow(), 2, 2);
        assertThat(edgeToEdge.window(new Tile(0, 1)).minX()).isEqualTo(200);
        assertThat(edgeToEdge.window(new Tile(0, 0)).maxX()).isEqualTo(200);
        Tiles wide = new Tiles(Paper.named("A4").with(5, 20).orElseThrow(), 2, 2);
        assertThat(wide.window(new Tile(0, 1)).minX()).isEqualTo(180);
    }

    @ParameterizedTest
    @CsvSource({"60, 0", "10, 60", "-1, 10", "10, -1", "105, 0", "1000, 1000", "NaN, 0"})
    void whatLeavesNoRoomIsRefused(double margin, double overlap) {
        assertThat(Paper.named("A4").with(margin, overlap)).isEmpty();
    }

    /** Nothing nearer to the edge than the margin, both squares on every sheet, joins told as they are. */
    @ParameterizedTest
    @CsvSource({"5, 0", "13, 0", "18, 20", "10, 10"})
    void sheetsKeepTheMarginAndCarryTheSquares(double margin, double overlap) throws IOException {
        Paper paper = Paper.named("A4").with(margin, overlap).orElseThrow();
        try (PDDocument pdf =
                Loader.loadPDF(TiledPdf.of(SampleJob.on("A4"), paper).bytes())) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text.contains("edge to edge with")).isEqualTo(overlap == 0);
            assertThat(text.contains("lay over")).isEqualTo(overlap > 0);
            for (int i = 1; i < pdf.getNumberOfPages(); i++) {
                List<Stroke> strokes = PageReader.strokes(pdf.getPage(i));
                assertThat(strokes).allSatisfy(s -> assertThat(s.clip().minX()).isCloseTo(margin, within(0.01)));
                assertThat(strokes.stream()
                                .filter(s -> s.closed() && s.points().size() == 4)
                                .filter(s -> Math.abs(s.box().width() - 100) < 0.01
                                        && Math.abs(s.box().height() - 100) < 0.01))
                        .hasSize(1);
            }
        }
    }
}
