package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.body.PoseLength;

/** Reads lengths over the body, standing and in the pose. */
final class PoseReader {
    static final List<String> KEYS =
            Stream.of(PoseLength.Course.values()).map(PoseLength.Course::word).toList();

    /** Skin over a bent joint does not double: a slip of the tape (our own limit, no source). */
    private static final double LONGEST = 2;

    /** Two tapes over the same course differ by less than this share (our own limit, no source). */
    private static final double SAME = 0.15;

    private PoseReader() {}

    /** @param crotch the total crotch length where it was measured, mm */
    static List<PoseLength> read(Section section, Optional<Double> crotch) {
        List<PoseLength> lengths = read(section);
        lengths.stream()
                .filter(l -> l.course() == PoseLength.Course.BACK_TO_FRONT)
                .forEach(l -> crotch.ifPresent(mm -> agree(section, l, mm)));
        return lengths;
    }

    /** Through the legs, standing, the tape runs as the total crotch length does. */
    private static void agree(Section section, PoseLength l, double crotch) {
        if (Math.abs(l.standing() - crotch) > SAME * crotch) {
            section.add(
                    l.course().word(),
                    "is " + section.shownLength(l.standing()) + " standing, and the total crotch length, over the same"
                            + " course, is " + section.shownLength(crotch) + ".",
                    "Measure again, or leave one of them out.");
        }
    }

    private static List<PoseLength> read(Section section) {
        List<PoseLength> out = new ArrayList<>();
        for (PoseLength.Course course : PoseLength.Course.values()) {
            String key = course.word();
            if (!section.has(key)) {
                continue;
            }
            int before = section.problems();
            List<Double> mm = section.lengths(key, Limits.POSE_LENGTH, 2);
            if (mm.size() == 2 && mm.get(1) > LONGEST * mm.get(0)) {
                section.add(
                        key,
                        "is more than twice as long in the pose (" + section.shownLength(mm.get(1)) + ") as standing ("
                                + section.shownLength(mm.get(0)) + "); no body gives that.",
                        "Measure both again, between the same two places.");
            } else if (mm.size() == 2 && mm.get(1) >= mm.get(0)) {
                out.add(new PoseLength(course, mm.get(0), mm.get(1)));
            } else if (mm.size() == 2) {
                section.add(
                        key,
                        "is shorter in the pose (" + section.shownLength(mm.get(1)) + ") than standing ("
                                + section.shownLength(mm.get(0)) + ").",
                        "Standing comes first: [70, 78]. Measure again, over the body and not through the air.");
            } else if (section.problems() == before) {
                section.add(key, "needs two lengths.", "Write standing and in the pose: [70, 78].");
            }
        }
        return out;
    }
}
