package stretchwright.settle;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/**
 * What marks on a finished pair teach of its wearer, its cloth and the friction between them: least squares with what was
 * guessed before, three rounds of Gauss and Newton.
 *
 * @param learnt the guess that fits the marks
 * @param before what each mark was expected to read
 * @param expected how far it might have lain from that, one standard deviation
 * @param after what it reads by the guess that was learnt
 */
public record FirstPair(Guess learnt, Map<Mark, Double> before, Map<Mark, Double> expected, Map<Mark, Double> after) {
    private static final int ROUNDS = 3;

    /** Of a standard deviation: a difference over which the marks are as good as straight. */
    private static final double STEP = 0.25;

    static FirstPair of(HalfGarment half, Body body, Fabric fabric, Map<Mark, Double> read, double bandPull) {
        return new Learning(half, new Unknowns(half.guess(), body, fabric), fabric, read, bandPull).learn();
    }

    /**
     * @param read what was read of marks on this pair
     * @param bandPull N/m on each layer of the band on rods; asked only where that was read
     */
    public static FirstPair of(
            Pattern pattern,
            Body body,
            Fabric fabric,
            Optional<Boot> boot,
            Style style,
            Map<Mark, Double> read,
            double bandPull) {
        return of(new HalfGarment(pattern, body, fabric, boot, style, HalfGarment.APART), body, fabric, read, bandPull);
    }

    /** How many standard deviations a reading lay from what was expected. */
    public double surprise(Mark mark, double read) {
        return (read - before.getOrDefault(mark, read)) / expected.getOrDefault(mark, 1.0);
    }

    /** How many errors of reading it still lies off: what does not go with the other readings. */
    public double contradicts(Mark mark, double read) {
        return (read - after.getOrDefault(mark, read)) / mark.error();
    }

    private record Learning(
            HalfGarment half, Unknowns unknowns, Fabric fabric, Map<Mark, Double> read, double bandPull) {
        FirstPair learn() {
            List<Mark> marks = read.keySet().stream().sorted().toList();
            double[] x = new double[Unknowns.COUNT];
            Map<Mark, Double> before = predicted(x);
            Map<Mark, Double> expected = new EnumMap<>(Mark.class);
            for (int round = 0; round < ROUNDS; round++) {
                Map<Mark, Double> now = predicted(x);
                double[][] slopes = slopes(marks, x, now);
                double[][] covariance = covariance(slopes, marks);
                if (round == 0) {
                    for (int i = 0; i < marks.size(); i++) {
                        expected.put(marks.get(i), Math.sqrt(covariance[i][i]));
                    }
                }
                x = step(marks, x, now, slopes, covariance);
            }
            Map<Mark, Double> after = predicted(x);
            before.keySet().retainAll(marks);
            after.keySet().retainAll(marks);
            return new FirstPair(unknowns.at(x), before, expected, after);
        }

        private Map<Mark, Double> predicted(double[] x) {
            return Marked.of(half, unknowns.at(x), fabric, bandPull);
        }

        private double[][] slopes(List<Mark> marks, double[] x, Map<Mark, Double> now) {
            double[][] slopes = new double[marks.size()][x.length];
            for (int k = 0; k < x.length; k++) {
                double[] moved = x.clone();
                moved[k] += STEP;
                Map<Mark, Double> there = predicted(moved);
                for (int i = 0; i < marks.size(); i++) {
                    slopes[i][k] = (there.getOrDefault(marks.get(i), 0.0) - now.getOrDefault(marks.get(i), 0.0)) / STEP;
                }
            }
            return slopes;
        }

        /** Of the readings: what the unknowns spread them, and their own errors. */
        private static double[][] covariance(double[][] slopes, List<Mark> marks) {
            int n = marks.size();
            double[][] out = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    for (int k = 0; k < slopes[i].length; k++) {
                        out[i][j] += slopes[i][k] * slopes[j][k];
                    }
                }
                out[i][i] += marks.get(i).error() * marks.get(i).error();
            }
            return out;
        }

        private double[] step(
                List<Mark> marks, double[] x, Map<Mark, Double> now, double[][] slopes, double[][] covariance) {
            double[] off = new double[marks.size()];
            for (int i = 0; i < off.length; i++) {
                off[i] = read.getOrDefault(marks.get(i), 0.0) - now.getOrDefault(marks.get(i), 0.0);
                for (int k = 0; k < x.length; k++) {
                    off[i] += slopes[i][k] * x[k];
                }
            }
            double[] pulls = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance))
                    .getSolver()
                    .solve(MatrixUtils.createRealVector(off))
                    .toArray();
            double[] next = new double[x.length];
            for (int k = 0; k < x.length; k++) {
                for (int i = 0; i < pulls.length; i++) {
                    next[k] += slopes[i][k] * pulls[i];
                }
                next[k] = Math.max(-Unknowns.MOST, Math.min(Unknowns.MOST, next[k]));
            }
            return next;
        }
    }
}
