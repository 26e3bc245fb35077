package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Voice;

/** What is left between the pieces, against dots and against trying every rectangle of a coarse raster. */
class LeftoverTest {
    private static Polygon polygon(double... xy) {
        List<Point> points = new java.util.ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return new Polygon(points);
    }

    /** By hand: a block in the lower left corner leaves an L of 1000 x 600 above it and 600 x 400 beside it. */
    @Test
    void aBlockInACornerLeavesTwoRectangles() {
        List<Box> free =
                new FreeRectangles(1000, 1000, List.of(polygon(0, 0, 400, 0, 400, 400, 0, 400))).largest(50, 8);
        assertThat(free).hasSize(2);
        assertThat(free.get(0).width() * free.get(0).height()).isCloseTo(600_000, within(1e-6));
        assertThat(free.get(1).width() * free.get(1).height()).isCloseTo(240_000, within(1e-6));
    }

    /** Beside a slope the corner touches it: at 1234.56 wide and odd places nothing falls on the cells. */
    @Test
    void sidesArePushedToTheHundredthOfAMillimetre() {
        List<Box> free = new FreeRectangles(1234.56, 777.77, List.of(polygon(300.13, 0, 1234.56, 0, 1234.56, 777.77)))
                .largest(50, 1);
        Box box = free.get(0);
        assertThat(box.minX()).isZero();
        assertThat(box.maxY()).isEqualTo(777.77);
        // the lower right corner is on the slope: y = (x - 300.13) 777.77 / 934.43, rounded inwards
        double slope = Math.max(0, (box.maxX() - 300.13) * 777.77 / 934.43);
        assertThat(box.minY() - slope).isBetween(0.0, 0.02);
    }

    @Test
    void aFullClothLeavesNothing() {
        assertThat(new FreeRectangles(500, 500, List.of(polygon(10, 10, 460, 10, 460, 460, 10, 460))).largest(50, 8))
                .isEmpty();
    }

    @Test
    void noCutLineEntersALeftover() {
        for (SampleMakes make : SampleMakes.all()) {
            List<Polygon> outlines = OnCloth.outlines(make.lay(), make.pieces());
            List<Leftover> left = Leftover.of(make.lay(), make.pieces(), make.fabric());
            assertThat(left).as(make.name()).isNotEmpty();
            for (Leftover l : left) {
                assertThat(l.x()).isGreaterThanOrEqualTo(0);
                assertThat(l.y()).isGreaterThanOrEqualTo(0);
                assertThat(l.x() + l.width()).isLessThanOrEqualTo(make.lay().fabricWidth() + 1e-9);
                assertThat(l.y() + l.height()).isLessThanOrEqualTo(make.lay().spreadLength() + 1e-9);
                for (Polygon outline : outlines) {
                    assertThat(entered(outline, l)).as(make.name() + " " + l).isFalse();
                }
            }
        }
    }

