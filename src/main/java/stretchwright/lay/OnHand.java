package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/**
 * Whether the cloth at hand is long enough; mm.
 *
 * <p>It is held against what the lay needs, not against what a shop would cut for it: cloth that is there was cut
 * already, and up to one step of the counter more would be asked of it for nothing. Compared on the grid of 0.01 mm, as
 * the report shows both numbers.
 *
 * @param have the length at hand
 * @param needed of unwashed cloth, not rounded up to what a shop cuts
 * @param conditions under which it would fit all the same, each alone; empty where it fits, or where nothing helps
 */
public record OnHand(double have, double needed, List<String> conditions) {
    public OnHand {
        conditions = List.copyOf(conditions);
    }

    public enum Verdict {
        FITS,
        FITS_IF,
        SHORT;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    public Verdict verdict() {
        return enough(have, needed) ? Verdict.FITS : conditions.isEmpty() ? Verdict.SHORT : Verdict.FITS_IF;
    }

    private static boolean enough(double have, double needed) {
        return Grid.units(have) >= Grid.units(needed);
    }

    /** What is left over, on the grid; negative where it is short. */
    public double spare() {
        return Grid.mm(Grid.units(have) - Grid.units(needed));
    }

    /** Empty where nothing is at hand. Lays are tried only where it is short. */
    public static Optional<OnHand> of(Lay lay, List<Piece> pieces, Fabric fabric, LayTerms terms, long seed) {
        if (fabric.onHand().isEmpty()) {
            return Optional.empty();
        }
        double have = fabric.onHand().getAsDouble();
        double needed = needed(lay, fabric);
        return Optional.of(new OnHand(
                have, needed, enough(have, needed) ? List.of() : conditions(have, lay, pieces, fabric, terms, seed)));
    }

    private static double needed(Lay lay, Fabric fabric) {
        return needed(lay.length(), fabric, Buying.of(lay.length(), fabric, Buying.Counter.METRIC));
    }

    /** A remnant with an outline is laid as it lies there: washed, and cut as straight as it is. */
    public static double needed(double length, Fabric fabric, Buying buying) {
        return fabric.shape().outline().isPresent() ? length : buying.needed();
    }

    private static List<String> conditions(
            double have, Lay lay, List<Piece> pieces, Fabric fabric, LayTerms terms, long seed) {
        List<String> out = new ArrayList<>();
        if (terms.way() != Style.LayWay.ANY) {
            tried(pieces, fabric, terms.with(Style.LayWay.ANY), seed)
                    .filter(l -> enough(have, needed(l, fabric)))
                    .ifPresent(l -> out.add("it is laid " + l.method().word() + " (style.lay: any): "
                            + mm(needed(l, fabric)) + " needed"));
        }
        if (fabric.oneWay()) {
            Fabric either = fabric.with(fabric.usableWidth(), false).with(fabric.shape());
            tried(pieces, either, terms, seed)
                    .filter(l -> enough(have, needed(l, fabric)))
                    .ifPresent(l -> out.add("it has no nap, sheen or print with a direction, so that pieces may be"
                            + " turned (fabric.one way: false): " + mm(needed(l, fabric)) + " needed"));
        }
        if (fabric.shape().outline().isPresent()) {
            return out;
        }
        out.addAll(asItIs(have, lay.length(), fabric));
        return out;
    }

    /** What the cloth itself may have behind it: washed, straightened; a print that need not match. */
    private static List<String> asItIs(double have, double length, Fabric fabric) {
        List<String> out = new ArrayList<>();
        double ends = 2 * Shop.STRAIGHTENING;
        double shrunk = length / (1 - fabric.shrinkageAlong());
        double repeat = fabric.repeatAlong();
        if (repeat > 0 && enough(have, shrunk + ends)) {
            out.add("the print need not be shifted: " + mm(shrunk + ends) + " needed");
        }
        if (enough(have, shrunk + repeat)) {
            out.add("both cut ends are straight already: " + mm(shrunk + repeat) + " needed");
        }
        if (fabric.shrinkageAlong() > 0 && enough(have, length + ends + repeat)) {
            out.add("it is washed and dried already and was measured after that: " + mm(length + ends + repeat)
                    + " needed");
        } else if (out.isEmpty() && fabric.shrinkageAlong() > 0 && enough(have, length + repeat)) {
            out.add("it is washed and dried already and both cut ends are straight: " + mm(length + repeat)
                    + " needed");
        }
        return out;
    }

    private static Optional<Lay> tried(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed) {
        return Laying.lay(pieces, fabric, terms, seed, new Findings("trial"));
    }

    private static String mm(double mm) {
        return String.format(Locale.ROOT, "%.0f mm", Math.ceil(mm - 1e-6));
    }
}
