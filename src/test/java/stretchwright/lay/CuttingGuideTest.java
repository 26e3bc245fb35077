package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Box;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Names;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style;

/** The order of cutting, and what is said of each placement. */
@Tag("slow")
class CuttingGuideTest {
    private static final List<Piece> PIECES = SamplePattern.overBoot().pieces();

    private static CuttingGuide guide(Style.LayWay way) {
        Lay lay = LayingTest.lay(PIECES, SampleFabric.heavyKnit(), way);
        return CuttingGuide.of(lay, PIECES, SampleFabric.heavyKnit(), Optional.empty());
    }

    private static CuttingGuide guide(SampleMakes make) {
        return CuttingGuide.of(make.lay(), make.pieces(), make.fabric(), Optional.empty());
    }

    @Test
    void openTheLegNearestTheSelvageComesFirstAndOneOfThemIsTurnedOver() {
        CuttingGuide guide = guide(Style.LayWay.OPEN);
        assertThat(guide.steps()).hasSize(5);
        CuttingGuide.Step first = guide.steps().get(0);
        CuttingGuide.Step second = guide.steps().get(1);
        assertThat(List.of(first.piece(), second.piece())).containsOnly(Names.piece("leg"));
        assertThat(first.fromEdge().get(0)).isLessThan(second.fromEdge().get(0));
        assertThat(Set.of(first.hand(), second.hand())).containsExactlyInAnyOrder(Hand.LEFT, Hand.RIGHT);
        assertThat(guide.step(Names.piece("leg"), 1).turnedOver()).isFalse();
        assertThat(guide.step(Names.piece("leg"), 1).hand()).isEqualTo(Hand.LEFT);
        assertThat(guide.step(Names.piece("leg"), 2).turnedOver()).isTrue();
        assertThat(guide.step(Names.piece("leg"), 2).hand()).isEqualTo(Hand.RIGHT);
    }

    @Test
    void foldedOneCutGivesBothLegsAndTheBandOnTheFoldComesNext() {
        CuttingGuide guide = guide(Style.LayWay.FOLDED);
        assertThat(guide.steps()).extracting(s -> s.piece().word()).containsExactly("leg", "waistband", "cuff");
        assertThat(guide.steps().get(0).hand()).isEqualTo(Hand.PAIR);
        assertThat(guide.steps()).extracting(CuttingGuide.Step::count).containsExactly(2, 1, 2);
        assertThat(guide.steps().get(1).onFold()).isTrue();
    }

    /** Four halves of two covers: neither is the left or the right one; a leg with a side in its name is what it says. */
    @Test
    void aSideIsOnlySaidWhereThereIsOne() {
        Point[] box = {new Point(0, 0), new Point(200, 0), new Point(200, 100), new Point(0, 100)};
        Lay.Placement plain = new Lay.Placement(Names.piece("x"), 1, 0, 0, 0, false, false, 1, List.of(0.0, 0.0));
        Lay.Placement turned = new Lay.Placement(Names.piece("x"), 2, 0, 0, 0, true, false, 1, List.of(0.0, 0.0));
        Lay.Placement twice = new Lay.Placement(Names.piece("x"), 1, 0, 0, 0, false, false, 2, List.of(0.0, 0.0));
        Piece cover = SamplePieces.plain("boot cover", 4, true, false, box);
        assertThat(Hand.of(cover, plain)).isEqualTo(Hand.AS_DRAWN);
        assertThat(Hand.of(cover, turned)).isEqualTo(Hand.TURNED);
        assertThat(Hand.of(cover, twice)).isEqualTo(Hand.BOTH);
        assertThat(Hand.of(SamplePieces.plain("left leg", 1, false, false, box), plain))
                .isEqualTo(Hand.LEFT);
        assertThat(Hand.of(SamplePieces.plain("right leg", 1, false, false, box), plain))
                .isEqualTo(Hand.RIGHT);
        assertThat(Hand.of(SamplePieces.plain("left boot cover", 2, true, false, box), turned))
                .isEqualTo(Hand.TURNED);
        assertThat(Hand.of(SamplePieces.plain("cuff", 2, false, false, box), plain))
                .isEqualTo(Hand.EITHER);
    }

