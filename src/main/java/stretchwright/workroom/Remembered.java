package stretchwright.workroom;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/**
 * What is remembered of a make besides its text, so that any device goes on from there: one note about it under each heading, whose
 * text is replaced.
 */
public final class Remembered {
    /** Which step of the sewing is the next one. */
    public static final String SEWING = "sewing";

    /** Which sheets of the pattern were printed last, and what was on them. */
    public static final String PRINTED = "printed";

    private static final Set<String> HEADINGS = Set.of(SEWING, PRINTED);

    /** Two devices that go on at one moment; more than a few times in a row it is not by chance. */
    private static final int TRIES = 8;

    private Remembered() {}

    /** Whether a note is the program's own memory, and tells people nothing. */
    public static boolean isMemory(Thing note) {
        return note.kind() == Kind.NOTE && isHeading(note.name());
    }

    public static boolean isHeading(String heading) {
        return HEADINGS.contains(heading.strip());
    }

    /** As it was remembered last; empty where nothing was. */
    public static Optional<String> of(Store store, Thing make, String heading) {
        return note(store, make, heading).flatMap(store::now).map(v -> v.text()).filter(text -> !text.isBlank());
    }

    /** When it was last remembered, in milliseconds since 1970; 0 where it never was. */
    public static long at(Store store, Thing make, String heading) {
        return note(store, make, heading).map(Thing::changed).orElse(0L);
    }

    /**
     * Remembers what follows from what is remembered now.
     *
     * @param next from the text that stands, empty where there is none; asked again where another device was first
     */
    public static String update(Store store, Thing make, String heading, UnaryOperator<String> next) {
        for (int i = 0; i < TRIES; i++) {
            Optional<Thing> note = note(store, make, heading);
            String now = note.flatMap(store::now).map(v -> v.text()).orElse("");
            String then = next.apply(now);
            if (then.equals(now) || stands(store, make, heading, note, then)) {
                return then;
            }
        }
        throw new IllegalStateException("others were first " + TRIES + " times");
    }

    /** Whether nobody else was first. */
    private static boolean stands(Store store, Thing make, String heading, Optional<Thing> note, String text) {
        Edit edit = note.map(n -> Edit.after(n, heading, text)).orElseGet(() -> first(make, heading, text));
        return store.save(heading, List.of(edit)).get(0) instanceof Saved.Stored;
    }

    /** Of two who begin at one moment the second finds the first one's: a make has one note of a heading. */
    private static Edit first(Thing make, String heading, String text) {
        return new Edit(
                id(make, heading),
                Kind.NOTE,
                0,
                heading,
                text,
                Links.from(make.id()),
                Optional.empty(),
                "",
                Place.HERE);
    }

    private static String id(Thing make, String heading) {
        return UUID.nameUUIDFromBytes((heading + " " + make.id()).getBytes(StandardCharsets.UTF_8))
                .toString();
    }

    private static Optional<Thing> note(Store store, Thing make, String heading) {
        return store.thing(id(make, heading)).filter(n -> n.place() == Place.HERE);
    }
}
