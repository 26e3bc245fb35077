package stretchwright.workroom.store;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiFunction;
import org.jdbi.v3.core.Handle;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * Things and what was done with them.
 *
 * <p>In: edits. Out: things and their versions. Promise: each edit is a step that can be undone and done again, in this
 * session or a later one; a version once stored is never changed, and only forgetting takes it away.
 */
public final class Store {
    private final Database database;
    private final Clock clock;

    public Store(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    public Database database() {
        return database;
    }

    /**
     * As one step. Where one of them clashes none stands; then those of things that are here already are given as clashes, each
     * kept beside what stands, and new ones are left with who brought them.
     */
    public List<Saved> save(String what, List<Edit> edits) {
        if (edits.isEmpty()) {
            return List.of();
        }
        mustBeWhat(what);
        edits.forEach(this::mustBeText);
        return database.write(h -> new Writing(h, clock).save(what, edits));
    }

    /** Things of another workroom and edits of those that are here, as one step. */
    public List<Saved> adopt(String what, List<Adopted> adopted, List<Edit> edits) {
        edits.forEach(this::mustBeText);
        return database.write(h -> new Writing(h, clock).adopt(what, adopted, edits));
    }

    /** For a thing that is to be saved together with others that name it. */
    public static String freshId() {
        return UUID.randomUUID().toString();
    }

    /** What the standing version became: found again from its text at any time, so it is no step. */
    public void figures(Thing thing, String figures, String program) {
        database.write(h -> {
            Rows.version(h, thing.id(), thing.now()).ifPresent(v -> Rows.figures(h, v.with(figures, program)));
            return true;
        });
    }

    public Saved save(Edit edit) {
        return save("save", List.of(edit)).get(0);
    }

    /** Into the bin, or out of it again; those that are there already stay, and it is no step where all are. */
    public void move(String what, Collection<String> ids, Place to) {
        mustBeWhat(what);
        database.write(h -> {
            List<Thing> moved = ids.stream()
                    .distinct()
                    .map(id -> need(h, id))
                    .filter(t -> t.place() != to)
                    .toList();
            if (!moved.isEmpty()) {
                new Writing(h, clock).move(what, moved, to);
            }
            return moved;
        });
    }

    /** The step that was undone; empty where there is none. */
    public Optional<Step> undo() {
        return database.write(h -> new Writing(h, clock).undo());
    }

    /** The step that was done again; empty where there is none, or something else was done since. */
    public Optional<Step> redo() {
        return database.write(h -> new Writing(h, clock).redo());
    }

    /** For good, with every version and every note about them; it is no step and cannot be undone. Gives how many things went. */
    public int forget(Collection<String> ids) {
        int gone = database.write(h -> {
            Set<String> all = new LinkedHashSet<>();
            ids.forEach(id -> withNotes(h, need(h, id).id(), all));
            database.owe(h);
            return new Writing(h, clock).forget(all);
        });
        database.sweep();
        return gone;
    }

    private static void withNotes(Handle h, String id, Set<String> all) {
        if (all.add(id)) {
            h.createQuery("SELECT id FROM thing WHERE origin = :id AND kind = 'note'")
                    .bind("id", id)
                    .mapTo(String.class)
                    .list()
                    .forEach(note -> withNotes(h, note, all));
        }
    }

    /**
     * Those of a kind, newest first.
     *
     * @param sought words that must all stand in its name, or in that of its wearer or cloth; empty for all
     */
    public List<Thing> list(Kind kind, Place place, String sought, int from, int most) {
        Names.wrongSought(sought).ifPresent(s -> {
            throw wrong(s, Tell.said("sought.give"));
        });
        return Names.isKeepable(sought, Names.LONGEST)
                ? database.read(h -> Listing.of(h, kind, place, sought, from, most))
                : List.of();
    }

    /** How many there are. */
    public long count(Kind kind, Place place) {
        return database.read(h -> h.createQuery("SELECT count(*) FROM thing WHERE kind = :kind AND place = :place")
                .bind("kind", kind.word())
                .bind("place", place.ordinal())
                .mapTo(long.class)
                .one());
    }

    /** The one of that name that is here; capitals and spaces do not count. */
    public Optional<Thing> named(Kind kind, String name) {
        return Names.wrongName(name).isPresent() ? Optional.empty() : database.read(h -> Listing.named(h, kind, name));
    }

    public Optional<Thing> thing(String id) {
        return isId(id) ? database.read(h -> Rows.thing(h, id)) : Optional.empty();
    }

    /** What stands of it; empty of what is not yet there. */
    public Optional<Version> now(Thing thing) {
        return version(thing.id(), thing.now());
    }

    public Optional<Version> version(String thing, long number) {
        return isId(thing) ? database.read(h -> Rows.version(h, thing, number)) : Optional.empty();
    }

    /** Every one it ever had, oldest first. */
    public List<Version> versions(String thing) {
        return !isId(thing)
                ? List.of()
                : database.read(h -> h.createQuery("SELECT * FROM version WHERE thing = :thing ORDER BY number")
                        .bind("thing", thing)
                        .map((row, context) -> Rows.version(row))
                        .list());
    }

    /** The version from which the standing one was made; empty for the first. */
    public Optional<Version> earlier(Thing thing) {
        return stood(thing, History::earlier);
    }

    /** Of the versions that were made from the standing one that which stood last; empty where there is none. */
    public Optional<Version> later(Thing thing) {
        return stood(thing, History::later);
    }

    private Optional<Version> stood(Thing thing, BiFunction<History, Long, Optional<Long>> which) {
        return database.read(h -> which.apply(History.of(h, thing.id()), thing.now())
                .flatMap(number -> Rows.version(h, thing.id(), number)));
    }

    /** That version of it stands again, as one step; none where it stands already. A finding where another one stands than was seen. */
    public Thing stand(String what, Thing seen, long number) {
        mustBeWhat(what);
        return database.write(h -> new Writing(h, clock).stand(what, seen, number));
    }

    /** The things here that came from it: notes, remnants, later makes; oldest first. */
    public List<Thing> from(String origin, Kind kind) {
        return linked("origin", origin, kind);
    }

    /** The things here that are of this wearer, oldest first. */
    public List<Thing> ofWearer(String wearer, Kind kind) {
        return linked("wearer", wearer, kind);
    }

    /** Everything that is or ever was of this wearer, in the bin too. */
    public List<Thing> everyOfWearer(String wearer) {
        return database.read(h -> Listing.everyOfWearer(h, wearer));
    }

    /** Ids of the boots and styles that things of this wearer use, or ever did. */
    public List<String> used(String wearer) {
        return database.read(h -> Listing.used(h, wearer));
    }

    /** Those of a kind whose name ends so, wherever they are; capitals and spaces do not count. */
    public List<Thing> ending(Kind kind, String name) {
        return database.read(h -> Listing.ending(h, kind, name));
    }

    /** Those in whose name or texts, of whatever version, these letters stand. */
    public List<Thing> saying(String letters, int most) {
        return database.read(h -> Listing.saying(h, letters, most));
    }

    /** Those of a kind and name that were undone: they are here no more, and still known. */
    public List<Thing> undone(Kind kind, String name) {
        return ending(kind, name).stream()
                .filter(t ->
                        t.place() == Place.NOT_YET && Names.folded(t.name()).equals(Names.folded(name)))
                .toList();
    }

    /** Ids of the things that use this boot or style, or ever did. */
    public List<String> users(String id) {
        return database.read(h -> h.createQuery("SELECT DISTINCT thing FROM version WHERE boot = :id OR style = :id")
                .bind("id", id)
                .mapTo(String.class)
                .list());
    }

    private List<Thing> linked(String column, String id, Kind kind) {
        return !isId(id)
                ? List.of()
                : database.read(h -> h.createQuery("SELECT * FROM thing WHERE " + column
                                + " = :id AND kind = :kind AND place = 0 ORDER BY changed, id")
                        .bind("id", id)
                        .bind("kind", kind.word())
                        .map((row, context) -> Rows.thing(row))
                        .list());
    }

    /** Newest first. */
    public List<Step> steps(int most) {
        return database.read(h -> h.createQuery("SELECT * FROM step ORDER BY number DESC LIMIT :most")
                .bind("most", most)
                .map((row, context) -> Rows.step(row))
                .list());
    }

    private Thing need(Handle h, String id) {
        return (isId(id) ? Rows.thing(h, id) : Optional.<Thing>empty())
                .orElseThrow(() -> wrong(Tell.said("thing.none", Part.text(id)), Said.NOTHING));
    }

    private static boolean isId(String id) {
        return Names.isKeepable(id, Names.LONGEST_ID);
    }

    private static void mustBeWhat(String what) {
        if (!Names.isWhat(what)) {
            throw new IllegalArgumentException("no short word for a step: " + what);
        }
    }

    private void mustBeText(Edit edit) {
        Names.wrongIds(edit).ifPresent(s -> {
            throw wrong(s, Said.NOTHING);
        });
        if (!Names.isProgram(edit.program())) {
            throw new IllegalArgumentException("no short name of a program: " + edit.program());
        }
        edit.figures().flatMap(Names::wrongText).ifPresent(s -> {
            throw wrong(s, Tell.said("text.give"));
        });
        Names.wrongName(edit.name()).ifPresent(s -> {
            throw wrong(s, Tell.said("name.give"));
        });
        Names.wrongText(edit.text()).ifPresent(s -> {
            throw wrong(s, Tell.said("text.give"));
        });
    }

    private BadInput wrong(Said wrong, Said right) {
        Findings findings = new Findings(database.at().told());
        findings.add("name", wrong, right);
        return new BadInput(new ArrayList<>(findings.all()));
    }
}
