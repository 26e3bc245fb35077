package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Progress;
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

    /** A leg that is longer than the cloth is wide is told by the lay. */
    @Test
    void aLegLongerThanTheClothIsWideIsTold() throws IOException {
        String narrow = text("30", "55", true).replaceAll("usable width: .*", "usable width: 80");
        assertThatThrownBy(() -> made(narrow)).hasMessageContaining("usable width");
    }
}
