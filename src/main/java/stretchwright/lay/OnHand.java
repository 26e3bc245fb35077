package stretchwright.lay;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.lay.nest.LayClock;
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
public record OnHand(double have, double needed, List<Condition> conditions) {
    public OnHand {
        conditions = List.copyOf(conditions);
    }

    /**
     * What would have to be so.
     *
     * @param method by which it would be laid
     * @param needed then, mm
     */
    public record Condition(If what, Lay.Method method, double needed) {}

    /** Of laying and of the cloth. */
    public enum If {
        LAID_ANOTHER_WAY,
        PIECES_TURNED,
        PRINT_NOT_SHIFTED,
        ENDS_STRAIGHT,
        WASHED,
        WASHED_AND_STRAIGHT
    }

    private static final Set<If> ONE_OF_THE_CLOTH = EnumSet.of(If.PRINT_NOT_SHIFTED, If.ENDS_STRAIGHT, If.WASHED);

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

    /**
     * Empty where nothing is at hand. Lays are tried only where it is short.
     *
     * @param clock may end the trying: then by the lays found until then
     */
    public static Optional<OnHand> of(
            Lay lay, List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, LayClock clock) {
        if (fabric.roll().onHand().isEmpty()) {
            return Optional.empty();
        }
        double have = fabric.roll().onHand().getAsDouble();
        double needed = needed(lay, fabric);
        return Optional.of(new OnHand(
                have,
                needed,
                enough(have, needed) ? List.of() : conditions(have, lay, pieces, fabric, terms, seed, clock)));
    }

    private static double needed(Lay lay, Fabric fabric) {
        return needed(lay.length(), fabric, Buying.of(lay.length(), fabric, Buying.Counter.METRIC));
    }

    /** A remnant with an outline is laid as it lies there: washed, and cut as straight as it is. */
    public static double needed(double length, Fabric fabric, Buying buying) {
        return fabric.roll().shape().outline().isPresent() ? length : buying.needed();
    }

    private static List<Condition> conditions(
            double have, Lay lay, List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, LayClock clock) {
        List<Condition> out = new ArrayList<>();
        if (terms.way() != Style.LayWay.ANY) {
            tried(pieces, fabric, terms.with(Style.LayWay.ANY), seed, clock)
                    .map(l -> new Condition(If.LAID_ANOTHER_WAY, l.method(), needed(l, fabric)))
                    .ifPresent(out::add);
        }
        if (fabric.roll().oneWay()) {
            Fabric either = fabric.with(fabric.roll().usableWidth(), false)
                    .with(fabric.roll().shape());
            tried(pieces, either, terms, seed, clock)
                    .map(l -> new Condition(If.PIECES_TURNED, l.method(), needed(l, fabric)))
                    .ifPresent(out::add);
        }
        if (fabric.roll().shape().outline().isEmpty()) {
            out.addAll(asItIs(lay, fabric));
        }
        out.removeIf(c -> !enough(have, c.needed()));
        boolean oneDoes = out.stream().anyMatch(c -> ONE_OF_THE_CLOTH.contains(c.what()));
        out.removeIf(c -> c.what() == If.WASHED_AND_STRAIGHT && oneDoes);
        return out;
    }

    /** What the cloth itself may have behind it: washed, straightened; a print that need not match. */
    private static List<Condition> asItIs(Lay lay, Fabric fabric) {
        List<Condition> out = new ArrayList<>();
        double ends = 2 * Shop.STRAIGHTENING;
        double shrunk = lay.length() / (1 - fabric.quality().shrinkageAlong());
        double repeat = fabric.roll().repeatAlong();
        if (repeat > 0) {
            out.add(new Condition(If.PRINT_NOT_SHIFTED, lay.method(), shrunk + ends));
        }
        out.add(new Condition(If.ENDS_STRAIGHT, lay.method(), shrunk + repeat));
        if (fabric.quality().shrinkageAlong() > 0) {
            out.add(new Condition(If.WASHED, lay.method(), lay.length() + ends + repeat));
            out.add(new Condition(If.WASHED_AND_STRAIGHT, lay.method(), lay.length() + repeat));
        }
        return out;
    }

    private static Optional<Lay> tried(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, LayClock clock) {
        return Laying.lay(pieces, fabric, terms, seed, clock, new Findings("trial"));
    }
}
