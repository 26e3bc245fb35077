package stretchwright.balance;

/**
 * A tube on a body as numbers only. Unknowns are slides; strands are cloth strained by one or two of them, each with
 * strain = start + first u[i] + second u[j] and energy amount x curve energy; presses tell which strands press a ring on
 * the skin. All strains are straight in the slides and all curves rise, so for given friction there is one least energy.
 */
final class Net {
    /** Stored columns of a row: two on either side of the diagonal. */
    static final int BAND = 5;

    final int unknowns;
    private final Tension[] curve;
    private final int[] i;
    private final int[] j;
    private final double[] first;
    private final double[] second;
    private final double[] start;
    private final double[] amount;
    private final double[] load;
    private final double[] grip;
    private final int[] pressed;
    private final int[] pressing;
    private final double[] press;

    Net(Strands strands) {
        unknowns = strands.unknowns();
        curve = strands.curves();
        i = strands.firsts();
        j = strands.seconds();
        first = strands.values(Strands.Strand::first);
        second = strands.values(Strands.Strand::second);
        start = strands.values(Strands.Strand::start);
        amount = strands.values(Strands.Strand::amount);
        load = strands.loads();
        grip = strands.grips();
        pressed = strands.pressed();
        pressing = strands.pressing();
        press = strands.presses();
    }

    int strands() {
        return amount.length;
    }

    /** Of each strand at these slides; what follows is asked of strains. */
    void strains(double[] u, double[] into) {
        for (int s = 0; s < into.length; s++) {
            into[s] = start[s] + first[s] * u[i[s]] + second[s] * u[j[s]];
        }
    }

    /** Of cloth, elastic and weight; friction apart. */
    double energy(double[] u, double[] strain) {
        double sum = 0;
        for (int s = 0; s < amount.length; s++) {
            sum += amount[s] * curve[s].energy(strain[s]);
        }
        for (int k = 0; k < unknowns; k++) {
            sum += load[k] * u[k];
        }
        return sum;
    }

    void tensions(double[] strain, double[] into) {
        for (int s = 0; s < into.length; s++) {
            into[s] = curve[s].tension(strain[s]);
        }
    }

    void gradient(double[] tension, double[] into) {
        System.arraycopy(load, 0, into, 0, unknowns);
        for (int s = 0; s < amount.length; s++) {
            double force = amount[s] * tension[s];
            into[i[s]] += force * first[s];
            into[j[s]] += force * second[s];
        }
    }

    /** Adds to rows of five around the diagonal. */
    void addHessian(double[] strain, double[] rows) {
        for (int s = 0; s < amount.length; s++) {
            double stiffness = amount[s] * curve[s].stiffness(strain[s]);
            add(rows, i[s], i[s], stiffness * first[s] * first[s]);
            if (i[s] != j[s]) {
                add(rows, j[s], j[s], stiffness * second[s] * second[s]);
                add(rows, i[s], j[s], stiffness * first[s] * second[s]);
                add(rows, j[s], i[s], stiffness * first[s] * second[s]);
            }
        }
    }

    /** Most that friction holds of each unknown, from how cloth and elastic press there; none where it stands off. */
    void capacity(double[] tension, double[] into) {
        System.arraycopy(grip, 0, into, 0, unknowns);
        for (int p = 0; p < press.length; p++) {
            into[pressed[p]] += press[p] * tension[pressing[p]];
        }
        for (int k = 0; k < unknowns; k++) {
            into[k] = Math.max(0, into[k]);
        }
    }

    /** Adds how friction itself changes with the slides: row k times factor[k]. */
    void addCapacitySlope(double[] strain, double[] factor, double[] rows) {
        for (int p = 0; p < press.length; p++) {
            int s = pressing[p];
            int row = pressed[p];
            double slope = factor[row] * press[p] * curve[s].stiffness(strain[s]);
            add(rows, row, i[s], slope * first[s]);
            if (i[s] != j[s]) {
                add(rows, row, j[s], slope * second[s]);
            }
        }
    }

    private static void add(double[] rows, int row, int column, double value) {
        rows[row * BAND + column - row + 2] += value;
    }
}
