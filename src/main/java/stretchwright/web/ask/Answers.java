package stretchwright.web.ask;

import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import stretchwright.web.form.Form;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/**
 * What was answered so far: a note in the workroom, so that a window that closes loses nothing.
 *
 * @param note empty before the first answer
 */
record Answers(Optional<Thing> note, Form form) {
    /** How such a note is headed. */
    static final String HEADING = "new make";

    static Answers none() {
        return new Answers(Optional.empty(), Form.empty());
    }

    /** @param id of the note, or nothing */
    static Answers of(Store store, String id) {
        if (id.isEmpty()) {
            return none();
        }
        Thing note = store.thing(id)
                .filter(t -> t.kind() == Kind.NOTE
                        && t.place() == Place.HERE
                        && t.name().equals(HEADING))
                .orElseThrow(NotFoundResponse::new);
        Version now = store.now(note).orElseThrow(NotFoundResponse::new);
        return new Answers(Optional.of(note), Form.of(now.text()));
    }

    String id() {
        return note.map(Thing::id).orElse("");
    }

    /** Stored; where the same note was answered in another window too, both are kept as versions, and this one stands. */
    Answers save(Store store, Form other) {
        Edit edit = note.map(n -> Edit.after(store.thing(n.id()).orElse(n), HEADING, other.makeText()))
                .orElseGet(() -> Edit.fresh(Kind.NOTE, HEADING, other.makeText(), Links.NONE));
        Saved saved = store.save(HEADING, java.util.List.of(edit)).get(0);
        return saved instanceof Saved.Stored stored
                ? new Answers(Optional.of(stored.thing()), other)
                : save(store, other);
    }
}
