package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;
import stretchwright.lay.ClubLay.Garment;
import stretchwright.lay.ClubLay.Table;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style.LayWay;

/** Tables by hand, on rectangles. */
class ClubLayTest {
    private final Findings findings = new Findings("test");

    private static List<Garment> garments(int count, double width, double height) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> new Garment("g" + i, List.of(SamplePieces.rectangle("leg", 2, width, height))))
                .toList();
    }

    private List<Table> lay(List<Garment> garments, double table, Effort effort) {
        return ClubLay.lay(
                garments,
                LayingTest.cloth(1000, true),
                LayTerms.of(LayWay.OPEN),
                table == 0 ? OptionalDouble.empty() : OptionalDouble.of(table),
                SearchWork.of(1, effort),
                findings);
    }

    /** By hand: a garment of two legs 500 x 600 fills 1000 x 600; a table of 1300 holds two of them, 1200 exactly two. */
    @Test
    void tablesAreFilledInTheOrderOfTheGarments() {
        for (Effort effort : List.of(Effort.NONE, new Effort(2, 1))) {
            for (double length : new double[] {1300, 1200}) {
                List<Table> tables = lay(garments(5, 500, 600), length, effort);
                assertThat(findings.all()).isEmpty();
                assertThat(tables)
                        .extracting(
                                t -> t.garments().stream().map(Garment::name).toList())
                        .containsExactly(List.of("g1", "g2"), List.of("g3", "g4"), List.of("g5"));
                assertThat(tables).extracting(t -> t.lay().length()).containsExactly(1200.0, 1200.0, 600.0);
            }
        }
    }

    @Test
    void withoutATableAllLieInOneSpread() {
        List<Table> tables = lay(garments(5, 500, 600), 0, Effort.NONE);
        assertThat(tables).singleElement().matches(t -> t.lay().length() == 3000);
        assertThat(tables.get(0).lay().placements())
                .extracting(p -> p.piece().word())
                .contains("g1: leg", "g5: leg")
                .hasSize(10);
    }

    @Test
    void aGarmentLongerThanTheTableIsNamed() {
        assertThat(lay(garments(2, 500, 600), 599, new Effort(2, 1))).isEmpty();
        assertThat(findings.all())
                .singleElement()
                .matches(f -> f.key().equals("--table")
                        && f.problem().equals("g1 alone is longer than the table of 599 mm."));
    }

    @Test
    void aPieceWiderThanTheClothIsAFindingOnce() {
        assertThat(lay(garments(2, 1100, 600), 2000, new Effort(2, 1))).isEmpty();
        assertThat(findings.all()).isNotEmpty().allMatch(f -> f.key().equals("fabric.usable width"));
        assertThat(findings.all()).doesNotHaveDuplicates();
    }

    /** The clock is asked for parts of the whole that follow each other and never go beyond it. */
    @Tag("slow")
    @Test
    void thePartsOfTheClockFillTheWhole() {
        List<Garment> legs = IntStream.rangeClosed(1, 6)
                .mapToObj(i -> new Garment("g" + i, List.of(SamplePieces.curvedLeg(new RandomStream(i)))))
                .toList();
        List<double[]> parts = new ArrayList<>();
        ClubLay.lay(
                legs,
                LayingTest.cloth(1200, true),
                LayTerms.of(LayWay.OPEN),
                OptionalDouble.of(4500),
                new SearchWork(1, new Effort(1, 1), (from, to) -> {
                    parts.add(new double[] {from, to});
                    return LayClock.NONE;
                }),
                findings);
        assertThat(parts).hasSizeGreaterThan(1);
        assertThat(parts.get(0)[0]).isZero();
        for (int i = 0; i < parts.size(); i++) {
            assertThat(parts.get(i)[1]).isGreaterThan(parts.get(i)[0]).isLessThanOrEqualTo(1);
            if (i > 0) {
                assertThat(parts.get(i)[0]).isEqualTo(parts.get(i - 1)[1]);
            }
        }
        assertThat(parts.get(parts.size() - 1)[1]).isEqualTo(1);
    }

    /** By hand: folded crosswise a spread of 1300 holds four pairs of 900 x 300 through both layers, also where any way is allowed. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(names = {"FOLDED_CROSSWISE", "ANY"})
    void crosswiseATableHoldsTwiceItsCloth(LayWay way) {
        List<Garment> pairs = IntStream.rangeClosed(1, 6)
                .mapToObj(i -> new Garment("g" + i, List.of(SamplePieces.rectangle("leg", 2, 900, 300))))
                .toList();
        List<Table> tables = ClubLay.lay(
                pairs,
                LayingTest.cloth(1000, false),
                LayTerms.of(way),
                OptionalDouble.of(1300),
                SearchWork.of(1, Effort.NONE),
                findings);
        assertThat(tables).extracting(t -> t.garments().size()).containsExactly(4, 2);
    }

    /** Where all goes through two layers folded off the middle is folded in the middle, and is searched on so. */
    @Tag("slow")
    @Test
    void aWayThatComesToAPlainerOneIsSearchedOnAsThat() {
        Piece leg = SamplePieces.curvedLeg(new RandomStream(1));
        List<Table> tables = ClubLay.lay(
                List.of(new Garment("g1", List.of(leg)), new Garment("g2", List.of(leg))),
                LayingTest.cloth(1400, true),
                LayTerms.of(LayWay.FOLDED_OFF_THE_MIDDLE),
                OptionalDouble.empty(),
                SearchWork.of(1, new Effort(1, 1)),
                findings);
        assertThat(tables).singleElement().matches(t -> t.lay().method() == Lay.Method.FOLDED);
    }

    /** Two legs of 500 x 600 fill 1000 x 600: no time is asked for, as no lay can be shorter. */
    @Test
    void aLayThatReachesItsFloorTakesNoTime() {
        List<Table> tables = ClubLay.lay(
                garments(5, 500, 600),
                LayingTest.cloth(1000, true),
                LayTerms.of(LayWay.OPEN),
                OptionalDouble.empty(),
                new SearchWork(1, Effort.UNLIMITED, (from, to) -> {
                    throw new IllegalStateException("asked for time from " + from + " to " + to);
                }),
                findings);
        assertThat(tables).singleElement().matches(t -> t.lay().shortest());
    }

    /** Wearer names before the piece's own do not hide for which side it is. */
    @Test
    void leftAndRightAreKnownBehindTheWearersName() {
        Piece leg = SamplePieces.rectangle("left leg", 1, 500, 600);
        Garment garment = new Garment("right: wing", List.of(leg));
        Lay lay = lay(List.of(garment), 0, Effort.NONE).get(0).lay();
        CuttingGuide guide = CuttingGuide.of(lay, garment.named(), SampleFabric.heavyKnit(), Optional.empty());
        assertThat(guide.steps()).singleElement().matches(s -> s.hand() == Hand.LEFT);
    }
}
