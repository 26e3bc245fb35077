package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.PieceKind;

/** The toe of a boot cover is a box and no beak, over boots of every proportion. */
class CoverToeTest {
    private static final double[] STRETCH = {0.3, 0.6, 1.0};

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 600);
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("seeds")
    void theToeIsABoxAndNoBeak(int seed) {
        Body body = SampleBody.random(seed);
        double stretch = STRETCH[seed % 3];
        Draft.of(
                        body,
                        SampleFabric.with(1470, stretch, stretch * 0.75, true),
                        Optional.of(boot(body, seed)),
                        HemStyles.style(Hem.WHOLE_BOOT),
                        new Findings("seed " + seed))
                .ifPresent(pattern -> pattern.pieces().stream()
                        .filter(p -> p.name().is(PieceKind.BOOT_COVER))
                        .forEach(p -> isBox(
                                p.edge(EdgeName.FRONT_EDGE).line(),
                                p.edge(EdgeName.LOWER_EDGE).length())));
    }

    /** As low as a cover may be and as long as a boot may be: the handles are as long as the cover is high, and no longer. */
    @Test
    void aLowAndLongCoverStillGoesDownAllTheWay() {
        Path front = CoverFront.between(new Point(-90, LowerCheck.LOWEST_COVER), new Point(-350, 0), 100);
        for (int i = 1; i < front.points().size(); i++) {
            assertThat(front.points().get(i).y())
                    .isLessThan(front.points().get(i - 1).y());
        }
    }

    private static void isBox(Path front, double sole) {
        Point toe = front.end();
        Point over = front.at(front.length() - 10).minus(toe);
        assertThat(Math.toDegrees(Math.atan2(over.y(), over.x())))
                .as("angle of the last 10 mm")
                .isBetween(80.0, 110.0);
        double high = 0;
        for (Point p : front.points()) {
            assertThat(p.x()).as("beyond the toe").isGreaterThanOrEqualTo(toe.x());
            if (p.x() <= toe.x() + sole / 8) {
                high = Math.max(high, p.y());
            }
        }
        assertThat(high).as("height of the toe box").isGreaterThan(20);
        assertThat(leastRadius(front)).isGreaterThan(15);
        assertThat(turnsOfItsBend(front)).isLessThanOrEqualTo(1);
    }

    /** Of the circles through three points of the edge 5 mm apart. */
    private static double leastRadius(Path edge) {
        double least = Double.POSITIVE_INFINITY;
        for (double s = 6; s < edge.length() - 6; s++) {
            least = Math.min(least, 1 / Math.abs(bend(edge, s, 5)));
        }
        return least;
    }

    private static int turnsOfItsBend(Path edge) {
        int turns = 0;
        double before = 0;
        for (double s = 8; s < edge.length() - 8; s += 4) {
            double bend = bend(edge, s, 8);
            if (Math.abs(bend) < 1e-3) {
                continue;
            }
            turns += before * bend < 0 ? 1 : 0;
            before = bend;
        }
        return turns;
    }

    private static double bend(Path edge, double s, double apart) {
        Point a = edge.at(s - apart);
        Point b = edge.at(s);
        Point c = edge.at(s + apart);
        Point ab = b.minus(a);
        Point ac = c.minus(a);
        double twice = ab.x() * ac.y() - ab.y() * ac.x();
        return 2 * twice / (a.distance(b) * b.distance(c) * a.distance(c));
    }

    /** As wide, high, long and stiff as boots come, each measure for itself. */
    private static Boot boot(Body body, int seed) {
        SplittableRandom r = new SplittableRandom(seed * 7919L);
        double foot = body.mm(Measure.HEEL_GIRTH) / 305;
        Boot.Sole sole = new Boot.Sole(
                OptionalDouble.of(135 * foot * r.nextDouble(0.6, 1.3)),
                OptionalDouble.of(270 * foot * r.nextDouble(0.9, 1.15)),
                OptionalDouble.of(95 * foot * r.nextDouble(0.8, 1.25)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return new Boot(
                "any boot",
                290 * foot * r.nextDouble(0.9, 1.25),
                400 * foot * r.nextDouble(0.88, 1.2),
                385 * foot,
                105 * foot,
                80 * foot * r.nextDouble(0.7, 1.9),
                false,
                Boot.Dressing.LEG_FIRST,
                OptionalDouble.empty(),
                sole);
    }
}
