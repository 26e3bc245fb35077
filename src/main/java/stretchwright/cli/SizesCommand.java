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
import stretchwright.intake.MakeFile;
import stretchwright.many.BodyTable;
import stretchwright.many.Sizes;
import stretchwright.print.kit.Amounts;

/** The same garment for every body of a table, as one nested pattern. */
@Command(
        name = "sizes",
        description =
                "Drafts one make for every body of a table (a team, a size chart) and draws the sizes over each other,"
                        + " point for point. Fabric, boot, style and machines are the make file's; its wearer is left out.")
final class SizesCommand extends Task {
    @Parameters(paramLabel = "MAKE", description = "Make file (YAML or JSON).")
    private String file = "";

    @Option(
            names = "--bodies",
            paramLabel = "TABLE.csv",
            required = true,
            description = "The wearers, one a row, as for the body command; 35 at most.")
    private String bodies = "";

    @Option(names = "--unit", paramLabel = "U", description = "Of the table's bare numbers: mm, cm or in.")
    private @Nullable String unit;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Where to write the nest, sizes.csv and grade.csv: a new folder, an empty one, or one"
                    + " this program wrote (it is replaced).")
    private String out = "";

    private final Jobs jobs;

    SizesCommand(Commands root, Jobs jobs) {
        super(root);
        this.jobs = jobs;
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        List<Finding> wrong = new ArrayList<>();
        Findings aboutOut = new Findings(out);
        Optional<OutFolder> folder = folder(out, aboutOut);
        Findings aboutMake = new Findings(file);
        Optional<byte[]> make = Intake.read(file, MakeFile.LARGEST, aboutMake);
        Findings aboutTable = new Findings(bodies);
        Optional<byte[]> table = Intake.read(bodies, BodyTable.LARGEST, aboutTable);
        List.of(aboutOut, aboutMake, aboutTable).forEach(f -> wrong.addAll(f.all()));
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

    /** Good rows are done though others are broken. */
    private int tell(Sizes sizes, OutFolder folder, Console console) throws IOException {
        List<Document> documents = sizes.documents();
        if (!documents.isEmpty()) {
            folder.write(documents);
        }
        console.findings(sizes.findings());
        sizes.stopLines().forEach(console::warn);
        console.tell(Amounts.counted(sizes.count(), "size") + " in the nest, "
                + Amounts.counted(sizes.findings().size(), "finding"));
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
