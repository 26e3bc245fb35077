package stretchwright.exchange;

import java.util.List;
import java.util.OptionalInt;
import stretchwright.pattern.Nest;

/** The room's entry: one pattern in every open format. */
public final class Exchange {
    private Exchange() {}

    /**
     * A nest, its sizes over each other.
     *
     * @param sizes in the nest's order, each with the size's name for a wearer
     */
    public static OpenFile nest(Nest nest, List<Handover> sizes) {
        return new OpenFile("nest.dxf", "nested pattern for other programs", PatternDxf.of(nest, sizes));
    }

    /** @param preview points per inch, true to scale; empty for a picture of a usual size */
    public static List<OpenFile> files(Handover handover, OptionalInt preview) {
        return List.of(
                new OpenFile("pattern.dxf", "pattern for other programs", PatternDxf.of(handover)),
                new OpenFile("pattern-cut.dxf", "cut lines for a machine", CutDxf.of(handover.pattern())),
                new OpenFile("pattern.plt", "pattern for a pen plotter", Plot.of(handover)),
                new OpenFile("pattern.png", "preview of the pattern", Preview.of(handover.pattern(), preview)));
    }
}
