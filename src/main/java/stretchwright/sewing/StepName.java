package stretchwright.sewing;

import stretchwright.ground.Said;
import stretchwright.pattern.Stitch;

/** Which step of the work one is. Steps are told apart by it, never by the words in which they are told. */
public sealed interface StepName permits StepKind, StepName.Test, StepName.Own {

    /** As the report and the make file have it, the same in every language. */
    String word();

    /** For people. */
    Said said();

    /** The test of a stitch on a scrap. */
    record Test(Stitch stitch) implements StepName {
        @Override
        public String word() {
            return "test " + stitch.plainName();
        }

        @Override
        public Said said() {
            return Tell.said("step.test", Tell.stitch(stitch));
        }
    }

    /** A step of the sewer's own, with the sewer's words. */
    record Own(String word) implements StepName {
        @Override
        public Said said() {
            return Tell.own(word);
        }
    }
}
