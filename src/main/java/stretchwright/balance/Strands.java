package stretchwright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Strands, presses and loads as they are collected for a {@link Net}. */
final class Strands {
    /** Cloth strained by the unknowns i and j; of one unknown alone i = j and second = 0. */
    record Strand(Tension curve, double amount, double start, int i, double first, int j, double second) {
        static Strand of(Tension curve, double amount, double start, int i, double first) {
            return new Strand(curve, amount, start, i, first, i, 0);
        }
    }

    private record Press(int unknown, int strand, double share) {}

    private final List<Strand> strands = new ArrayList<>();
    private final List<Press> presses = new ArrayList<>();
    private final double[] loads;
    private final double[] grips;

    Strands(int unknowns) {
        loads = new double[unknowns];
        grips = new double[unknowns];
    }

    /** The number of the strand, for {@link #press}. */
    int add(Strand strand) {
        strands.add(strand);
        return strands.size() - 1;
    }

    /** Friction on the unknown grows by share times the strand's tension. */
    void press(int unknown, int strand, double share) {
        if (share != 0) {
            presses.add(new Press(unknown, strand, share));
        }
    }

    /** Friction on the unknown whatever the cloth does, N. */
    void grip(int unknown, double force) {
        grips[unknown] += force;
    }

    /** A force against the slide, N: what falls has less than 0. */
    void load(int unknown, double force) {
        loads[unknown] += force;
    }

    int unknowns() {
        return loads.length;
    }

    double[] loads() {
        return loads.clone();
    }

    double[] grips() {
        return grips.clone();
    }

    Tension[] curves() {
        return strands.stream().map(Strand::curve).toArray(Tension[]::new);
    }

    int[] firsts() {
        return strands.stream().mapToInt(Strand::i).toArray();
    }

    int[] seconds() {
        return strands.stream().mapToInt(Strand::j).toArray();
    }

    double[] values(ToDoubleFunction<Strand> value) {
        return strands.stream().mapToDouble(value).toArray();
    }

    int[] pressed() {
        return presses.stream().mapToInt(Press::unknown).toArray();
    }

    int[] pressing() {
        return presses.stream().mapToInt(Press::strand).toArray();
    }

    double[] presses() {
        return presses.stream().mapToDouble(Press::share).toArray();
    }
}
