package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Point;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Outlines;
import stretchwright.lay.nest.Shape;
import stretchwright.pattern.Piece;

/** The hand-worked cases have a least length that is plain to see; the second opinion tries every place. Millimetres. */
class StackFloorTest {
    private static final double HIGH = 10_000;

    private static double under(double width, boolean turned, double gap, Piece... pieces) {
        return mm(Cut.all(List.of(pieces), Lay.Method.OPEN), width, turned, gap, HIGH);
    }

    private static double mm(List<Cut> cuts, double width, boolean turned, double gap, double known) {
        return StackFloor.under(
                        cuts,
                        Math.round(width * 100),
                        turned,
                        Math.round(gap * 100),
                        Math.round(known * 100),
                        () -> false)
                / 100.0;
    }

    /** By hand: two panels of 501 lie above each other on 1000, with the gap between them; two of 500 side by side. */
    @Test
    void panelsTooWideToLieSideBySideLieAboveEachOther() {
        Piece wide = SamplePieces.rectangle("panel", 2, 501, 300);
        assertThat(under(1000, false, 0, wide)).isEqualTo(600);
        assertThat(under(1000, false, 10, wide)).isEqualTo(610);
        assertThat(under(1000, false, 0, SamplePieces.rectangle("panel", 2, 500, 300)))
                .isEqualTo(300);
    }

    /** By hand: legs of 500 and a band of 700 on 1190: beside one leg stays 690, beside both 190, so the band lies above. */
    @Test
    void aBandThatFitsBesideNoLegLiesAboveIt() {
        Piece leg = SamplePieces.rectangle("leg", 2, 500, 900);
        Piece band = SamplePieces.rectangle("band", 1, 700, 150);
        assertThat(under(1190, false, 0, leg, band)).isEqualTo(1050);
        assertThat(under(1900, false, 0, leg, band)).isEqualTo(900);
    }

    /** By hand: the corner that one L leaves free takes the foot of the next, 50 farther on, where the cloth lets it lie 50 aside. */
    @Test
    void outlinesLieInEachOthersHollows() {
        Piece angle = SamplePieces.plain(
                "angle",
                2,
                false,
                false,
                Point.ORIGIN,
                new Point(100, 0),
                new Point(100, 50),
                new Point(50, 50),
                new Point(50, 100),
                new Point(0, 100));
        assertThat(under(150, false, 0, angle)).isEqualTo(150);
        assertThat(under(149, false, 0, angle)).isEqualTo(200);
    }

    /** By hand: two right-angled triangles of 100 fill a square of 100 if one is turned; one way they need twice that. */
    @Test
    void turningIsReckonedWith() {
        Piece triangle =
                SamplePieces.plain("triangle", 2, false, false, Point.ORIGIN, new Point(100, 0), new Point(0, 100));
        assertThat(under(100, true, 0, triangle)).isEqualTo(100);
        assertThat(under(100, false, 0, triangle)).isEqualTo(200);
    }

    /** The same triangle, drawn to the left of its origin: turned it begins to the right of the one that is not. */
    @Test
    void whereAPieceIsDrawnFromMakesNoDifference() {
        Piece triangle =
                SamplePieces.plain("triangle", 2, false, false, new Point(-100, 0), Point.ORIGIN, new Point(-100, 100));
        assertThat(under(100, true, 0, triangle)).isEqualTo(100);
    }

    /** Second opinion: every place on a raster for triangles and angles that may be turned, wherever they are drawn from. */
    @Test
    void whatLiesOnARasterIsNeverShorterThanTheFloor() {
        int reached = 0;
        for (int seed = 0; seed < 40; seed++) {
            RandomStream random = new RandomStream(seed);
            boolean turned = random.below(2) == 0;
            Piece piece = SamplePieces.plain("part", 2, false, false, cornersOnARaster(random));
            int width = 5 + random.below(3);
            double least = leastOfTwo(piece, width, turned);
            double floor = under(10 * width, turned, 0, piece);
            assertThat(floor).as("seed %d", seed).isLessThanOrEqualTo(least);
            reached += floor == least ? 1 : 0;
        }
        assertThat(reached).isGreaterThan(20);
    }

    private static Point[] cornersOnARaster(RandomStream random) {
        int w = 3 + random.below(3);
        int h = 2 + random.below(4);
        int x = 1 + random.below(w - 1);
        int y = 1 + random.below(h - 1);
        int left = -random.below(2) * w;
        int[][] corners = random.below(2) == 0
                ? new int[][] {{0, 0}, {w, 0}, {0, h}}
                : new int[][] {{0, 0}, {w, 0}, {w, y}, {x, y}, {x, h}, {0, h}};
        return Arrays.stream(corners)
                .map(c -> new Point(10 * (c[0] + left), 10 * c[1]))
                .toArray(Point[]::new);
    }

