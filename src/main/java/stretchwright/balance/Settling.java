package stretchwright.balance;

import java.util.Arrays;

/**
 * Finds the slides at which all forces of a {@link Net} balance: Newton steps on the energy with friction's capacity
 * taken from the state before; where that creeps, steps that know how the capacity changes.
 */
final class Settling {
    /** Sum of all forces left over, N: stricter than the largest, so that many small ones do not carry a weight. */
    static final double STOP = 5e-4;

    /** Slide at which friction is nearly all taken up, mm. */
    static final double GIVE = 1;

    /** What a slide keeps into the next pose, in units of give: tanh 2.65 = 0.99. */
    private static final double KEPT = 2.65;

    private static final double LARGEST_STEP = 25;
    private static final int LAGGED = 40;
    private static final int STEEPENED = 80;
    private static final int MOST = 1200;
    private static final int HALVINGS = 30;

    private final Net net;
    private final double give;
    private final boolean[] held;
    private final double[] u;
    private final double[] anchor;
    private final double[] capacity;
    private final double[] fresh;
    private final double[] gradient;
    private final double[] best;
    private final double[] trial;
    private final double[] step;
    private final double[] rows;
    private double least = Double.POSITIVE_INFINITY;
    private double residual;
    private int iterations;
    private Settled.Outcome outcome = Settled.Outcome.UNFINISHED;

    Settling(Net net, double give, double[] slides, double[] anchors, boolean[] held) {
        this.net = net;
        this.give = give;
        this.held = held;
        u = slides.clone();
        anchor = anchors.clone();
        int n = net.unknowns;
        capacity = new double[n];
        fresh = new double[n];
        gradient = new double[n];
        best = slides.clone();
        trial = new double[n];
        step = new double[n];
        rows = new double[n * Net.BAND];
    }

    /** Slides until the forces balance, it falls by more than a length, or patience ends. */
    Settling settle(double length) {
        net.capacity(u, capacity);
        double share = 1;
        double last = Double.POSITIVE_INFINITY;
        for (iterations = 0; iterations < MOST; iterations++) {
            net.capacity(u, fresh);
            residual = leftOver();
            keepBest();
            if (residual < STOP) {
                outcome = Settled.Outcome.SETTLED;
                break;
            }
            if (Arrays.stream(u).anyMatch(slide -> Math.abs(slide) > length)) {
                outcome = Settled.Outcome.FALLS;
                break;
            }
            share = residual > 0.7 * last ? Math.max(share / 2, 0.05) : Math.min(1, share * 2);
            last = residual;
            if (iterations >= STEEPENED) {
                patient();
            } else if (iterations < LAGGED || !steepened()) {
                lag(share);
                lagged();
            }
        }
        if (outcome == Settled.Outcome.UNFINISHED) {
            System.arraycopy(best, 0, u, 0, u.length);
            residual = least;
        }
        return this;
    }

    private void keepBest() {
        if (residual < least) {
            least = residual;
            System.arraycopy(u, 0, best, 0, u.length);
        }
    }

    private void lag(double share) {
        for (int k = 0; k < u.length; k++) {
            capacity[k] += share * (fresh[k] - capacity[k]);
        }
    }

    /** Forces left over with friction as it is at this state, which stay in the gradient, and their sum. */
    private double leftOver() {
        forces(u, fresh, gradient);
        double sum = 0;
        for (double force : gradient) {
            sum += Math.abs(force);
        }
        return sum;
    }

    private void forces(double[] at, double[] friction, double[] into) {
        net.gradient(at, into);
        for (int k = 0; k < into.length; k++) {
            into[k] = held[k] ? 0 : into[k] + friction[k] * Math.tanh((at[k] - anchor[k]) / give);
        }
    }

    /** Cloth and friction, friction of a given capacity. */
    private double energy(double[] at) {
        double sum = net.energy(at);
        for (int k = 0; k < at.length; k++) {
            double x = Math.abs(at[k] - anchor[k]) / give;
            sum += capacity[k] * give * (x + Math.log1p(Math.exp(-2 * x)));
        }
        return sum;
    }

    /** The slow way that finds what the others circle round: friction is renewed only once all else balances. */
    private void patient() {
        forces(u, capacity, gradient);
        double sum = 0;
        for (double force : gradient) {
            sum += Math.abs(force);
        }
        if (sum < STOP / 10) {
            lag(iterations < MOST / 4 ? 0.5 : iterations < MOST / 2 ? 0.2 : 0.08);
        }
        lagged();
    }

