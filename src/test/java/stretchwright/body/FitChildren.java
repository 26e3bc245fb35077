package stretchwright.body;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The joint normal of the children: what every child was measured for, the two measurement sets appended by
 * regression (their mutual correlation, never seen in a child, borrowed from the adults), and what no child was
 * measured for, by ratios of adults with a widened spread. Children's waist is the one at the navel.
 */
final class FitChildren {
    private static final Map<String, String> ALL = FitAdults.columns(
            "stature", "stature",
            "waist girth", "waist_girth",
            "hip girth", "hip_girth",
            "thigh girth", "upper_thigh_girth",
            "calf girth", "calf_girth",
            "foot length", "foot_length",
            "sitting knee height", "knee_height_sitting");
    private static final Map<String, String> SET_1 = FitAdults.columns(
            "waist height", "waist_height",
            "hip height", "hip_height_at_buttocks",
            "calf height", "calf_height",
            "ankle girth", "ankle_girth");
    private static final Map<String, String> SET_2 = FitAdults.columns(
            "furrow height", "gluteal_furrow_height",
            "tibiale height", "tibiale_height",
            "sphyrion height", "sphyrion_height");

    /** The adults' columns for the borrowed correlation, in the order of ALL, SET_1, SET_2. */
    private static final List<String> LIKEWISE_ALL = List.of(
            "stature_mm",
            "waist_omphalion_girth_mm",
            "buttock_girth_mm",
            "thigh_girth_mm",
            "calf_girth_mm",
            "foot_length_mm",
            "knee_height_sitting_mm");

    private static final List<String> LIKEWISE_1 =
            List.of("waist_omphalion_height_mm", "buttock_height_mm", "calf_height_mm", "ankle_girth_mm");
    private static final List<String> LIKEWISE_2 =
            List.of("gluteal_furrow_height_mm", "midpatella_height_mm", "lateral_malleolus_height_mm");

    private FitChildren() {}

    static Joint fit(Rows children, Growth growth, Rows women, Rows men, Rows college, Rows women2012) {
        Joint joint = common(children, growth);
        joint = withSets(joint, children, growth, women, men);
        return withAdultRatios(joint, children, women, men, college, women2012);
    }

    private static Joint common(Rows children, Growth growth) {
        return Joint.of(names(ALL, Map.of()), data(children, growth, names(ALL.values())));
    }

    private static List<String> names(Map<String, String> first, Map<String, String> second) {
        List<String> names = new ArrayList<>(List.of("growth"));
        names.addAll(first.keySet());
        names.addAll(second.keySet());
        return names;
    }

    private static List<String> names(java.util.Collection<String> columns) {
        return List.copyOf(columns);
    }

    private static double[][] data(Rows children, Growth growth, List<String> columns) {
        List<double[]> data = new ArrayList<>();
        for (double[] row : children.rows()) {
            double[] values = new double[columns.size() + 1];
            values[0] = growth.at(children.cell(row, "age_years"));
            for (int i = 0; i < columns.size(); i++) {
                values[i + 1] = Math.log(children.cell(row, columns.get(i)));
            }
            if (Rows.complete(values)) {
                data.add(values);
            }
        }
        return data.toArray(double[][]::new);
    }

    private static Joint withSets(Joint joint, Rows children, Growth growth, Rows women, Rows men) {
        Joint set1 = set(children, growth, SET_1);
        Joint set2 = set(children, growth, SET_2);
        List<String> base = joint.names();
        List<String> first = List.copyOf(SET_1.keySet());
        List<String> second = List.copyOf(SET_2.keySet());
        List<String> targets = new ArrayList<>(first);
        targets.addAll(second);
        double[][] slopes = new double[targets.size()][];
        double[] means = new double[targets.size()];
        for (int i = 0; i < targets.size(); i++) {
            Joint set = i < first.size() ? set1 : set2;
            slopes[i] = set.slopes(List.of(targets.get(i)), base).getRow(0);
            means[i] = set.mean()[set.at(targets.get(i))];
            for (int j = 0; j < base.size(); j++) {
                means[i] += slopes[i][j] * (joint.mean()[j] - set.mean()[j]);
            }
        }
        RealMatrix left = compose(set1.left(first, base), set2.left(second, base), borrowed(women, men));
        return joint.append(targets, means, base, MatrixUtils.createRealMatrix(slopes), left);
    }

