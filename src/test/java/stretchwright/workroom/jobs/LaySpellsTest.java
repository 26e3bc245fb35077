package stretchwright.workroom.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.StripLay;
import stretchwright.lay.nest.StripResult;

class LaySpellsTest {
    @Test
    void oneSpellIsTheSearchItself() {
        Asked.Lay asked = SmallLays.asked(1, 6, 3);
        StripResult plain = StripLay.lay(
                        asked.instance(), asked.seed(), asked.effort(), 2, LayClock.NONE, s -> {}, new Findings(""))
                .orElseThrow();
        assertThat(SmallLays.direct(asked, LaySpells.LONG))
                .isEqualTo(LaidText.document(asked.instance(), asked.seed(), plain));
    }

    /** From the file that was kept, on any number of threads: nothing else is needed. */
    @Test
    void everySpellGoesOnFromWhatWasKept() {
        Asked.Lay asked = SmallLays.asked(2, 7, 4);
        LaySpells.State state = null;
        double length = Double.MAX_VALUE;
        for (int i = 0; state == null || state.reached() < asked.size(); i++) {
            Optional<LaySpells.State> kept = Optional.ofNullable(state)
                    .map(s -> new LaySpells.State(
                            s.reached(), LaidText.read(LaidText.document(asked.instance(), asked.seed(), s.best()))));
            state = new LaySpells(asked, 1 + i % 2, LayClock.NONE, 2).next(kept);
            assertThat(state.best().length()).isLessThanOrEqualTo(length);
            length = state.best().length();
        }
        assertThat(state.best().spent()).isEqualTo(new Effort(7, 4));
        assertThat(LaidText.document(asked.instance(), asked.seed(), state.best()))
                .isEqualTo(SmallLays.direct(asked, 2));
    }

    @Test
    void whatWasAskedIsReadAsItWasWritten() {
        Asked.Lay asked = SmallLays.asked(3, 1, 2);
        Job job = new Job(
                "id",
                1,
                Job.Kind.LAY,
                "a",
                AskedText.text(asked),
                Job.State.QUEUED,
                0,
                3,
                0,
                java.util.List.of(),
                0,
                0,
                0);
        assertThat(AskedText.text(Asked.of(job))).isEqualTo(job.input());
        assertThat(((Asked.Lay) Asked.of(job)).effort()).isEqualTo(asked.effort());
    }

    @Test
    void whatWouldNeverEndIsAFinding() {
        assertThatThrownBy(() -> SmallLays.asked(4, Effort.UNLIMITED.explore(), 0))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("1000000");
    }
}