    /** Dots 7 mm apart inside the rectangle, just inside its border, and the corners of the outline in it. */
    private static boolean entered(Polygon outline, Leftover l) {
        double in = 0.02;
        for (Point p : outline.points()) {
            if (p.x() > l.x() + in
                    && p.x() < l.x() + l.width() - in
                    && p.y() > l.y() + in
                    && p.y() < l.y() + l.height() - in) {
                return true;
            }
        }
        for (double x = l.x() + in; x < l.x() + l.width(); x += Math.min(7, l.width() - 2 * in)) {
            for (double y = l.y() + in; y < l.y() + l.height(); y += Math.min(7, l.height() - 2 * in)) {
                if (outline.contains(new Point(x, y))) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void leftoversLieApartAndLargestFirst() {
        for (SampleMakes make : SampleMakes.all()) {
            List<Leftover> left = Leftover.of(make.lay(), make.pieces(), make.fabric());
            for (int i = 0; i < left.size(); i++) {
                Leftover a = left.get(i);
                assertThat(Math.min(a.width(), a.height())).isGreaterThanOrEqualTo(Leftover.LEAST);
                for (Leftover b : left.subList(i + 1, left.size())) {
                    assertThat(a.area()).isGreaterThanOrEqualTo(b.area());
                    boolean apart = a.x() + a.width() <= b.x() + 1e-9
                            || b.x() + b.width() <= a.x() + 1e-9
                            || a.y() + a.height() <= b.y() + 1e-9
                            || b.y() + b.height() <= a.y() + 1e-9;
                    assertThat(apart).as(make.name()).isTrue();
                }
            }
        }
    }

    /** Second opinion: every rectangle of dots 20 mm apart that no outline holds; the largest found is no smaller. */
    @Tag("slow")
    @Test
    void noRectangleOfTheRasterIsLarger() {
        for (SampleMakes make : SampleMakes.all()) {
            double best = bruteForce(make);
            double found =
                    Leftover.of(make.lay(), make.pieces(), make.fabric()).get(0).area();
            assertThat(found).as(make.name()).isGreaterThanOrEqualTo(best);
        }
    }

    private static double bruteForce(SampleMakes make) {
        List<Polygon> outlines = OnCloth.outlines(make.lay(), make.pieces());
        int step = 20;
        int columns = (int) (make.lay().fabricWidth() / step);
        int rows = (int) (make.lay().spreadLength() / step);
        boolean[][] hit = new boolean[rows][columns];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                hit[r][c] = betweenLayers(make, c * step, r * step, step);
                for (Polygon o : outlines) {
                    hit[r][c] |= touches(o, c * step, r * step, step);
                }
            }
        }
        double best = 0;
        for (int top = 0; top < rows; top++) {
            boolean[] free = new boolean[columns];
            java.util.Arrays.fill(free, true);
            for (int low = top; low < rows; low++) {
                int run = 0;
                for (int c = 0; c < columns; c++) {
                    free[c] &= !hit[low][c];
                    run = free[c] ? run + 1 : 0;
                    // the least side of what is kept is 50 mm
                    boolean kept = run * step >= Leftover.LEAST && (low - top + 1) * step >= Leftover.LEAST;
                    best = kept ? Math.max(best, (double) run * step * (low - top + 1) * step) : best;
                }
            }
        }
        return best;
    }

    /** Where one layer and two meet, and where a folded stretch has no cloth. */
    private static boolean betweenLayers(SampleMakes make, double x, double y, double step) {
        double d = make.lay().doubled();
        return switch (make.lay().method()) {
            case OPEN, FOLDED, FOLDED_CROSSWISE -> false;
            case FOLDED_OFF_THE_MIDDLE -> x < d && d < x + step;
            case PART_FOLDED ->
                y < d && d < y + step
                        || y < d && x + step > make.fabric().roll().usableWidth() / 2;
        };
    }

    /** As many layers as the cloth has there; opened at a fold it is one piece. */
    @Test
    void layersAreThoseOfTheClothThere() {
        Set<Lay.Method> seen = EnumSet.noneOf(Lay.Method.class);
        for (SampleMakes make : SampleMakes.all()) {
            Lay lay = make.lay();
            seen.add(lay.method());
            for (Leftover l : Leftover.of(lay, make.pieces(), make.fabric())) {
                int layers = switch (lay.method()) {
                    case OPEN -> 1;
                    case FOLDED, FOLDED_CROSSWISE -> 2;
                    case FOLDED_OFF_THE_MIDDLE -> l.x() + l.width() / 2 < lay.doubled() ? 2 : 1;
                    case PART_FOLDED -> l.y() + l.height() / 2 < lay.doubled() ? 2 : 1;
                };
                assertThat(l.layers()).as(make.name() + " " + l).isEqualTo(layers);
                assertThat(l.atFold())
                        .isEqualTo(layers == 2 && l.x() == 0 && lay.method() != Lay.Method.FOLDED_CROSSWISE);
            }
        }
        assertThat(seen).containsExactlyInAnyOrder(Lay.Method.values());
    }

    /** Dots 2 mm apart over the cell, its border included. */
    private static boolean touches(Polygon o, double x, double y, double step) {
        Box box = o.box();
        if (x > box.maxX() || x + step < box.minX() || y > box.maxY() || y + step < box.minY()) {
            return false;
        }
        for (double dx = 0; dx <= step; dx += 2) {
            for (double dy = 0; dy <= step; dy += 2) {
                if (o.contains(new Point(x + dx, y + dy))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** By hand: 400 x 210 holds one headband beside nothing, two above each other; through two layers twice that. */
    @Test
    void whatCanBeCutIsCountedInRows() {
        assertThat(new Leftover(0, 0, 400, 210, 1, false).yields(380, 100)).isEqualTo(2);
        assertThat(new Leftover(0, 0, 400, 210, 2, false).yields(380, 100)).isEqualTo(4);
        assertThat(new Leftover(0, 0, 379, 210, 1, false).yields(380, 100)).isZero();
        // on the fold, half as wide: opened it is wide enough
        assertThat(new Leftover(0, 0, 200, 210, 2, true).yields(380, 100)).isEqualTo(2);
        assertThat(new Leftover(0, 0, 200, 210, 2, false).yields(380, 100)).isZero();
    }

    /** The pattern's own band is on the fold and no offcut; a piece that ends in the name of the kind takes its place. */
    @Test
    void ownPiecesTakeThePlaceOfUsualSizes() {
        var gusset = SamplePieces.plain(
                "gusset", 1, false, false, new Point(0, 0), new Point(90, 0), new Point(90, 140), new Point(0, 140));
        List<Offcut> list = Offcut.list(List.of(gusset));
        assertThat(list)
                .extracting(Offcut::name)
                .contains("spare gusset", "headband")
                .doesNotContain("gusset");
        Offcut own = list.stream()
                .filter(o -> o.name().equals("spare gusset"))
                .findFirst()
                .orElseThrow();
        assertThat(own.across()).isEqualTo(90);
        assertThat(own.along()).isEqualTo(140);
        assertThat(Offcut.list(List.of()))
                .allMatch(o -> Voice.plain().say(o.source()).contains("no source"));
    }
}
