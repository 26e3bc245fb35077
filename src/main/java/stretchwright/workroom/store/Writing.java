package stretchwright.workroom.store;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What changes the store, inside one transaction. */
final class Writing {
    private final Handle h;
    private final long at;

    /** A clock that was set back does not bring the order into disorder: time never runs back here. */
    Writing(Handle h, Clock clock) {
        this.h = h;
        this.at = Math.max(
                clock.millis(),
                Math.max(
                        newest("SELECT at FROM step ORDER BY number DESC LIMIT 1"),
                        newest("SELECT max(changed) FROM thing")));
    }

    private long newest(String sql) {
        return h.createQuery(sql).mapTo(long.class).findFirst().orElse(0L);
    }

    List<Saved> save(String what, List<Edit> edits) {
        List<Optional<Thing>> before = edits.stream().map(this::seen).toList();
        boolean clash = IntStream.range(0, edits.size()).anyMatch(i -> clashes(edits.get(i), before.get(i)));
        if (clash) {
            return IntStream.range(0, edits.size())
                    .filter(i -> !isNew(edits.get(i), before.get(i)))
                    .mapToObj(i -> aside(edits.get(i), before.get(i)))
                    .toList();
        }
        return stored(begin(what, edits.get(0).name()), 0, edits, before);
    }

    private List<Saved> stored(long step, int part, List<Edit> edits, List<Optional<Thing>> before) {
        List<Saved> out = new ArrayList<>();
        for (int i = 0; i < edits.size(); i++) {
            out.add(new Saved.Stored(store(step, part + i, edits.get(i), before.get(i))));
        }
        return out;
    }

    /** Where one of the edits clashes nothing is adopted either. */
    List<Saved> adopt(String what, List<Adopted> adopted, List<Edit> edits) {
        List<Optional<Thing>> before = edits.stream().map(this::seen).toList();
        if (adopted.isEmpty() || IntStream.range(0, edits.size()).anyMatch(i -> clashes(edits.get(i), before.get(i)))) {
            return save(what, edits);
        }
        long step = begin(what, adopted.get(0).thing().name());
        for (int i = 0; i < adopted.size(); i++) {
            adopt(step, i, adopted.get(i));
        }
        return stored(step, adopted.size(), edits, before);
    }

    /** One that was here and lies in the bin, or was undone, comes out of there as it is over there. */
    private void adopt(long step, int part, Adopted one) {
        Thing t = one.thing();
        Optional<Thing> known = Rows.thing(h, t.id());
        if (known.isPresent()) {
            mustNotBeHere(known.get());
            store(step, part, one.back(known.get()), known);
            return;
        }
        if (t.kind().named() && t.place() == Place.HERE) {
            mustBeFree(t.kind(), t.name(), t.id());
        }
        Rows.insert(h, t);
        one.versions().forEach(v -> Rows.insert(h, v));
        Rows.insert(h, new Change(step, part, t.id(), 0, t.now(), Place.NOT_YET, t.place()));
    }

    private static void mustNotBeHere(Thing known) {
        if (known.place() == Place.HERE) {
            throw wrong("name.taken", known.name());
        }
    }

    private Optional<Thing> seen(Edit edit) {
        return edit.thing().isEmpty() ? Optional.empty() : Rows.thing(h, edit.thing());
    }

    /** Also where it was put into the bin, or forgotten, meanwhile. */
    private static boolean clashes(Edit edit, Optional<Thing> before) {
        return !isNew(edit, before)
                && before.filter(t -> t.now() == edit.expected() && t.place() == Place.HERE)
                        .isEmpty();
    }

    /** Also where it was here and that was undone. */
    private static boolean isNew(Edit edit, Optional<Thing> before) {
        return edit.thing().isEmpty()
                || (edit.expected() == 0
                        && before.map(t -> t.place() == Place.NOT_YET).orElse(true));
    }

    /** Kept as a version that does not stand; of a thing that is gone there is nothing to keep it beside. */
    private Saved aside(Edit edit, Optional<Thing> before) {
        Thing thing = before.orElseThrow(() -> wrong("thing.gone", edit.name()));
        Version yours = version(thing.id(), edit);
        Rows.insert(h, yours);
        Version theirs = Rows.version(h, thing.id(), thing.now()).orElseThrow(() -> wrong("thing.gone", edit.name()));
        Version base = Rows.version(h, thing.id(), edit.expected()).orElse(theirs);
        return new Saved.Clash(base, theirs, yours);
    }

    private Thing store(long step, int part, Edit edit, Optional<Thing> before) {
        String id = before.map(Thing::id)
                .orElseGet(() -> edit.thing().isEmpty() ? UUID.randomUUID().toString() : edit.thing());
        mustBeFree(edit, id);
        Thing now = new Thing(id, edit.kind(), edit.name(), next(id), edit.to(), edit.links(), at);
        if (before.isEmpty()) {
            Rows.insert(h, now);
        }
        Rows.insert(h, version(id, edit));
        Rows.update(h, now);
        Rows.insert(
                h,
                new Change(
                        step,
                        part,
                        id,
                        before.map(Thing::now).orElse(0L),
                        now.now(),
                        before.map(Thing::place).orElse(Place.NOT_YET),
                        edit.to()));
        return now;
    }

    private Version version(String id, Edit edit) {
        return new Version(id, next(id), edit.name(), edit.text(), edit.links(), edit.figures(), edit.program(), at);
    }

