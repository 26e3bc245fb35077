package stretchwright.print.sheets;

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
import stretchwright.ground.Document;
import stretchwright.print.kit.PageReader;
import stretchwright.print.kit.PageReader.Stroke;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.kit.Tiles;
import stretchwright.print.kit.Tiles.Tile;

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

    /** Small sheets, upright or on their side, have no second corner for the name beside the squares. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"160 x 160 mm | 12 | 10", "160 x 200 mm | 15 | 10", "Letter | 10 | 40", "roll 160 mm | 17 | 10"})
    void everySheetHasItsName(String words, double margin, double overlap) throws IOException {
        Paper paper = Paper.named(words).with(margin, overlap).orElseThrow();
        for (Paper sheet : List.of(paper, paper.turned())) {
            try (PDDocument pdf =
                    Loader.loadPDF(TiledPdf.of(SampleJob.on("A4"), sheet).bytes())) {
                PDFTextStripper page = new PDFTextStripper();
                for (int i = 2; i <= pdf.getNumberOfPages(); i++) {
                    page.setStartPage(i);
                    page.setEndPage(i);
                    assertThat(page.getText(pdf)).contains("Evening practice").contains("row ");
                }
            }
        }
    }

    /** However much the printer leaves white, the first pages tell everything, and no word over another. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"A4 | 10", "A4 | 25", "A4 | 42", "Letter | 25", "Letter | 45", "A2 | 50", "200 x 280 mm | 30"})
    void theFirstPagesTellAllInTheirRoom(String words, double margin) throws IOException {
        Paper paper = Paper.named(words).with(margin, 10).orElseThrow();
        try (PDDocument pdf =
                Loader.loadPDF(TiledPdf.of(SampleJob.on("A4"), paper).bytes())) {
            PDFTextStripper text = new PDFTextStripper();
            text.setEndPage(3);
            String read = text.getText(pdf).replaceAll("\\s+", " ");
            assertThat(read)
                    .contains("a printer can change between sheets", "not at the corners only", "draw a new one")
                    .contains("halves meet across a join", "inner square 100 mm");
        }
    }

    /** Five metres of a narrow roll for a page of words would be waste. */
    @ParameterizedTest
    @CsvSource({"roll 200 mm", "roll 250 mm", "250 x 5000 mm"})
    void theFirstPageOfALongSheetIsAnOfficePage(String words) throws IOException {
        Document made = TiledPdf.of(SampleJob.on("A4"), Paper.named(words));
        try (PDDocument pdf = Loader.loadPDF(made.bytes())) {
            assertThat(pdf.getPage(0).getMediaBox().getHeight() / 72 * 25.4).isCloseTo(297, within(0.1));
        }
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
