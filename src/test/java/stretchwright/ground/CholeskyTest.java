package stretchwright.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class CholeskyTest {
    /** By hand: 4x + 2y = 10, 2x + 3y = 9 has x = 1.5, y = 2. */
    @Test
    void twoEquations() {
        assertThat(Cholesky.solve(new double[][] {{4, 2}, {2, 3}}, new double[] {10, 9}))
                .containsExactly(new double[] {1.5, 2}, within(1e-12));
    }

    @Test
    void anyPositiveMatrixIsSolved() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(8);
            double[][] a = new double[n][n];
            double[][] half = new double[n][n];
            for (double[] row : half) {
                java.util.Arrays.setAll(row, i -> random.nextGaussian());
            }
            double[] x = random.doubles(n).toArray();
            double[] right = new double[n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    for (int k = 0; k < n; k++) {
                        a[i][j] += half[i][k] * half[j][k];
                    }
                    a[i][j] += i == j ? 0.1 : 0;
                    right[i] += a[i][j] * x[j];
                }
            }
            assertThat(Cholesky.solve(a, right)).containsExactly(x, within(1e-9));
        }
    }

    @Test
    void whatIsNotPositiveIsRefused() {
        assertThatThrownBy(() -> Cholesky.solve(new double[][] {{1, 2}, {2, 1}}, new double[] {1, 1}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
