package stretchwright.print.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.PageReader;
import stretchwright.print.kit.PageReader.Stroke;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.SampleJob;

/** The printed sheets read back from the file's bytes, as a printer would. */
class TiledPdfTest {
    private static final Map<String, byte[]> MADE = new ConcurrentHashMap<>();
    private static final Pattern PLACE = Pattern.compile("row ([A-Z]+), column (\\d+) of (\\d+)");

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter", "A3", "A0", "roll 914 mm"})
    void everySheetCarriesBothTestSquaresAtTrueScale(String paper) throws IOException {
        try (PDDocument pdf = tiled(paper)) {
            for (PDPage page : pdf.getPages()) {
                assertThat(squares(page, 100, 0.01)).as("100 mm squares").hasSize(1);
                assertThat(squares(page, 101.6, 0.05)).as("4 in squares").hasSize(1);
            }
        }
    }

    /** Of cloth that stretches more along than across the page may not say that most goes round. */
    @Test
    void theFirstPageSaysWhichStretchGoesRound() throws IOException {
        assertThat(firstPage(SampleFabric.with(1470, 0.60, 0.45, true))).contains("most stretch goes AROUND the leg");
        assertThat(firstPage(SampleFabric.with(1470, 0.30, 0.60, true)))
                .contains("the stretch across the cloth goes AROUND the leg")
                .doesNotContain("most stretch");
    }

    private static String firstPage(Fabric fabric) throws IOException {
        Job job = SampleJob.with("A4", "Evening practice", "Rowan", fabric, SampleJob.openLay());
        try (PDDocument pdf = Loader.loadPDF(TiledPdf.of(job, Paper.named("A4")).bytes())) {
            PDFTextStripper words = new PDFTextStripper();
            words.setEndPage(1);
            return words.getText(pdf).replaceAll("\\s+", " ");
        }
    }

    /** Worked example W17: 100 mm are 283.465 points. */
    @Test
    void aHundredMillimetresAre283Point465() throws IOException {
        try (PDDocument pdf = tiled("A4")) {
            Stroke square = squares(pdf.getPage(1), 100, 0.01).get(0);
            assertThat(square.box().width() / 25.4 * 72).isCloseTo(283.465, within(0.001));
        }
    }

