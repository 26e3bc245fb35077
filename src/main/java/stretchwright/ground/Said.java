package stretchwright.ground;

import java.util.ArrayList;
import java.util.List;

/**
 * Something to be told, not yet worded: a key of a room's sentences, what fills its gaps, and the sentences that follow. The
 * doors word it in the maker's unit and language ({@link Voice}); nothing inside ever reads the words.
 *
 * @param room whose bundle holds the key: stretchwright/room/words.properties
 * @param key of a whole sentence, or of a term; empty for nothing to say
 * @param parts what fills the gaps {0}, {1}, ... in this order
 * @param then sentences that follow it
 */
public record Said(String room, String key, List<Part> parts, List<Said> then) implements Part {
    public static final Said NOTHING = new Said("", "", List.of(), List.of());

    public Said {
        parts = List.copyOf(parts);
        then = List.copyOf(then);
    }

    public static Said of(String room, String key, Part... parts) {
        return new Said(room, key, List.of(parts), List.of());
    }

    /** This, and another sentence behind it. The key, by which it is known, stays the first one's. */
    public Said and(Said other) {
        if (other.isNothing() || isNothing()) {
            return isNothing() ? other : this;
        }
        List<Said> all = new ArrayList<>(then);
        all.add(new Said(other.room, other.key, other.parts, List.of()));
        all.addAll(other.then);
        return new Said(room, key, parts, all);
    }

    /** Its first sentence alone. */
    public Said first() {
        return new Said(room, key, parts, List.of());
    }

    public boolean isNothing() {
        return key.isEmpty();
    }

    /** Whether the same is said, whatever the numbers. */
    public boolean sameKey(Said other) {
        return room.equals(other.room) && key.equals(other.key);
    }
}
