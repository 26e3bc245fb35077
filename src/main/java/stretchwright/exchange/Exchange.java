package stretchwright.exchange;

import java.util.List;
import java.util.OptionalInt;
import stretchwright.pattern.Nest;

/** The room's entry: one pattern in every open format. */
public final class Exchange {
    /** Of the files there are. */
    public static final List<String> NAMES = List.of("pattern.dxf", "pattern-cut.dxf", "pattern.plt", "pattern.png");

    private Exchange() {}

    /**
     * A nest, its sizes over each other.
     *
     * @param sizes in the nest's order, each with the size's name for a wearer
     */
    public static OpenFile nest(Nest nest, List<Handover> sizes) {
        return new OpenFile("nest.dxf", "nested pattern for other programs", PatternDxf.of(nest, sizes));
    }

    /**
     * One of them.
     *
     * @param preview points per inch, true to scale; empty for a picture of a usual size
     */
    public static OpenFile file(String name, Handover handover, OptionalInt preview) {
        return switch (name) {
            case "pattern.dxf" -> new OpenFile(name, "pattern for other programs", PatternDxf.of(handover));
            case "pattern-cut.dxf" -> new OpenFile(name, "cut lines for a machine", CutDxf.of(handover.pattern()));
            case "pattern.plt" -> new OpenFile(name, "pattern for a pen plotter", Plot.of(handover));
            case "pattern.png" -> new OpenFile(name, "preview of the pattern", Preview.of(handover.pattern(), preview));
            default -> throw new IllegalArgumentException("there is no file " + name);
        };
    }

    /** All of them. */
    public static List<OpenFile> files(Handover handover, OptionalInt preview) {
        return NAMES.stream().map(name -> file(name, handover, preview)).toList();
    }
}
