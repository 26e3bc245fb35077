package stretchwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.many.BodyCheck;
import stretchwright.many.BodyTable;

/** Judges measures before anything is drafted: one wearer, or a table of many; or tells how to measure. */
@Command(
        name = "body",
        description = "Shows each measure beside what the others let expect, estimates the missing ones and draws the"
                + " body to scale. FILE is a make file (only unit and wearer are looked at) or a table (.csv) with a"
                + " header row of terms and one body a row.")
final class BodyCommand extends Task {
    @Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description = "Make file (YAML or JSON), or a table ending in .csv.")
    private String file = "";

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where to write body.svg and body.json, or bodies.csv: a new folder, an empty one, or one"
                    + " this program wrote (it is replaced). A table needs it, or --json.")
    private @Nullable String out;

    @Option(names = "--unit", paramLabel = "U", description = "Of a table's bare numbers: mm, cm or in.")
    private @Nullable String unit;

    @Option(names = "--guide", description = "Tell how to take every measure, and stop.")
    private boolean guide;

    BodyCommand(Commands root) {
        super(root);
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        if (guide) {
            console.print(BodyCheck.guide());
            return Exit.DONE;
        }
        boolean table = file.toLowerCase(Locale.ROOT).endsWith(".csv");
        if (file.isEmpty() || table && out == null && !console.json()) {
            throw new CommandLine.ParameterException(
                    line(),
                    file.isEmpty() ? "Missing required parameter: 'FILE'" : "A table needs --out=DIR or --json");
        }
        List<Finding> wrong = new ArrayList<>();
        Findings aboutOut = new Findings(String.valueOf(out));
        Optional<OutFolder> folder = out == null ? Optional.empty() : folder(out, aboutOut);
        Findings aboutFile = new Findings(file);
        Optional<byte[]> bytes = Intake.read(file, table ? BodyTable.LARGEST : MakeFile.LARGEST, aboutFile);
        wrong.addAll(aboutOut.all());
        wrong.addAll(aboutFile.all());
        try {
            if (wrong.isEmpty()) {
                return table ? many(bytes.orElseThrow(), folder, console) : one(bytes.orElseThrow(), folder, console);
            }
        } catch (BadInput e) {
            wrong.addAll(e.findings());
        }
        console.findings(wrong);
        return Exit.INPUT;
    }

    private int one(byte[] bytes, Optional<OutFolder> folder, Console console) throws IOException {
        BodyCheck check = BodyCheck.of(file, bytes);
        if (check.findings().isEmpty() && folder.isPresent()) {
            folder.get().write(files(check.documents()));
        }
        check.table().forEach(console::tell);
        if (console.json()) {
            console.print(check.json());
        }
        console.findings(check.findings());
        return check.findings().isEmpty() ? Exit.DONE : Exit.INPUT;
    }

    /** Good rows are written though others are broken: with many bodies one slip shall not hold up the rest. */
    private int many(byte[] bytes, Optional<OutFolder> folder, Console console) throws IOException {
        BodyTable table = BodyTable.of(file, bytes, Optional.ofNullable(unit));
        if (!table.good().isEmpty() && folder.isPresent()) {
            folder.get().write(files(List.of(table.document())));
        }
        if (console.json()) {
            console.print(table.json());
        }
        console.findings(table.findings());
        console.tell(
                table.good().size() + " bodies written, " + table.findings().size() + " findings");
        return table.findings().isEmpty() ? Exit.DONE : Exit.INPUT;
    }

    private static SortedMap<String, byte[]> files(List<Document> documents) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        documents.forEach(d -> files.put(d.name(), d.bytes()));
        return files;
    }
}
