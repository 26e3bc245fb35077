package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** Hems on, in and over a boot: where they lie and how wide they are. */
class HemsTest extends HemStyles {
    /** Legs that differ: each end is drawn on its own leg, mirrored right, and sewn edges agree. Invented legs. */
    @ParameterizedTest
    @EnumSource(Hem.class)
    void twoLegsThatDifferEachGetTheirOwnEnd(Hem hem) {
        Body body = TwoLegsTest.body(
                java.util.Map.of(Measure.CALF_GIRTH, 362.0, Measure.ANKLE_GIRTH, 222.0, Measure.HEEL_GIRTH, 312.0),
                java.util.Map.of(Measure.CALF_GIRTH, 344.0, Measure.ANKLE_GIRTH, 210.0, Measure.HEEL_GIRTH, 299.0),
                java.util.Map.of());
        Pattern pattern = DraftTest.draft(
                body,
                SampleFabric.heavyKnit(),
                Optional.of(SampleBoot.withSole(1, Boot.Dressing.LEG_FIRST)),
                style(hem));
        TwoLegsTest.sewn(pattern);
        ReasonsTest.canBeFollowed(pattern);
        ReasonsTest.canBeFollowed(small(style(hem)));
        assertThat(pattern.levels().stream().filter(l -> l.name() == Level.Name.HEM))
                .extracting(Level::leg)
                .containsExactly(WhichLeg.LEFT, WhichLeg.RIGHT);
        if (hem == Hem.OVER_HEEL) {
            assertThat(notch(pattern.piece(PieceName.of(PieceKind.LEG, WhichLeg.LEFT)), NotchName.INSTEP)
                            .x())
                    .isNegative();
            assertThat(notch(pattern.piece(PieceName.of(PieceKind.LEG, WhichLeg.RIGHT)), NotchName.INSTEP)
                            .x())
                    .isPositive();
        }
    }

    /** By hand: ankle bone 65, boot top 80 above it, so a hem to the collar lies 65 + 80 - 25 = 120 over the floor. */
    @Test
    void aHemToTheCollarReachesALungeBelowTheBootTop() {
        Pattern pattern = small(style(Hem.TO_COLLAR));
        double flat = 1 - pattern.reductions().along();
        assertThat(pattern.level(Level.Name.HEM).orElseThrow().height() / flat).isCloseTo(120, within(0.02));
        assertThat(pattern.level(Level.Name.BOOT_TOP).orElseThrow().height() / flat)
                .isCloseTo(145, within(0.02));
    }

    /** By hand: the ankle girth was taken at 100 mm, below 145 - 20: the leg ends there, as wide as an ankle leg. */
    @Test
    void aHemInsideTheBootIsThatOfAnAnkleLeg() {
        Pattern inside = small(style(Hem.INSIDE_BOOT));
        Pattern ankle =
                DraftTest.draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.empty(), DraftTest.ANKLE);
        assertThat(inside.piece(PieceName.of(PieceKind.LEG)).sewLine())
                .isEqualTo(ankle.piece(PieceName.of(PieceKind.LEG)).sewLine());
        assertThat(inside.level(Level.Name.BOOT_TOP)).isEmpty();
    }

    /** The instep is in front, on the side of the front inseam; the heel behind and lower by the whole drop. */
    @Test
    void aHemOverTheHeelIsHighAtTheInstepAndLowAtTheHeel() {
        Pattern pattern = small(style(Hem.OVER_HEEL));
        Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
        Point instep = notch(leg, NotchName.INSTEP);
        Point heel = notch(leg, NotchName.HEEL);
        double middle = (leg.edge(EdgeName.HEM).line().start().x()
                        + leg.edge(EdgeName.HEM).line().end().x())
                / 2;
        assertThat(instep.x()).isLessThan(middle);
        assertThat(heel.x()).isGreaterThan(middle);
        assertThat(instep.y() - heel.y()).isCloseTo(DROP, within(0.05));
        double flat = 1 - pattern.reductions().along();
        assertThat((instep.y() + heel.y()) / 2 / flat).isCloseTo(65 - 105, within(0.05));
        double level = small(style(Hem.OVER_LACES))
                .piece(PieceName.of(PieceKind.LEG))
                .edge(EdgeName.HEM)
                .length();
        assertThat(leg.edge(EdgeName.HEM).length()).as("as long as a level hem").isCloseTo(level, within(0.05));
    }

    /** By hand: a turn of 20 mm, and 20 mm more kept for growth. */
    @Test
    void growthIsKeptInTheTurnedHem() {
        Style style = Style.usual(Style.Leg.ANKLE).with(LowerEnd.PLAIN.growing(20));
        Pattern pattern = DraftTest.draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.empty(), style);
        assertThat(pattern.piece(PieceName.of(PieceKind.LEG)).edge(EdgeName.HEM).allowance())
                .isEqualTo(40);
        assertThat(why(pattern, "leg: length with growth let down") - why(pattern, "leg: length as cut"))
                .isCloseTo(20, within(0.011));
    }

    /** By hand: knee 365: 0.40 x 200 mm more with the knee bent. */
    @Test
    void theBentLegNeedsEightyMillimetresMoreOnAMiddlingKnee() {
        Pattern pattern = small(style(Hem.OVER_LACES));
        assertThat(why(pattern, "leg: length bent") - why(pattern, "leg: length standing"))
                .isCloseTo(80, within(0.011));
        assertThat(why(pattern, "leg: length over the boot")).isCloseTo(185, within(0.02));
    }

    /** Pulled over the laced boot the boot's top is cut wider for what must pass, but not over its girth of 290: it would hang. */
    @Test
    void overTheLacedBootTheNarrowestPlaceOpensButDoesNotHangLoose() {
        double first = bootTop(Boot.Dressing.LEG_FIRST);
        double over = bootTop(Boot.Dressing.OVER_LACED_BOOT);
        assertThat(over).isGreaterThan(first).isLessThanOrEqualTo(290.01);
    }

    private static double bootTop(Boot.Dressing dressing) {
        Pattern pattern = DraftTest.draft(
                SampleBody.smallAdult(),
                SampleFabric.heavyKnit(),
                Optional.of(SampleBoot.withSole(1, dressing)),
                style(Hem.OVER_LACES));
        return pattern.level(Level.Name.BOOT_TOP).orElseThrow().width();
    }
}
