package stretchwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.make.Made;
import stretchwright.many.Compare;

/** Two makes side by side. */
@Command(name = "compare")
final class CompareCommand extends Task {
    @Parameters(paramLabel = "A", index = "0", descriptionKey = "a")
    private String first = "";

    @Parameters(paramLabel = "B", index = "1", descriptionKey = "b")
    private String second = "";

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private String out = "";

    private final Jobs jobs;

    CompareCommand(Desk desk, Jobs jobs) {
        super(desk);
        this.jobs = jobs;
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        List<Finding> wrong = new ArrayList<>();
        Findings aboutOut = new Findings(out);
        Optional<OutFolder> folder = folder(out, aboutOut);
        wrong.addAll(aboutOut.all());
        // both are read before either is laid: a fault in the second is told at once
        Optional<MakeFile> readA = named().make(first, jobs, wrong);
        Optional<MakeFile> readB = named().make(second, jobs, wrong);
        if (!wrong.isEmpty()) {
            console.findings(wrong);
            return Exit.INPUT;
        }
        Optional<Made> a = made(readA.orElseThrow(), console, wrong);
        Optional<Made> b = made(readB.orElseThrow(), console, wrong);
        if (!wrong.isEmpty()) {
            console.findings(wrong);
            return Exit.INPUT;
        }
        Compare compare = Compare.of(a.orElseThrow(), b.orElseThrow());
        folder.orElseThrow().write(compare.documents());
        compare.table().forEach(console::tell);
        if (console.json()) {
            console.print(compare.json());
        }
        return compare.stops() ? Exit.CANNOT_WORK : Exit.DONE;
    }

    private Optional<Made> made(MakeFile make, Console console, List<Finding> wrong) {
        try {
            return Optional.of(jobs.run(make, console.progress(make.file())));
        } catch (BadInput e) {
            wrong.addAll(e.findings());
            return Optional.empty();
        }
    }
}
