package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Legs;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.body.Side;
import stretchwright.body.Stance;
import stretchwright.body.Value;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Names;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.WhichLeg;

/** Parts of the leg: single cases, two legs, continuity. Invented bodies. */
class PartsTest extends PartStyles {
    private static Pattern draft(Body body, Parts parts) {
        return DraftTest.draft(
                body, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), DraftTest.OVER_BOOT.with(parts));
    }

    private static Pattern styled(Style style) {
        return DraftTest.draft(ADULT, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), style);
    }

    /**
     * By hand: hip 961 and waist 742 at a strain of 0.15: H = 417.8; centre seams take 14.3 + 37.6; the side may take
     * 0.05 H = 20.9 at each edge, and (top edge - 1.03 band) / 4 where that is less.
     */
    @Test
    void aShapedSideSeamTakesInWhatTheBandWouldHaveTo() {
        Pattern plain = draft(ADULT, Parts.PLAIN);
        Pattern shaped = draft(ADULT, SEAM);
        double band = 2
                * plain.piece(PieceName.of(PieceKind.WAISTBAND))
                        .edge(EdgeName.LOWER_EDGE)
                        .length();
        double before = 2
                * plain.piece(PieceName.of(PieceKind.LEG))
                        .edge(EdgeName.WAIST_EDGE)
                        .length();
        double after = 2
                * (shaped.piece(PieceName.of(PieceKind.FRONT_LEG))
                                .edge(EdgeName.WAIST_EDGE)
                                .length()
                        + shaped.piece(PieceName.of(PieceKind.BACK_LEG))
                                .edge(EdgeName.WAIST_EDGE)
                                .length());
        double taken = shaped.reasons().stream()
                .filter(r -> r.dimension().word().endsWith("side take-in"))
                .findFirst()
                .orElseThrow()
                .mm();
        assertThat(taken).isCloseTo(Math.min((before - 1.03 * band) / 4, 20.89), within(0.05));
        // the waist edge is drawn anew and a little more hollow
        assertThat(before - after).isCloseTo(4 * taken, within(6.0));
        assertThat(band / after).isBetween(0.90, 0.985);
        assertThat(2
                        * shaped.piece(PieceName.of(PieceKind.WAISTBAND))
                                .edge(EdgeName.LOWER_EDGE)
                                .length())
                .isCloseTo(band, within(0.02));
    }

    @Test
    void aWaistLargerThanTheHipGivesAStraightSideSeam() {
        Pattern pattern = draft(SampleBody.with(ADULT, Measure.WAIST_GIRTH, 1040), SEAM);
        Edge side = pattern.piece(PieceName.of(PieceKind.FRONT_LEG)).edge(EdgeName.SIDE_EDGE);
        assertThat(side.line().end().x()).isEqualTo(side.line().start().x());
    }

    /** By hand: L 150, W 60: reach = sqrt(75 squared + 0.75 x 30 squared) = 79.4; the curves grow by 8.8 before the cut. */
    @Test
    void aGussetKeepsTheCrotchSeamAndGivesRoom() {
        Parts.Gusset g = new Parts.Gusset(150, 60);
        Pattern plain = draft(ADULT, Parts.PLAIN);
        Pattern pattern = draft(ADULT, Parts.PLAIN.with(g));
        assertThat(GussetCut.reach(g)).isCloseTo(79.37, within(0.01));
        Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
        double through = leg.edge(EdgeName.FRONT_CROTCH).length()
                + 150
                + leg.edge(EdgeName.BACK_CROTCH).length();
        Piece was = plain.piece(PieceName.of(PieceKind.LEG));
        assertThat(through)
                .isCloseTo(
                        was.edge(EdgeName.FRONT_CROTCH).length()
                                + was.edge(EdgeName.BACK_CROTCH).length(),
                        within(0.5));
        assertThat(leg.edge(EdgeName.FRONT_GUSSET_EDGE).length())
                .isCloseTo(
                        pattern.piece(PieceName.of(PieceKind.GUSSET))
                                .edge(EdgeName.LEFT_FRONT_EDGE)
                                .length(),
                        within(0.05));
        double room = pattern.reasons().stream()
                .filter(r -> r.dimension().word().equals("leg: room from the gusset"))
                .findFirst()
                .orElseThrow()
                .mm();
        double inseam = was.edge(EdgeName.FRONT_INSEAM).length()
                - leg.edge(EdgeName.FRONT_INSEAM).length();
        assertThat(room).isCloseTo(60 - 2 * inseam, within(1.0)).isGreaterThan(20);
    }

    @Test
    void aPanelIsAsWideAsAskedFromWaistToHem() {
        Piece panel = draft(ADULT, Parts.PLAIN.withPanel(60)).piece(PieceName.of(PieceKind.SIDE_PANEL));
        assertThat(panel.edge(EdgeName.HEM).length()).isEqualTo(60);
        assertThat(panel.sewLine().box().width()).isEqualTo(60);
        assertThat(panel.cut()).isEqualTo(2);
    }

    /** By hand: knee 460 x 0.95 = 437, zone 0.45 of it = 196.6; 4 % of it, 7.86 each; front longer than back by 15.7. */
    @Test
    void kneeShapingMakesTheFrontLongerThanTheBackWithinTheReduction() {
        Pattern plain = draft(ADULT, SEAM);
        Pattern pattern = draft(ADULT, SEAM.withKneeShaping());
        double front = pattern.piece(PieceName.of(PieceKind.FRONT_LEG))
                .edge(EdgeName.SIDE_EDGE)
                .length();
        double back = pattern.piece(PieceName.of(PieceKind.BACK_LEG))
                .edge(EdgeName.SIDE_EDGE)
                .length();
        assertThat(front - back).isCloseTo(15.73, within(0.1));
        assertThat(front
                        - plain.piece(PieceName.of(PieceKind.FRONT_LEG))
                                .edge(EdgeName.SIDE_EDGE)
                                .length())
                .isCloseTo(7.86, within(0.1));
        Seam inseam = pattern.seam(Seam.Role.INSEAM).orElseThrow();
        assertThat(inseam.ease()).isCloseTo(-15.73, within(0.75));
        // never slack: the front over the knee stays shorter than the body there
        double flat = 1 - pattern.reductions().along();
        assertThat(196.6 + 7.86).isLessThan(196.6 / flat);
    }

    /** A pad of 13 mm adds 1.5 x 13 each: two at the hip 39 mm; a knee has its own. */
    @Test
    void padsAreAddedToTheGirthBeforeTheReduction() {
        Pattern plain = draft(ADULT, Parts.PLAIN);
        Pattern hips = draft(ADULT, with(Parts.PLAIN, Pocket.Kind.HIP_PAD, 100, 120, 13));
        Pattern knees = draft(ADULT, with(Parts.PLAIN, Pocket.Kind.KNEE_PAD, 100, 120, 13));
        double tight = 1 - plain.reductions().across();
        assertThat(width(hips, Level.Name.HIP) - width(plain, Level.Name.HIP)).isCloseTo(39 * tight, within(0.5));
        assertThat(width(knees, Level.Name.KNEE) - width(plain, Level.Name.KNEE))
                .isBetween(10.0, 19.5 * tight + 0.5);
    }

    private static double width(Pattern pattern, Level.Name name) {
        return pattern.level(name).orElseThrow().width();
    }

    @Test
    void aPadsPocketIsThePadAndFiveMillimetres() {
        Piece pocket = draft(ADULT, with(Parts.PLAIN, Pocket.Kind.KNEE_PAD, 100, 120, 5))
                .piece(PieceName.of(PieceKind.KNEE_PAD_POCKET));
        assertThat(pocket.edge(EdgeName.LOWER_EDGE).length()).isEqualTo(105);
        assertThat(pocket.edge(EdgeName.LEFT_EDGE).length()).isEqualTo(125);
        assertThat(pocket.cut()).isEqualTo(2);
    }

    /** What the sewing plan names on the top of a leg in one piece is there on a leg in parts as well. */
    @Test
    void partsKeepTheCasingAndTheDart() {
        TopEnd casing = new TopEnd(0, 0, 0, TopEnd.Band.casing(25), TopEnd.BackShape.PLAIN);
        for (Parts parts : List.of(SEAM, Parts.PLAIN.withPanel(60), SEAM.withKneeShaping())) {
            for (Piece part :
                    styled(DraftTest.OVER_BOOT.with(parts).with(casing)).pieces()) {
                if (part.edges().stream().anyMatch(e -> e.name() == EdgeName.WAIST_EDGE)) {
                    assertThat(part.edge(EdgeName.WAIST_EDGE).turned())
                            .as(part.name().word())
                            .isTrue();
                    assertThat(part.marks())
                            .extracting(m -> m.name())
                            .contains(MarkName.FOLD_THE_CASING_DOWN_ALONG_HERE, MarkName.ROW_THAT_CLOSES_THE_CASING);
                }
            }
        }
        TopEnd darts = new TopEnd(0, 0, 0, TopEnd.Band.straight(60), TopEnd.BackShape.DARTS);
        for (Parts parts : List.of(Parts.PLAIN.withPanel(60), Parts.PLAIN.with(new Parts.Gusset(120, 50)))) {
            Pattern pattern = styled(DraftTest.OVER_BOOT.with(parts).with(darts));
            Piece back = pattern.pieces().stream()
                    .filter(p -> p.has(EdgeName.DART_BACK_LEG))
                    .findFirst()
                    .orElseThrow();
            assertThat(back.marks()).extracting(m -> m.name()).contains(MarkName.FOLD_THE_DART);
            Point mouth = back.marks().stream()
                    .filter(m -> m.name() == MarkName.FOLD_THE_DART)
                    .findFirst()
                    .orElseThrow()
                    .line()
                    .end();
            assertThat(back.cutLine().contains(mouth)).isTrue();
        }
    }

    /** Left and right leg measured apart, cut into front and back, with a gusset between them. */
    @Tag("slow")
    @Test
    void twoLegsThatDifferAreCutAndSewnTogether() {
        Map<Side, Map<Measure, Value>> own = new EnumMap<>(Side.class);
        own.put(Side.LEFT, Map.of(Measure.THIGH_GIRTH, new Value(590, Value.Origin.GIVEN, 3)));
        own.put(Side.RIGHT, Map.of(Measure.THIGH_GIRTH, new Value(550, Value.Origin.GIVEN, 3)));
        Body body = new Body(ADULT.figure(), ADULT.age(), Stance.STANDING, ADULT.values(), new Legs(own, Map.of()));
        Parts parts = SEAM.with(new Parts.Gusset(140, 60)).withPanel(50).withKneeShaping();
        Style style = DraftTest.OVER_BOOT.with(parts);
        Pattern pattern = draft(body, parts);
        assertThat(pattern.pieces())
                .extracting(p -> p.name().word())
                .contains("left front leg", "left side panel", "left back leg", "right front leg", "gusset");
        PartsInvariants.check("two legs", body, style, pattern, pattern);
        Point tip = pattern.piece(PieceName.of(PieceKind.FRONT_LEG, WhichLeg.RIGHT))
                .edge(EdgeName.FRONT_CROTCH)
                .line()
                .start();
        assertThat(tip.x())
                .as("a right front leg has its centre front to the right")
                .isPositive();
    }

    /** 1 mm on a measure moves no point by more than 5 mm, relative to its edge, with everything switched on. */
    @Tag("slow")
    @Test
    void partsMoveNoFartherThanTheLeg() {
        Parts parts = SEAM.with(new Parts.Gusset(120, 50)).withKneeShaping();
        double worst = 0;
        String where = "";
        for (int seed = 1; seed <= 25; seed++) {
            Body body = SampleBody.random(seed);
            double size = body.mm(Measure.HIP_GIRTH) / 960;
            Parts sized = parts.with(new Parts.Gusset(120 * size, 50 * size));
            Pattern before = draftScaled(body, body, sized);
            for (Measure m : Measure.values()) {
                Pattern after = draftScaled(SampleBody.with(body, m, body.mm(m) + 1), body, sized);
                for (String name : List.of("front leg", "back leg")) {
                    for (Edge e : before.piece(Names.piece(name)).edges()) {
                        Edge other = after.piece(Names.piece(name)).edge(e.name());
                        for (int i = 0; i <= 20; i++) {
                            double moved = e.line()
                                    .at(e.length() * i / 20)
                                    .distance(other.line().at(other.length() * i / 20));
                            if (moved > worst) {
                                worst = moved;
                                where = "seed " + seed + ", " + m.term() + ", " + name + " " + e.name();
                            }
                        }
                    }
                }
            }
        }
        System.out.printf("continuity of parts: worst %.2f mm (%s)%n", worst, where);
        assertThat(worst).as(where).isLessThanOrEqualTo(5.0);
    }

    private static Pattern draftScaled(Body body, Body like, Parts parts) {
        return DraftTest.draft(
                body,
                SampleFabric.heavyKnit(),
                Optional.of(SampleBoot.scaled(like.mm(Measure.HEEL_GIRTH) / 305)),
                DraftTest.OVER_BOOT.with(parts));
    }
}
