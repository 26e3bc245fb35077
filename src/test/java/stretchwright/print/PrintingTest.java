package stretchwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Document;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.steps.PlanPdf;
import stretchwright.sewing.SewingPlan.Operation;

class PrintingTest {
    private static final List<Document> A4 = Printing.documents(SampleJob.on("a4"));

    @Test
    void theUsualPapersComeAlwaysAndNoneTwice() {
        assertThat(names(A4))
                .containsExactly(
                        "pattern-A4.pdf",
                        "pattern-Letter.pdf",
                        "pattern.svg",
                        "lay.svg",
                        "lay.pdf",
                        "pattern-projector.pdf",
                        "tracing-sheet.pdf",
                        "sewing-plan.pdf",
                        "sewing-booklet.pdf",
                        "sewing-booklet-a4.pdf",
                        "checklist.html",
                        "step-02.svg",
                        "step-03.svg",
                        "step-04.svg",
                        "step-05.svg",
                        "step-06.svg",
                        "step-07.svg",
                        "step-08.svg",
                        "load.svg",
                        "fit.pdf");
    }

    @Test
    void everyPdfIsForPrintingUnscaledWithItsTypefaceInside() throws IOException {
        for (Document d : A4) {
            if (!d.name().endsWith(".pdf")) {
                continue;
            }
            try (PDDocument pdf = Loader.loadPDF(d.bytes())) {
                assertThat(pdf.getVersion()).isEqualTo(1.6f);
                assertThat(pdf.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                        .isEqualTo("None");
                assertThat(pdf.getDocumentInformation().getTitle()).startsWith("Evening practice");
                assertThat(pdf.getDocumentInformation().getCreationDate()).isNull();
                assertThat(pdf.getNumberOfPages()).isEqualTo(d.pages());
                for (PDPage page : pdf.getPages()) {
                    for (COSName font : page.getResources().getFontNames()) {
                        assertThat(page.getResources().getFont(font).isEmbedded())
                                .isTrue();
                    }
                }
            }
        }
    }

    /** Quotes, markup, another direction of writing, a picture letter, half a letter, control characters, length. */
    @Test
    @Tag("slow")
    void awkwardNamesNeitherBreakNorFlood() throws Exception {
        String make = "\"<b>&'\u05E9\u05DC\u05D5\u05DD \uD83D\uDC57 \uD83D \u0645\u0631\u062D\u0628\u0627\u0000"
                + "x".repeat(10_000);
        for (Document d : Printing.documents(SampleJob.named("A4", make, "\t"))) {
            if (d.name().endsWith(".svg")) {
                assertThat(DrawingsTest.texts(d)).isNotEmpty().allMatch(t -> t.length() < 300);
            } else if (d.name().endsWith(".html")) {
                assertThat(new String(d.bytes(), java.nio.charset.StandardCharsets.UTF_8))
                        .contains("&lt;b&gt;&amp;'")
                        .doesNotContain("\u0000")
                        .doesNotContain("x".repeat(100));
            } else {
                assertThat(text(d)).contains("<b>&'").contains("\u25A1").doesNotContain("x".repeat(100));
            }
        }
    }

    @Test
    void lettersMeasureBreakAndStandIn() {
        assertThat(Letters.shortened("a".repeat(61), 60)).isEqualTo("a".repeat(60) + "\u2026");
        assertThat(Letters.shortened(" \n", 60)).isEqualTo("-");
        assertThat(Letters.printable("ok \uD83D\uDC57!")).isEqualTo("ok \u25A1!");
        assertThat(Letters.printable("\u05D0\u05D1")).isEqualTo("\u05D1\u05D0");
        assertThat(Letters.wrapped("W".repeat(300), 4, 50)).allMatch(l -> Letters.width(l, 4) <= 50);
        assertThat(String.join("", Letters.wrapped("W".repeat(300), 4, 50))).hasSize(300);
    }

    @Test
    void thePlanHoldsEveryStepInElevenPointOrMore() throws IOException {
        Job job = SampleJob.on("A4");
        Document plan = PlanPdf.of(job);
        String all = text(plan).replaceAll("\\s+", " ");
        for (Operation o : job.sewing().operations()) {
            assertThat(all).contains(o.step() + ". " + o.name().word());
        }
        assertThat(all)
                .contains("stitch 514 (four-thread overlock), seam 1.01.01", "overlocker 86 m", "43 minutes")
                .contains("110 \u00B0C at most", "No fabric softener, no bleach", "not a medical device", "no cords")
                .contains("CAUTION: The hem presses with 2.4 kPa");
        List<Float> sizes = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(plan.bytes())) {
            new PDFTextStripper() {
                @Override
                protected void writeString(String words, List<TextPosition> positions) {
                    if (!words.contains("sewing plan, page") && !words.startsWith("Evening practice - for")) {
                        positions.forEach(p -> sizes.add(p.getYScale()));
                    }
                }
            }.getText(pdf);
        }
        assertThat(sizes).isNotEmpty().allMatch(s -> s >= 10.99f);
    }

    private static List<String> names(List<Document> documents) {
        return documents.stream().map(Document::name).toList();
    }

    private static String text(Document d) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(d.bytes())) {
            return new PDFTextStripper().getText(pdf);
        }
    }
}
