package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.pattern.Machine;

/** Makers in inches read what is sewn in mm, as machines are set, with what their ruler shows behind it. */
class SewnLengthsTest {
    private static final Voice INCHES = Voice.of(Unit.IN);
    private static final SewingPlan PLAN =
            Planning.plan(SampleSewing.withCuff(), SampleFabric.heavyKnit(), Set.of(Machine.LOCKSTITCH));

    private static SewingPlan.Operation step(StepName name) {
        return PLAN.operations().stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** By hand: 7 mm is 4.41 sixteenths, 52 mm 32.76, 100 mm 62.99, 15 mm 9.45, 20 mm 12.6. */
    @Test
    void lengthsHaveInchesBehindThem() {
        assertThat(INCHES.say(step(StepKind.FRONT_RISE).instruction()))
                .contains("The sew line is 7 mm (1/4 in) in from");
        assertThat(INCHES.say(step(StepKind.BAND_JOIN).instruction())).contains("52 mm (2 1/16 in) shorter all round");
        assertThat(INCHES.say(PLAN.operations().get(0).instruction())).contains("sew 100 mm (3 15/16 in) across");
        assertThat(INCHES.say(step(StepKind.TRY_ON).check()))
                .contains("less than 15 mm (9/16 in)", "less than 20 mm (13/16 in)");
        assertThat(INCHES.say(step(StepKind.BAND_JOIN).help().undo())).contains("every 50 mm (1 15/16 in)");
    }

    /** Stitches and needles are set in mm everywhere. */
    @Test
    void stitchesHaveNot() {
        assertThat(INCHES.say(
                        step(StepKind.FRONT_RISE).help().setting().orElseThrow().note()))
                .isEqualTo("1 mm wide for seams, 4 mm for hems");
    }

    @Test
    void inMillimetresAndCentimetresTheWordsAreTheSame() {
        for (SewingPlan.Operation o : PLAN.operations()) {
            assertThat(Voice.of(Unit.CM).say(o.instruction()))
                    .isEqualTo(Voice.plain().say(o.instruction()));
            assertThat(Voice.of(Unit.CM).say(o.check())).isEqualTo(Voice.plain().say(o.check()));
        }
    }
}
