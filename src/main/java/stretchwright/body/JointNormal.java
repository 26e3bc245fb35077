package stretchwright.body;

import java.util.Arrays;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The logarithms of all measures of a population, as one normal distribution.
 *
 * <p>In: logs of what is known, NaN for what is not. Out: what the known ones let expect of the others, and how well
 * each known one agrees with all the rest. Maths: the conditional normal distribution (any textbook of multivariate
 * statistics, such as Mardia, Kent and Bibby 1979, theorem 3.2.4); docs/maths/body.md.
 */
final class JointNormal {
    private final double[] mean;
    private final RealMatrix covariance;

    JointNormal(double[] mean, double[][] covariance) {
        this.mean = mean.clone();
        this.covariance = MatrixUtils.createRealMatrix(covariance);
    }

    /** Expected logs with their spread (one standard deviation). */
    record Expected(double[] logs, double[] spreads) {}

    /** The known ones only: distance of all, and how far each stands from what the others let expect. */
    record Agreement(int[] known, double distance, double logDensity, double[] expected, double[] spreads) {

        /** How many spreads the i-th known value stands off. */
        double off(int i, double[] logs) {
            return (logs[known[i]] - expected[i]) / spreads[i];
        }
    }

    double mean(int variable) {
        return mean[variable];
    }

    double spread(int variable) {
        return Math.sqrt(covariance.getEntry(variable, variable));
    }

    Expected expect(double[] logs) {
        int[] known = known(logs);
        double[] expected = mean.clone();
        double[] spreads = new double[mean.length];
        if (known.length == 0) {
            Arrays.setAll(spreads, this::spread);
            return new Expected(expected, spreads);
        }
        var solver = cholesky(known).getSolver();
        int[] all = all();
        RealMatrix cross = covariance.getSubMatrix(known, all);
        RealVector pull = solver.solve(MatrixUtils.createRealVector(off(logs, known)));
        RealMatrix weights = solver.solve(cross);
        for (int j : all) {
            RealVector column = cross.getColumnVector(j);
            expected[j] += column.dotProduct(pull);
            double left = covariance.getEntry(j, j) - column.dotProduct(weights.getColumnVector(j));
            spreads[j] = Math.sqrt(Math.max(0, left));
        }
        return new Expected(expected, spreads);
    }

    /** Each known value against all the other known ones, read off the inverse of their covariance. */
    Agreement agreement(double[] logs) {
        int[] known = known(logs);
        CholeskyDecomposition cholesky = cholesky(known);
        RealMatrix precision = cholesky.getSolver().getInverse();
        double[] off = off(logs, known);
        double[] pull = precision.operate(off);
        double[] expected = new double[known.length];
        double[] spreads = new double[known.length];
        double distance = 0;
        for (int i = 0; i < known.length; i++) {
            double own = precision.getEntry(i, i);
            spreads[i] = 1 / Math.sqrt(own);
            expected[i] = logs[known[i]] - pull[i] / own;
            distance += off[i] * pull[i];
        }
        double density = -0.5 * (distance + Math.log(cholesky.getDeterminant()));
        return new Agreement(known, distance, density, expected, spreads);
    }

    private CholeskyDecomposition cholesky(int[] known) {
        return new CholeskyDecomposition(covariance.getSubMatrix(known, known), 1e-9, 1e-14);
    }

    private double[] off(double[] logs, int[] known) {
        double[] off = new double[known.length];
        for (int i = 0; i < known.length; i++) {
            off[i] = logs[known[i]] - mean[known[i]];
        }
        return off;
    }

    private int[] all() {
        int[] all = new int[mean.length];
        Arrays.setAll(all, i -> i);
        return all;
    }

    private static int[] known(double[] logs) {
        return java.util.stream.IntStream.range(0, logs.length)
                .filter(i -> !Double.isNaN(logs[i]))
                .toArray();
    }
}
