package stretchwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.boot.SampleBoot;
import stretchwright.draft.Draft;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/** Sizes over each other: common points, true lines. Bodies drawn at random. */
class NestTest {
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(
            value = Style.Leg.class,
            names = {"OVER_BOOT", "ANKLE", "SHORT"})
    void everyLineLiesOnTheDraftedOneInEverySize(Style.Leg leg) {
        for (int from = 1; from <= 40; from += 4) {
            List<Nest.Size> sizes = SampleNest.sizes(leg, from, 4);
            Nest nest = Nest.of(sizes);
            for (Nest.Nested piece : nest.pieces()) {
                for (int i = 0; i < sizes.size(); i++) {
                    Piece drafted = sizes.get(i).pattern().piece(piece.name());
                    for (Edge edge : drafted.edges()) {
                        Path again = joined(piece, edge.name(), i);
                        String who = leg + " " + sizes.get(i).name() + " " + piece.name() + " " + edge.name();
                        assertThat(apart(edge.line(), again)).as(who).isLessThanOrEqualTo(Nest.TOLERANCE);
                        assertThat(apart(again, edge.line())).as(who).isLessThanOrEqualTo(Nest.TOLERANCE);
                        assertThat(again.start()).isEqualTo(edge.line().start());
                        assertThat(again.end()).isEqualTo(edge.line().end());
                    }
                }
            }
        }
    }

    private static Path joined(Nest.Nested piece, EdgeName edge, int size) {
        List<Point> points = new ArrayList<>();
        piece.runs().stream()
                .filter(r -> r.edge() == edge)
                .forEach(r -> points.addAll(r.lines().get(size).points()));
        return new Path(points);
    }

    /** Second opinion: 400 places along one line against every chord of the other. */
    private static double apart(Path line, Path other) {
        double worst = 0;
        double length = line.length();
        List<Point> q = other.points();
        for (int i = 0; i <= 400; i++) {
            Point p = line.at(length * i / 400);
            double least = Double.POSITIVE_INFINITY;
            for (int k = 1; k < q.size(); k++) {
                Point way = q.get(k).minus(q.get(k - 1));
                double t = way.dot(way) == 0 ? 0 : p.minus(q.get(k - 1)).dot(way) / way.dot(way);
                least = Math.min(least, p.distance(q.get(k - 1).plus(way.times(Math.max(0, Math.min(1, t))))));
            }
            worst = Math.max(worst, least);
        }
        return worst;
    }

    @Test
    void pointsStandAtTheSameSharesInAllSizesAndRunsEndAtNotches() {
        List<Nest.Size> sizes = SampleNest.sizes(Style.Leg.OVER_BOOT, 1, 5);
        Nest.Nested leg = Nest.of(sizes).pieces().get(0);
        assertThat(leg.runs().stream().filter(r -> r.edge() == EdgeName.FRONT_INSEAM))
                .extracting(Nest.Run::from)
                .containsExactly(
                        Optional.empty(),
                        Optional.of(NotchName.MID_THIGH),
                        Optional.of(NotchName.KNEE),
                        Optional.of(NotchName.CALF),
                        Optional.of(NotchName.BOOT_TOP));
        for (Nest.Run run : leg.runs()) {
            for (int i = 0; i < sizes.size(); i++) {
                Path drafted = sizes.get(i)
                        .pattern()
                        .piece(PieceName.of(PieceKind.LEG))
                        .edge(run.edge())
                        .line();
                double start = run.from().isEmpty()
                        ? 0
                        : along(sizes.get(i).pattern(), run.edge(), run.from().get());
                assertThat(run.lines().get(i).points()).hasSameSizeAs(run.shares());
                for (int k = 0; k < run.shares().size(); k++) {
                    Point wanted = drafted.at(
                            start + run.shares().get(k) * run.lengths().get(i));
                    assertThat(run.lines().get(i).points().get(k).distance(wanted))
                            .isLessThan(0.008);
                }
            }
        }
    }

    private static double along(Pattern pattern, EdgeName edge, NotchName notch) {
        return pattern.piece(PieceName.of(PieceKind.LEG)).notches().stream()
                .filter(n -> n.edge().equals(edge) && n.name().equals(notch))
                .findFirst()
                .orElseThrow()
                .along();
    }

    /** By hand: a cuff is a rectangle, so its grade is the difference of the sides. */
    @Test
    void theGradeIsHowCornersMove() {
        Style style = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32));
        List<Nest.Size> sizes = new ArrayList<>();
        for (double factor : new double[] {1, 1.1}) {
            sizes.add(new Nest.Size(
                    "x" + factor,
                    Draft.of(
                                    SampleBody.smallAdult(),
                                    SampleFabric.heavyKnit(),
                                    Optional.of(SampleBoot.scaled(factor)),
                                    style,
                                    new Findings(""))
                            .orElseThrow()));
        }
        Nest nest = Nest.of(sizes);
        Nest.Nested cuff = nest.pieces().stream()
                .filter(p -> p.name().is(PieceKind.CUFF))
                .findFirst()
                .orElseThrow();
        double wider = width(sizes.get(1)) - width(sizes.get(0));
        double spread = cuff.corners().stream()
                        .mapToDouble(c -> c.moves().get(0).x())
                        .max()
                        .orElseThrow()
                - cuff.corners().stream()
                        .mapToDouble(c -> c.moves().get(0).x())
                        .min()
                        .orElseThrow();
        assertThat(wider).isGreaterThan(20);
        assertThat(spread).isCloseTo(wider, within(0.03));
        assertThat(cuff.corners())
                .allSatisfy(c -> assertThat(c.moves().get(0).y()).isZero());
    }

    private static double width(Nest.Size size) {
        return size.pattern()
                .piece(PieceName.of(PieceKind.CUFF))
                .edge(EdgeName.LOWER_EDGE)
                .length();
    }

    @Test
    void oneSizeIsANestToo() {
        assertThat(Nest.of(SampleNest.sizes(Style.Leg.ANKLE, 7, 1)).sizes()).containsExactly("seed 7");
    }

    @Test
    void otherPiecesAreRefused() {
        List<Nest.Size> sizes = new ArrayList<>(SampleNest.sizes(Style.Leg.OVER_BOOT, 1, 1));
        Body body = SampleBody.smallAdult();
        Style cuff = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32));
        sizes.add(new Nest.Size(
                "with a cuff",
                Draft.of(body, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), cuff, new Findings(""))
                        .orElseThrow()));
        assertThatThrownBy(() -> Nest.of(sizes)).hasMessageContaining("with a cuff has other pieces");
    }
}
