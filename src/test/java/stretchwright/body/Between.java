package stretchwright.body;

import java.util.List;
import java.util.Map;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * A girth between two others: log target = log factor + weight x log upper + (1 - weight) x log lower, by least squares
 * over the rows; the weights add up to one, so that a body twice as large has it twice as large.
 *
 * @param left what the fit leaves, one standard deviation, as a share
 */
record Between(double factor, double weight, double left) {

    static Between of(Rows rows, String target, String upper, String lower) {
        Joint sample = Joint.of(List.of("target", "upper", "lower"), rows.logs(List.of(target, upper, lower)));
        RealMatrix toShape = MatrixUtils.createRealMatrix(new double[][] {{1, 0, -1}, {0, 1, -1}});
        RealMatrix shape = toShape.multiply(sample.cov()).multiply(toShape.transpose());
        double weight = shape.getEntry(0, 1) / shape.getEntry(1, 1);
        double left = shape.getEntry(0, 0) - weight * shape.getEntry(0, 1);
        double[] mean = sample.mean();
        double factor = Math.exp(mean[0] - weight * mean[1] - (1 - weight) * mean[2]);
        return new Between(factor, weight, Math.sqrt(left));
    }

    Between and(Between other) {
        return new Between(Math.sqrt(factor * other.factor), (weight + other.weight) / 2, (left + other.left) / 2);
    }

    /** Appends the girth to a joint; level corrects for a target taken elsewhere, wider widens what is left. */
    Joint derive(Joint joint, String target, String upper, String lower, double level, double wider) {
        Map<String, Double> parts = FitAdults.ordered(upper, weight, lower, 1 - weight);
        return joint.derive(target, factor * level, parts, left * wider);
    }
}
