package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Point;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

/** The hand-worked cases have a least length that is plain to see; the floor must reach it and never pass it. */
class FloorTest {
    private static double open(double width, Piece... pieces) {
        return Floor.under(Cut.all(List.of(pieces), Lay.Method.OPEN), Math.round(width * 100), 0) / 100.0;
    }

    /** By hand: four squares of 250 fill a cloth of 1000 one row high; five of 200 too. */
    @Test
    void areaAndHeightBoundAFullRow() {
        assertThat(open(1000, SamplePieces.rectangle("square", 4, 250, 250))).isEqualTo(250);
        assertThat(open(1000, SamplePieces.rectangle("square", 5, 200, 200))).isEqualTo(200);
        assertThat(open(1000, SamplePieces.rectangle("panel", 1, 100, 777.77))).isEqualTo(777.77);
    }

    /** By hand: two panels of 501 cannot lie side by side on 1000; two of 500 can. */
    @Test
    void panelsTooWideToLieSideBySideLieAboveEachOther() {
        assertThat(open(1000, SamplePieces.rectangle("panel", 2, 501, 300))).isEqualTo(600);
        assertThat(open(1000, SamplePieces.rectangle("panel", 2, 500, 300))).isEqualTo(300);
    }

    /** By hand: of four panels of 340 no three lie side by side on 1000, so two rows; of 333.33 three do. */
    @Test
    void thirdsCountAsThirds() {
        assertThat(open(1000, SamplePieces.rectangle("panel", 4, 340, 300))).isEqualTo(600);
        assertThat(open(1000, SamplePieces.rectangle("panel", 3, 333.33, 300))).isEqualTo(300);
    }

    /** By hand: beside a panel of 960 a strip of 50 finds no room on 1000, but it may lie above it. */
    @Test
    void aNarrowPieceMustLieAboveAWideOne() {
        double floor =
                open(1000, SamplePieces.rectangle("wide", 1, 960, 300), SamplePieces.rectangle("strip", 1, 50, 200));
        assertThat(floor).isBetween(300.0, 500.0);
    }

    /** By hand: two tall legs of 520 on 1000 share at least 40 mm of width, where both heights add up. */
    @Test
    void twoLegsTooWideForTheClothLieAboveEachOther() {
        Piece leg = SamplePieces.plain(
                "leg", 2, true, false, Point.ORIGIN, new Point(520, 0), new Point(520, 900), new Point(0, 900));
        assertThat(open(1000, leg)).isBetween(1799.0, 1800.0);
    }

    /** By hand: half band 400 x 150 on the fold of 700; a panel of 400 x 900 lies partly above or below it. */
    @Test
    void aPieceThatCannotPassTheBandAtTheFoldLiesAboveIt() {
        Piece band = SamplePieces.plain(
                "band", 1, false, true, Point.ORIGIN, new Point(400, 0), new Point(400, 150), new Point(0, 150));
        Piece panel = SamplePieces.rectangle("panel", 2, 400, 900);
        assertThat(Floor.under(Cut.all(List.of(band, panel), Lay.Method.FOLDED), 70_000, 0))
                .isEqualTo(105_000);
        assertThat(Floor.under(Cut.all(List.of(band, panel), Lay.Method.FOLDED), 80_000, 0))
                .isLessThanOrEqualTo(90_000);
    }

    /** By hand: a square of 600 drawn 2 degrees off the grain stands 620 high; with that much tolerance it may be laid 600 high. */
    @Test
    void aTiltThatMakesThePieceLowerIsReckonedWith() {
        Point[] corners = new Point[4];
        for (int i = 0; i < 4; i++) {
            corners[i] = new Point(i == 1 || i == 2 ? 600 : 0, i > 1 ? 600 : 0).turned(2);
        }
        List<Cut> cuts = Cut.all(List.of(SamplePieces.plain("square", 1, false, false, corners)), Lay.Method.OPEN);
        assertThat(Floor.under(cuts, 65_000, 0)).isBetween(62_050L, 62_060L);
        assertThat(Floor.under(cuts, 65_000, 2)).isBetween(57_000L, 60_000L);
    }

    /** A bound above a lay that was found would be no bound: garments and loose rectangles on all cloths. */
    @Tag("slow")
    @Test
    void neverExceedsALayThatWasFound() {
        for (int seed = 100; seed < 112; seed++) {
            RandomStream random = new RandomStream(seed);
            List<Piece> pieces = new ArrayList<>(SamplePattern.overBoot().pieces());
            pieces.set(0, SamplePieces.curvedLeg(random));
            for (int k = 0; k < 2; k++) {
                pieces.add(SamplePieces.rectangle(
                        "extra " + k, 1 + random.below(3), random.between(50, 400), random.between(50, 400)));
            }
            for (LayWay way : List.of(LayWay.FOLDED, LayWay.OPEN)) {
                Lay lay =
                        LayingTest.lay(pieces, LayingTest.cloth(random.between(1180, 1900), random.below(2) == 0), way);
                assertThat(lay.floor())
                        .as("seed %d, %s", seed, way)
                        .isGreaterThan(0)
                        .isLessThanOrEqualTo(lay.length());
            }
        }
    }

    /** Random tilings have a known length with no waste: cut a cloth into rectangles, and ask for the floor. */
    @Tag("slow")
    @Test
    void neverExceedsAPerfectTiling() {
        IntStream.range(0, 75).parallel().forEach(seed -> {
            RandomStream random = new RandomStream(seed);
            List<Piece> pieces = new ArrayList<>();
            split(random, 1000, 1200, 4, pieces);
            double floor = Floor.under(Cut.all(pieces, Lay.Method.OPEN), 100_000, 0) / 100.0;
            assertThat(floor).as("seed %d", seed).isEqualTo(1200);
        });
    }

    private static void split(RandomStream random, double width, double height, int depth, List<Piece> out) {
        if (depth == 0 || width < 60 || height < 60) {
            out.add(SamplePieces.rectangle("part " + out.size(), 1, width, height));
            return;
        }
        boolean across = random.below(2) == 0;
        double cut = Math.rint((across ? width : height) * random.between(0.2, 0.8));
        split(random, across ? cut : width, across ? height : cut, depth - 1, out);
        split(random, across ? width - cut : width, across ? height : height - cut, depth - 1, out);
    }
}
