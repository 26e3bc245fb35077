package stretchwright.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Part;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** For good: every version, every note, and of a wearer everything that was made for her. */
@Command(name = "forget")
final class RoomForget extends Task {
    @Parameters(paramLabel = "NAME", descriptionKey = "name")
    private String name = "";

    @Option(names = "--yes")
    private boolean yes;

    @Option(names = "--from-bin")
    private boolean fromBin;

    @Mixin
    private RoomThing which = new RoomThing();

    /** More are not told of what still says a name. */
    private static final int MOST = 20;

    RoomForget(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        Console console = console();
        Workroom room = named().room();
        Thing thing = which.need(room, name, fromBin ? List.of(Place.BIN, Place.NOT_YET) : List.of(Place.HERE));
        if (!yes) {
            int makes = thing.kind() == Kind.WEARER
                    ? room.store().everyOfWearer(thing.id()).size()
                    : 0;
            throw RoomThing.wrong(
                    thing.name(),
                    Tell.said("forget.asks", Part.text(thing.kind().word()), Part.count(makes)),
                    Tell.said("forget.say"));
        }
        int gone = room.forget(thing);
        console.tell(Tell.said("forget.done", Part.text(thing.name()), Part.count(gone)));
        if (thing.kind() == Kind.WEARER) {
            room.store()
                    .saying(thing.name(), MOST)
                    .forEach(t -> console.warn(Tell.said(
                            "forget.still",
                            Part.text(t.kind().word()),
                            Tell.quoted(t.name()),
                            Part.text(thing.name()))));
        }
        console.warn(Tell.said("forget.backups"));
        return Exit.DONE;
    }
}
