package stretchwright.print.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Point;
import stretchwright.ground.Unit;
import stretchwright.pattern.Nest;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SampleNest;
import stretchwright.pattern.Style;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.PageReader;
import stretchwright.print.kit.PageReader.Stroke;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfCanvas;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.SizeLine;

/** A nest on paper read back: every size true, in its place over the others, on a layer of its own. */
class NestPdfTest {
    private static final List<Nest.Size> SIZES = SampleNest.sizes(Style.Leg.OVER_BOOT, 1, 3);
    private static final Nest NEST = Nest.of(SIZES);

    private static PDDocument pdf(String paper, String... stops) throws IOException {
        return Loader.loadPDF(NestPdf.of(
                        new NestJob(
                                NEST,
                                SIZES.stream().map(Nest.Size::pattern).toList(),
                                "Team",
                                Unit.CM,
                                SampleFabric.heavyKnit(),
                                Map.of("waistband", "Red knit"),
                                List.of(stops)),
                        Paper.named(paper))
                .bytes());
    }

    @Test
    void everySizeIsALayer() throws IOException {
        try (PDDocument pdf = pdf("A4")) {
            assertThat(pdf.getDocumentCatalog().getOCProperties().getGroupNames())
                    .containsExactly("seed 1", "seed 2", "seed 3");
        }
    }

    /** All on one sheet: the first size tells where and how the piece lies, the others have to lie by it. */
    @Test
    void everySizeIsTrueAndLiesByTheCommonPoint() throws IOException {
        try (PDDocument pdf = pdf("roll 4000 mm")) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            List<Stroke> strokes = PageReader.strokes(pdf.getPage(1));
            for (Nest.Nested nested : NEST.pieces()) {
                assertThat(turns(nested, strokes))
                        .as(nested.name().word())
                        .anyMatch(
                                motion -> IntStream.range(0, 3).allMatch(size -> drawn(nested, size, motion, strokes)));
            }
        }
    }

    /** How the piece may lie so that some stroke of the first size is its cut line. */
    private static List<Motion> turns(Nest.Nested nested, List<Stroke> strokes) {
        Point start = run(nested, 0).get(0);
        return strokes.stream()
                .filter(s -> s.layer().equals("seed 1"))
                .flatMap(s -> List.of(0.0, 90.0).stream()
                        .map(degrees -> new Motion(degrees, s.points().get(0).minus(start.turned(degrees)))))
                .toList();
    }

    private static boolean drawn(Nest.Nested nested, int size, Motion motion, List<Stroke> strokes) {
        List<Point> meant = motion.apply(run(nested, size));
        return strokes.stream()
                .filter(s ->
                        s.layer().equals(NEST.sizes().get(size)) && s.points().size() == meant.size())
                .anyMatch(s -> IntStream.range(0, meant.size())
                        .allMatch(i -> s.points().get(i).distance(meant.get(i)) < 0.05));
    }

    /** The cut line from the common point. */
    private static List<Point> run(Nest.Nested nested, int size) {
        Piece piece = SIZES.get(size).pattern().piece(nested.name());
        Point anchor = nested.anchors().get(size);
        return PieceDrawing.cutRuns(piece).get(0).stream()
                .map(p -> p.minus(anchor))
                .toList();
    }

    @Test
    void theFirstPageNamesTheSizesAndWhatStops() throws IOException {
        try (PDDocument pdf = pdf("Letter", "seed 2: will not pass.")) {
            PDFTextStripper words = new PDFTextStripper();
            words.setEndPage(1);
            assertThat(words.getText(pdf).replaceAll("\\s+", " "))
                    .contains("Team - for 3 sizes, seed 1 to seed 3")
                    .contains("Each size is a layer of this file")
                    .contains("STOP - do not cut: seed 2: will not pass.");
        }
    }

    @Test
    void aPieceNamesTheClothItIsCutFrom() throws IOException {
        try (PDDocument pdf = pdf("roll 4000 mm")) {
            String words = new PDFTextStripper().getText(pdf);
            assertThat(words).containsOnlyOnce("cloth: Red knit");
            assertThat(words.split("cloth: ", -1)).hasSize(1 + NEST.pieces().size());
        }
    }

    @Test
    void aNameAlongALineIsCutWhereTheNextOnesBegins() {
        assertThat(NestPdf.shown("Cleo", 17)).isEqualTo("Cleo");
        String cut = NestPdf.shown("Under twelve girls, skater 3", 17);
        assertThat("Under twelve girls, skater 3").startsWith(cut);
        assertThat(Letters.width(cut, NestPdf.LETTER)).isGreaterThan(0).isLessThan(17);
    }

    @Test
    void aLayerHoldsWhatIsDrawnInItAndNothingElse() throws IOException {
        Point end = new Point(100, 100);
        try (PdfFile file = new PdfFile("layers")) {
            PdfCanvas page = file.page(200, 200);
            page.in(new SizeLine("A", 0), () -> page.line(Ink.CUT, Point.ORIGIN, end));
            page.in(new SizeLine("B", 1), () -> page.line(Ink.CUT, Point.ORIGIN, end));
            page.line(Ink.CUT, Point.ORIGIN, end);
            try (PDDocument pdf =
                    Loader.loadPDF(file.finished("layers.pdf", "test").bytes())) {
                assertThat(PageReader.strokes(pdf.getPage(0)))
                        .extracting(Stroke::layer)
                        .containsExactly("A", "B", "");
            }
        }
    }

    /** Sheets that show a size and nothing else are sheets too. */
    @Test
    void noSheetOfAnySizeIsLeftOut() throws IOException {
        try (PDDocument pdf = pdf("A4")) {
            for (int size = 0; size < 3; size++) {
                String name = NEST.sizes().get(size);
                double drawn = 0;
                for (int page = 1; page < pdf.getNumberOfPages(); page++) {
                    drawn += PageReader.strokes(pdf.getPage(page)).stream()
                            .filter(s -> s.layer().equals(name) && Math.abs(s.width() - Ink.CUT.width()) < 0.01)
                            .filter(s -> s.points().size() > 2)
                            .mapToDouble(NestPdfTest::shown)
                            .sum();
                }
                Pieces all = new Pieces(size);
                // overlaps show some of a line twice, never less than once
                assertThat(drawn).as(name).isGreaterThan(all.length() * 0.999).isLessThan(all.length() * 1.3);
            }
        }
    }

    private record Pieces(int size) {
        double length() {
            return NEST.pieces().stream().mapToDouble(n -> length(run(n, size))).sum();
        }

        static double length(List<Point> points) {
            double sum = 0;
            for (int i = 1; i < points.size(); i++) {
                sum += points.get(i - 1).distance(points.get(i));
            }
            return sum;
        }
    }

    /** The length of a stroke inside its sheet's clip, by short steps. */
    private static double shown(Stroke stroke) {
        double sum = 0;
        int last = stroke.closed() ? stroke.points().size() : stroke.points().size() - 1;
        for (int i = 0; i < last; i++) {
            Point a = stroke.points().get(i);
            Point b = stroke.points().get((i + 1) % stroke.points().size());
            int steps = (int) Math.ceil(a.distance(b) / 0.25);
            for (int k = 0; k < steps; k++) {
                Point p = a.towards(b, (k + 0.5) / steps);
                boolean in = p.x() >= stroke.clip().minX()
                        && p.x() <= stroke.clip().maxX()
                        && p.y() >= stroke.clip().minY()
                        && p.y() <= stroke.clip().maxY();
                sum += in ? a.distance(b) / steps : 0;
            }
        }
        return sum;
    }
}
