package stretchwright.workroom.jobs;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A piece of long work, as it stood when it was read.
 *
 * @param number in the order in which they were asked, from 1
 * @param input what was asked, as {@link Asked} reads it
 * @param reached rounds of a lay that are done, or parts of what comes in parts
 * @param asked how many there are at most
 * @param tries how often it was begun since it last came on
 * @param told what its maker should read: why it failed, what stops or is left out; one line each
 * @param added when, in milliseconds since 1970
 * @param begun when first; 0 where it was not
 * @param ended when; 0 where it is not
 */
public record Job(
        String id,
        long number,
        Kind kind,
        String name,
        String input,
        State state,
        long reached,
        long asked,
        int tries,
        List<String> told,
        long added,
        long begun,
        long ended) {
    public Job {
        told = List.copyOf(told);
    }

    public enum Kind {
        LAY,
        PIECES,
        CLUB,
        SIZES;

        /** As it stands in the database and on the screen. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Whether it comes on in rounds, and its best is there before its end. */
        public boolean inRounds() {
            return this == LAY || this == PIECES;
        }

        static Optional<Kind> of(String word) {
            return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst();
        }
    }

    public enum State {
        QUEUED,
        RUNNING,
        DONE,
        FAILED,
        CANCELLED;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<State> of(String word) {
            return Arrays.stream(values()).filter(s -> s.word().equals(word)).findFirst();
        }

        /** Whether nothing more will come of it. */
        public boolean over() {
            return this != QUEUED && this != RUNNING;
        }
    }
}
