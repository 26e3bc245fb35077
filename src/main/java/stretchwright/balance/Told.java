package stretchwright.balance;

import java.util.ArrayList;
import java.util.List;

/** What a search found, as lengths and forces of the garment. */
final class Told {
    private Told() {}

    /** Slides of the tube left to itself, pulls at the ends of the same tube held where it was placed. */
    static Settled of(Tube tube, Placing placing, Settling settled, Settling held) {
        double[] u = settled.slides();
        int last = tube.rings().size() - 1;
        List<Double> front = new ArrayList<>();
        List<Double> back = new ArrayList<>();
        for (int k = 0; k <= last; k++) {
            front.add(u[placing.unknown(k, 0)]);
            back.add(u[placing.unknown(k, 1)]);
        }
        return new Settled(
                front,
                back,
                placing.hasRise() ? u[0] : 0,
                edge(front, back, 0, pull(placing, held, 0), placing.grip(tube.band(), 0)),
                edge(front, back, last, pull(placing, held, last), placing.grip(tube.cuff(), last)),
                worse(settled.outcome(), held.outcome()),
                settled.iterations() + held.iterations(),
                Math.max(settled.residual(), held.residual()));
    }

    private static Settled.Edge edge(List<Double> front, List<Double> back, int k, double pull, double grip) {
        double f = front.get(k);
        double b = back.get(k);
        return new Settled.Edge((f + b) / 2, f, b, pull, grip);
    }

    private static double pull(Placing placing, Settling held, int k) {
        int front = placing.unknown(k, 0);
        int back = placing.unknown(k, 1);
        double pull = held.pull(front) / placing.ratio(k, 0);
        return front == back ? pull : pull + held.pull(back) / placing.ratio(k, 1);
    }

    private static Settled.Outcome worse(Settled.Outcome one, Settled.Outcome other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}
