package stretchwright.body;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * A joint normal under construction: named variables, mean, covariance. Variables that were only measured together
 * with some of the others are appended by regression (factored likelihood of a monotone pattern of missing values;
 * Little and Rubin, Statistical Analysis with Missing Data, ch. 7), which keeps it positive definite.
 */
record Joint(List<String> names, double[] mean, RealMatrix cov) {

    /** Sample mean and covariance; rows far from all the others (recording errors) are left out of a second pass. */
    static Joint of(List<String> names, double[][] data) {
        Joint first = plain(names, data);
        RealMatrix precision = new CholeskyDecomposition(first.cov).getSolver().getInverse();
        List<double[]> kept = new ArrayList<>();
        for (double[] row : data) {
            if (first.worst(precision, row) < 7.5) {
                kept.add(row);
            }
        }
        return plain(names, kept.toArray(double[][]::new));
    }

    private double worst(RealMatrix precision, double[] row) {
        double[] off = new double[row.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = row[i] - mean[i];
        }
        double[] pull = precision.operate(off);
        double worst = 0;
        for (int i = 0; i < off.length; i++) {
            worst = Math.max(worst, Math.abs(pull[i]) / Math.sqrt(precision.getEntry(i, i)));
        }
        return worst;
    }

    private static Joint plain(List<String> names, double[][] data) {
        int k = names.size();
        double[] mean = new double[k];
        for (double[] row : data) {
            for (int i = 0; i < k; i++) {
                mean[i] += row[i] / data.length;
            }
        }
        double[][] cov = new double[k][k];
        for (double[] row : data) {
            for (int i = 0; i < k; i++) {
                for (int j = 0; j < k; j++) {
                    cov[i][j] += (row[i] - mean[i]) * (row[j] - mean[j]) / (data.length - 1);
                }
            }
        }
        return new Joint(List.copyOf(names), mean, MatrixUtils.createRealMatrix(cov));
    }

    int at(String name) {
        int at = names.indexOf(name);
        if (at < 0) {
            throw new IllegalArgumentException("no variable " + name);
        }
        return at;
    }

    int[] at(Collection<String> some) {
        return some.stream().mapToInt(this::at).toArray();
    }

    double[] means(Collection<String> some) {
        return some.stream().mapToDouble(n -> mean[at(n)]).toArray();
    }

    RealMatrix cov(Collection<String> rows, Collection<String> columns) {
        return cov.getSubMatrix(at(rows), at(columns));
    }

    /** Slopes of the targets (rows) on the predictors (columns). */
    RealMatrix slopes(Collection<String> targets, Collection<String> predictors) {
        return new CholeskyDecomposition(cov(predictors, predictors), 1e-10, 1e-14)
                .getSolver()
                .solve(cov(predictors, targets))
                .transpose();
    }

    /** Covariance of the targets that the predictors leave. */
    RealMatrix left(Collection<String> targets, Collection<String> predictors) {
        return cov(targets, targets).subtract(slopes(targets, predictors).multiply(cov(predictors, targets)));
    }

    /** Appends targets: mean given, slopes on the named predictors of this joint, and what the slopes leave. */
    Joint append(
            List<String> targets, double[] targetMean, List<String> predictors, RealMatrix slopes, RealMatrix left) {
        RealMatrix cross = slopes.multiply(cov(predictors, names));
        RealMatrix own = slopes.multiply(cov(predictors, predictors))
                .multiply(slopes.transpose())
                .add(left);
        int k = names.size();
        int all = k + targets.size();
        RealMatrix bigger = MatrixUtils.createRealMatrix(all, all);
        bigger.setSubMatrix(cov.getData(), 0, 0);
        bigger.setSubMatrix(cross.getData(), k, 0);
        bigger.setSubMatrix(cross.transpose().getData(), 0, k);
        bigger.setSubMatrix(own.getData(), k, k);
        List<String> longer = new ArrayList<>(names);
        longer.addAll(targets);
        double[] mu = java.util.Arrays.copyOf(mean, all);
        System.arraycopy(targetMean, 0, mu, k, targetMean.length);
        return new Joint(longer, mu, bigger);
    }

    /** Appends log target = log factor + sum of weight x log part, with a spread of its own (as a share). */
    Joint derive(String target, double factor, Map<String, Double> parts, double spread) {
        List<String> names = List.copyOf(parts.keySet());
        RealMatrix slopes = MatrixUtils.createRealMatrix(1, names.size());
        double mu = Math.log(factor);
        int i = 0;
        for (Map.Entry<String, Double> part : parts.entrySet()) {
            slopes.setEntry(0, i++, part.getValue());
            mu += part.getValue() * mean[at(part.getKey())];
        }
        RealMatrix left = MatrixUtils.createRealMatrix(new double[][] {{spread * spread}});
        return append(List.of(target), new double[] {mu}, names, slopes, left);
    }

    Joint widen(String name, double spread) {
        RealMatrix wider = cov.copy();
        wider.addToEntry(at(name), at(name), spread * spread);
        return new Joint(names, mean, wider);
    }

    double mm(String name) {
        return Math.exp(mean[at(name)]);
    }
}
