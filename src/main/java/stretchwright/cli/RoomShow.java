package stretchwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.report.Report;
import stretchwright.workroom.Differences;
import stretchwright.workroom.Figures;
import stretchwright.workroom.Kept;
import stretchwright.workroom.Remembered;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.jobs.KeptLays;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One thing: what it says, what became of it over its versions, what was noted about it and what was made from it. */
@Command(name = "show")
final class RoomShow extends Task {
    @Parameters(paramLabel = "NAME", descriptionKey = "name")
    private String name = "";

    @Mixin
    private RoomThing which = new RoomThing();

    /** 0 for the one that stands. */
    @Option(names = "--version-number", paramLabel = "N", defaultValue = "0")
    private long number;

    RoomShow(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        Console console = console();
        Workroom room = named().room();
        Store store = room.store();
        Thing thing = which.need(room, name, Place.HERE);
        List<Version> versions = store.versions(thing.id());
        Kept kept = thing.kind() == Kind.MAKE ? Kept.of(store, thing) : new Kept(List.of());
        Version shown = number == 0
                ? room.standing(thing)
                : store.version(thing.id(), number)
                        .orElseThrow(() -> RoomThing.wrong(
                                "--version-number",
                                Tell.said("room.no-version", Part.count(number)),
                                Tell.said("room.versions", Part.count(versions.size()))));
        if (console.json()) {
            console.print(json(thing, shown, versions, kept, store));
            return Exit.DONE;
        }
        console.tell(Tell.said(
                "room.shown", Part.text(thing.kind().word()), Part.text(thing.name()), Part.count(shown.number())));
        console.tell("");
        shown.text().lines().forEach(console::tell);
        history(thing, versions, kept, console);
        links(Tell.said("room.notes"), notes(thing, store), store, console);
        links(Tell.said("room.made-from"), made(thing, store), store, console);
        return Exit.DONE;
    }

    /** Those that tell somebody something: what was kept stands beside its version, and the page remembers for itself. */
    private static List<Thing> notes(Thing thing, Store store) {
        return store.from(thing.id(), Kind.NOTE).stream()
                .filter(n -> !Kept.isMark(n) && !Remembered.isMemory(n) && !KeptLays.isMark(n))
                .toList();
    }

    private static List<Thing> made(Thing thing, Store store) {
        return thing.kind() == Kind.WEARER
                ? store.ofWearer(thing.id(), Kind.MAKE)
                : store.from(thing.id(), thing.kind() == Kind.MAKE ? Kind.MAKE : Kind.FABRIC);
    }

    /** From each version to the next: of a wearer that is how she grew. */
    private static void history(Thing thing, List<Version> versions, Kept kept, Console console) {
        for (int i = 1; i < versions.size(); i++) {
            Version v = versions.get(i);
            console.tell("");
            Part number = Part.count(v.number());
            Part day = Part.text(RoomList.day(v.at()));
            Said line = v.number() == thing.now()
                    ? Tell.said("room.version-now", number, day)
                    : Tell.said("room.version", number, day);
            OptionalInt as = kept.number(v.number());
            console.tell(as.isPresent() ? Tell.said("room.version-kept", line, Part.count(as.getAsInt())) : line);
            Differences.between(versions.get(i - 1).text(), v.text())
                    .forEach(d -> console.tell("    " + Voice.plain().say(d)));
        }
    }

    private static void links(Said title, List<Thing> all, Store store, Console console) {
        if (all.isEmpty()) {
            return;
        }
        console.tell("");
        console.tell(title);
        for (Thing t : all) {
            Optional<Version> note = t.kind() == Kind.NOTE ? store.now(t) : Optional.empty();
            console.tell("  " + RoomList.day(t.changed()) + "  " + t.name()
                    + note.map(v -> ": " + v.text()).orElse(""));
        }
    }

    private static String json(Thing thing, Version shown, List<Version> versions, Kept kept, Store store) {
        ObjectNode out = Report.node();
        out.put("kind", thing.kind().word()).put("name", thing.name()).put("id", thing.id());
        out.put("version", shown.number()).put("stands", thing.now()).put("text", shown.text());
        shown.figures().ifPresent(f -> out.set("figures", Figures.node(f)));
        ArrayNode all = out.putArray("versions");
        versions.forEach(v -> {
            ObjectNode one = all.addObject()
                    .put("number", v.number())
                    .put("name", v.name())
                    .put("at", java.time.Instant.ofEpochMilli(v.at()).toString());
            kept.number(v.number()).ifPresent(as -> one.put("kept", as));
        });
        ArrayNode notes = out.putArray("notes");
        notes(thing, store)
                .forEach(t -> notes.addObject()
                        .put("heading", t.name())
                        .put("text", store.now(t).map(Version::text).orElse("")));
        return Report.text(out);
    }
}
