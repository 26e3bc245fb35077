package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Outlines;
import stretchwright.lay.nest.Shape;
import stretchwright.pattern.Names;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

class LayingTest {
    private static final Fabric CLOTH = SampleFabric.heavyKnit();
    private static final List<Piece> PIECES = SamplePattern.overBoot().pieces();

    static Lay lay(List<Piece> pieces, Fabric fabric, LayWay way) {
        Findings findings = new Findings("test");
        Lay lay = Laying.lay(pieces, fabric, way, findings).orElseThrow();
        assertThat(findings.isEmpty()).isTrue();
        assertThat(LayCheck.faults(pieces, fabric, lay)).isEmpty();
        return lay;
    }

    static Fabric cloth(double width, boolean oneWay) {
        return SampleFabric.with(width, 0.6, 0.45, oneWay);
    }

    @Test
    void foldedTheLegsAreOnePlacementThroughTwoLayersAndTheBandLiesOnTheFold() {
        Lay lay = lay(PIECES, CLOTH, LayWay.FOLDED);
        assertThat(lay.method()).isEqualTo(Lay.Method.FOLDED);
        assertThat(lay.fabricWidth()).isEqualTo(735);
        assertThat(lay.placements())
                .extracting(Lay.Placement::piece, Lay.Placement::copy, Lay.Placement::layers)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Names.piece("leg"), 1, 2),
                        org.assertj.core.groups.Tuple.tuple(Names.piece("waistband"), 1, 2),
                        org.assertj.core.groups.Tuple.tuple(Names.piece("cuff"), 1, 2));
        assertThat(lay.placements().get(1).x()).isZero();
        assertThat(lay.placements()).noneMatch(Lay.Placement::unfolded);
    }

    @Test
    void openEveryCopyLiesForItselfAndOneLegIsTurnedOver() {
        Lay lay = lay(PIECES, CLOTH, LayWay.OPEN);
        assertThat(lay.fabricWidth()).isEqualTo(1470);
        assertThat(lay.placements())
                .extracting(Lay.Placement::piece, Lay.Placement::mirrored, Lay.Placement::unfolded)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Names.piece("leg"), false, false),
                        org.assertj.core.groups.Tuple.tuple(Names.piece("leg"), true, false),
                        org.assertj.core.groups.Tuple.tuple(Names.piece("waistband"), false, true),
                        org.assertj.core.groups.Tuple.tuple(Names.piece("cuff"), false, false),
                        org.assertj.core.groups.Tuple.tuple(Names.piece("cuff"), false, false));
        assertThat(lay.placements()).allMatch(p -> p.layers() == 1);
    }

    @Tag("slow")
    @Test
    void anyTakesTheShorter() {
        for (boolean oneWay : new boolean[] {true, false}) {
            Fabric fabric = cloth(1470, oneWay);
            double folded = lay(PIECES, fabric, LayWay.FOLDED).length();
            double open = lay(PIECES, fabric, LayWay.OPEN).length();
            assertThat(lay(PIECES, fabric, LayWay.ANY).length())
                    .isBetween(Math.min(folded, open), Math.min(folded, open) + 1);
        }
    }

    @Test
    void onOneWayClothEverythingLiesTheSameWayUp() {
        assertThat(lay(PIECES, cloth(1470, true), LayWay.ANY).placements()).allMatch(p -> p.rotation() == 0);
    }

    @Tag("slow")
    @Test
    void theSameInputGivesTheSameLay() {
        assertThat(lay(PIECES, CLOTH, LayWay.ANY)).isEqualTo(lay(PIECES, CLOTH, LayWay.ANY));
    }

    /** Common practice, no source: an adult pair comes from 1 1/2 yd of cloth 58 in wide. */
    @Tag("slow")
    @Test
    void smallAdultPairComesFromAYardAndAHalf() {
        for (LayWay way : List.of(LayWay.ANY, LayWay.FOLDED, LayWay.OPEN, LayWay.PART_FOLDED)) {
            Lay lay = lay(PIECES, cloth(58 * 25.4, true), way);
            assertThat(lay.length()).as(way.name()).isLessThanOrEqualTo(1.5 * 914.4);
            assertThat(Shop.eighths(Shop.needed(lay.length(), CLOTH))).isLessThanOrEqualTo(12);
        }
    }

    /** By hand: leg 1064 mm, band 144 mm and 352 mm half width; a lay cannot be shorter than the leg. */
    @Test
    void numbersOfTheLayFollowFromItsPieces() {
        Lay lay = lay(PIECES, CLOTH, LayWay.OPEN);
        double area = 0;
        for (Piece piece : PIECES) {
            area += piece.clothArea() * piece.cut();
        }
        assertThat(lay.use()).isCloseTo(area / (1470 * lay.length()), within(1e-9));
        assertThat(lay.buy()).isGreaterThanOrEqualTo(lay.length() / 0.98 + 100).isLessThan(lay.length() / 0.98 + 150);
        assertThat(lay.buy() % 50).isZero();
        assertThat(lay.floor()).isLessThanOrEqualTo(lay.length());
    }

    @Test
    void aPieceWiderThanTheFoldedClothIsNamedAndOpenIsOffered() {
        Findings findings = new Findings("make.yaml");
        assertThat(Laying.lay(PIECES, cloth(900, true), LayWay.FOLDED, findings))
                .isEmpty();
        assertThat(findings.all()).hasSize(1);
        String line = findings.all().get(0).line();
        assertThat(line)
                .startsWith("make.yaml: fabric.usable width: leg is ")
                .contains("wider than the 450.0 mm of the cloth folded lengthwise.", "Lay it open (style.lay: open)");
        assertThat(lay(PIECES, cloth(900, true), LayWay.ANY).method()).isEqualTo(Lay.Method.OPEN);
    }

    @Test
    void aPieceWiderThanTheOpenClothNeedsWiderCloth() {
        for (LayWay way : List.of(LayWay.ANY, LayWay.FOLDED, LayWay.OPEN, LayWay.PART_FOLDED)) {
            Findings findings = new Findings("make.yaml");
            assertThat(Laying.lay(PIECES, cloth(600, true), way, findings)).isEmpty();
            assertThat(findings.all())
                    .anyMatch(f -> f.problem()
                                    .equals(
                                            "waistband is 704.0 mm wide unfolded, wider than the 600.0 mm of the cloth.")
                            && f.remedy().equals("Take cloth of at least 704 mm usable width."));
        }
    }

    @Test
    void aClothExactlyAsWideAsThePieceWillDo() {
        Piece piece = SamplePieces.rectangle("panel", 1, 500, 300);
        assertThat(lay(List.of(piece), cloth(500, true), LayWay.OPEN).length()).isEqualTo(300);
    }

    /** By hand: three alike panels through two layers: one pair, one single from the upper layer. */
    @Test
    void anOddSinglePieceIsCutFromTheUpperLayer() {
        Lay lay = lay(List.of(SamplePieces.rectangle("panel", 3, 200, 300)), cloth(1000, true), LayWay.FOLDED);
        assertThat(lay.placements()).extracting(Lay.Placement::layers).containsExactly(2, 1);
        assertThat(lay.length()).isEqualTo(300);
    }

    /** A slanting piece of which two the same way round are wanted would come out as a left and a right. */
    @Test
    void aSlantingPieceIsNotCutThroughTwoLayers() {
        Piece slanting = SamplePieces.plain(
                "strap", 2, false, false, Point.ORIGIN, new Point(100, 0), new Point(150, 200), new Point(50, 200));
        Lay lay = lay(List.of(slanting), cloth(1000, true), LayWay.FOLDED);
        assertThat(lay.placements()).extracting(Lay.Placement::layers).containsExactly(1, 1);
    }

    @Test
    void aPieceWithSlantingGrainIsRefused() {
        Piece leg = PIECES.get(0);
        Piece slanted = Piece.of(
                Names.piece("leg"),
                2,
                true,
                false,
                leg.edges(),
                new stretchwright.pattern.Grain(new Point(0, 100), new Point(5, 800)),
                List.of(),
                List.of());
        assertThatThrownBy(() -> Laying.lay(List.of(slanted), CLOTH, LayWay.ANY, new Findings("test")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("leg: the grain must run along y");
    }

    /** Curved legs of about 250 corners on cloths of all kinds; JTS 1.20 as the second opinion. */
    @Tag("slow")
    @Test
    void curvedGarmentsAreLaidWithoutOverlapOnAllCloths() {
        for (int seed = 0; seed < 8; seed++) {
            RandomStream random = new RandomStream(seed);
            Piece leg = SamplePieces.curvedLeg(random);
            List<Piece> pieces = List.of(leg, PIECES.get(1), PIECES.get(2));
            Fabric fabric = cloth(random.between(1180, 1800), random.below(2) == 0);
            Lay lay = lay(pieces, fabric, LayWay.ANY);
            List<Polygon> outlines = outlines(pieces, lay);
            for (int i = 0; i < outlines.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(outlines.get(i).intersection(outlines.get(j)).getArea())
                            .as("seed %d", seed)
                            .isLessThan(1e-3);
                }
            }
            System.out.printf(
                    Locale.ROOT,
                    "seed %d: %d corners, %s on %.0f mm%s: length %.2f, floor %.2f, use %.3f%n",
                    seed,
                    leg.cutLine().points().size(),
                    lay.method(),
                    fabric.roll().usableWidth(),
                    fabric.roll().oneWay() ? " one way" : "",
                    lay.length(),
                    lay.floor(),
                    lay.use());
        }
    }

    static List<Polygon> outlines(List<Piece> pieces, Lay lay) {
        List<Polygon> out = new ArrayList<>();
        for (Lay.Placement p : lay.placements()) {
            Piece piece = pieces.stream()
                    .filter(q -> q.name().equals(p.piece()))
                    .findFirst()
                    .orElseThrow();
            stretchwright.ground.Polygon line = p.unfolded() ? Shape.unfolded(piece.cutLine()) : piece.cutLine();
            Shape shape = Shape.of(line.placed(p.mirrored(), p.rotation(), new Point(p.x(), p.y())));
            out.add(Outlines.polygon(shape.x, shape.y, 0, 0));
        }
        return out;
    }
}
