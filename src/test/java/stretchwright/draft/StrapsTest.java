package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.body.SampleBody;
import stretchwright.fabric.SampleFabric;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;
import stretchwright.pattern.Style;

/** Straps under a boot and under a foot: cut from the measures of what they go round. */
class StrapsTest extends HemStyles {
    /** By hand: 2 (135 - 105) + 60 = 120 mm of way, a tenth off: 108; at each end 30 mm of lap and 30 mm of turn: 228. */
    @Test
    void aStrapUnderTheBootIsElasticCutFromTheBootsMeasures() {
        Style style = style(Hem.OVER_LACES).with(LowerEnd.PLAIN.strap(22));
        Notion strap = small(style).notions().get(0);
        assertThat(strap.worn()).isCloseTo(120, within(0.01));
        assertThat(strap.cut()).isCloseTo(228, within(0.01));
        assertThat(strap.cut() - 2 * strap.ends() - 2 * strap.lap())
                .as("free")
                .isCloseTo(108, within(0.01))
                .isCloseTo(strap.free(), within(0.01));
        assertThat(strap.free() * 1.1111).as("closed").isCloseTo(strap.worn(), within(0.02));
        assertThat(why(small(style), "strap: length")).isEqualTo(strap.cut());
    }

    /** A hem moved down 10 mm on the flat piece, 4 mm of it at the side: that much less is left to the sole on either side. */
    @Test
    void aStrapIsCutForTheHemWhereItWasMoved() {
        Style style = style(Hem.OVER_LACES).with(LowerEnd.PLAIN.strap(22));
        Pattern moved = small(style.with(new Shifts(Map.of(Shift.HEM, 10.0, Shift.SIDE_HEM, 4.0))));
        double taken = 24 / (1 - moved.reductions().along());
        assertThat(moved.notions().get(0).worn()).isCloseTo(120 - taken, within(0.01));
        assertThat(moved.notions().get(0).cut()).isCloseTo(228 - 0.9 * taken, within(0.02));
        Style stirrup = Style.usual(Style.Leg.STIRRUP).with(LowerEnd.PLAIN.strap(40));
        Pattern lower = DraftTest.draft(
                SampleBody.smallAdult(),
                SampleFabric.heavyKnit(),
                Optional.empty(),
                stirrup.with(new Shifts(Map.of(Shift.HEM, 10.0, Shift.SIDE_HEM, 4.0))));
        assertThat(why(lower, "strap: length"))
                .isCloseTo(245.61 - 0.9 * 24 / (1 - lower.reductions().along()), within(0.03));
    }

    /** By hand: hem at 100, foot 243: (200 + 72.9) x 0.9 = 245.6. */
    @Test
    void aStirrupsStrapIsCutFromTheFootsMeasures() {
        Style style = Style.usual(Style.Leg.STIRRUP).with(LowerEnd.PLAIN.strap(40));
        Pattern pattern = DraftTest.draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.empty(), style);
        ReasonsTest.canBeFollowed(pattern);
        Piece strap = pattern.piece(PieceName.of(PieceKind.STRAP));
        assertThat(strap.edge(EdgeName.LOWER_EDGE).length()).isCloseTo(245.61, within(0.02));
        assertThat(strap.edge(EdgeName.RIGHT_END).length()).isCloseTo(80, within(0.01));
        for (EdgeName end : List.of(EdgeName.RIGHT_END, EdgeName.LEFT_END)) {
            assertThat(strap.edge(end).allowance()).as("lap").isEqualTo(15);
        }
        assertThat(strap.edge(EdgeName.LOWER_EDGE).length() * 1.1111).as("on").isCloseTo(272.9, within(0.02));
        assertThat(why(pattern, "strap: length"))
                .isEqualTo(strap.edge(EdgeName.LOWER_EDGE).length());
    }
}
