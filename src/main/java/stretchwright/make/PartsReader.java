package stretchwright.make;

import java.util.List;
import stretchwright.pattern.Parts;

/** Reads into which parts the leg is cut and what is added to it. */
final class PartsReader {
    private PartsReader() {}

    static Parts read(Section style) {
        StyleReader.only(style, "side seam", List.of("none"), List.of("none", "shaped"));
        return Parts.PLAIN;
    }
}
