package stretchwright.print.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Box;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Names;
import stretchwright.pattern.Seam;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;
import stretchwright.sewing.Joined;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.sewing.StepKind;

/** Which pieces stand beside each other in the drawing of a step, and which of their edges meet. */
class StepPanelsTest extends DrawnSteps {
    /** The waistband is on the fold: the edge that meets the legs is drawn over both halves. */
    @Test
    void anEdgeOnTheFoldIsShownWhole() {
        Job job = SampleJob.on("A4");
        Operation o = joining(
                job,
                new Joined(Names.piece("leg"), EdgeName.WAIST_EDGE),
                new Joined(Names.piece("waistband"), EdgeName.LOWER_EDGE));
        StepPanels step = StepPanels.of(job, o);
        StepPanel band = step.panel("B");
        assertThat(band.piece().onFold()).isTrue();
        Box edge = Box.around(step.sewn("B").line().points());
        assertThat(edge.minX()).isEqualTo(-edge.maxX());
        assertThat(step.sewn("B").line().length())
                .isCloseTo(2 * step.sewn("B").edge().length(), org.assertj.core.api.Assertions.within(0.01));
        assertThat(step.meets())
                .containsExactly(new StepPanels.Meeting(Seam.Role.WAISTBAND_JOIN, List.of("A"), List.of("B")));
    }

    @Test
    void aPairIsDrawnAsLeftAndRightWithTheEdgesFacing() {
        Job job = SampleJob.on("A4");
        StepPanels step = StepPanels.of(
                job,
                joining(
                        job,
                        new Joined(Names.piece("leg"), EdgeName.FRONT_CROTCH),
                        new Joined(Names.piece("leg"), EdgeName.FRONT_CROTCH)));
        assertThat(step.panels()).hasSize(2);
        assertThat(step.panels().get(0).mirrored())
                .isNotEqualTo(step.panels().get(1).mirrored());
        assertThat(step.panels().get(0).sewnOnLeft()).isFalse();
        assertThat(step.panels().get(1).sewnOnLeft()).isTrue();
        assertThat(StepDrawing.key(step).get(0)).isEqualTo("A on B, outsides together.");
    }

    @Test
    @Tag("slow")
    void theGussetSaysWhichEdgesMeet() throws Exception {
        Job job = job("shaped-seam-gusset");
        Operation gusset = named(job, StepKind.GUSSET);
        StepPanels step = StepPanels.of(job, gusset);
        assertThat(step.panels()).hasSize(5);
        assertThat(StepDrawing.key(step).get(0)).isEqualTo("A on B; C on D; E on F; G on H, outsides together.");
        assertThat(StepAfter.of(job, step)).isEmpty();
        StepPanels sides = StepPanels.of(job, named(job, StepKind.SIDE_SEAMS));
        assertThat(StepDrawing.key(sides).get(0)).startsWith("A on B");
        assertThat(StepAfter.of(job, sides)).isPresent();
        assertThat(StepAfter.of(job, StepPanels.of(job, named(job, StepKind.INSEAMS))))
                .isEmpty();
    }
}
