package stretchwright.balance;

import java.util.List;

/** What the numbers of a tube must keep to; a value that is none is told at the door. */
final class Need {
    private Need() {}

    static double between(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " must lie from " + low + " to " + high + ": " + value);
        }
        return value;
    }

    static double positive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be above 0: " + value);
        }
        return value;
    }

    static double finite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a number: " + value);
        }
        return value;
    }

    static void size(String what, List<?> list, int wanted) {
        if (list.size() != wanted) {
            throw new IllegalArgumentException(what + " must be " + wanted + ", not " + list.size());
        }
    }

    static void rising(String what, List<Double> values) {
        for (int i = 0; i < values.size(); i++) {
            finite(what, values.get(i));
            if (i > 0 && values.get(i) <= values.get(i - 1)) {
                throw new IllegalArgumentException(what + " must rise: " + values);
            }
        }
    }
}
