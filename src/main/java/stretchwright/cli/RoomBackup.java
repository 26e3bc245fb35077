package stretchwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Part;
import stretchwright.make.Made;
import stretchwright.report.Report;
import stretchwright.workroom.Site;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.archive.Archives;

/** Everything as it is at this moment, into a file of its own, which is read again before it is called done. */
@Command(name = "backup")
final class RoomBackup extends Task {
    @Parameters(paramLabel = "FILE", arity = "0..1", descriptionKey = "file")
    private @Nullable String file;

    RoomBackup(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws IOException {
        Workroom room = named().room();
        room.store().database().mustBeSound();
        Path to = file == null ? fresh(room) : Path.of(file);
        Archives.write(room.store(), to);
        long things = Archives.checked(to);
        console().about(Made.COLUMN, Tell.said("label.written"), Part.text(to.toString()));
        console().tell(Tell.said("room.backed-up", Part.count(things)));
        if (console().json()) {
            console().print(Report.text(Report.node().put("file", to.toString()).put("things", things)));
        }
        return Exit.DONE;
    }

    /** In the workroom's own folder, or for a server in the usual one. */
    static Path fresh(Workroom room) {
        String name = "workroom-" + LocalDateTime.now().format(DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss"));
        Path folder = Site.backups(room.store().database().at());
        Path to = folder.resolve(name + ".zip");
        for (int i = 2; java.nio.file.Files.exists(to); i++) {
            to = folder.resolve(name + "-" + i + ".zip");
        }
        return to;
    }
}