    @Tag("slow")
    @Test
    void everyPlacementIsCutOnceAndAllThatIsWantedComesOut() {
        for (SampleMakes make : SampleMakes.all()) {
            CuttingGuide guide = guide(make);
            Set<String> done = new HashSet<>();
            for (int i = 0; i < guide.steps().size(); i++) {
                CuttingGuide.Step s = guide.steps().get(i);
                assertThat(s.number()).isEqualTo(i + 1);
                assertThat(done.add(s.piece().word() + s.copy()))
                        .as(make.name())
                        .isTrue();
            }
            assertThat(done).hasSize(make.lay().placements().size());
            for (Piece piece : make.pieces()) {
                int cut = guide.steps().stream()
                        .filter(s -> s.piece().equals(piece.name()))
                        .mapToInt(CuttingGuide.Step::count)
                        .sum();
                assertThat(cut).as(make.name() + " " + piece.name()).isEqualTo(piece.cut());
            }
        }
    }

    /** Two left legs are the classic mistake: of a mirrored pair as many left as right, whatever the lay. */
    @Tag("slow")
    @Test
    void asManyLeftAsRight() {
        for (SampleMakes make : SampleMakes.all()) {
            CuttingGuide guide = guide(make);
            for (Piece piece : make.pieces()) {
                if (!piece.mirrored()) {
                    continue;
                }
                List<Hand> hands = guide.steps().stream()
                        .filter(s -> s.piece().equals(piece.name()))
                        .map(CuttingGuide.Step::hand)
                        .toList();
                assertThat(hands).as(make.name()).isNotEmpty().doesNotContain(Hand.EITHER);
                assertThat(hands.stream()
                                .filter(h -> h == Hand.LEFT || h == Hand.AS_DRAWN)
                                .count())
                        .isEqualTo(hands.stream()
                                .filter(h -> h == Hand.RIGHT || h == Hand.TURNED)
                                .count());
            }
        }
    }

    /**
     * Within a stretch and an arm's reach (1.5 m of it) long before short, among the long ones from the fold or selvage
     * outwards; weights lie on cloth of the piece.
     */
    @Tag("slow")
    @Test
    void longPiecesComeFirstAndWeightsLieOnThem() {
        for (SampleMakes make : SampleMakes.all()) {
            double longest = 0;
            for (Lay.Placement p : make.lay().placements()) {
                longest = Math.max(longest, outline(make, p).box().height());
            }
            Map<String, List<Box>> places = new LinkedHashMap<>();
            String now = "";
            for (CuttingGuide.Step s : guide(make).steps()) {
                Polygon outline = outline(make, s);
                boolean open = make.lay().method() == Lay.Method.PART_FOLDED && s.layers() == 1;
                String place = open + " " + (int) (outline.box().minY() / 1500);
                assertThat(place.equals(now) || !places.containsKey(place))
                        .as(make.name())
                        .isTrue();
                now = place;
                places.computeIfAbsent(place, k -> new ArrayList<>()).add(outline.box());
                assertThat(s.fromEdge().get(0)).isCloseTo(s.fromEdge().get(1), within(2.0));
                assertThat(s.weights()).hasSizeGreaterThanOrEqualTo(2).allMatch(outline::contains);
                for (int i = 1; i < s.weights().size(); i++) {
                    assertThat(s.weights().get(i).distance(s.weights().get(i - 1)))
                            .isLessThanOrEqualTo(CuttingGuide.BETWEEN_WEIGHTS + 0.02);
                }
            }
            for (List<Box> inTurn : places.values()) {
                longFirst(make, inTurn, longest);
            }
        }
    }

