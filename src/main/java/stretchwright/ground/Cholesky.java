package stretchwright.ground;

/** Linear equations with a symmetric positive definite matrix, a dozen unknowns at most. */
public final class Cholesky {
    private Cholesky() {}

    /** x of matrix x = right. */
    public static double[] solve(double[][] matrix, double[] right) {
        int n = right.length;
        double[][] low = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= low[i][k] * low[j][k];
                }
                if (i == j && !(sum > 0)) {
                    throw new IllegalArgumentException("not positive definite in row " + i);
                }
                low[i][j] = i == j ? Math.sqrt(sum) : sum / low[j][j];
            }
        }
        double[] x = right.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= low[i][k] * x[k];
            }
            x[i] /= low[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                x[i] -= low[k][i] * x[k];
            }
            x[i] /= low[i][i];
        }
        return x;
    }
}
