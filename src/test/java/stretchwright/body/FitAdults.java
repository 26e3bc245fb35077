package stretchwright.body;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.RealMatrix;

/**
 * The joint normal of the women or the men: both Army surveys weigh the same, what only the 1988 one measured is
 * appended by regression, and where the surveys disagree each measure gets half the disagreement as a spread of its
 * own. How and why: docs/maths/body.md.
 */
final class FitAdults {
    static final List<String> PREDICTORS = List.of("stature", "navel waist girth", "hip girth", "crotch height");

    /** Measured by both surveys. */
    static final Map<String, String> BOTH = columns(
            "stature", "stature",
            "navel waist girth", "waist_omphalion_girth",
            "hip girth", "buttock_girth",
            "crotch height", "crotch_height",
            "thigh girth", "thigh_girth",
            "lower thigh girth", "lower_thigh_girth",
            "calf girth", "calf_girth",
            "ankle girth", "ankle_girth",
            "navel waist height", "waist_omphalion_height",
            "hip height", "buttock_height",
            "knee height", "midpatella_height",
            "ankle bone height", "lateral_malleolus_height",
            "navel total crotch length", "crotch_length_omphalion",
            "heel girth", "heel_ankle_girth",
            "foot length", "foot_length");

    /** Measured in 1988 only (the back crotch length of 2012 was taken in a stepping posture). */
    static final Map<String, String> ONLY_1988 = columns(
            "waist girth", "waist_natural_girth",
            "waist height", "waist_natural_height",
            "total crotch length", "crotch_length_natural",
            "back crotch length", "crotch_length_posterior_natural",
            "navel back crotch length", "crotch_length_posterior_omphalion",
            "knee girth", "knee_girth",
            "calf height", "calf_height");

    private FitAdults() {}

    static Map<String, String> columns(String... pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1] + "_mm");
        }
        return map;
    }

    static Joint fit(Rows rows1988, Rows rows2012, Rows college) {
        List<String> both = List.copyOf(BOTH.keySet());
        List<String> only = List.copyOf(ONLY_1988.keySet());
        List<String> everything = new ArrayList<>(both);
        everything.addAll(only);
        List<String> columns = new ArrayList<>(BOTH.values());
        columns.addAll(ONLY_1988.values());
        Joint older = Joint.of(everything, rows1988.logs(columns));
        Joint newer = Joint.of(both, rows2012.logs(List.copyOf(BOTH.values())));
        double[] halfWay = halve(older.means(both), newer.means(both));
        RealMatrix pooled = older.cov(both, both).add(newer.cov(both, both)).scalarMultiply(0.5);
        Joint joint = new Joint(both, halfWay, pooled);

        double[] population = populationShift(joint, older, newer);
        RealMatrix slopes = older.slopes(only, both);
        double[] means = older.means(only);
        double[] moved = slopes.operate(population);
        for (int i = 0; i < means.length; i++) {
            means[i] += moved[i] / 2;
        }
        joint = joint.append(only, means, both, slopes, older.left(only, both));
        for (int i = 0; i < both.size(); i++) {
            double shift = newer.mean()[i] - older.mean()[i];
            joint = joint.widen(both.get(i), Math.abs(shift - population[i]) / 2);
        }
        return withAnkleHeight(withMidThigh(joint, college));
    }

    private static double[] halve(double[] a, double[] b) {
        double[] half = new double[a.length];
        Arrays.setAll(half, i -> (a[i] + b[i]) / 2);
        return half;
    }

    /** How the people differ (2012 less 1988), as stature, waist, hip and crotch height tell it; the rest is method. */
    private static double[] populationShift(Joint pooled, Joint older, Joint newer) {
        double[] between = new double[PREDICTORS.size()];
        for (int i = 0; i < between.length; i++) {
            String name = PREDICTORS.get(i);
            between[i] = newer.mean()[newer.at(name)] - older.mean()[older.at(name)];
        }
        return pooled.slopes(pooled.names(), PREDICTORS).operate(between);
    }

    /**
     * The mid-thigh girth of the college women lies half way from the groin crease to the top of the kneecap. Ours is
     * half way from crotch to mid kneecap. With the crease 50 mm above the crotch and the kneecap 44 mm high (both from
     * memory, at a crotch height of 780 mm) ours is 36 mm lower, where the thigh gains 0.68 mm of girth per mm of height
     * (mean of the slopes to the furrow above and to the knee below): 24 mm less of 514.
     */
    private static final double MID_THIGH_LEVEL = 1 - 36 * 0.68 / 514;

    static Joint withMidThigh(Joint joint, Rows college) {
        return Between.of(college, "mid_thigh_girth_mm", "proximal_thigh_girth_mm", "knee_girth_mm")
                .derive(joint, "mid-thigh girth", "thigh girth", "knee girth", MID_THIGH_LEVEL, 1);
    }

    static Map<String, Double> ordered(String first, double weight, String second, double other) {
        Map<String, Double> map = new LinkedHashMap<>();
        map.put(first, weight);
        map.put(second, other);
        return map;
    }

    /** The smallest ankle girth lies about 35 mm above the ankle bone of a person of 1650 mm (common practice). */
    static Joint withAnkleHeight(Joint joint) {
        double bone = joint.mm("ankle bone height");
        double above = 35 * joint.mm("stature") / 1650;
        double height = bone + above;
        double share = bone / height;
        double factor = height / (Math.pow(bone, share) * Math.pow(joint.mm("stature"), 1 - share));
        return joint.derive(
                "ankle height", factor, ordered("ankle bone height", share, "stature", 1 - share), 10 / height);
    }
}
