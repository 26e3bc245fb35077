package stretchwright.workroom.store;

import java.util.List;
import java.util.stream.Stream;

/**
 * Other things that a thing came from or uses, each by its id; empty for none.
 *
 * @param origin of a note what it is about, of a remnant its cloth, of a make the one before it
 */
public record Links(String origin, String wearer, String fabric, String boot, String style) {
    public static final Links NONE = new Links("", "", "", "", "");

    public static Links from(String origin) {
        return new Links(origin, "", "", "", "");
    }

    /** Those that are there. */
    public List<String> all() {
        return Stream.of(origin, wearer, fabric, boot, style)
                .filter(id -> !id.isEmpty())
                .toList();
    }
}