    private long next(String id) {
        return 1
                + h.createQuery("SELECT coalesce(max(number), 0) FROM version WHERE thing = :id")
                        .bind("id", id)
                        .mapTo(long.class)
                        .one();
    }

    private void mustBeFree(Edit edit, String id) {
        if (edit.kind().named()) {
            mustBeFree(edit.kind(), edit.name(), id);
        }
    }

    private void mustBeFree(Kind kind, String name, String id) {
        Listing.named(h, kind, name).filter(t -> !t.id().equals(id)).ifPresent(t -> {
            throw wrong("name.taken", t.name());
        });
    }

    void move(String what, List<Thing> things, Place to) {
        long step = begin(what, things.get(0).name());
        for (int i = 0; i < things.size(); i++) {
            Thing t = things.get(i);
            if (to == Place.HERE && t.kind().named()) {
                mustBeFree(t.kind(), t.name(), t.id());
            }
            put(new Change(step, i, t.id(), t.now(), t.now(), t.place(), to));
            Rows.insert(h, new Change(step, i, t.id(), t.now(), t.now(), t.place(), to));
        }
    }

    Thing stand(String what, Thing seen, long number) {
        Thing t = Rows.thing(h, seen.id())
                .filter(now -> now.place() == Place.HERE)
                .orElseThrow(() -> wrong("thing.gone", seen.name()));
        if (t.now() != seen.now()) {
            throw wrong(t.name(), Tell.said("stand.other", Part.count(t.now())), Tell.said("stand.other-help"));
        }
        Version version = Rows.version(h, t.id(), number)
                .orElseThrow(() ->
                        wrong(t.name(), Tell.said("stand.none", Part.count(number)), Tell.said("stand.none-help")));
        if (number == t.now()) {
            return t;
        }
        if (t.kind().named()) {
            mustBeFree(t.kind(), version.name(), t.id());
        }
        Change change = new Change(begin(what, version.name()), 0, t.id(), t.now(), number, Place.HERE, Place.HERE);
        Rows.insert(h, change);
        return put(change);
    }

    Optional<Step> undo() {
        Optional<Step> last = step("SELECT * FROM step WHERE state = 0 ORDER BY number DESC LIMIT 1");
        last.ifPresent(s -> {
            List<Change> all = Rows.changes(h, s.number());
            for (int i = all.size() - 1; i >= 0; i--) {
                put(all.get(i).back());
            }
            mark(s.number(), Step.State.UNDONE);
        });
        return last;
    }

    Optional<Step> redo() {
        Optional<Step> next = step("SELECT * FROM step WHERE state = 1 ORDER BY number LIMIT 1");
        next.ifPresent(s -> {
            Rows.changes(h, s.number()).forEach(this::put);
            mark(s.number(), Step.State.DONE);
        });
        return next;
    }

    private Optional<Step> step(String sql) {
        return h.createQuery(sql).map((row, context) -> Rows.step(row)).findFirst();
    }

    /** The thing as the change leaves it. */
    private Thing put(Change change) {
        Thing t = Rows.thing(h, change.thing()).orElseThrow();
        Optional<Version> version = Rows.version(h, t.id(), change.now());
        Thing then = new Thing(
                t.id(),
                t.kind(),
                version.map(Version::name).orElse(t.name()),
                change.now(),
                change.nowAt(),
                version.map(Version::links).orElse(t.links()),
                at);
        Rows.update(h, then);
        return then;
    }

    /** What was undone and not done again is left behind. */
    private long begin(String what, String about) {
        h.execute("UPDATE step SET state = 2 WHERE state = 1");
        long number = 1
                + h.createQuery("SELECT coalesce(max(number), 0) FROM step")
                        .mapTo(long.class)
                        .one();
        Rows.insert(h, new Step(number, at, what, about, Step.State.DONE));
        return number;
    }

    private void mark(long step, Step.State state) {
        h.createUpdate("UPDATE step SET state = :state WHERE number = :step")
                .bind("state", state.ordinal())
                .bind("step", step)
                .execute();
    }

    int forget(Collection<String> ids) {
        for (String id : ids) {
            unname(id);
            h.createUpdate("DELETE FROM change WHERE thing = :id")
                    .bind("id", id)
                    .execute();
            h.createUpdate("DELETE FROM version WHERE thing = :id")
                    .bind("id", id)
                    .execute();
            h.createUpdate("DELETE FROM thing WHERE id = :id").bind("id", id).execute();
        }
        h.execute("DELETE FROM step WHERE number NOT IN (SELECT step FROM change)");
        return ids.size();
    }

    /** Steps that are told by its name, and links to it. */
    private void unname(String id) {
        h.createUpdate("UPDATE step SET about = '' WHERE number IN (SELECT step FROM change WHERE thing = :id)")
                .bind("id", id)
                .execute();
        for (String link : List.of("origin", "wearer", "fabric", "boot", "style")) {
            for (String table : List.of("thing", "version")) {
                h.createUpdate("UPDATE " + table + " SET " + link + " = '' WHERE " + link + " = :id")
                        .bind("id", id)
                        .execute();
            }
        }
    }

    private static BadInput wrong(String key, String name) {
        return key.equals("name.taken")
                ? wrong("name", Tell.said("name.taken", Part.text(name)), Tell.said("name.other"))
                : wrong("name", Tell.said("thing.gone", Part.text(name)), Tell.said("thing.gone-help"));
    }

    private static BadInput wrong(String at, Said wrong, Said right) {
        Findings findings = new Findings("workroom");
        findings.add(at, wrong, right);
        return new BadInput(findings.all());
    }
}
