package stretchwright.balance;

/** Solves rows of five around the diagonal by elimination in order, without exchange of rows. */
final class Banded {
    private Banded() {}

    /** Overwrites rows and right hand side, which becomes the answer; false where a pivot is none. */
    static boolean solve(double[] rows, double[] right) {
        int n = right.length;
        for (int k = 0; k < n; k++) {
            double pivot = rows[k * Net.BAND + 2];
            if (!(Math.abs(pivot) > Double.MIN_NORMAL)) {
                return false;
            }
            for (int r = k + 1; r <= Math.min(k + 2, n - 1); r++) {
                double share = rows[r * Net.BAND + k - r + 2] / pivot;
                for (int c = k + 1; c <= Math.min(k + 2, n - 1); c++) {
                    rows[r * Net.BAND + c - r + 2] -= share * rows[k * Net.BAND + c - k + 2];
                }
                right[r] -= share * right[k];
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            for (int c = k + 1; c <= Math.min(k + 2, n - 1); c++) {
                right[k] -= rows[k * Net.BAND + c - k + 2] * right[c];
            }
            right[k] /= rows[k * Net.BAND + 2];
            if (!Double.isFinite(right[k])) {
                return false;
            }
        }
        return true;
    }
}
