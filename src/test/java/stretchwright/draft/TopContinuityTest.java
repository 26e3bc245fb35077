package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.TopEnd;

/** A millimetre on one measure moves no point of leg or band by more than 5 mm, in every way of ending above. */
@Tag("slow")
class TopContinuityTest {
    private static final int BODIES = 25;
    private static final List<Measure> OF_THE_TOP = List.of(
            Measure.WAIST_GIRTH,
            Measure.HIP_GIRTH,
            Measure.THIGH_GIRTH,
            Measure.WAIST_HEIGHT,
            Measure.HIP_HEIGHT,
            Measure.CROTCH_HEIGHT,
            Measure.TOTAL_CROTCH_LENGTH);

    @Test
    void aMillimetreOnOneMeasureMovesNoPointByMoreThanFive() {
        TopStyles.all().forEach((name, top) -> {
            double worst = 0;
            String where = "";
            for (int seed = 1; seed <= BODIES; seed++) {
                Body body = SampleBody.random(seed);
                Optional<Pattern> before = draft(body, top);
                for (Measure measure : OF_THE_TOP) {
                    Optional<Pattern> after = draft(SampleBody.with(body, measure, body.mm(measure) + 1), top);
                    double moved = before.isPresent() && after.isPresent() ? moved(before.get(), after.get()) : 0;
                    if (moved > worst) {
                        worst = moved;
                        where = name + ", seed " + seed + ", " + measure.term();
                    }
                }
            }
            System.out.printf("continuity of the top: %s: worst %.2f mm (%s)%n", name, worst, where);
            assertThat(worst).as(where).isLessThanOrEqualTo(5);
        });
    }

    private static Optional<Pattern> draft(Body body, TopEnd top) {
        return Draft.of(
                body, SampleFabric.heavyKnit(), Optional.empty(), TopStyles.ankle(top), new Findings("continuity"));
    }

    /** A dart that appears or vanishes parts an edge; its points are then not the same points. */
    private static double moved(Pattern before, Pattern after) {
        double worst = 0;
        for (Piece piece : before.pieces()) {
            Piece other = after.piece(piece.name());
            if (piece.edges().size() != other.edges().size()) {
                continue;
            }
            for (Edge edge : piece.edges()) {
                Edge there = other.edge(edge.name());
                for (int i = 0; i <= 20; i++) {
                    Point a = edge.line().at(edge.length() * i / 20);
                    Point b = there.line().at(there.length() * i / 20);
                    worst = Math.max(worst, a.distance(b));
                }
            }
        }
        return worst;
    }
}
