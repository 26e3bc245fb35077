package stretchwright.body;

import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.ground.Said;

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
        BACK_TO_FRONT(
                "back waist to front waist", Tell.said("course.back-to-front"), Tell.said("course.back-to-front-how")),
        THIGH_TO_SHIN("top of thigh to shin", Tell.said("course.thigh-to-shin"), Tell.said("course.thigh-to-shin-how")),
        WAIST_TO_KNEE(
                "front waist to kneecap", Tell.said("course.waist-to-knee"), Tell.said("course.waist-to-knee-how")),
        ANKLE_TO_ANKLE(
                "inner ankle to inner ankle",
                Tell.said("course.ankle-to-ankle"),
                Tell.said("course.ankle-to-ankle-how"));

        private final String word;
        private final Said said;
        private final Said how;

        Course(String word, Said said, Said how) {
            this.word = word;
            this.said = said;
            this.how = how;
        }

        /** As written in the make file. */
        public String word() {
            return word;
        }

        public Said said() {
            return said;
        }

        /** Which way and in which pose. */
        public Said how() {
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
