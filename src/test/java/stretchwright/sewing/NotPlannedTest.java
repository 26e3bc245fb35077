package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;

/** Seams and pieces that do not go together are findings, never a plan. */
class NotPlannedTest extends PlannedSteps {
    @Test
    void aZeroLengthSeamIsAFindingThatNamesIt() {
        Pattern pair = SampleSewing.withCuff();
        List<Seam> seams = new ArrayList<>(pair.seams());
        seams.set(
                0,
                new Seam(
                        Seam.Role.FRONT_RISE,
                        SeamName.of(SeamKind.FRONT_RISE),
                        List.of(
                                new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.FRONT_CROTCH, 0),
                                new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.FRONT_CROTCH, Double.NaN)),
                        0,
                        7,
                        1));
        Pattern broken = new Pattern(pair.pieces(), seams, pair.levels(), pair.reductions());
        BadInput bad = catchThrowableOfType(BadInput.class, () -> plan(broken, OVERLOCK_AND_COVER));
        assertThat(bad.findings()).hasSize(2).allMatch(f -> f.key().equals("seams.front rise"));
        assertThat(bad.findings().get(0).line()).contains("leg: front crotch").contains("0 mm long");
    }

    @Test
    void aSeamWithoutItsPieceIsAFinding() {
        Pattern pair = SampleSewing.withCuff();
        Pattern bandless = SampleSewing.without(pair, PieceKind.WAISTBAND, pair.seams());
        BadInput bad = catchThrowableOfType(BadInput.class, () -> plan(bandless, OVERLOCK_AND_COVER));
        assertThat(bad.findings()).extracting(f -> f.key()).contains("seams.waistband join", "seams.waistband ends");
    }

    @Test
    void aPieceWithoutASeamAndAPatternWithoutSeamsAreFindings() {
        Pattern pair = SampleSewing.withCuff();
        assertThatThrownBy(() -> plan(
                        new Pattern(
                                pair.pieces(),
                                SampleSewing.withoutWaistband().seams(),
                                pair.levels(),
                                pair.reductions()),
                        OVERLOCK_AND_COVER))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("pieces.waistband");
        assertThatThrownBy(() -> plan(
                        new Pattern(pair.pieces(), List.of(), pair.levels(), pair.reductions()), OVERLOCK_AND_COVER))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("no seam");
    }
}
