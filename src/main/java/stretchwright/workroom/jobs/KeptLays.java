package stretchwright.workroom.jobs;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stretchwright.lay.Placed;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/**
 * Lays of a make that a person put or a search found: one note for each of its cloths, so that they go where the make goes,
 * into archives, back and forth in its history, and out of the house with it.
 */
public final class KeptLays {
    private static final String LAY = "lay-";
    private static final String HEADING = LAY + "[1-9][0-9]?";

    private KeptLays() {}

    /** Whether a note is there to keep a lay, and tells people nothing. */
    public static boolean isMark(Thing note) {
        return note.kind() == Kind.NOTE && note.name().matches(HEADING);
    }

    /** By the number of the cloth among the make's lays, from 0; whether they still hold is not known here. */
    public static Map<Integer, Placed> of(Store store, String make) {
        Map<Integer, Placed> out = new TreeMap<>();
        for (Thing note : notes(store, make)) {
            int cloth = Integer.parseInt(note.name().substring(LAY.length())) - 1;
            store.now(note).flatMap(v -> read(v.text())).ifPresent(p -> out.put(cloth, p));
        }
        return out;
    }

    private static List<Thing> notes(Store store, String make) {
        return store.from(make, Kind.NOTE).stream()
                .filter(n -> n.place() == Place.HERE && isMark(n))
                .toList();
    }

    /** Anybody may have written it into an archive; what is no lay counts for none. */
    private static Optional<Placed> read(String text) {
        try {
            return Optional.of(PlacedText.read(text)).filter(p -> !p.spots().isEmpty());
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Instead of the one that was kept before, which stays as an earlier version. */
    public static void keep(Store store, String make, int cloth, Placed placed) {
        String heading = LAY + (cloth + 1);
        String text = PlacedText.text(placed);
        Optional<Thing> note = notes(store, make).stream()
                .filter(n -> n.name().equals(heading))
                .findFirst();
        boolean same =
                note.flatMap(store::now).filter(v -> v.text().equals(text)).isPresent();
        if (!same) {
            store.save(
                    "lay",
                    List.of(note.map(n -> Edit.after(n, heading, text))
                            .orElseGet(() -> Edit.fresh(Kind.NOTE, heading, text, Links.from(make)))));
        }
    }

    /** The usual lay again. */
    public static void drop(Store store, String make, int cloth) {
        notes(store, make).stream()
                .filter(n -> n.name().equals(LAY + (cloth + 1)))
                .forEach(n -> store.move("lay", List.of(n.id()), Place.BIN));
    }
}