    private static Joint set(Rows children, Growth growth, Map<String, String> set) {
        List<String> columns = new ArrayList<>(ALL.values());
        columns.addAll(set.values());
        return Joint.of(names(ALL, set), data(children, growth, columns));
    }

    /** Partial correlations between the two sets' measures in adults, mean of women and men of 1988. */
    private static RealMatrix borrowed(Rows women, Rows men) {
        return partial(women).add(partial(men)).scalarMultiply(0.5);
    }

    private static RealMatrix partial(Rows adults) {
        List<String> columns = new ArrayList<>(LIKEWISE_ALL);
        columns.addAll(LIKEWISE_1);
        columns.addAll(LIKEWISE_2);
        Joint joint = Joint.of(columns, adults.logs(columns));
        List<String> targets = columns.subList(LIKEWISE_ALL.size(), columns.size());
        RealMatrix left = joint.left(targets, LIKEWISE_ALL);
        RealMatrix cross = MatrixUtils.createRealMatrix(LIKEWISE_1.size(), LIKEWISE_2.size());
        for (int i = 0; i < LIKEWISE_1.size(); i++) {
            for (int j = 0; j < LIKEWISE_2.size(); j++) {
                int at = LIKEWISE_1.size() + j;
                cross.setEntry(i, j, left.getEntry(i, at) / Math.sqrt(left.getEntry(i, i) * left.getEntry(at, at)));
            }
        }
        return cross;
    }

    /** Shrinks the borrowed correlation until the whole is well positive definite. */
    private static RealMatrix compose(RealMatrix left1, RealMatrix left2, RealMatrix borrowed) {
        int k = left1.getRowDimension();
        int all = k + left2.getRowDimension();
        for (double share = 1; share > 0; share -= 0.05) {
            RealMatrix left = MatrixUtils.createRealMatrix(all, all);
            left.setSubMatrix(left1.getData(), 0, 0);
            left.setSubMatrix(left2.getData(), k, k);
            for (int i = 0; i < k; i++) {
                for (int j = k; j < all; j++) {
                    double cross = share
                            * borrowed.getEntry(i, j - k)
                            * Math.sqrt(left1.getEntry(i, i) * left2.getEntry(j - k, j - k));
                    left.setEntry(i, j, cross);
                    left.setEntry(j, i, cross);
                }
            }
            try {
                new CholeskyDecomposition(left, 1e-9, 1e-6);
                return left;
            } catch (RuntimeException tooMuch) {
                continue;
            }
        }
        throw new IllegalStateException("the sets do not go together");
    }

