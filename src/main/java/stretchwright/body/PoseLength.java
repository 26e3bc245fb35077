package stretchwright.body;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * A length over the body, standing and in the pose, mm; by tape or ribbon, as the cloth would lie.
 *
 * <p>The four lengths that the poses of skating stretch most: makers' practice, no source.
 */
public record PoseLength(Course course, double standing, double inPose) {
    public PoseLength {
        if (!(standing > 0 && inPose >= standing)) {
            throw new IllegalArgumentException("a pose does not shorten: " + standing + " to " + inPose);
        }
    }

    /** Where the tape runs. */
    public enum Course {
        BACK_TO_FRONT("back waist to front waist", "through the legs; sitting low, one leg forward"),
        THIGH_TO_SHIN("top of thigh to shin", "over the bent knee; sitting low"),
        WAIST_TO_KNEE("front waist to kneecap", "over the groin of the rear leg; deep lunge"),
        ANKLE_TO_ANKLE("inner ankle to inner ankle", "through the crotch; legs apart as far as you train");

        private final String word;
        private final String how;

        Course(String word, String how) {
            this.word = word;
            this.how = how;
        }

        public String word() {
            return word;
        }

        /** Which way and in which pose. */
        public String how() {
            return how;
        }

        public static Optional<Course> of(String word) {
            return Stream.of(values()).filter(c -> c.word.equals(word)).findFirst();
        }
    }

    /** What the cloth must at least give to follow, without any reduction: pose / standing - 1. */
    public double lengthens() {
        return inPose / standing - 1;
    }
}
