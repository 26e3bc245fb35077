package stretchwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.archive.Archives;

/** The whole workroom as an archive, or one make as a make file. */
@Command(name = "export")
final class RoomExport extends Task {
    @Parameters(paramLabel = "FILE", descriptionKey = "file")
    private String file = "";

    @Option(names = "--make", paramLabel = "NAME")
    private @Nullable String make;

    RoomExport(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        Workroom room = named().room();
        if (make == null) {
            Archives.write(room.store(), Path.of(file));
        } else {
            String text = room.needMake(make).version().text();
            Findings findings = new Findings("export");
            if (!AfterFile.fresh(file, text, "FILE", findings)) {
                console.findings(findings.all());
                return Exit.INPUT;
            }
        }
        console.about(stretchwright.make.Made.COLUMN, Tell.said("label.written"), Part.text(file));
        return Exit.DONE;
    }
}