    private void lagged() {
        forces(u, capacity, gradient);
        fillRows(capacity);
        if (!direct()) {
            return;
        }
        double slope = 0;
        for (int k = 0; k < u.length; k++) {
            slope += step[k] * gradient[k];
        }
        double before = energy(u);
        double part = 1;
        for (int halving = 0; halving < HALVINGS; halving++) {
            move(part);
            if (energy(trial) <= before + 1e-4 * part * slope + 1e-13 * Math.abs(before)) {
                break;
            }
            part /= 2;
        }
        System.arraycopy(trial, 0, u, 0, u.length);
    }

    /** A step that knows how friction changes with the slides; false, and nothing moved, where it does not help. */
    private boolean steepened() {
        fillRows(fresh);
        for (int k = 0; k < u.length; k++) {
            trial[k] = held[k] || fresh[k] == 0 ? 0 : Math.tanh((u[k] - anchor[k]) / give);
        }
        net.addCapacitySlope(u, trial, rows);
        freeze();
        double before = squares(gradient);
        if (!direct()) {
            return false;
        }
        double part = 1;
        for (int halving = 0; halving < 8; halving++) {
            move(part);
            net.capacity(trial, fresh);
            forces(trial, fresh, gradient);
            if (squares(gradient) < before * (1 - 0.1 * part)) {
                System.arraycopy(trial, 0, u, 0, u.length);
                System.arraycopy(fresh, 0, capacity, 0, u.length);
                return true;
            }
            part /= 2;
        }
        net.capacity(u, fresh);
        return false;
    }

    private static double squares(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return sum;
    }

    private void fillRows(double[] friction) {
        Arrays.fill(rows, 0);
        net.addHessian(u, rows);
        for (int k = 0; k < u.length; k++) {
            double t = Math.tanh((u[k] - anchor[k]) / give);
            rows[k * Net.BAND + 2] += friction[k] * (1 - t * t) / give + 1e-9;
        }
        freeze();
    }

    /** Rows and columns of held unknowns. */
    private void freeze() {
        for (int k = 0; k < u.length; k++) {
            for (int c = Math.max(0, k - 2); held[k] && c <= Math.min(u.length - 1, k + 2); c++) {
                rows[k * Net.BAND + c - k + 2] = c == k ? 1 : 0;
                rows[c * Net.BAND + k - c + 2] = c == k ? 1 : 0;
            }
        }
    }

    /** Newton's step from rows and gradient, no longer than is safe. */
    private boolean direct() {
        for (int k = 0; k < u.length; k++) {
            step[k] = -gradient[k];
        }
        if (!Banded.solve(rows, step)) {
            return false;
        }
        double largest = 0;
        for (double s : step) {
            largest = Math.max(largest, Math.abs(s));
        }
        double shorter = Math.min(1, LARGEST_STEP / largest);
        for (int k = 0; k < step.length && largest > LARGEST_STEP; k++) {
            step[k] *= shorter;
        }
        return true;
    }

    private void move(double part) {
        for (int k = 0; k < u.length; k++) {
            trial[k] = u[k] + part * step[k];
        }
    }

    double[] slides() {
        return u.clone();
    }

    /** Where friction hangs on in the next pose: it keeps what of each slide is elastic. */
    double[] anchors() {
        double[] next = new double[u.length];
        for (int k = 0; k < u.length; k++) {
            double elastic = u[k] - anchor[k];
            next[k] = u[k] - Math.max(-KEPT * give, Math.min(KEPT * give, elastic));
        }
        return next;
    }

    /** What cloth, elastic and weight pull on an unknown, N, towards the hem. */
    double pull(int unknown) {
        net.gradient(u, gradient);
        return -gradient[unknown];
    }

    /** The same with friction: what a hand at a held edge feels, N. */
    double reaction(int unknown) {
        net.capacity(u, fresh);
        return pull(unknown) - fresh[unknown] * Math.tanh((u[unknown] - anchor[unknown]) / give);
    }

    Settled.Outcome outcome() {
        return outcome;
    }

    double residual() {
        return residual;
    }

    int iterations() {
        return iterations;
    }
}
