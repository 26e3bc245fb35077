package stretchwright.lay;

import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.ground.Unit;

/**
 * What to buy, as a sum that can be followed: the lay, what washing takes, straightening at both cut ends, one repeat
 * of the print, rounded up to what the shop cuts. All in mm; the allowances are those of {@link Shop}.
 *
 * @param length of the lay
 * @param shrinkage what is bought on top because washing takes it
 * @param straightening at both cut ends together
 * @param repeat of the print, so that it can be shifted; 0 without a print
 * @param steps how many steps of the counter that is
 */
public record Buying(
        double length, double shrinkage, double straightening, double repeat, Counter counter, long steps) {

    /** How a shop cuts: whole steps of so many mm. */
    public enum Counter {
        METRIC(Shop.STEP),
        YARDS(Shop.EIGHTH_OF_YARD);

        private final double step;

        Counter(double step) {
            this.step = step;
        }

        public double step() {
            return step;
        }

        /** Yards for those who measure in inches, else metric. */
        public static Counter of(Unit unit) {
            return unit == Unit.IN || unit == Unit.YD ? YARDS : METRIC;
        }
    }

    public static Buying of(double length, Fabric fabric, Counter counter) {
        double straightening = 2 * Shop.STRAIGHTENING;
        // not what is left of the need: that would be a hair off zero where nothing shrinks
        double shrinkage = length / (1 - fabric.quality().shrinkageAlong()) - length;
        long steps = steps(Shop.needed(length, fabric), counter);
        return new Buying(length, shrinkage, straightening, fabric.roll().repeatAlong(), counter, steps);
    }

    private static long steps(double needed, Counter counter) {
        return counter == Counter.YARDS
                ? Shop.eighths(needed)
                : Grid.units(Shop.metric(needed)) / Grid.units(counter.step());
    }

    /** Several lays from one roll: each is straightened and shifted for itself, the sum is rounded up once. */
    public static Buying together(List<Buying> lays) {
        Counter counter = lays.get(0).counter();
        double length = lays.stream().mapToDouble(Buying::length).sum();
        double shrinkage = lays.stream().mapToDouble(Buying::shrinkage).sum();
        double ends = lays.stream().mapToDouble(Buying::straightening).sum();
        double repeat = lays.stream().mapToDouble(Buying::repeat).sum();
        return new Buying(length, shrinkage, ends, repeat, counter, steps(length + shrinkage + ends + repeat, counter));
    }

    /** Before rounding up. */
    public double needed() {
        return length + shrinkage + straightening + repeat;
    }

    public double bought() {
        return steps * counter.step();
    }
}
