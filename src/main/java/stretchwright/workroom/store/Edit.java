package stretchwright.workroom.store;

import java.util.Optional;

/**
 * What is to be saved.
 *
 * @param thing its id; empty for a new one
 * @param expected the version that the editor had seen; 0 for a new one
 * @param to where it is then
 */
public record Edit(
        String thing,
        Kind kind,
        long expected,
        String name,
        String text,
        Links links,
        Optional<String> figures,
        String program,
        Place to) {
    /** A new thing. */
    public static Edit fresh(Kind kind, String name, String text, Links links) {
        return new Edit("", kind, 0, name, text, links, Optional.empty(), "", Place.HERE);
    }

    /** What follows a version that was seen. */
    public static Edit after(Thing seen, String name, String text) {
        return new Edit(seen.id(), seen.kind(), seen.now(), name, text, seen.links(), Optional.empty(), "", Place.HERE);
    }

    public Edit with(String made, String by) {
        return new Edit(thing, kind, expected, name, text, links, Optional.of(made), by, to);
    }

    /** The same for a thing that is used up by it. */
    public Edit intoBin() {
        return new Edit(thing, kind, expected, name, text, links, figures, program, Place.BIN);
    }

    public Edit with(Links other) {
        return new Edit(thing, kind, expected, name, text, other, figures, program, to);
    }
}
