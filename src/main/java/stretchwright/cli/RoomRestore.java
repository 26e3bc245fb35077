package stretchwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Part;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.archive.Archives;

/** The workroom as it was in a backup. What is there now is backed up first. */
@Command(name = "restore")
final class RoomRestore extends Task {
    @Parameters(paramLabel = "FILE", descriptionKey = "file")
    private String file = "";

    @Option(names = "--replace")
    private boolean replace;

    RoomRestore(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        Workroom room = named().madeRoom();
        boolean holds = !room.store().steps(1).isEmpty();
        if (holds && !replace) {
            throw RoomThing.wrong("--replace", Tell.said("restore.holds"), Tell.said("restore.say"));
        }
        if (holds) {
            Path before = RoomBackup.fresh(room);
            Archives.write(room.store(), before);
            console.tell(Tell.said("restore.before", Part.text(before.toString())));
        }
        Archives.read(Path.of(file), room.store());
        console.tell(Tell.said("restore.done", Part.text(file)));
        return Exit.DONE;
    }
}