    private static void longFirst(SampleMakes make, List<Box> inTurn, double longest) {
        boolean shortSeen = false;
        double last = -1;
        for (Box box : inTurn) {
            if (box.height() < longest / 2) {
                shortSeen = true;
            } else {
                assertThat(shortSeen).as(make.name()).isFalse();
                assertThat(box.minX()).isGreaterThanOrEqualTo(last);
                last = box.minX();
            }
        }
    }

    private static Polygon outline(SampleMakes make, CuttingGuide.Step s) {
        return outline(
                make,
                make.lay().placements().stream()
                        .filter(q -> q.piece().equals(s.piece()) && q.copy() == s.copy())
                        .findFirst()
                        .orElseThrow());
    }

    /** Cloth that is part folded is cut across between its stretches: whatever is folded is done before. */
    @Test
    void theFoldedStretchIsDoneBeforeTheOpenOne() {
        List<SampleMakes> parts = SampleMakes.all().stream()
                .filter(m -> m.lay().method() == Lay.Method.PART_FOLDED)
                .toList();
        assertThat(parts).isNotEmpty();
        for (SampleMakes make : parts) {
            assertThat(guide(make).steps())
                    .extracting(CuttingGuide.Step::layers)
                    .isSortedAccordingTo((a, b) -> b - a);
        }
    }

    /** By hand: told how wide the strip at the selvage is, distances from the left edge grow by it; those from the fold do not. */
    @Test
    void theStripAtTheSelvageIsCountedWhereItIsTold() {
        Fabric told = SampleFabric.heavyKnit().with(new ClothShape(Optional.empty(), List.of(), 20));
        for (Style.LayWay way : List.of(Style.LayWay.OPEN, Style.LayWay.FOLDED)) {
            Lay lay = LayingTest.lay(PIECES, told, way);
            for (CuttingGuide.Step s :
                    CuttingGuide.of(lay, PIECES, told, Optional.empty()).steps()) {
                double plain = lay.placements().stream()
                        .filter(p -> p.piece().equals(s.piece()) && p.copy() == s.copy())
                        .findFirst()
                        .orElseThrow()
                        .fromSelvage()
                        .get(0);
                assertThat(s.fromEdge().get(0)).isCloseTo(plain + (way == Style.LayWay.OPEN ? 20 : 0), within(1e-9));
            }
        }
    }

    /** Every notch of that name lies whole repeats beyond what the guide says, and none before it. */
    @Test
    void thePrintIsToldWhereItMeets() {
        Fabric print = SampleFabric.heavyKnit()
                .with(new Fabric.Roll(
                        "print", 1470, OptionalDouble.empty(), true, 64, Optional.empty(), ClothShape.WHOLE));
        LayTerms terms = new LayTerms(Style.LayWay.OPEN, 0, 0, Optional.of("knee"));
        Lay lay = Laying.lay(PIECES, print, terms, 1, new Findings("test")).orElseThrow();
        CuttingGuide.PrintMatch match =
                CuttingGuide.of(lay, PIECES, print, terms.matchAt()).print().orElseThrow();
        List<Double> heights = new ArrayList<>();
        for (Lay.Placement p : lay.placements()) {
            PIECES.stream()
                    .filter(q -> q.name().equals(p.piece()))
                    .flatMap(q -> q.notches().stream())
                    .filter(n -> n.name() == NotchName.KNEE)
                    .limit(1)
                    .forEach(n -> heights.add(OnCloth.at(n.at(), p).y()));
        }
        assertThat(heights).hasSizeGreaterThan(1).allMatch(y -> y >= match.from() - 1e-9);
        assertThat(heights)
                .allSatisfy(y ->
                        assertThat(Math.IEEEremainder(y - match.from(), 64)).isCloseTo(0, within(0.021)));
    }

    private static Polygon outline(SampleMakes make, Lay.Placement p) {
        Piece piece = make.pieces().stream()
                .filter(q -> q.name().equals(p.piece()))
                .findFirst()
                .orElseThrow();
        return OnCloth.outline(piece, p);
    }
}
