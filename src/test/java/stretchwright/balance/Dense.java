package stretchwright.balance;

/** Elimination with exchange of rows. */
final class Dense {
    private Dense() {}

    static double[] solve(double[][] matrix, double[] right) {
        int n = right.length;
        double[] x = right.clone();
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int r = k; r < n; r++) {
                best = Math.abs(matrix[r][k]) > Math.abs(matrix[best][k]) ? r : best;
            }
            double[] row = matrix[best];
            matrix[best] = matrix[k];
            matrix[k] = row;
            double value = x[best];
            x[best] = x[k];
            x[k] = value;
            for (int r = k + 1; r < n; r++) {
                double share = matrix[r][k] / row[k];
                for (int c = k; c < n; c++) {
                    matrix[r][c] -= share * row[c];
                }
                x[r] -= share * x[k];
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            for (int c = k + 1; c < n; c++) {
                x[k] -= matrix[k][c] * x[c];
            }
            x[k] /= matrix[k][k];
        }
        return x;
    }
}
