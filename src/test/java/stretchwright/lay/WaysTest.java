package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Effort;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Names;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

/** The ways of spreading the cloth, by hand on rectangles and as properties on curved legs. */
class WaysTest {
    private static final List<Piece> LEGGINGS = SamplePattern.overBoot().pieces();

    static List<Lay> ways(List<Piece> pieces, Fabric fabric, LayWay way) {
        return ways(pieces, fabric, LayTerms.of(way));
    }

    static List<Lay> ways(List<Piece> pieces, Fabric fabric, LayTerms terms) {
        Findings findings = new Findings("test");
        List<Lay> lays =
                Laying.ways(pieces, fabric, terms, Optional.empty(), SearchWork.of(1, new Effort(4, 2)), findings);
        assertThat(findings.all()).isEmpty();
        for (Lay lay : lays) {
            assertThat(LayCheck.faults(pieces, fabric, terms, lay)).isEmpty();
        }
        return lays;
    }

    private static Piece pair(String name, double width, double height) {
        Piece one = SamplePieces.rectangle(name, 2, width, height);
        return Piece.of(Names.piece(name), 2, true, false, one.edges(), one.grain(), List.of(), List.of());
    }

    /** By hand: a pair 400 wide through two layers of 400, a single 200 on the 200 beside it: 1000 wide, 700 long. */
    @Test
    void foldedOffTheMiddleTheSinglePieceLiesBesideTheDoubleCloth() {
        List<Piece> pieces = List.of(pair("leg", 400, 700), SamplePieces.rectangle("panel", 1, 200, 700));
        Fabric cloth = LayingTest.cloth(1000, true);
        Lay off = ways(pieces, cloth, LayWay.FOLDED_OFF_THE_MIDDLE).get(0);
        assertThat(off.method()).isEqualTo(Lay.Method.FOLDED_OFF_THE_MIDDLE);
        assertThat(off.length()).isEqualTo(700);
        assertThat(off.doubled()).isEqualTo(400);
        assertThat(off.fabricWidth()).isEqualTo(600);
        assertThat(off.use()).isCloseTo(1, within(1e-9));
        assertThat(ways(pieces, cloth, LayWay.FOLDED).get(0).length()).isEqualTo(1400);
    }

    /** By hand: folded the same pieces need 1400, open 700; where both are permitted no floor may lie above that. */
    @Test
    void whereOneWayIsTriedTheFloorStillHoldsForAllThatArePermitted() {
        List<Piece> pieces = List.of(pair("leg", 400, 700), SamplePieces.rectangle("panel", 1, 200, 700));
        for (LayWay way : List.of(LayWay.ANY, LayWay.FOLDED)) {
            Lay lay = Laying.ways(
                            pieces,
                            LayingTest.cloth(1000, true),
                            LayTerms.of(way),
                            Optional.of(Lay.Method.FOLDED),
                            SearchWork.of(1, new Effort(4, 2)),
                            new Findings("test"))
                    .get(0);
            assertThat(lay.length()).isEqualTo(1400);
            assertThat(lay.floor()).isEqualTo(way == LayWay.ANY ? 700 : 1400);
            assertThat(lay.shortest()).isEqualTo(way == LayWay.FOLDED);
        }
    }

    /** A leg for which the usual search ends 1 % above the floor: the lay goes on from there, to a centimetre less. */
    @Tag("slow")
    @Test
    void aLayWellAboveTheFloorIsSearchedOn() {
        List<Piece> pieces = new ArrayList<>(LEGGINGS);
        pieces.set(0, SamplePieces.curvedLeg(new RandomStream(3)));
        Fabric cloth = LayingTest.cloth(1400, true);
        LayTerms terms = LayTerms.of(LayWay.ANY);
        Effort usual = new Effort(12, 4);
        Findings findings = new Findings("test");
        Lay found = Laying.ways(pieces, cloth, terms, Optional.empty(), SearchWork.of(1, usual), findings)
                .get(0);
        Lay more = Laying.lay(pieces, cloth, terms, 1, findings).orElseThrow();
        assertThat(more.floor()).isEqualTo(found.floor());
        assertThat(more.length()).isLessThan(found.length() - 5);
        assertThat(more.shortest()).isTrue();
        assertThat(Laying.estimate(pieces, cloth, terms, 1).orElseThrow())
                .isBetween(more.length(), 1.02 * more.length());
    }

    /** By hand: the pair 500 wide, 700 long from folded cloth; then a single 900 wide, 100 long from open cloth. */
    @Test
    void partFoldedTheWideSinglePieceFollowsOnOpenCloth() {
        List<Piece> pieces = List.of(pair("leg", 500, 700), SamplePieces.rectangle("band", 1, 900, 100));
        Lay part =
                ways(pieces, LayingTest.cloth(1000, true), LayWay.PART_FOLDED).get(0);
        assertThat(part.method()).isEqualTo(Lay.Method.PART_FOLDED);
        assertThat(part.length()).isEqualTo(800);
        assertThat(part.doubled()).isEqualTo(700);
        assertThat(part.placements().get(1).y()).isEqualTo(700);
        assertThat(part.use()).isCloseTo((2 * 500 * 700 + 900 * 100) / (1000.0 * 800), within(1e-9));
    }

