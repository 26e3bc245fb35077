package stretchwright.lay.nest;

/** The best few places found for one part, best first, no two of them close together. */
final class Places {
    final int[] variant;
    final double[] x;
    final double[] y;
    final double[] value;
    private int count;

    Places(int most) {
        variant = new int[most];
        x = new double[most];
        y = new double[most];
        value = new double[most];
    }

    void clear() {
        count = 0;
    }

    int count() {
        return count;
    }

    /** What a place must stay below to be kept. */
    double limit() {
        return count < value.length ? Double.POSITIVE_INFINITY : value[count - 1];
    }

    /** Keeps the place if it is among the best; of two closer than that in both directions only the better stays. */
    void offer(int v, double px, double py, double worth, double close) {
        for (int k = 0; k < count; k++) {
            if (variant[k] == v && Math.abs(x[k] - px) < close && Math.abs(y[k] - py) < close) {
                if (worth >= value[k]) {
                    return;
                }
                for (int m = k; m + 1 < count; m++) {
                    copy(m + 1, m);
                }
                count--;
            }
        }
        int at = count < value.length ? count++ : count - 1;
        while (at > 0 && value[at - 1] > worth) {
            copy(at - 1, at);
            at--;
        }
        variant[at] = v;
        x[at] = px;
        y[at] = py;
        value[at] = worth;
    }

    private void copy(int from, int to) {
        variant[to] = variant[from];
        x[to] = x[from];
        y[to] = y[from];
        value[to] = value[from];
    }
}
