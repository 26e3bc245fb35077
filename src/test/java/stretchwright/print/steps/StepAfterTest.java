package stretchwright.print.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Box;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Names;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;
import stretchwright.sewing.Joined;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.sewing.StepKind;

/** What a step comes to is drawn where a flat drawing of it is true, and else left out. */
class StepAfterTest extends DrawnSteps {
    /** Where nothing flat would be true there is no picture of it: darts, curved bands, straps, panels. */
    @Test
    @Tag("slow")
    void whatCannotBeDrawnHonestlyIsLeftOut() throws Exception {
        Job contoured = job("contoured-band");
        for (StepKind step : List.of(StepKind.DARTS, StepKind.BAND_RINGS)) {
            assertThat(StepAfter.of(contoured, StepPanels.of(contoured, named(contoured, step))))
                    .as(step.word())
                    .isEmpty();
        }
        Job panel = job("colour-panel");
        StepPanels sides = StepPanels.of(panel, named(panel, StepKind.PANELS));
        assertThat(sides.meets())
                .hasSize(2)
                .allMatch(m -> m.one().size() == 1 && m.other().size() == 1);
        assertThat(StepAfter.of(panel, sides)).isEmpty();
    }

    @Test
    @Tag("slow")
    void aRingIsAsRoundAndHighAsItsBand() throws Exception {
        Job job = job("evening-practice");
        StepPanels step = StepPanels.of(job, named(job, StepKind.BAND_RING));
        Box ring = StepAfter.of(job, step).orElseThrow().box();
        Box half = step.panels().get(0).piece().sewLine().box();
        assertThat(ring.width() * Math.PI).isCloseTo(2 * half.width(), org.assertj.core.api.Assertions.within(0.1));
        assertThat(ring.height()).isGreaterThan(half.height());
    }

    /** A strip without a fold mark, folded along its middle, is drawn folded; marked only, it is not. */
    @Test
    void aStripIsFoldedWhereItsStepSaysSo() {
        Job job = SampleJob.on("A4");
        Joined[] edges = {
            new Joined(Names.piece("cuff"), EdgeName.LOWER_EDGE), new Joined(Names.piece("cuff"), EdgeName.UPPER_EDGE)
        };
        Job bare = unmarked(job);
        for (StepKind kind : List.of(StepKind.CUFF_FOLD, StepKind.BAND_FOLD)) {
            Operation fold = unsewn(joining(bare, edges), kind);
            assertThat(StepAfter.of(bare, StepPanels.of(bare, fold)))
                    .as(kind.word())
                    .isPresent();
        }
        Operation turn = unsewn(joining(bare, edges), StepKind.BAND_TURN);
        assertThat(StepAfter.of(bare, StepPanels.of(bare, turn))).isEmpty();
    }

    private static Job unmarked(Job job) {
        Pattern all = job.pattern();
        List<Piece> pieces = all.pieces().stream()
                .map(p -> p.name().is(PieceKind.CUFF)
                        ? Piece.of(
                                p.name(),
                                p.cut(),
                                p.mirrored(),
                                p.onFold(),
                                p.edges(),
                                p.grain(),
                                p.notches(),
                                List.of())
                        : p)
                .toList();
        Pattern pattern = new Pattern(pieces, all.seams(), all.levels(), all.reductions());
        return new Job(
                job.makeName(),
                job.wearerName(),
                job.unit(),
                pattern,
                job.fit(),
                job.lays(),
                job.sewing(),
                job.paper());
    }
}