    /** What no child was measured for; see docs/maths/body.md for each ratio. */
    private static Joint withAdultRatios(
            Joint joint, Rows children, Rows women, Rows men, Rows college, Rows women2012) {
        Ratio furrow = Ratio.of(women, "crotch_height_mm", "gluteal_furrow_height_mm")
                .and(Ratio.of(men, "crotch_height_mm", "gluteal_furrow_height_mm"));
        Ratio heel = Ratio.of(women, "heel_ankle_girth_mm", "foot_length_mm")
                .and(Ratio.of(men, "heel_ankle_girth_mm", "foot_length_mm"));
        // the kneecap's middle was read 16 mm (women) higher in 1988 than in 2012: half of that is 8 of 449
        Ratio kneecap = Ratio.of(women2012, "midpatella_height_mm", "tibiale_height_mm");
        Ratio bone = Ratio.of(women, "lateral_malleolus_height_mm", "stature_mm")
                .and(Ratio.of(men, "lateral_malleolus_height_mm", "stature_mm"))
                .over(Ratio.of(
                        children.where(r -> children.cell(r, "age_years") >= 15), "sphyrion_height_mm", "stature_mm"));
        Ratio back = Ratio.of(women, "crotch_length_posterior_omphalion_mm", "crotch_length_omphalion_mm")
                .and(Ratio.of(men, "crotch_length_posterior_omphalion_mm", "crotch_length_omphalion_mm"));
        Joint with = joint.derive("crotch height", furrow.mean(), Map.of("furrow height", 1.0), 1.5 * furrow.sd())
                .derive("knee height", kneecap.mean() * (1 + 8.0 / 449), Map.of("tibiale height", 1.0), 0.03)
                .derive("ankle bone height", bone.mean(), Map.of("sphyrion height", 1.0), 0.08)
                .derive("heel girth", heel.mean(), Map.of("foot length", 1.0), 1.5 * heel.sd());
        with = withKneeGirth(with, women, men);
        with = withCrotchLength(with, women, men)
                .derive("back crotch length", back.mean(), Map.of("total crotch length", 1.0), 1.5 * back.sd());
        return FitAdults.withAnkleHeight(FitAdults.withMidThigh(with, college));
    }

    /** Knee girth between thigh and calf girth, as in the adults of 1988. */
    private static Joint withKneeGirth(Joint joint, Rows women, Rows men) {
        return Between.of(women, "knee_girth_mm", "thigh_girth_mm", "calf_girth_mm")
                .and(Between.of(men, "knee_girth_mm", "thigh_girth_mm", "calf_girth_mm"))
                .derive(joint, "knee girth", "thigh girth", "calf girth", 1, 1.5);
    }

    /**
     * From the navel down and up again, and a path of some share of the hip girth between; linearised in logs at the
     * mean child.
     */
    private static Joint withCrotchLength(Joint joint, Rows women, Rows men) {
        double share = (path(women) + path(men)) / 2;
        double waist = joint.mm("waist height");
        double crotch = joint.mm("crotch height");
        double hip = joint.mm("hip girth");
        double length = 2 * (waist - crotch) + share * hip;
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("waist height", 2 * waist / length);
        parts.put("crotch height", -2 * crotch / length);
        parts.put("hip girth", share * hip / length);
        double factor = length;
        for (Map.Entry<String, Double> part : parts.entrySet()) {
            factor /= Math.pow(joint.mm(part.getKey()), part.getValue());
        }
        return joint.derive("total crotch length", factor, parts, 0.06);
    }

    private static double path(Rows adults) {
        return adults.rows().stream()
                .mapToDouble(r -> (adults.cell(r, "crotch_length_omphalion_mm")
                                - 2
                                        * (adults.cell(r, "waist_omphalion_height_mm")
                                                - adults.cell(r, "crotch_height_mm")))
                        / adults.cell(r, "buttock_girth_mm"))
                .average()
                .orElseThrow();
    }

    /** Geometric mean and spread (of the logs) of the ratio of two columns. */
    record Ratio(double mean, double sd) {
        static Ratio of(Rows rows, String top, String bottom) {
            double[] logs = rows.rows().stream()
                    .mapToDouble(r -> Math.log(rows.cell(r, top) / rows.cell(r, bottom)))
                    .filter(Double::isFinite)
                    .toArray();
            double mean = java.util.Arrays.stream(logs).average().orElseThrow();
            double square = java.util.Arrays.stream(logs)
                    .map(l -> (l - mean) * (l - mean))
                    .average()
                    .orElseThrow();
            return new Ratio(Math.exp(mean), Math.sqrt(square));
        }

        Ratio and(Ratio other) {
            return new Ratio(Math.sqrt(mean * other.mean), (sd + other.sd) / 2);
        }

        Ratio over(Ratio other) {
            return new Ratio(mean / other.mean, sd);
        }
    }
}