    /** By hand: 716.8 + 102.4 is less than 819.2 in doubles, and 819.2 is what no lay goes below. */
    @Test
    void lengthsOfStretchesAddUpOnTheGrid() {
        List<Piece> pieces = List.of(pair("leg", 500, 716.8), SamplePieces.rectangle("band", 1, 900, 102.4));
        Lay part =
                ways(pieces, LayingTest.cloth(1000, true), LayWay.PART_FOLDED).get(0);
        assertThat(part.length()).isEqualTo(819.2);
        assertThat(part.floor()).isEqualTo(819.2);
    }

    /** By hand: crosswise both lie at the fold and no gap is needed; open they lie above each other with the gap between. */
    @Test
    void theFloorKnowsThatFoldedCrosswiseNoGapIsKeptAtTheFold() {
        List<Piece> pieces = List.of(pair("leg", 900, 300));
        Fabric cloth = LayingTest.cloth(1000, false);
        LayTerms terms = new LayTerms(LayWay.ANY, 10, 0, Optional.empty());
        List<Lay> lays = Laying.ways(pieces, cloth, terms, 1, new Findings("test"));
        assertThat(lays.get(0).length()).isEqualTo(600);
        Lay open = Laying.ways(
                        pieces,
                        cloth,
                        terms,
                        Optional.of(Lay.Method.OPEN),
                        SearchWork.of(1, new Effort(4, 2)),
                        new Findings("test"))
                .get(0);
        assertThat(open.length()).isGreaterThanOrEqualTo(610);
        assertThat(open.floor()).isLessThanOrEqualTo(600);
    }

    /** By hand: a pair 900 wide needs 2 x 300 of cloth 1000 wide, cut end on cut end. */
    @Test
    void foldedCrosswiseTwiceTheSpreadIsNeeded() {
        Lay lay = ways(List.of(pair("leg", 900, 300)), LayingTest.cloth(1000, false), LayWay.FOLDED_CROSSWISE)
                .get(0);
        assertThat(lay.length()).isEqualTo(600);
        assertThat(lay.spreadLength()).isEqualTo(300);
        assertThat(lay.placements()).singleElement().matches(p -> p.layers() == 2);
        assertThat(lay.use()).isCloseTo(0.9, within(1e-9));
    }

    @Test
    void oneWayClothIsNeverFoldedCrosswise() {
        Findings findings = new Findings("test");
        assertThat(Laying.lay(
                        LEGGINGS, LayingTest.cloth(1470, true), LayTerms.of(LayWay.FOLDED_CROSSWISE), 1, findings))
                .isEmpty();
        assertThat(findings.all()).singleElement().matches(f -> f.problem().contains("the other way round"));
        assertThat(ways(LEGGINGS, LayingTest.cloth(1470, true), LayWay.ANY))
                .noneMatch(l -> l.method() == Lay.Method.FOLDED_CROSSWISE);
    }

    @Test
    void anyTriesAllWaysAndPutsTheCheapestFirst() {
        List<Lay> lays = ways(LEGGINGS, LayingTest.cloth(1470, false), LayWay.ANY);
        assertThat(lays)
                .extracting(Lay::method)
                .contains(Lay.Method.FOLDED, Lay.Method.OPEN, Lay.Method.PART_FOLDED, Lay.Method.FOLDED_CROSSWISE)
                .doesNotHaveDuplicates();
        assertThat(lays)
                .extracting(l -> l.length() + (l.method() == Lay.Method.FOLDED ? 0 : 1))
                .isSorted();
        assertThat(lays).allMatch(l -> l.floor() <= l.length());
    }

    /** Odd widths and turned-over halves do not upset any way; the floor of the open lay holds for all of them. */
    @Tag("slow")
    @Test
    void everyWayHoldsForCurvedLegs() {
        for (int seed = 20; seed < 24; seed++) {
            RandomStream random = new RandomStream(seed);
            List<Piece> pieces = List.of(
                    SamplePieces.curvedLeg(random),
                    LEGGINGS.get(1),
                    SamplePieces.rectangle("panel", 3, random.between(50, 150), random.between(100, 300)));
            List<Lay> lays = ways(pieces, LayingTest.cloth(random.between(1300, 1800), false), LayWay.ANY);
            assertThat(lays.size()).as("seed %d", seed).isGreaterThan(3);
            assertThat(lays).as("seed %d", seed).allMatch(l -> l.floor() <= l.length());
        }
    }
}
