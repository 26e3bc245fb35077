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

    private final double give;
    private final boolean[] held;
    private Strained here;
    private Strained there;
    private final double[] anchor;
    private final double[] capacity;
    private final double[] fresh;
    private final double[] gradient;
    private final double[] best;
    private final double[] factor;
    private final double[] step;
    private final double[] rows;
    private double least = Double.POSITIVE_INFINITY;
    private double residual;
    private int iterations;
    private Settled.Outcome outcome = Settled.Outcome.UNFINISHED;

    Settling(Net net, double give, double[] slides, double[] anchors, boolean[] held) {
        this.give = give;
        this.held = held;
        anchor = anchors.clone();
        here = new Strained(net, slides, anchor, give);
        there = new Strained(net, slides, anchor, give);
        int n = net.unknowns;
        capacity = new double[n];
        fresh = new double[n];
        gradient = new double[n];
        best = slides.clone();
        factor = new double[n];
        step = new double[n];
        rows = new double[n * Net.BAND];
    }

    /** Slides until the forces balance, it falls by more than a length, or patience ends. */
    Settling settle(double length) {
        here.capacity(capacity);
        double share = 1;
        double last = Double.POSITIVE_INFINITY;
        for (iterations = 0; iterations < MOST; iterations++) {
            here.capacity(fresh);
            residual = leftOver();
            keepBest();
            if (residual < STOP) {
                outcome = Settled.Outcome.SETTLED;
                break;
            }
            if (Arrays.stream(here.slides()).anyMatch(slide -> Math.abs(slide) > length)) {
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
            System.arraycopy(best, 0, here.slides(), 0, best.length);
            here.moved();
            residual = least;
        }
        return this;
    }

    private void keepBest() {
        if (residual < least) {
            least = residual;
            System.arraycopy(here.slides(), 0, best, 0, best.length);
        }
    }

    private void lag(double share) {
        for (int k = 0; k < capacity.length; k++) {
            capacity[k] += share * (fresh[k] - capacity[k]);
        }
    }

    /** Forces left over with friction as it is at this state, which stay in the gradient, and their sum. */
    private double leftOver() {
        forces(here, fresh, gradient);
        double sum = 0;
        for (double force : gradient) {
            sum += Math.abs(force);
        }
        return sum;
    }

    private void forces(Strained at, double[] friction, double[] into) {
        double[] pull = at.pull();
        double[] hold = at.hold();
        for (int k = 0; k < into.length; k++) {
            into[k] = held[k] ? 0 : pull[k] + friction[k] * hold[k];
        }
    }

    /** The slow way that finds what the others circle round: friction is renewed only once all else balances. */
    private void patient() {
        forces(here, capacity, gradient);
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
        forces(here, capacity, gradient);
        fillRows(capacity);
        if (!direct()) {
            return;
        }
        double slope = 0;
        for (int k = 0; k < step.length; k++) {
            slope += step[k] * gradient[k];
        }
        double before = here.energy(capacity);
        double part = 1;
        for (int halving = 0; halving < HALVINGS; halving++) {
            move(part);
            if (there.energy(capacity) <= before + 1e-4 * part * slope + 1e-13 * Math.abs(before)) {
                break;
            }
            part /= 2;
        }
        accept();
    }

    private void accept() {
        Strained left = here;
        here = there;
        there = left;
    }

    /** A step that knows how friction changes with the slides; false, and nothing moved, where it does not help. */
    private boolean steepened() {
        fillRows(fresh);
        for (int k = 0; k < factor.length; k++) {
            factor[k] = held[k] || fresh[k] == 0 ? 0 : here.hold()[k];
        }
        here.addCapacitySlope(factor, rows);
        freeze();
        double before = squares(gradient);
        if (!direct()) {
            return false;
        }
        double part = 1;
        for (int halving = 0; halving < 8; halving++) {
            move(part);
            there.capacity(fresh);
            forces(there, fresh, gradient);
            if (squares(gradient) < before * (1 - 0.1 * part)) {
                accept();
                System.arraycopy(fresh, 0, capacity, 0, fresh.length);
                return true;
            }
            part /= 2;
        }
        here.capacity(fresh);
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
        here.addHessian(rows);
        for (int k = 0; k < friction.length; k++) {
            double t = here.hold()[k];
            rows[k * Net.BAND + 2] += friction[k] * (1 - t * t) / give + 1e-9;
        }
        freeze();
    }

    /** Rows and columns of held unknowns. */
    private void freeze() {
        for (int k = 0; k < held.length; k++) {
            for (int c = Math.max(0, k - 2); held[k] && c <= Math.min(held.length - 1, k + 2); c++) {
                rows[k * Net.BAND + c - k + 2] = c == k ? 1 : 0;
                rows[c * Net.BAND + k - c + 2] = c == k ? 1 : 0;
            }
        }
    }

    /** Newton's step from rows and gradient, no longer than is safe. */
    private boolean direct() {
        for (int k = 0; k < step.length; k++) {
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
        double[] from = here.slides();
        double[] to = there.slides();
        for (int k = 0; k < to.length; k++) {
            to[k] = from[k] + part * step[k];
        }
        there.moved();
    }

    double[] slides() {
        return here.slides().clone();
    }

    /** Where friction hangs on in the next pose: it keeps what of each slide is elastic. */
    double[] anchors() {
        double[] u = here.slides();
        double[] next = new double[u.length];
        for (int k = 0; k < u.length; k++) {
            double elastic = u[k] - anchor[k];
            next[k] = u[k] - Math.max(-KEPT * give, Math.min(KEPT * give, elastic));
        }
        return next;
    }

    /** What cloth, elastic and weight pull on an unknown, N, towards the hem. */
    double pull(int unknown) {
        return -here.pull()[unknown];
    }

    /** The same with friction: what a hand at a held edge feels, N. */
    double reaction(int unknown) {
        here.capacity(fresh);
        return pull(unknown) - fresh[unknown] * here.hold()[unknown];
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
