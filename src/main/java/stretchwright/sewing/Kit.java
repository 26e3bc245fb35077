package stretchwright.sewing;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;

/**
 * What the sewer owns, and which stitch that gives for each kind of place. Nothing owned means by hand.
 *
 * <p>A straight lockstitch is never chosen: every seam of this garment stretches, and a lockstitch breaks at about
 * 30 % (trade-values section 4.3).
 */
record Kit(Set<Machine> owned) {
    Kit {
        Set<Machine> sorted = EnumSet.noneOf(Machine.class);
        sorted.addAll(owned);
        owned = sorted.isEmpty() ? EnumSet.of(Machine.HAND) : sorted;
    }

    /** For a seam that joins two edges. */
    Tool seam() {
        return on(Machine.forSeam(owned));
    }

    /** For a hem. */
    Tool hem() {
        return on(Machine.forHem(owned));
    }

    /**
     * For the row that lies on top of the rises; empty where there is no coverstitch, or where one and the same machine
     * would have to be converted to cover and back for it. That takes about half an hour, for a row that makes the seam
     * flatter but not possible.
     */
    Optional<Tool> rowOverRises() {
        Tool row = on(Stitch.COVERSTITCH);
        return row.stitch() == Stitch.COVERSTITCH && !convertedFor(row) ? Optional.of(row) : Optional.empty();
    }

    /** Whether the row over the rises is left out only to spare two conversions. */
    boolean sparesTheRow() {
        return rowOverRises().isEmpty() && Machine.best(owned, Stitch.COVERSTITCH) == Stitch.COVERSTITCH;
    }

    /** For the short second row across the crotch: what stretches most without converting a machine. */
    Tool bar() {
        return rowOverRises().orElseGet(() -> on(Machine.best(owned, Stitch.ZIGZAG, seam().stitch())));
    }

    /** For short rows that hold an end fast: zigzag, else by hand; cover and overlock machines cannot. */
    Tool tack() {
        return on(Machine.best(owned, Stitch.ZIGZAG, Stitch.BACKSTITCH_BY_HAND));
    }

    private boolean convertedFor(Tool tool) {
        return tool.machine() == Machine.COMBINED && seam().machine() == Machine.COMBINED;
    }

    /** A machine that does only this comes before the combined one: the order of the enum. */
    private Tool on(Stitch wanted) {
        return owned.stream()
                .filter(m -> m.stitches().contains(wanted))
                .findFirst()
                .map(m -> new Tool(m, wanted))
                .orElse(new Tool(Machine.HAND, Stitch.BACKSTITCH_BY_HAND));
    }
}