    /** The least height of two such pieces on the raster, JTS deciding what overlaps. */
    private static double leastOfTwo(Piece piece, int width, boolean turned) {
        double least = HIGH;
        for (int turns = 0; turns < (turned ? 4 : 1); turns++) {
            Shape one = raster(piece, turns % 2 == 1);
            Shape other = raster(piece, turns > 1);
            for (int a = 0; 1000L * a + one.width() <= 1000L * width; a++) {
                for (int b = 0; 1000L * b + other.width() <= 1000L * width; b++) {
                    for (int dy = -10; dy <= 10; dy++) {
                        if (Outlines.sharedArea(
                                        Outlines.moved(one.x, 1000L * a - one.minX),
                                        Outlines.moved(one.y, -one.minY),
                                        Outlines.moved(other.x, 1000L * b - other.minX),
                                        Outlines.moved(other.y, 1000L * dy - other.minY))
                                == 0) {
                            long top = Math.max(one.height(), 1000L * dy + other.height()) - Math.min(0, 1000L * dy);
                            least = Math.min(least, top / 100.0);
                        }
                    }
                }
            }
        }
        return least;
    }

    private static Shape raster(Piece piece, boolean turned) {
        return Shape.of(piece.cutLine().placed(false, turned ? 180 : 0, Point.ORIGIN));
    }

    /** By hand: half a band of 400 at the fold of 700; a panel of 400 x 900 lies above it. */
    @Test
    void aPieceAtTheFoldStaysThere() {
        Piece band = SamplePieces.plain(
                "band", 1, false, true, Point.ORIGIN, new Point(400, 0), new Point(400, 150), new Point(0, 150));
        List<Cut> cuts = Cut.all(List.of(band, SamplePieces.rectangle("panel", 2, 400, 900)), Lay.Method.FOLDED);
        assertThat(mm(cuts, 700, true, 0, HIGH)).isEqualTo(1050);
        assertThat(mm(cuts, 800, true, 0, HIGH)).isEqualTo(900);
    }

    @Test
    void noMoreIsProvedThanTheLayKnown() {
        List<Cut> cuts = Cut.all(List.of(SamplePieces.rectangle("panel", 2, 501, 300)), Lay.Method.OPEN);
        assertThat(mm(cuts, 1000, false, 0, 400)).isEqualTo(400);
    }

    /** Second opinion: rectangles of whole centimetres, tried in every place on that grid, which holds a shortest lay. */
    @Test
    void rectanglesNeedWhatTryingEveryPlaceFinds() {
        int above = 0;
        for (int seed = 0; seed < 60; seed++) {
            RandomStream random = new RandomStream(seed);
            int width = 5 + random.below(4);
            int[][] sizes = new int[3][];
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < sizes.length; i++) {
                sizes[i] = new int[] {2 + random.below(4), 1 + random.below(5)};
                pieces.add(SamplePieces.rectangle("part " + i, 1, 10 * sizes[i][0], 10 * sizes[i][1]));
            }
            int least = least(sizes, width, new int[3][], 0, 15);
            double floor = under(10 * width, false, 0, pieces.toArray(Piece[]::new));
            assertThat(floor).as("seed %d", seed).isEqualTo(10 * least);
            above += least > Math.max(sizes[0][1], Math.max(sizes[1][1], sizes[2][1])) ? 1 : 0;
        }
        assertThat(above).isBetween(10, 55);
    }

    private static int least(int[][] sizes, int width, int[][] places, int i, int best) {
        if (i == sizes.length) {
            int top = 0;
            for (int k = 0; k < i; k++) {
                top = Math.max(top, places[k][1] + sizes[k][1]);
            }
            return Math.min(best, top);
        }
        int found = best;
        for (int x = 0; x + sizes[i][0] <= width; x++) {
            for (int y = 0; y + sizes[i][1] < found; y++) {
                places[i] = new int[] {x, y};
                if (free(sizes, places, i)) {
                    found = least(sizes, width, places, i + 1, found);
                }
            }
        }
        return found;
    }

    private static boolean free(int[][] sizes, int[][] places, int i) {
        for (int k = 0; k < i; k++) {
            boolean across = places[i][0] < places[k][0] + sizes[k][0] && places[k][0] < places[i][0] + sizes[i][0];
            boolean along = places[i][1] < places[k][1] + sizes[k][1] && places[k][1] < places[i][1] + sizes[i][1];
            if (across && along) {
                return false;
            }
        }
        return true;
    }
}
