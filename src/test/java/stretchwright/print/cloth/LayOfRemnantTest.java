package stretchwright.print.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.print.DrawingsTest.parsed;
import static stretchwright.print.DrawingsTest.paths;
import static stretchwright.print.DrawingsTest.points;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.Lay;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;

/** A remnant with a flaw as it is drawn: each layer's edge within the spread cloth, nothing beyond the fold. */
class LayOfRemnantTest {
    private static final Polygon REMNANT = new Polygon(List.of(
            new Point(0, 0), new Point(1470, 0), new Point(1470, 1500), new Point(700, 1600), new Point(0, 1300)));
    private static final Polygon FLAW =
            new Polygon(List.of(new Point(100, 20), new Point(120, 20), new Point(120, 60), new Point(100, 60)));

    private static Job job(Lay lay) {
        return SampleJob.with(
                "A4",
                "Remnant",
                "Rowan",
                SampleFabric.heavyKnit().with(new ClothShape(Optional.of(REMNANT), List.of(FLAW))),
                lay);
    }

    private static Lay offTheMiddle() {
        Lay folded = SampleJob.foldedLay();
        return new Lay(
                Lay.Method.FOLDED_OFF_THE_MIDDLE, 970, 1290, 1420, 0.5, 1100, 500, folded.placements(), List.of());
    }

    /** Single pieces lie on the one layer beside the fold with the paper's printed side up: so its outside is up, or they come out mirrored. */
    @Test
    void offTheMiddleTheLeftEdgeIsFoldedUnder() {
        assertThat(ClothWords.before(job(offTheMiddle()).laid()).get(0))
                .contains("its OUTSIDE UP, and fold its left edge under so that 50", "one layer, its outside up");
    }

    @Test
    void nothingIsDrawnBeyondTheFold() throws Exception {
        for (Lay lay : List.of(SampleJob.foldedLay(), offTheMiddle())) {
            List<String> cloth = paths(parsed(LaySheet.svg(job(lay), "lay")), "cloth");
            List<Point> end = points(cloth.get(0));
            double left = end.get(0).x();
            double right = end.get(1).x();
            assertThat(cloth).hasSizeGreaterThan(3);
            for (String line : cloth) {
                assertThat(points(line)).allMatch(p -> p.x() > left - 0.001 && p.x() < right + 0.001);
            }
        }
    }

    /** By hand: folded at 500, a flaw 100 to 120 from the left edge lies 380 to 400 from the fold, in the lower layer. */
    @Test
    void aFlawInTheLowerLayerIsDrawnFromTheFold() throws Exception {
        List<Point> end = points(
                paths(parsed(LaySheet.svg(job(offTheMiddle()), "lay")), "cloth").get(0));
        double scale = (end.get(1).x() - end.get(0).x()) / 970;
        double from = end.get(0).x() + 380 * scale;
        double to = end.get(0).x() + 400 * scale;
        assertThat(paths(parsed(LaySheet.svg(job(offTheMiddle()), "lay")), "grain"))
                .anyMatch(line -> points(line).stream()
                                .allMatch(p -> Math.abs(p.x() - from) < 0.001 || Math.abs(p.x() - to) < 0.001)
                        && points(line).size() > 3);
    }
}
