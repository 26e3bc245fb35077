package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Gaps;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

/** Room for scissors, flaws, remnants, a repeating print and a grain tolerance, by hand on rectangles and on legs. */
class ClothAsItIsTest {
    private static final List<Piece> LEGGINGS = SamplePattern.overBoot().pieces();

    private static Polygon box(double x0, double y0, double x1, double y1) {
        return new Polygon(List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
    }

    private static Lay lay(List<Piece> pieces, Fabric fabric, LayTerms terms) {
        return WaysTest.ways(pieces, fabric, terms).get(0);
    }

    private static LayTerms open(double gap, double tilt) {
        return new LayTerms(LayWay.OPEN, gap, tilt, Optional.empty());
    }

    /** By hand: two panels of 480 beside each other need 5 mm between them, which 965.1 mm have and 950 mm have not. */
    @Test
    void theGapIsKeptBetweenPiecesAndNotAtTheSelvage() {
        List<Piece> panels = List.of(SamplePieces.rectangle("panel", 2, 480, 300));
        assertThat(lay(panels, LayingTest.cloth(965.1, true), open(5, 0)).length())
                .isCloseTo(300, within(0.1));
        assertThat(lay(panels, LayingTest.cloth(950, true), open(5, 0)).length())
                .isCloseTo(605, within(0.1));
    }

    @Tag("slow")
    @Test
    void theGapIsKeptBetweenCurvedPiecesInEveryWay() {
        for (int seed = 40; seed < 43; seed++) {
            List<Piece> pieces =
                    List.of(SamplePieces.curvedLeg(new RandomStream(seed)), LEGGINGS.get(1), LEGGINGS.get(2));
            LayTerms terms = new LayTerms(LayWay.ANY, 4, 0, Optional.empty());
            double apart = lay(pieces, LayingTest.cloth(1470, false), terms).length();
            double touching = lay(pieces, LayingTest.cloth(1470, false), LayTerms.of(LayWay.ANY))
                    .length();
            assertThat(apart).isGreaterThan(touching * 0.995);
        }
    }

    /** By hand: a panel of 500 on cloth of 600 with a flaw from 100 to 110 across at 50 to 60 along lies above the flaw. */
    @Test
    void aFlawIsLaidRound() {
        Fabric flawed =
                LayingTest.cloth(600, true).with(new ClothShape(Optional.empty(), List.of(box(100, 50, 110, 60))));
        List<Piece> panel = List.of(SamplePieces.rectangle("panel", 1, 500, 300));
        assertThat(lay(panel, flawed, open(0, 0)).length()).isEqualTo(360);
        Fabric atTheSide = flawed.with(new ClothShape(Optional.empty(), List.of(box(0, 50, 100, 60))));
        assertThat(lay(panel, atTheSide, open(0, 0)).length()).isEqualTo(300);
    }

    /** By hand: folded at 500, a flaw 20 to 30 mm to the left of the fold is one 20 to 30 mm beside it. */
    @Test
    void aFlawInEitherLayerCountsInTheFoldedLay() {
        Piece half = SamplePieces.plain(
                "band", 1, false, true, Point.ORIGIN, new Point(300, 0), new Point(300, 100), new Point(0, 100));
        Fabric flawed =
                LayingTest.cloth(1000, true).with(new ClothShape(Optional.empty(), List.of(box(470, 0, 480, 40))));
        assertThat(lay(List.of(half), flawed, LayTerms.of(LayWay.FOLDED)).length())
                .isEqualTo(140);
    }

    /** By hand: an L-shaped remnant, 1000 wide up to 300, then 400 wide up to 1000; a panel 400 x 700 stands on the right leg. */
    @Test
    void aRemnantIsLaidWithinItsOutline() {
        Polygon ell = new Polygon(List.of(
                new Point(0, 0),
                new Point(1000, 0),
                new Point(1000, 300),
                new Point(400, 300),
                new Point(400, 1000),
                new Point(0, 1000)));
        Fabric remnant = LayingTest.cloth(1000, true).with(new ClothShape(Optional.of(ell), List.of()));
        List<Piece> pieces =
                List.of(SamplePieces.rectangle("tall", 1, 400, 1000), SamplePieces.rectangle("low", 1, 600, 300));
        Lay lay = lay(pieces, remnant, open(0, 0));
        assertThat(lay.length()).isEqualTo(1000);
        assertThat(lay.placements().get(0).x()).isZero();
        assertThat(lay.placements().get(1).x()).isEqualTo(400);
    }

    /** What is taken and the outline fill the whole rectangle: their areas add up. Slanted and re-entrant outlines too. */
    @Test
    void whatARemnantLacksIsWhatItsOutlineLeavesFree() {
        RandomStream random = new RandomStream(5);
        for (int k = 0; k < 50; k++) {
            List<Point> points = new java.util.ArrayList<>();
            int n = 3 + random.below(9);
            for (int i = 0; i < n; i++) {
                double angle = 2 * Math.PI * i / n;
                double far = random.between(100, 490);
                points.add(new Point(Math.rint(500 + far * Math.cos(angle)), Math.rint(500 + far * Math.sin(angle))));
            }
            Polygon outline = Polygon.either(points);
            double top = outline.box().maxY();
            double taken = 0;
            for (Polygon p : Taken.outside(outline, 1000, -1)) {
                taken += p.area();
                assertThat(Gaps.geometry(p).intersection(Gaps.geometry(outline)).getArea())
                        .isLessThan(15);
            }
            // they stand over the sides by 1 mm on either side, and by rounding
            assertThat(taken).isCloseTo(1002 * top - outline.area(), within(30.0));
        }
    }

    @Tag("slow")
    @Test
    void curvedLegsLieOnARemnantWithAHole() {
        Polygon outline = new Polygon(List.of(
                new Point(0, 0), new Point(1400, 0), new Point(1500, 900), new Point(1450, 1900), new Point(80, 1800)));
        Fabric cloth = LayingTest.cloth(1500, false)
                .with(new ClothShape(Optional.of(outline), List.of(box(600, 500, 680, 560))));
        for (LayWay way : List.of(LayWay.OPEN, LayWay.FOLDED, LayWay.ANY)) {
            List<Piece> pieces = List.of(SamplePieces.curvedLeg(new RandomStream(3)), LEGGINGS.get(2));
            assertThat(lay(pieces, cloth, LayTerms.of(way)).length()).isGreaterThan(600);
        }
    }

    /** A remnant too small for the pieces: the lay says by how much, it does not fail. */
    @Test
    void aRemnantTooSmallYieldsALayLongerThanItself() {
        Fabric small = LayingTest.cloth(1000, true).with(new ClothShape(Optional.of(box(0, 0, 1000, 200)), List.of()));
        assertThat(lay(List.of(SamplePieces.rectangle("panel", 1, 500, 300)), small, open(0, 0))
                        .length())
                .isBetween(300.0, 500.0);
    }

    private static Piece notched(String name, double width, double height, double at) {
        Piece plain = SamplePieces.rectangle(name, 1, width, height);
        Notch notch = new Notch(
                "knee", plain.edges().get(1).name(), at, new Point(width, at), new Point(1, 0), Notch.Mark.SINGLE);
        return Piece.of(name, 1, false, false, plain.edges(), plain.grain(), List.of(notch), List.of());
    }

    /** By hand: knees 100 and 130 above the lower edges, repeat 64: the second lies 34 higher, or 30 lower; 34 above 0. */
    @Test
    void aPrintMeetsAtTheNotch() {
        Fabric plain = LayingTest.cloth(1000, true);
        Fabric print = new Fabric(
                new Fabric.Quality(plain.quality().weight(), 0, 0),
                new Fabric.Roll(
                        plain.roll().name(),
                        1000,
                        plain.roll().onHand(),
                        true,
                        64,
                        plain.roll().price(),
                        ClothShape.WHOLE),
                new Fabric.Test(
                        0.6,
                        0.45,
                        plain.test().loadAcross(),
                        plain.test().loadAlong(),
                        plain.test().recovery(),
                        plain.test().showsThroughAt(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
        List<Piece> pieces = List.of(notched("left", 400, 300, 100), notched("right", 400, 300, 130));
        LayTerms matched = new LayTerms(LayWay.OPEN, 0, 0, Optional.of("knee"));
        Lay lay = lay(pieces, print, matched);
        double knee = 100 + lay.placements().get(0).y();
        double other = 130 + lay.placements().get(1).y();
        assertThat(Math.floorMod(Math.round(knee - other), 64L)).isZero();
        assertThat(lay(pieces, print, open(0, 0)).length()).isEqualTo(300);
        for (int seed = 0; seed < 3; seed++) {
            List<Piece> legs = List.of(SamplePattern.overBoot().pieces().get(0), LEGGINGS.get(1));
            lay(legs, print.with(ClothShape.WHOLE), new LayTerms(LayWay.OPEN, 0, 0, Optional.of("knee")));
        }
    }

    /**
     * By hand: two straps leaning by 1 degree are 1000.47 mm wide beside each other, so that on 1000 mm one stands
     * 0.47 / tan 1 = 26.9 mm higher; tilted upright they need 600.1 + 495 sin 1 = 608.7 mm, less in between.
     */
    @Test
    void aGrainToleranceIsUsedOnlyWhereItSaves() {
        double lean = 600 * Math.tan(Math.toRadians(1));
        Piece leaning = SamplePieces.plain(
                "strap",
                2,
                false,
                false,
                Point.ORIGIN,
                new Point(495, 0),
                new Point(495 + lean, 600),
                new Point(lean, 600));
        Fabric cloth = LayingTest.cloth(1000, true);
        Lay straight = lay(List.of(leaning), cloth, open(0, 0));
        assertThat(straight.length()).isCloseTo(626.9, within(0.2));
        Lay tilted = lay(List.of(leaning), cloth, open(0, 1));
        assertThat(tilted.length()).isBetween(600.0, 608.8);
        assertThat(tilted.placements()).allMatch(p -> Math.abs(p.rotation()) <= 1);
        Lay panel = lay(List.of(SamplePieces.rectangle("panel", 2, 400, 300)), cloth, open(0, 1));
        assertThat(panel.placements()).allMatch(p -> p.rotation() == 0);
    }

    @Test
    void aFlawedClothIsNotPartFolded() {
        Fabric flawed =
                LayingTest.cloth(1470, false).with(new ClothShape(Optional.empty(), List.of(box(10, 10, 20, 20))));
        Findings findings = new Findings("test");
        assertThat(Laying.lay(LEGGINGS, flawed, LayTerms.of(LayWay.PART_FOLDED), 1, findings))
                .isEmpty();
        assertThat(findings.all())
                .singleElement()
                .matches(f -> f.remedy().contains("open, folded, folded off the middle or any"));
    }
}
