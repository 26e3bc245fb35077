package stretchwright.body;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Finds given values that do not go with all the other given ones.
 *
 * <p>Each value is compared with what the others let expect (leave one out). The worst beyond the limit is taken out,
 * the rest compared again, until all agree: one wrong value does not drag its neighbours along.
 */
final class AtOdds {
    private AtOdds() {}

    /**
     * One value at odds.
     *
     * @param with the other measure that alone contradicts it most; itself when there is no other (a child's age)
     * @param expected from all the others, mm
     * @param spread of what was expected, mm
     * @param spreadsOff how many spreads it stands off
     */
    record Odd(Measure measure, Measure with, double mm, double expected, double spread, double spreadsOff) {}

    /** All values further off than their limit (in spreads), the worst first. */
    static List<Odd> find(Known known, ToDoubleFunction<Odd> limit) {
        List<Odd> all = new ArrayList<>();
        Known left = known;
        for (Odd worst = worst(left, limit); worst != null; worst = worst(left, limit)) {
            all.add(worst);
            left = left.without(worst.measure);
        }
        return all;
    }

    /** How each value stands to the others, none taken out. */
    static List<Odd> each(Known known) {
        JointNormal people = known.agreeing();
        JointNormal.Agreement agreement = people.agreement(known.logs());
        List<Odd> all = new ArrayList<>();
        if (agreement.known().length < 2) {
            return all;
        }
        for (int i = 0; i < agreement.known().length; i++) {
            if (agreement.known()[i] < Survey.GROWTH) {
                Measure measure = Measure.values()[agreement.known()[i]];
                double expected = Math.exp(agreement.expected()[i]);
                all.add(new Odd(
                        measure,
                        measure,
                        known.mm(measure),
                        expected,
                        expected * agreement.spreads()[i],
                        agreement.off(i, known.logs())));
            }
        }
        return all;
    }

    /**
     * How far all values together lie from any body, in normal spreads: the squared distance (chi-squared with as many
     * degrees of freedom as values) made normal by its cube root (Wilson and Hilferty, PNAS 17, 1931).
     */
    static double together(Known known) {
        JointNormal.Agreement agreement = known.agreeing().agreement(known.logs());
        double part = 2.0 / (9 * agreement.known().length);
        return (Math.cbrt(agreement.distance() / agreement.known().length) - (1 - part)) / Math.sqrt(part);
    }

    private static @org.jspecify.annotations.Nullable Odd worst(Known known, ToDoubleFunction<Odd> limit) {
        Odd worst = null;
        for (Odd odd : each(known)) {
            if (Math.abs(odd.spreadsOff) <= limit.applyAsDouble(odd)) {
                continue;
            }
            // of two values alone both stand equally far off: the later, finer measure is asked about
            if (worst == null || Math.abs(odd.spreadsOff) >= Math.abs(worst.spreadsOff) * (1 - 1e-9)) {
                worst = odd;
            }
        }
        return worst == null ? null : named(worst, known);
    }

    private static Odd named(Odd odd, Known known) {
        return new Odd(odd.measure, partner(odd.measure, known), odd.mm, odd.expected, odd.spread, odd.spreadsOff);
    }

    /** The other given measure that alone contradicts this one most. */
    static Measure partner(Measure measure, Known known) {
        JointNormal people = known.agreeing();
        Measure partner = measure;
        double most = -1;
        for (Measure other : Measure.values()) {
            if (other != measure && known.has(other)) {
                double[] two = new double[known.logs().length];
                java.util.Arrays.fill(two, Double.NaN);
                two[measure.ordinal()] = known.logs()[measure.ordinal()];
                two[other.ordinal()] = known.logs()[other.ordinal()];
                double off = Math.abs(people.agreement(two).off(0, two));
                if (off > most) {
                    most = off;
                    partner = other;
                }
            }
        }
        return partner;
    }
}
