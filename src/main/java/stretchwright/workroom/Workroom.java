package stretchwright.workroom;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.intake.MakeFile;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.report.Program;
import stretchwright.workroom.jobs.Jobs;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/**
 * The room's entry: what a maker has.
 *
 * <p>In: make files and what is done with them. Out: things by their names, and the next make from an earlier one. Promise:
 * what returned is stored; findings tell what could not be.
 */
public final class Workroom implements AutoCloseable {
    private final Store store;
    private final Clock clock;

    private Workroom(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    public static Workroom open(Address at) {
        return open(at, Clock.system(ZoneId.systemDefault()));
    }

    static Workroom open(Address at, Clock clock) {
        return new Workroom(new Store(Database.open(at), clock), clock);
    }

    public Store store() {
        return store;
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The day of a moment here. */
    LocalDate day(long millis) {
        return Instant.ofEpochMilli(millis).atZone(clock.getZone()).toLocalDate();
    }

    /** A make file on its way in; nothing is stored yet. */
    public Incoming incoming(String file, byte[] bytes) {
        return Incoming.of(store, file, bytes);
    }

    /** The thing of that name; a finding with the nearest others where there is none. */
    public Thing need(Kind kind, String name) {
        return store.named(kind, name).orElseThrow(() -> none(kind, name));
    }

    private BadInput none(Kind kind, String name) {
        Findings findings = new Findings("workroom");
        findings.add(
                kind.word(),
                Tell.said("none.named", Part.text(kind.word()), Tell.quoted(name)),
                Tell.said("none.list", Part.text(kind.word())));
        return new BadInput(findings.all());
    }

    /** A make as it stands, or one of its versions by "NAME@2"; empty where no make is called so. */
    public Optional<Stored> make(String name) {
        Optional<Stored> plain = store.named(Kind.MAKE, name).map(t -> new Stored(t, standing(t)));
        int at = name.lastIndexOf('@');
        if (plain.isPresent() || at < 0 || !name.substring(at + 1).matches("[0-9]{1,9}")) {
            return plain;
        }
        long number = Long.parseLong(name.substring(at + 1));
        return store.named(Kind.MAKE, name.substring(0, at))
                .flatMap(t -> store.version(t.id(), number).map(v -> new Stored(t, v)));
    }

    /** The same; a finding where no make is called so, or has no such version. */
    public Stored needMake(String name) {
        return make(name).orElseThrow(() -> none(Kind.MAKE, name));
    }

    /** A thing with one of its versions. */
    public record Stored(Thing thing, Version version) {
        /** Whether it is the version that stands. */
        public boolean stands() {
            return thing.now() == version.number();
        }

        public MakeFile read() {
            return Make.read(version.name(), version.text().getBytes(StandardCharsets.UTF_8));
        }
    }

    public Version standing(Thing thing) {
        return store.now(thing).orElseThrow(() -> new IllegalStateException("no version of " + thing.id() + " stands"));
    }

    /** What the make became is kept with it. Names of files that came out other than before; none by the same program. */
    public List<String> keep(Thing make, Made made) {
        List<String> others = others(make, made);
        store.figures(make, Figures.of(made), Program.VERSION);
        return others;
    }

    /** The same without keeping it. */
    public List<String> others(Thing make, Made made) {
        return standing(make).figures().map(f -> Figures.others(f, made)).orElse(List.of());
    }

    /** Something noted about a thing. */
    public Thing note(Thing about, String heading, String text) {
        Saved saved = store.save("note", List.of(Edit.fresh(Kind.NOTE, heading, text, Links.from(about.id()))))
                .get(0);
        return ((Saved.Stored) saved).thing();
    }

    /** Another text for a thing that was seen; a finding with both where somebody else was first. */
    public Thing change(String what, Thing seen, String text) {
        List<Saved> saved = store.save(what, List.of(Edit.after(seen, seen.name(), text)));
        Clashes.mustNot(saved);
        return ((Saved.Stored) saved.get(0)).thing();
    }

    /** The same for the version that was seen: it clashes where another stands. */
    public Thing change(String what, Stored seen, String text) {
        Thing t = seen.thing();
        Version v = seen.version();
        return change(what, new Thing(t.id(), t.kind(), v.name(), v.number(), t.place(), v.links(), t.changed()), text);
    }

    /** The thing of a kind that a make's text holds, as a text of its own with the unit behind every length. */
    public String own(Kind kind, String makeText) {
        return Parts.of(Parts.tree(makeText), kind).orElseThrow();
    }

    /** The text of a make with a thing as it stands in place of its own. */
    public String with(Stored make, Thing other) {
        return with(make, other, standing(other).text());
    }

    /**
     * The same with what the thing shall say. What wear taught stays where it is the thing that the make has already, unless it is a
     * cloth that was tested anew.
     */
    public String with(Stored make, Thing other, String text) {
        Links links = make.version().links();
        boolean same = List.of(links.wearer(), links.fabric(), links.boot(), links.style())
                .contains(other.id());
        String kept = Parts.with(make.version().text(), make.version().name(), Map.of(other.kind(), text), true);
        boolean learnt = other.kind() == Kind.FABRIC
                ? same && tested(kept).equals(tested(make.version().text()))
                : same || other.kind() != Kind.WEARER;
        return learnt
                ? kept
                : Parts.with(make.version().text(), make.version().name(), Map.of(other.kind(), text), false);
    }

    private static Fabric.Test tested(String makeText) {
        return Make.read("make", makeText.getBytes(StandardCharsets.UTF_8))
                .cloth()
                .test();
    }

    /** Another text for a thing that was seen, and a make brought up to date with it, as one step; findings as where it is changed alone. */
    public Thing change(String what, Thing seen, String text, Stored make) {
        Thing owner = make.thing();
        Links was = make.version().links();
        Links links = switch (seen.kind()) {
            case WEARER -> new Links(was.origin(), seen.id(), was.fabric(), was.boot(), was.style());
            case FABRIC -> new Links(was.origin(), was.wearer(), seen.id(), was.boot(), was.style());
            case BOOT -> new Links(was.origin(), was.wearer(), was.fabric(), seen.id(), was.style());
            case STYLE -> new Links(was.origin(), was.wearer(), was.fabric(), was.boot(), seen.id());
            case MAKE, NOTE -> throw new IllegalArgumentException("no part of a make: " + seen.kind());
        };
        List<Saved> saved = store.save(
                what,
                List.of(
                        Edit.after(seen, seen.name(), text),
                        Edit.after(owner, owner.name(), with(make, seen, text)).with(links)));
        Clashes.mustNot(saved);
        return ((Saved.Stored) saved.get(0)).thing();
    }

    /**
     * A wearer with everything that was made for her, and what is called by her name, for good; also where it was undone. How many
     * things went.
     */
    public int forget(Thing thing) {
        Set<String> ids = new LinkedHashSet<>(List.of(thing.id()));
        store.undone(thing.kind(), thing.name()).forEach(t -> ids.add(t.id()));
        if (thing.kind() == Kind.WEARER) {
            List<String> wearers = List.copyOf(ids);
            wearers.stream().flatMap(w -> store.everyOfWearer(w).stream()).forEach(t -> ids.add(t.id()));
            wearers.stream()
                    .flatMap(w -> store.used(w).stream())
                    .filter(id -> ids.containsAll(store.users(id)))
                    .forEach(ids::add);
            store.ending(Kind.BOOT, Incoming.bootOf(thing.name())).forEach(t -> ids.add(t.id()));
        }
        Jobs.open(store.database()).forget(ids);
        return store.forget(ids);
    }

    @Override
    public void close() {
        store.database().close();
    }
}
