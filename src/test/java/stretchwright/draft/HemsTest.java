package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** Hems on and in a boot, straps, covers, over bodies and boots drawn at random; and what contradicts itself. */
class HemsTest {
    private static final double DROP = 40;

    static Style style(Hem hem) {
        return Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.hem(hem, hem == Hem.OVER_HEEL ? DROP : 0));
    }

    private static Boot boot(Body body, Boot.Dressing dressing) {
        return SampleBoot.withSole(body.mm(Measure.HEEL_GIRTH) / 305, dressing);
    }

    private static Pattern small(Style style) {
        Boot boot = SampleBoot.withSole(1, Boot.Dressing.LEG_FIRST);
        return DraftTest.draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(boot), style);
    }

    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Hem.class)
    void everyBodyKeepsEveryInvariantWithEveryHem(Hem hem) {
        for (double stretch : new double[] {0.20, 0.60, 1.00}) {
            for (int seed = 1; seed <= 150; seed++) {
                String who = hem + " seed " + seed + " stretch " + stretch;
                Body body = SampleBody.random(seed);
                Boot boot = boot(body, Boot.Dressing.values()[seed % 2]);
                // a child's small boot has no room for an adult's slope
                double scale = body.mm(Measure.HEEL_GIRTH) / 305;
                Style style = Style.usual(Style.Leg.OVER_BOOT)
                        .with(LowerEnd.hem(hem, hem == Hem.OVER_HEEL ? 0.75 * DROP * Math.min(1, scale) : 0));
                Findings findings = new Findings(who);
                Optional<Pattern> pattern = Draft.of(
                        body,
                        SampleFabric.with(1470, stretch, stretch * 0.75, true),
                        Optional.of(boot),
                        style,
                        findings);
                assertThat(findings.all()).as(who).isEmpty();
                Invariants.check(who, body, pattern.orElseThrow());
                reasonsAreDrawn(who, pattern.orElseThrow());
            }
        }
    }

    @Tag("slow")
    @Test
    void everyBodyKeepsEveryInvariantWithAStirrup() {
        Style style = Style.usual(Style.Leg.STIRRUP).with(LowerEnd.PLAIN.strap(40));
        for (int seed = 1; seed <= 200; seed++) {
            Body body = SampleBody.random(seed);
            Pattern pattern = DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.empty(), style);
            Invariants.check("stirrup seed " + seed, body, pattern);
            reasonsAreDrawn("seed " + seed, pattern);
        }
    }

    /** Each reason of a dimension that is drawn gives the drawn number. */
    private static void reasonsAreDrawn(String who, Pattern pattern) {
        double flat = 1 - pattern.reductions().along();
        assertThat(why(pattern, "leg: hem height"))
                .as(who)
                .isCloseTo(
                        pattern.level(Level.Name.HEM)
                                .filter(l -> pattern.seam(Seam.Role.COVER_JOIN).isEmpty())
                                .map(Level::height)
                                .orElse(pattern.piece(PieceName.of(PieceKind.LEG))
                                        .edge(EdgeName.HEM)
                                        .line()
                                        .start()
                                        .y()),
                        within(0.02));
        double crotch = pattern.piece(PieceName.of(PieceKind.LEG))
                .edge(EdgeName.FRONT_INSEAM)
                .line()
                .start()
                .y();
        double hem = pattern.level(Level.Name.HEM).orElseThrow().height();
        assertThat(why(pattern, "leg: length as cut")).as(who).isCloseTo(crotch - hem, within(0.03));
        assertThat(why(pattern, "leg: length standing")).as(who).isCloseTo((crotch - hem) / flat, within(0.03));
        if (pattern.reasons().stream().anyMatch(r -> r.dimension().word().equals("leg: hem drop"))) {
            List<Double> y = pattern.piece(PieceName.of(PieceKind.LEG)).edge(EdgeName.HEM).line().points().stream()
                    .map(Point::y)
                    .toList();
            assertThat(why(pattern, "leg: hem drop"))
                    .isCloseTo(java.util.Collections.max(y) - java.util.Collections.min(y), within(0.05));
        }
    }

    private static double why(Pattern pattern, String dimension) {
        return pattern.reasons().stream()
                .filter(r -> r.dimension().word().equals(dimension))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no reason for " + dimension))
                .mm();
    }

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

    private static Point notch(Piece piece, NotchName name) {
        return piece.notches().stream()
                .filter(n -> n.name() == name)
                .map(Notch::at)
                .findFirst()
                .orElseThrow();
    }

    /** By hand: sole 2 (270 - 95) + pi 95 = 648.45 round; less 10.71 % and halved 289.5; 80 - 25 + 135 - 8 = 182 high. */
    @Test
    void aCoverGoesHalfWayRoundTheSoleAndUpToTheLeg() {
        Pattern pattern = small(style(Hem.WHOLE_BOOT));
        Piece cover = pattern.piece(PieceName.of(PieceKind.BOOT_COVER));
        assertThat(cover.cut()).isEqualTo(4);
        assertThat(cover.edge(EdgeName.LOWER_EDGE).length()).isCloseTo(648.45 / 2 / 1.12, within(0.05));
        double flat = 1 - pattern.reductions().along();
        assertThat(cover.edge(EdgeName.BACK_EDGE).length()).isCloseTo(182 * flat, within(0.02));
        assertThat(cover.edge(EdgeName.UPPER_EDGE).length())
                .isCloseTo(
                        pattern.piece(PieceName.of(PieceKind.LEG))
                                        .edge(EdgeName.HEM)
                                        .length()
                                / 2,
                        within(0.02));
    }

    /** The way round heel and instep is that of the boot, where a smooth front can be brought to it, else the nearest. */
    @Test
    void theCoverIsAsWideRoundHeelAndInstepAsTheBoot() {
        Point collar = new Point(-134, 173);
        Point toe = new Point(-289, 0);
        for (double half : new double[] {185, 190, 200}) {
            assertThat(CoverFront.nearest(CoverFront.between(collar, toe, half), Point.ORIGIN))
                    .isCloseTo(half, within(0.01));
        }
        assertThat(CoverFront.nearest(CoverFront.between(collar, toe, 150), Point.ORIGIN))
                .isCloseTo(CoverFront.nearest(CoverFront.between(collar, toe, 160), Point.ORIGIN), within(0.01))
                .isGreaterThan(160);
    }

    /** The leg's front edge turns neither way twice, and each half is upright where it is joined. */
    @Test
    void theCoversFrontIsSmoothAndUprightAtBothEnds() {
        Path front = small(style(Hem.WHOLE_BOOT))
                .piece(PieceName.of(PieceKind.BOOT_COVER))
                .edge(EdgeName.FRONT_EDGE)
                .line();
        for (double along : new double[] {0, front.length()}) {
            assertThat(Math.abs(front.directionAt(along).x())).isLessThan(0.06);
        }
        for (int i = 1; i < front.points().size(); i++) {
            assertThat(front.points().get(i).y())
                    .isLessThan(front.points().get(i - 1).y());
            assertThat(front.points().get(i).x())
                    .isLessThanOrEqualTo(front.points().get(i - 1).x());
        }
    }

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

    @Tag("slow")
    @Test
    void aMillimetreOnOneMeasureMovesNoPointByMoreThanFiveOnAnyHem() {
        double worst = 0;
        for (Hem hem : Hem.values()) {
            for (int seed = 1; seed <= 25; seed++) {
                Body body = SampleBody.random(seed);
                Boot boot = boot(body, Boot.Dressing.LEG_FIRST);
                Style style = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.hem(hem, hem == Hem.OVER_HEEL ? 25 : 0));
                Pattern before = DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.of(boot), style);
                for (Measure measure : Measure.values()) {
                    Body other = SampleBody.with(body, measure, body.mm(measure) + 1);
                    Pattern after = DraftTest.draft(other, SampleFabric.heavyKnit(), Optional.of(boot), style);
                    worst = Math.max(worst, DraftPropertyTest.moved(before, after));
                    assertThat(worst)
                            .as(hem + " seed " + seed + ", " + measure.term())
                            .isLessThanOrEqualTo(5);
                }
            }
        }
        System.out.printf("continuity over all hems: worst %.2f mm%n", worst);
    }
}