    /** The sheets joined by their row and column give the leg back; the formula here is the maker's, not the code's. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter", "A3", "A0"})
    void joinedSheetsGiveTheCutLineOfTheLeg(String paper) throws IOException {
        Job job = SampleJob.on(paper);
        List<Point> cut =
                job.pattern().piece(PieceName.of(PieceKind.LEG)).cutLine().points();
        List<Point> joined = new ArrayList<>();
        List<Point[]> shown = new ArrayList<>();
        try (PDDocument pdf = tiled(paper)) {
            for (int i = 1; i < pdf.getNumberOfPages(); i++) {
                Point corner = placeOfPage(pdf, i);
                for (Stroke s : PageReader.strokes(pdf.getPage(i))) {
                    if (s.closed()
                            && Math.abs(s.width() - 0.5) < 0.01
                            && s.points().size() == cut.size()) {
                        joined = plane(s.points(), corner);
                        shown.addAll(clipped(s, corner));
                    }
                }
            }
        }
        Box drawn = Box.around(shown.stream().flatMap(Stream::of).toList());
        Box asked = job.pattern().piece(PieceName.of(PieceKind.LEG)).cutLine().box();
        assertThat(Math.min(drawn.width(), drawn.height())).isCloseTo(asked.width(), within(0.05));
        assertThat(Math.max(drawn.width(), drawn.height())).isCloseTo(asked.height(), within(0.05));
        for (int k = 0; k < cut.size(); k++) {
            Point a = joined.get(k);
            Point b = joined.get((k + 1) % cut.size());
            assertThat(a.distance(b)).isCloseTo(cut.get(k).distance(cut.get((k + 1) % cut.size())), within(0.05));
            for (double share = 0; share <= 1; share += 0.02) {
                Point p = a.towards(b, share);
                assertThat(shown.stream()
                                .mapToDouble(s -> distance(p, s[0], s[1]))
                                .min()
                                .orElse(99))
                        .as("cut line at %s", p)
                        .isLessThan(0.05);
            }
        }
    }

    /** Rendered by PDFBox at 60 dpi: the outer 10 mm (23.6 pixels) stay white, whatever was drawn. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter"})
    void nothingIsDrawnWithinTenMillimetresOfASheetsEdge(String paper) throws IOException {
        try (PDDocument pdf = tiled(paper)) {
            PDFRenderer renderer = new PDFRenderer(pdf);
            for (int i = 0; i < pdf.getNumberOfPages(); i++) {
                BufferedImage image = renderer.renderImageWithDPI(i, 60, ImageType.GRAY);
                assertThat(darkest(image)).as("page %d has a drawing", i + 1).isLessThan(100);
                int rim = 23;
                int worst = 255;
                for (int x = 0; x < image.getWidth(); x++) {
                    for (int y = 0; y < image.getHeight(); y++) {
                        boolean edge =
                                x < rim || y < rim || x >= image.getWidth() - rim || y >= image.getHeight() - rim;
                        worst = edge ? Math.min(worst, image.getRaster().getSample(x, y, 0)) : worst;
                    }
                }
                assertThat(worst).as("page %d", i + 1).isEqualTo(255);
            }
        }
    }

    @Test
    void diamondsMeetAcrossEveryJoin() throws IOException {
        try (PDDocument pdf = tiled("A4")) {
            List<List<Point>> perPage = new ArrayList<>();
            for (int i = 1; i < pdf.getNumberOfPages(); i++) {
                Point corner = placeOfPage(pdf, i);
                perPage.add(PageReader.strokes(pdf.getPage(i)).stream()
                        .filter(s -> s.closed()
                                && Math.abs(s.box().width() - 8) < 0.01
                                && s.points().size() == 4)
                        .map(s -> s.box().centre().plus(corner))
                        .toList());
            }
            assertThat(perPage).allSatisfy(marks -> assertThat(marks).hasSizeGreaterThanOrEqualTo(5));
            for (List<Point> page : perPage) {
                for (Point mark : page) {
                    assertThat(perPage.stream()
                                    .filter(other -> other != page)
                                    .flatMap(List::stream)
                                    .anyMatch(m -> m.distance(mark) < 0.05))
                            .as("partner of the diamond at %s", mark)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void theSheetsAreFewerThanTheWholePlane() {
        Plane plane = Plane.of(SampleJob.bare(SampleJob.on("A4").pattern()), Paper.named("A4"));
        assertThat(plane.sheets().size()).isLessThan(plane.tiles().sheets());
    }

    @Test
    void piecesOnThePlaneStayApart() {
        for (String paper : List.of("A4", "A0")) {
            List<Plane.Spot> spots = Plane.of(SampleJob.bare(SampleJob.on("A4").pattern()), Paper.named(paper))
                    .spots();
            for (int i = 0; i < spots.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(spots.get(i).shape().distance(spots.get(j).shape()))
                            .isGreaterThan(7.99);
                }
            }
        }
    }

    private static PDDocument tiled(String paper) throws IOException {
        return Loader.loadPDF(
                TiledPdf.of(SampleJob.on("A4"), Paper.named(paper)).bytes());
    }

    private static List<Stroke> squares(PDPage page, double side, double within) {
        Box sheet = new Box(
                0,
                0,
                page.getMediaBox().getWidth() / 72 * 25.4,
                page.getMediaBox().getHeight() / 72 * 25.4);
        return PageReader.strokes(page).stream()
                .filter(s -> s.closed() && s.points().size() == 4 && s.grey() > 0.4)
                .filter(s -> Math.abs(s.box().width() - side) < within
                        && Math.abs(s.box().height() - side) < within)
                .filter(s -> s.box().minX() >= 10 && s.box().maxX() <= sheet.maxX() - 10)
                .filter(s -> s.box().minY() >= 10 && s.box().maxY() <= sheet.maxY() - 10)
                .toList();
    }

    /** Where the sheet's lower left corner lies when all sheets are joined, y counted down from the top row. */
    static Point placeOfPage(PDDocument pdf, int index) throws IOException {
        PDFTextStripper text = new PDFTextStripper();
        text.setStartPage(index + 1);
        text.setEndPage(index + 1);
        Matcher place = PLACE.matcher(text.getText(pdf));
        assertThat(place.find()).as("the sheet says where it belongs").isTrue();
        double width = pdf.getPage(index).getMediaBox().getWidth() / 72 * 25.4;
        double height = pdf.getPage(index).getMediaBox().getHeight() / 72 * 25.4;
        int row = place.group(1).charAt(0) - 'A';
        int column = Integer.parseInt(place.group(2)) - 1;
        return new Point(column * (width - 30), -row * (height - 30));
    }

    private static List<Point> plane(List<Point> points, Point corner) {
        return points.stream().map(p -> p.plus(corner)).toList();
    }

    /** What of the line is to be seen on its sheet, cut at the printable area by halving: a plain slow way. */
    private static List<Point[]> clipped(Stroke s, Point corner) {
        List<Point[]> out = new ArrayList<>();
        for (int k = 0; k < s.points().size(); k++) {
            seen(s.points().get(k), s.points().get((k + 1) % s.points().size()), s.clip(), corner, out);
        }
        return out;
    }

    private static void seen(Point a, Point b, Box clip, Point corner, List<Point[]> out) {
        if (inside(a, clip) && inside(b, clip)) {
            out.add(new Point[] {a.plus(corner), b.plus(corner)});
        } else if (a.distance(b) > 0.02) {
            Point middle = a.towards(b, 0.5);
            seen(a, middle, clip, corner, out);
            seen(middle, b, clip, corner, out);
        }
    }

    private static boolean inside(Point p, Box box) {
        return p.x() >= box.minX() && p.x() <= box.maxX() && p.y() >= box.minY() && p.y() <= box.maxY();
    }

    private static double distance(Point p, Point a, Point b) {
        Point d = b.minus(a);
        double share = d.dot(d) == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(d) / d.dot(d)));
        return p.distance(a.towards(b, share));
    }

    private static int darkest(BufferedImage image) {
        int worst = 255;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                worst = Math.min(worst, image.getRaster().getSample(x, y, 0));
            }
        }
        return worst;
    }
}
