package stretchwright.balance;

/**
 * The cloth of a {@link Net} at one set of slides: strains, forces and energies, each computed once and only when asked for.
 * Who writes into {@link #slides} says {@link #moved} after it.
 */
final class Strained {
    private final Net net;
    private final double[] anchor;
    private final double give;
    private final double[] slides;
    private final double[] strain;
    private final double[] tension;
    private final double[] pull;
    private final double[] hold;
    private final double[] held;
    private double energy;
    private boolean tenses;
    private boolean pulls;
    private boolean holds;
    private boolean stores;
    private boolean keeps;

    /** @param anchor where friction hangs on; @param give slide at which it is nearly all taken up, mm */
    Strained(Net net, double[] slides, double[] anchor, double give) {
        this.net = net;
        this.anchor = anchor;
        this.give = give;
        this.slides = slides.clone();
        strain = new double[net.strands()];
        tension = new double[net.strands()];
        pull = new double[slides.length];
        hold = new double[slides.length];
        held = new double[slides.length];
        moved();
    }

    double[] slides() {
        return slides;
    }

    void moved() {
        net.strains(slides, strain);
        tenses = false;
        pulls = false;
        holds = false;
        stores = false;
        keeps = false;
    }

    private double[] tension() {
        if (!tenses) {
            net.tensions(strain, tension);
            tenses = true;
        }
        return tension;
    }

    /** What cloth, elastic and weight pull, N; friction apart. */
    double[] pull() {
        if (!pulls) {
            net.gradient(tension(), pull);
            pulls = true;
        }
        return pull;
    }

    /** Share of friction that is taken up, with its direction. */
    double[] hold() {
        if (!holds) {
            for (int k = 0; k < hold.length; k++) {
                hold[k] = Math.tanh((slides[k] - anchor[k]) / give);
            }
            holds = true;
        }
        return hold;
    }

    /** Of cloth and friction, friction of a given capacity. */
    double energy(double[] capacity) {
        if (!stores) {
            energy = net.energy(slides, strain);
            stores = true;
        }
        double sum = energy;
        double[] each = held();
        for (int k = 0; k < each.length; k++) {
            sum += capacity[k] * give * each[k];
        }
        return sum;
    }

    /** What friction stores, of its capacity times its give. */
    private double[] held() {
        if (!keeps) {
            for (int k = 0; k < held.length; k++) {
                double x = Math.abs(slides[k] - anchor[k]) / give;
                held[k] = x + Math.log1p(Math.exp(-2 * x));
            }
            keeps = true;
        }
        return held;
    }

    void capacity(double[] into) {
        net.capacity(tension(), into);
    }

    void addHessian(double[] rows) {
        net.addHessian(strain, rows);
    }

    void addCapacitySlope(double[] factor, double[] rows) {
        net.addCapacitySlope(strain, factor, rows);
    }
}
