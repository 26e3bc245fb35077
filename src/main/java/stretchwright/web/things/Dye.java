package stretchwright.web.things;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Version;

/** The colour of a cloth, noted beside it: no paper and no piece depends on it. */
final class Dye {
    /** Where nobody said one. */
    static final String USUAL = "#5b3756";

    private static final String HEADING = "dye";

    private Dye() {}

    /** The one that was noted last, as "#4a2a46". */
    static Optional<String> of(Held cloth) {
        Store store = cloth.bench().room().store();
        return store.from(cloth.thing().id(), Kind.NOTE).stream()
                .filter(n -> n.name().equals(HEADING))
                .flatMap(n -> store.now(n).stream())
                .max(Comparator.comparingLong(Version::at))
                .map(Version::text)
                .filter(Dye::is);
    }

    static boolean is(String typed) {
        return typed.matches("#[0-9a-fA-F]{6}");
    }

    /** Noted; each is a step, so that it can be undone. */
    static void keep(Held cloth, String dye) {
        if (!of(cloth).filter(dye::equalsIgnoreCase).isPresent()) {
            cloth.bench().room().note(cloth.thing(), HEADING, dye.toLowerCase(Locale.ROOT));
        }
    }
}
