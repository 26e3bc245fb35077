package stretchwright.print.kit;

import stretchwright.fabric.Fabric;

/** What a cloth is called on paper: one that nobody has yet never looks like one that was tested. */
public final class ClothName {
    private ClothName() {}

    /** No longer than there is room for. */
    public static String of(Fabric fabric) {
        return marked(Letters.shortened(fabric.roll().name(), Letters.LONGEST_NAME), fabric);
    }

    /** In full, for files that other programs read. */
    public static String whole(Fabric fabric) {
        return marked(fabric.roll().name(), fabric);
    }

    private static String marked(String name, Fabric fabric) {
        if (!fabric.usual().stretch()) {
            return name;
        }
        return fabric.roll().name().isBlank() ? Phrases.of("cloth.assumed") : Phrases.of("cloth.assumed-named", name);
    }
}
