package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stretchwright.body.PoseLength;

/** Reads lengths over the body, standing and in the pose. */
final class PoseReader {
    static final List<String> KEYS =
            Stream.of(PoseLength.Course.values()).map(PoseLength.Course::word).toList();

    private PoseReader() {}

    static List<PoseLength> read(Section section) {
        List<PoseLength> out = new ArrayList<>();
        for (PoseLength.Course course : PoseLength.Course.values()) {
            String key = course.word();
            if (!section.has(key)) {
                continue;
            }
            int before = section.problems();
            List<Double> mm = section.lengths(key, Limits.POSE_LENGTH, 2);
            if (mm.size() == 2 && mm.get(1) >= mm.get(0)) {
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
