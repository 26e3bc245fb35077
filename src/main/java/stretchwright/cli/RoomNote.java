package stretchwright.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Part;
import stretchwright.workroom.Cutting;
import stretchwright.workroom.Kept;
import stretchwright.workroom.Remembered;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** Something noted about a thing: after wearing, that its wearer agreed, what else should not be forgotten. */
@Command(name = "note")
final class RoomNote extends Task {
    @Parameters(paramLabel = "NAME", index = "0", descriptionKey = "name")
    private String name = "";

    @Parameters(paramLabel = "TEXT", index = "1..*", arity = "1..*", descriptionKey = "text")
    private List<String> text = List.of();

    @Option(names = "--heading", paramLabel = "WORD", defaultValue = "note")
    private String heading = "";

    @Mixin
    private RoomThing which = new RoomThing();

    RoomNote(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        if (heading.strip().equals(Cutting.CUT)) {
            throw RoomThing.wrong("--heading", Tell.said("room.note-cut"), Tell.said("room.note-cut-help"));
        }
        if (heading.strip().equals(Kept.KEPT)) {
            throw RoomThing.wrong("--heading", Tell.said("room.note-kept"), Tell.said("room.note-kept-help"));
        }
        if (Remembered.isHeading(heading)) {
            throw RoomThing.wrong("--heading", Tell.said("room.note-memory"), Tell.said("room.note-memory-help"));
        }
        Workroom room = named().room();
        Thing about = which.need(room, name, Place.HERE);
        room.note(about, heading, String.join(" ", text));
        console().tell(Tell.said("room.noted", Part.text(about.name())));
        return Exit.DONE;
    }
}
