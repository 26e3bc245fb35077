package stretchwright.web.frame;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import stretchwright.make.Session;
import stretchwright.workroom.Kept;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.jobs.KeptLays;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Thing;

/** What every screen works with: the workroom, and what its makes became. */
public final class Bench {
    private final Workroom room;
    private final Drafts drafts = new Drafts();

    /** Papers and plans take seconds of a whole core; a drawing that follows a finger does not wait behind them. */
    private final Semaphore heavy =
            new Semaphore(Math.max(1, Runtime.getRuntime().availableProcessors() - 1), true);

    public Bench(Workroom room) {
        this.room = room;
    }

    public Workroom room() {
        return room;
    }

    /** The thing of the address, which is here. */
    public Thing thing(Context ctx, Kind kind) {
        return room.store()
                .thing(ctx.pathParam("id"))
                .filter(t -> t.kind() == kind && t.place() == Place.HERE)
                .orElseThrow(NotFoundResponse::new);
    }

    /** The make of the address, as it stands. */
    public Opened make(Context ctx) {
        if (ctx.pathParam("id").equals(Demo.ID)) {
            return opened(Demo.stored());
        }
        Thing thing = thing(ctx, Kind.MAKE);
        return opened(new Workroom.Stored(thing, room.standing(thing)));
    }

    public Opened opened(Workroom.Stored stored) {
        String id = stored.thing().id();
        boolean demo = id.equals(Demo.ID);
        Session session = drafts.session(
                id, stored.version().name(), stored.version().text(), demo ? Map.of() : KeptLays.of(room.store(), id));
        return new Opened(stored, stored.version().text(), session, demo);
    }

    /** The make as it stood on the screen from which a change came, so that the change is of what was seen. */
    public Opened onScreen(Opened make, String seen) {
        Thing thing = asSeen(make, seen);
        return make.demo() || thing.now() == make.seen()
                ? make
                : room.store()
                        .version(make.id(), thing.now())
                        .map(v -> opened(new Workroom.Stored(make.stored().thing(), v)))
                        .orElse(make);
    }

    /** The make as it would be with this text; nothing is kept. */
    public Opened tried(Opened make, String text) {
        return make.with(text, drafts.tried(make.id(), make.name(), text));
    }

    /**
     * Stores another text for a make and answers with the make, or with both where somebody else was first.
     *
     * @param seen number of the version that was on the screen, as the form says it
     */
    public void save(Context ctx, Opened make, String seen, String what, String text) {
        if (saved(ctx, make, seen, what, text).isPresent()) {
            ctx.redirect(make.address(), HttpStatus.SEE_OTHER);
        }
    }

    /** The same without an answer where it was stored; empty where somebody else was first, and that is answered. */
    public Optional<Thing> saved(Context ctx, Opened make, String seen, String what, String text) {
        Edit edit = Edit.after(asSeen(make, seen), make.name(), text);
        Saved saved = room.store().save(what, List.of(edit)).get(0);
        if (saved instanceof Saved.Stored stored) {
            return Optional.of(stored.thing());
        }
        Clashed.show(
                ctx,
                make,
                (Saved.Clash) saved,
                Kept.of(room.store(), make.stored().thing()).next());
        return Optional.empty();
    }

    private static Thing asSeen(Opened make, String seen) {
        Thing now = make.stored().thing();
        long number = seen.matches("[0-9]{1,12}") ? Long.parseLong(seen) : now.now();
        return new Thing(now.id(), now.kind(), now.name(), number, now.place(), now.links(), now.changed());
    }

    /** For good, with what was made for it; nothing of it stays in memory. */
    public void forget(Thing thing) {
        room.forget(thing);
        drafts.clear();
    }

    /** One after the other of what takes seconds. */
    public <T> T heavy(Supplier<T> work) {
        heavy.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            heavy.release();
        }
    }
}
