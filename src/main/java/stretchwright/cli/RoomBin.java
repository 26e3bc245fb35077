package stretchwright.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Part;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** Into the bin, or out of it. */
@Command(name = "bin")
final class RoomBin extends Task {
    @Parameters(paramLabel = "NAME", descriptionKey = "name")
    private String name = "";

    @Option(names = "--out-again")
    private boolean outAgain;

    @Mixin
    private RoomThing which = new RoomThing();

    RoomBin(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        Workroom room = named().room();
        Thing thing = which.need(room, name, outAgain ? Place.BIN : Place.HERE);
        room.store().move(outAgain ? "unbinned" : "bin", List.of(thing.id()), outAgain ? Place.HERE : Place.BIN);
        console()
                .tell(
                        outAgain
                                ? Tell.said("room.out-again", Part.text(thing.name()))
                                : Tell.said("room.binned", Part.text(thing.name())));
        return Exit.DONE;
    }
}
