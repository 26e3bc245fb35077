package stretchwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.many.BodyTable;
import stretchwright.many.Sizes;

/** The same garment for every body of a table, as one nested pattern. */
@Command(name = "sizes")
final class SizesCommand extends Task {
    @Parameters(paramLabel = "MAKE", descriptionKey = "make")
    private String file = "";

    @Option(names = "--bodies", paramLabel = "TABLE.csv", required = true)
    private String bodies = "";

    @Option(names = "--unit", paramLabel = "U")
    private @Nullable String unit;

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private String out = "";

    private final Jobs jobs;

    SizesCommand(Desk desk, Jobs jobs) {
        super(desk);
        this.jobs = jobs;
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        List<Finding> wrong = new ArrayList<>();
        Findings aboutOut = new Findings(out);
        Optional<OutFolder> folder = folder(out, aboutOut);
        Findings aboutMake = new Findings(file);
        Optional<byte[]> make = named().read(file, MakeFile.LARGEST, aboutMake);
        Findings aboutTable = new Findings(bodies);
        Optional<byte[]> table = Intake.read(bodies, BodyTable.LARGEST, aboutTable);
        Findings aboutUnit = new Findings("sizes");
        BodyTable.checkUnit(Optional.ofNullable(unit), aboutUnit);
        List.of(aboutOut, aboutUnit, aboutMake, aboutTable).forEach(f -> wrong.addAll(f.all()));
        try {
            if (wrong.isEmpty()) {
                MakeFile read = jobs.read(file, make.orElseThrow());
                Sizes sizes = Sizes.of(read, bodies, table.orElseThrow(), Optional.ofNullable(unit));
                return tell(sizes, folder.orElseThrow(), console);
            }
        } catch (BadInput e) {
            wrong.addAll(e.findings());
        }
        console.findings(wrong);
        return Exit.INPUT;
    }

    private static Said nested(int count) {
        return count == 1 ? Tell.said("sizes.size") : Tell.said("sizes.sizes", Part.count(count));
    }

    /** Good rows are done though others are broken. */
    private int tell(Sizes sizes, OutFolder folder, Console console) throws IOException {
        List<Document> documents = sizes.documents();
        if (!documents.isEmpty()) {
            folder.write(documents);
        }
        console.findings(sizes.findings());
        sizes.stopLines().forEach(console::warn);
        console.tell(Tell.said(
                "sizes.counted",
                nested(sizes.count()),
                Tell.findings(sizes.findings().size())));
        sizes.summary().forEach(console::tell);
        if (console.json() && !documents.isEmpty()) {
            console.print(new String(documents.get(0).bytes(), java.nio.charset.StandardCharsets.UTF_8));
        }
        if (!sizes.findings().isEmpty()) {
            return Exit.INPUT;
        }
        return sizes.stops() ? Exit.CANNOT_WORK : Exit.DONE;
    }
}
