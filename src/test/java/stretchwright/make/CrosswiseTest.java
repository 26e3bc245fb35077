package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Box;
import stretchwright.ground.Progress;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;

/** Pieces cut crosswise, from the make file to the cloth. */
class CrosswiseTest {
    private static String text(String across, String along, boolean crosswise) throws IOException {
        String text = Files.readString(Path.of("examples", "ankle-length.yaml"))
                .replaceAll("stretch across: .*", "stretch across: " + across + " %")
                .replaceAll("stretch along: .*", "stretch along: " + along + " %");
        return crosswise ? text.replace("style:", "style:\n  lay: {crosswise: true}") : text;
    }

    private static Made made(String text) {
        MakeFile make = Make.read("crosswise.yaml", text.getBytes(StandardCharsets.UTF_8));
        return Make.run(make, Progress.silent());
    }

    /** Cut crosswise from cloth of 30 and 55 %, the legs are those of cloth of 55 and 30 %: drawn alike, judged alike. */
    @Tag("slow")
    @Test
    void theLegsAreThoseOfTheTurnedCloth() throws IOException {
        Made crosswise = made(text("30", "55", true));
        Made turned = made(text("55", "30", false));
        PieceName leg = PieceName.of(PieceKind.LEG);
        assertThat(crosswise.pattern().piece(leg).cutLine())
                .isEqualTo(turned.pattern().piece(leg).cutLine());
        assertThat(crosswise.fit().levels()).isEqualTo(turned.fit().levels());
        assertThat(crosswise.make().fabric().test().stretchAcross()).isEqualTo(0.55);
        assertThat(crosswise.make().cloth().test().stretchAcross()).isEqualTo(0.30);
    }

    /** The arrow runs across every piece, and every piece lies on the cloth with its arrow along the selvage, whole. */
    @Tag("slow")
    @Test
    void theGrainRunsAcrossThePiecesAndAlongTheCloth() throws IOException {
        Made made = made(text("30", "55", true));
        for (Piece piece : made.pattern().pieces()) {
            assertThat(piece.grain().from().y())
                    .as(piece.name().word())
                    .isEqualTo(piece.grain().to().y());
        }
        double area = 0;
        for (Piece piece : made.lays().get(0).pieces()) {
            assertThat(piece.grain().from().x())
                    .as(piece.name().word())
                    .isEqualTo(piece.grain().to().x());
            assertThat(piece.onFold()).isFalse();
            area += piece.clothArea();
        }
        assertThat(area)
                .isCloseTo(
                        made.pattern().pieces().stream()
                                .mapToDouble(Piece::clothArea)
                                .sum(),
                        within(1.0));
        Piece leg = made.lays().get(0).pieces().stream()
                .filter(p -> p.name().is(PieceKind.LEG))
                .findFirst()
                .orElseThrow();
        assertThat(leg.cutLine().box().maxX() - leg.cutLine().box().minX())
                .isGreaterThan(leg.cutLine().box().maxY() - leg.cutLine().box().minY());
        assertThat(made.lay().length()).isGreaterThan(0);
    }

    private static String words(Made made, String file) {
        return made.documents().stream()
                .filter(f -> f.name().equals(file))
                .map(f -> new String(f.bytes(), StandardCharsets.UTF_8))
                .findFirst()
                .orElseThrow();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    /** What is told of the cloth is told as it lies on the table, turned pieces or not. */
    @Tag("slow")
    @Test
    void theClothIsToldAsItLies() throws IOException {
        Made made = made(text("110", "60", true));
        assertThat(made.fit().verdicts())
                .extracting(v -> Voice.of(Unit.CM).say(v.message()))
                .anyMatch(m -> m.startsWith("Cut crosswise, this cloth has 60 % round the leg and 110 % along it"))
                .noneMatch(m -> m.contains("110 % along the selvage"));
        assertThat(words(made, "lay.svg"))
                .contains("the stretch along the cloth goes AROUND the leg")
                .doesNotContain("stretch across the cloth");
        assertThat(words(made, "pattern.svg"))
                .contains("stretch: across 110 %, along 60 %")
                .contains("stretch along the cloth")
                .doesNotContain("stretch across the cloth");
    }

    /** The map of the sheets has the leg measured along its grain, which runs across it. */
    @Tag("slow")
    @Test
    void theMapMeasuresAlongTheGrain() throws IOException {
        Made made = made(text("110", "60", true));
        Box leg = made.pattern().piece(PieceName.of(PieceKind.LEG)).cutLine().box();
        byte[] pdf = made.documents().stream()
                .filter(f -> f.name().startsWith("pattern-"))
                .findFirst()
                .orElseThrow()
                .bytes();
        assertThat(text(pdf).replaceAll("\\s+", " "))
                .contains("stretch across 110 %, along 60 %")
                .contains(
                        Math.round(leg.width() * 10) / 10.0 + " mm (" + Math.round(leg.width()) / 10.0 + " cm) along");
    }

    /** A leg that is longer than the cloth is wide is told by the lay. */
    @Test
    void aLegLongerThanTheClothIsWideIsTold() throws IOException {
        String narrow = text("30", "55", true).replaceAll("usable width: .*", "usable width: 80");
        assertThatThrownBy(() -> made(narrow)).hasMessageContaining("usable width");
    }
}
