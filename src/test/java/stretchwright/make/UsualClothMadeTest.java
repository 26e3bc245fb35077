package stretchwright.make;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.ground.Document;
import stretchwright.ground.InWords;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;

/** From measures and no cloth to the papers, with the real rooms: it is made, and nothing of it looks proven. */
@Tag("slow")
class UsualClothMadeTest {
    private static MakeFile with(String fabric) throws IOException {
        String text = Files.readString(Path.of("examples/evening-practice.yaml"));
        String other = text.replaceAll("(?s)\nfabric:\n.*?\nboot:", "\nfabric: {" + fabric + "}\nboot:");
        return Make.read("a.yaml", other.getBytes(UTF_8));
    }

    private static List<FitReport.Verdict> ofCloth(FitReport fit) {
        return fit.all().stream()
                .filter(v -> InWords.words(v.about()).equals("cloth"))
                .toList();
    }

    private static String text(Document pdf) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf.bytes())) {
            return new PDFTextStripper().getText(read).replaceAll("\\s+", " ");
        }
    }

    @Test
    void itIsDraftedLaidAndPrintedAsAssumed() throws IOException {
        Made made = Make.run(with("usual: true"), Progress.silent());
        List<FitReport.Verdict> cloth = ofCloth(made.fit());
        assertThat(cloth).hasSize(1);
        assertThat(cloth.get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(InWords.words(cloth.get(0).message().and(cloth.get(0).remedy())))
                .contains("stretch across 50 %", "stretch along 40 %", "usable width 1450", "test pair", "shop card");
        assertThat(made.use().buying().bought()).isBetween(1000.0, 1600.0);
        List<Document> pdfs =
                made.documents().stream().filter(d -> d.name().endsWith(".pdf")).toList();
        assertThat(pdfs).extracting(Document::name).contains("pattern-A4.pdf", "lay.pdf", "fit.pdf");
        for (Document pdf : pdfs) {
            assertThat(text(pdf)).as(pdf.name()).contains("assumed cloth (test pair only)");
        }
    }

    /** Whatever else there is to say is said as it would be of a measured cloth of that stretch and width. */
    @Test
    void itHidesNoOtherVerdict() throws IOException {
        FitReport assumed = Make.run(with("usual: true"), Progress.silent()).fit();
        FitReport measured = Make.run(
                        with("usable width: 1450 mm, stretch across: 50 %, stretch along: 40 %"), Progress.silent())
                .fit();
        assertThat(ofCloth(measured)).isEmpty();
        List<FitReport.Verdict> others = assumed.all().stream()
                .filter(v -> !ofCloth(assumed).contains(v))
                .toList();
        assertThat(others).isEqualTo(measured.all());
        assertThat(assumed.stops()).isEqualTo(measured.stops());
    }

    @Test
    void whereOnlyTheWidthIsAssumedThePatternIsNot() throws IOException {
        Made made =
                Make.run(with("name: Ink, usual: true, stretch across: 60 %, stretch along: 45 %"), Progress.silent());
        assertThat(ofCloth(made.fit())).hasSize(1);
        assertThat(ofCloth(made.fit()).get(0).severity()).isEqualTo(Severity.NOTE);
        for (Document pdf : made.documents()) {
            if (pdf.name().equals("pattern-A4.pdf")) {
                assertThat(text(pdf)).contains("Cloth: Ink,").doesNotContain("test pair");
            }
        }
    }
}
