package stretchwright.web.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.ground.Point;

/** The wearer from the side, over generated bodies from a child of four to a tall adult. */
class WornViewTest {
    private static final double SCALE = 0.5;

    private static final List<Measure> UPWARDS = List.of(
            Measure.ANKLE_BONE_HEIGHT,
            Measure.ANKLE_HEIGHT,
            Measure.CALF_HEIGHT,
            Measure.KNEE_HEIGHT,
            Measure.CROTCH_HEIGHT,
            Measure.HIP_HEIGHT,
            Measure.WAIST_HEIGHT);

    static LongStream bodies() {
        return LongStream.range(0, 50);
    }

    private static WornView view(long seed, boolean booted) {
        Body body = SampleBody.random(seed);
        double waist = body.mm(Measure.WAIST_HEIGHT);
        BootKind kind = BootKind.values()[(int) (seed % 4)];
        Boot boot = BootShape.usual(kind).scaled(body.mm(Measure.FOOT_LENGTH) / 245);
        double hem = booted
                ? body.mm(Measure.ANKLE_BONE_HEIGHT) - boot.ankleToHem()
                : body.mm(Measure.ANKLE_HEIGHT) * (seed % 3 == 0 ? 2.5 : 1);
        return WornView.of(
                body,
                booted ? Optional.of(boot) : Optional.empty(),
                new WornEdges(waist - 12, waist + 15, hem + (seed % 2) * 10, hem),
                SCALE);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void levelsRiseAsTheyDoOnTheBody(long seed) {
        Body body = SampleBody.random(seed);
        for (boolean booted : new boolean[] {false, true}) {
            WornView view = view(seed, booted);
            double below = view.levelY(0);
            for (Measure level : UPWARDS) {
                double y = view.levelY(body.mm(level));
                assertThat(y).as(level.term()).isLessThan(below).isBetween(0.0, view.height());
                assertThat(view.levelY(0) - y).isCloseTo(SCALE * body.mm(level), within(1e-9));
                assertThat(view.frontX(body.mm(level)))
                        .as(level.term())
                        .isLessThan(view.backX(body.mm(level)))
                        .isBetween(0.0, view.width());
                assertThat(view.backX(body.mm(level))).isBetween(0.0, view.width());
                below = y;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void theOutlineNeverCrossesItself(long seed) {
        assertThat(crossings(view(seed, false).outline())).isEmpty();
        assertThat(crossings(view(seed, true).outline())).isEmpty();
        List<Point> bare = new SideFigure(SampleBody.random(seed)).outline();
        assertThat(crossings(bare)).as("the bare leg with its foot").isEmpty();
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void everyLegIsAsDeepAsItsGirthAsks(long seed) {
        Body body = SampleBody.random(seed);
        SideFigure figure = new SideFigure(body);
        for (Measure[] pair : new Measure[][] {
            {Measure.ANKLE_HEIGHT, Measure.ANKLE_GIRTH},
            {Measure.CALF_HEIGHT, Measure.CALF_GIRTH},
            {Measure.KNEE_HEIGHT, Measure.KNEE_GIRTH}
        }) {
            double h = body.mm(pair[0]);
            double depth = (figure.back(h) - figure.front(h)) * Math.PI / body.mm(pair[1]);
            assertThat(depth).as(pair[1].term()).isBetween(1.0, 1.12);
        }
    }

    @Test
    void theTestFindsACrossing() {
        assertThat(crossings(List.of(new Point(0, 0), new Point(2, 2), new Point(2, 0), new Point(0, 2))))
                .hasSize(1);
    }

    @Test
    void aThickerCalfReachesFurtherBack() {
        Body body = SampleBody.smallAdult();
        Body strong = SampleBody.with(body, Measure.CALF_GIRTH, 420);
        double calf = body.mm(Measure.CALF_HEIGHT);
        assertThat(new SideFigure(strong).back(calf) - new SideFigure(body).back(calf))
                .isGreaterThan(10);
    }

    /** A leg over a boot hides it down to the hem and shows it below. */
    @Test
    void overABootTheDrawingReachesBelowTheFloorOfTheBareFoot() {
        WornView bare = view(8, false);
        WornView booted = view(8, true);
        assertThat(bare.height() - bare.levelY(0)).isLessThan(20);
        assertThat(booted.height() - booted.levelY(0)).isGreaterThan(40);
    }

    private static List<String> crossings(List<Point> line) {
        List<String> found = new java.util.ArrayList<>();
        for (int i = 0; i + 1 < line.size(); i++) {
            for (int j = i + 2; j + 1 < line.size(); j++) {
                if (cross(line.get(i), line.get(i + 1), line.get(j), line.get(j + 1))) {
                    found.add(line.get(i) + " x " + line.get(j));
                }
            }
        }
        return found;
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point p) {
        return b.minus(a).cross(p.minus(a));
    }
}
