package stretchwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
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
import stretchwright.many.BodyCheck;
import stretchwright.many.BodyTable;

/** Judges measures before anything is drafted: one wearer, or a table of many; or tells how to measure. */
@Command(name = "body")
final class BodyCommand extends Task {
    @Parameters(paramLabel = "FILE", arity = "0..1", descriptionKey = "file")
    private String file = "";

    @Option(names = "--out", paramLabel = "DIR")
    private @Nullable String out;

    @Option(names = "--unit", paramLabel = "U")
    private @Nullable String unit;

    @Option(names = "--guide")
    private boolean guide;

    BodyCommand(Desk desk) {
        super(desk);
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
            throw new Arguments(
                    line(),
                    file.isEmpty() ? Tell.said("args.missing", Part.text("FILE")) : Tell.said("args.table-out"));
        }
        List<Finding> wrong = new ArrayList<>();
        Findings aboutOut = new Findings(String.valueOf(out));
        Optional<OutFolder> folder = out == null ? Optional.empty() : folder(out, aboutOut);
        Findings aboutFile = new Findings(file);
        Optional<byte[]> bytes = table
                ? Intake.read(file, BodyTable.LARGEST, aboutFile)
                : named().readWearer(file, MakeFile.LARGEST, aboutFile);
        wrong.addAll(aboutOut.all());
        Findings aboutUnit = new Findings("body");
        if (table) {
            BodyTable.checkUnit(Optional.ofNullable(unit), aboutUnit);
        }
        wrong.addAll(aboutUnit.all());
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
        console.tell(Tell.said(
                "body.written",
                written(table.good().size()),
                Tell.findings(table.findings().size())));
        return table.findings().isEmpty() ? Exit.DONE : Exit.INPUT;
    }

    private static Said written(int count) {
        return count == 1 ? Tell.said("body.one") : Tell.said("body.bodies", Part.count(count));
    }

    private static SortedMap<String, byte[]> files(List<Document> documents) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        documents.forEach(d -> files.put(d.name(), d.bytes()));
        return files;
    }
}
