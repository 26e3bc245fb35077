package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

class DraftTest {
    static final Style OVER_BOOT = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32));
    static final Style ANKLE = Style.usual(Style.Leg.ANKLE);

    static Pattern draft(Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        Findings findings = new Findings("test");
        Optional<Pattern> pattern = Draft.of(body, fabric, boot, style, findings);
        assertThat(findings.all()).isEmpty();
        return pattern.orElseThrow();
    }

    @Test
    void theSmallAdultKeepsEveryInvariant() {
        Pattern pattern =
                draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), OVER_BOOT);
        Invariants.check("small adult", SampleBody.smallAdult(), pattern);
    }

    /** Common practice, no source: boots of 400 mm round heel and instep open near 13 1/2 in; a quarter inch either way. */
    @Test
    void hemOverABootOf400OpensNearThirteenAndAHalfInches() {
        Pattern pattern =
                draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), OVER_BOOT);
        assertThat(pattern.piece(PieceName.of(PieceKind.LEG)).edge(EdgeName.HEM).length() / 25.4)
                .isCloseTo(13.5, within(0.25));
    }

    /** Common practice, no source: a cuff finished at 1 1/4 in is cut near 3 in high. */
    @Test
    void cuffOfOneAndAQuarterInchIsCutNearThreeInches() {
        Style style = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(31.75));
        Piece cuff = draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), style)
                .piece(PieceName.of(PieceKind.CUFF));
        assertThat(cuff.cutLine().box().height() / 25.4).isCloseTo(3.0, within(0.1));
    }

    /** W4 of the trade values: a body of 960 less 10 % is cut 864. */
    @Test
    void reductionOfTenPercentOff960Is864() {
        double tenPercent = Reducing.reduction(1.0 / 9);
        assertThat(960 * (1 - tenPercent)).isCloseTo(864, within(1e-9));
    }

    /** The hem hangs from the ankle bone, not from the level of the ankle girth. */
    @Test
    void hemLiesWhereTheBootSays() {
        Pattern pattern =
                draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), OVER_BOOT);
        double flat = 1 - pattern.reductions().along();
        Level hem = pattern.level(Level.Name.HEM).orElseThrow();
        assertThat(hem.height()).isCloseTo((65 - 140) * flat, within(0.01));
        Point edge = pattern.piece(PieceName.of(PieceKind.LEG))
                .edge(EdgeName.HEM)
                .line()
                .start();
        assertThat(edge.y()).isCloseTo(hem.height() + 32, within(0.01));
    }

    @Test
    void aWaistLargerThanTheHipDraftsWithABandThatHolds() {
        Body body = SampleBody.with(SampleBody.smallAdult(), Measure.WAIST_GIRTH, 1040);
        Pattern pattern = draft(body, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), OVER_BOOT);
        Invariants.check("waist over hip", body, pattern);
        double band = 2
                * pattern.piece(PieceName.of(PieceKind.WAISTBAND))
                        .edge(EdgeName.LOWER_EDGE)
                        .length();
        assertThat(band)
                .isLessThan(1040)
                .isLessThanOrEqualTo(2
                                * pattern.piece(PieceName.of(PieceKind.LEG))
                                        .edge(EdgeName.WAIST_EDGE)
                                        .length()
                        + 0.02);
    }

    @Test
    void anAnkleLegEndsAtTheAnkleAndLetsTheHeelThrough() {
        Pattern pattern = draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.empty(), ANKLE);
        Invariants.check("ankle", SampleBody.smallAdult(), pattern);
        assertThat(pattern.level(Level.Name.BOOT_TOP)).isEmpty();
        double hem =
                pattern.piece(PieceName.of(PieceKind.LEG)).edge(EdgeName.HEM).length();
        assertThat(hem * (1 + 0.60)).isGreaterThan(305);
    }

    private static String firstKey(Optional<Boot> boot, Style style) {
        Findings findings = new Findings("test");
        assertThat(Draft.of(SampleBody.smallAdult(), SampleFabric.heavyKnit(), boot, style, findings))
                .isEmpty();
        return findings.all().get(0).key();
    }

    @Test
    void aBootSmallerThanTheFootInItIsAFinding() {
        Boot heel = new Boot("skate", 290, 250, 240, 140, 80, false, Boot.Dressing.LEG_FIRST);
        Boot top = new Boot("skate", 130, 400, 385, 140, 80, false, Boot.Dressing.LEG_FIRST);
        assertThat(firstKey(Optional.of(heel), OVER_BOOT)).isEqualTo("boot.heel girth");
        assertThat(firstKey(Optional.of(top), OVER_BOOT)).isEqualTo("boot.top girth");
    }

    @Test
    void aCuffThatSwallowsTheLegOverTheBootIsAFinding() {
        Style tall = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(195));
        assertThat(firstKey(Optional.of(SampleBoot.figure()), tall)).isEqualTo("style.cuff.height");
    }

    @Test
    void aRiseTooLowForTheSeatNamesTheRise() {
        Style low = Style.usual(Style.Leg.OVER_BOOT)
                .with(LowerEnd.cuff(32))
                .with(TopEnd.band(65).dropped(240));
        assertThat(firstKey(Optional.of(SampleBoot.figure()), low)).isEqualTo("style.rise");
    }
}
