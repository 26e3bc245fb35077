package stretchwright.print.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.print.kit.HelpedJob;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.PageReader;
import stretchwright.print.kit.SampleJob;
import stretchwright.sewing.SewingPlan.Operation;

class BookletTest {
    private static final double MM = 25.4 / 72;
    private static final Job JOB = HelpedJob.job();
    private static final StepWords WORDS = StepWords.of(JOB);
    private static final Document PAGES = BookletPdf.pages(JOB);

    /** A sheet as it lies: its front (left, right) and the back behind it (behind left, behind right). */
    private record Sheet(int left, int right, int behindLeft, int behindRight) {}

    /**
     * Folded by hand: the sheets lie on each other, fronts down, are folded so that the halves meet, and the leaves are
     * turned one by one from the first. The back of a sheet that is turned over its short edge: behind the right half
     * of the front lies the left half of the back.
     */
    private static List<Integer> folded(List<Imposition.Side> sides) {
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < sides.size(); i += 2) {
            Imposition.Side front = sides.get(i);
            Imposition.Side back = sides.get(i + 1);
            sheets.add(new Sheet(front.left(), front.right(), back.right(), back.left()));
        }
        List<Integer> read = new ArrayList<>();
        for (Sheet sheet : sheets) {
            read.add(sheet.right());
            read.add(sheet.behindRight());
        }
        for (int i = sheets.size() - 1; i >= 0; i--) {
            read.add(sheets.get(i).behindLeft());
            read.add(sheets.get(i).left());
        }
        return read;
    }

    @Test
    void foldedItReadsFromFirstToLast() {
        assertThat(Imposition.sides(8))
                .containsExactly(
                        new Imposition.Side(8, 1),
                        new Imposition.Side(2, 7),
                        new Imposition.Side(6, 3),
                        new Imposition.Side(4, 5));
        for (int pages = 1; pages <= 61; pages++) {
            int all = Imposition.padded(pages);
            assertThat(all).isBetween(pages, pages + 3).matches(n -> n % 4 == 0);
            List<Integer> read = folded(Imposition.sides(pages));
            assertThat(read).hasSize(all);
            for (int i = 0; i < all; i++) {
                assertThat(read.get(i)).isEqualTo(i + 1);
            }
        }
    }

    @Test
    void everyStepStandsOnOnePageWithAllThatHelps() throws IOException {
        List<String> pages = texts(PAGES);
        for (Operation o : JOB.sewing().operations()) {
            List<String> with = pages.stream()
                    .filter(p -> p.contains(" " + WORDS.title(o) + " On: "))
                    .toList();
            assertThat(with).as(o.name().word()).hasSize(1);
            assertThat(with.get(0))
                    .contains("stitch length 2.5 mm, stretch needle 75/11", "Allowance: 7 mm.", "stretch the cuff")
                    .contains("Often goes wrong: the lower", "To undo: unpick 50 mm", "Why here: after step 1, the")
                    .contains("deep squat: the seam is drawn 42 %; the stitch stands 30 % - it breaks.")
                    .contains(WORDS.check(o), WORDS.instruction(o));
        }
        assertThat(pages.get(0)).contains("Evening practice", "Rowan", "43 minutes", "some 95", "overlocker: 86 m");
        String end = String.join(" ", pages.subList(pages.size() - 3, pages.size()));
        Troubles.rows().forEach(r -> assertThat(end).contains(r.first()));
        assertThat(end).contains("one thing at a time", "Settings that worked", "common practice, no source");
    }

    /** Two steps share a page only where both are short: a heading, a few words and no drawing. */
    @Test
    void aStepWithADrawingHasItsPageForItself() throws IOException {
        Job bare = SampleJob.on("A4");
        List<String> pages = texts(BookletPdf.pages(bare));
        for (Operation o : bare.sewing().operations()) {
            if (StepDrawing.shows(bare, o)) {
                assertThat(pages)
                        .filteredOn(p -> p.contains(WORDS.title(o) + " On:"))
                        .allMatch(p -> p.split(" On: ").length == 2);
            }
        }
    }

    @Test
    void nothingIsSaidOfWhatIsEmpty() throws IOException {
        String all = String.join(" ", texts(BookletPdf.pages(SampleJob.on("A4"))));
        assertThat(all).doesNotContain("Often goes wrong", "To undo", "Why here", "Allowance:", "Spread", "Set,");
        String plan = String.join(" ", texts(PlanPdf.of(JOB)));
        assertThat(plan)
                .contains("Often goes wrong: the lower", "To undo: unpick", "Why here: after step 1", "it breaks");
        assertThat(String.join(" ", texts(PlanPdf.of(SampleJob.on("A4")))))
                .doesNotContain("Often goes wrong", "To undo", "Why here", "Allowance:");
    }

    @Test
    void thePapersAreThoseOfTheJob() throws IOException {
        sized(PAGES, 148, 210);
        sized(BookletPdf.imposed(JOB), 297, 210);
        Document letter = BookletPdf.imposed(SampleJob.on("Tabloid"));
        assertThat(letter.name()).isEqualTo("sewing-booklet-letter.pdf");
        sized(letter, 279.4, 215.9);
        assertThat(BookletPdf.imposed(SampleJob.on("roll 914 mm")).name()).isEqualTo("sewing-booklet-a4.pdf");
        assertThat(BookletPdf.imposed(JOB).pages()).isEqualTo(Imposition.padded(PAGES.pages()) / 2);
    }

    private static void sized(Document d, double width, double height) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(d.bytes())) {
            for (PDPage page : pdf.getPages()) {
                assertThat(page.getMediaBox().getWidth() * MM).isCloseTo(width, within(0.01));
                assertThat(page.getMediaBox().getHeight() * MM).isCloseTo(height, within(0.01));
            }
        }
    }

    /** Letters and lines, on single pages and on sheets of both papers; letters of 11 pt and more. */
    @Test
    void nothingComesNearAnEdgeAndAllIsLargeEnough() throws IOException {
        for (Document d : List.of(
                PAGES,
                BookletPdf.imposed(JOB),
                BookletPdf.imposed(HelpedJob.with(SampleJob.on("Letter"), HelpedJob.HELP)))) {
            try (PDDocument pdf = Loader.loadPDF(d.bytes())) {
                for (PDPage page : pdf.getPages()) {
                    Box room = new Box(
                                    0,
                                    0,
                                    page.getMediaBox().getWidth() * MM,
                                    page.getMediaBox().getHeight() * MM)
                            .grown(-9.99);
                    for (PageReader.Stroke s : PageReader.strokes(page)) {
                        assertThat(s.points()).as(d.name()).allMatch(p -> inside(room, p.x(), p.y()));
                    }
                }
                new PDFTextStripper() {
                    @Override
                    protected void writeString(String words, List<TextPosition> positions) {
                        for (TextPosition t : positions) {
                            assertThat(t.getYScale()).as(words).isGreaterThan(10.99f);
                            double y = t.getPageHeight() * MM - t.getY() * MM;
                            double x = t.getX() * MM;
                            double right = x + t.getWidth() * MM;
                            Box room = new Box(0, 0, t.getPageWidth() * MM, t.getPageHeight() * MM).grown(-9.99);
                            assertThat(inside(room, x, y) && inside(room, right, y + 0.7 * t.getYScale() * MM))
                                    .as(d.name() + ": " + words)
                                    .isTrue();
                        }
                    }
                }.getText(pdf);
            }
        }
    }

    private static boolean inside(Box room, double x, double y) {
        return x >= room.minX() && x <= room.maxX() && y >= room.minY() && y <= room.maxY();
    }

    @Test
    void theSameJobGivesTheSameBytes() {
        assertThat(BookletPdf.pages(HelpedJob.job())).isEqualTo(PAGES);
        assertThat(BookletPdf.imposed(HelpedJob.job())).isEqualTo(BookletPdf.imposed(JOB));
    }

    private static List<String> texts(Document d) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(d.bytes())) {
            for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(i);
                stripper.setEndPage(i);
                pages.add(" " + stripper.getText(pdf).replaceAll("\\s+", " "));
            }
        }
        return pages;
    }
}
