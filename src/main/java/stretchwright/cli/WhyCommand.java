package stretchwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.make.Why;

/** Why a dimension of the pattern is what it is; without a dimension, which there are. */
@Command(name = "why")
final class WhyCommand extends Task {
    @Parameters(paramLabel = "MAKE", index = "0", descriptionKey = "make")
    private String file = "";

    @Parameters(paramLabel = "DIMENSION", index = "1..*", arity = "0..*", descriptionKey = "dimension")
    private List<String> asked = List.of();

    private final Jobs jobs;

    WhyCommand(Desk desk, Jobs jobs) {
        super(desk);
        this.jobs = jobs;
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        Findings findings = new Findings(file);
        Optional<byte[]> bytes = named().read(file, MakeFile.LARGEST, findings);
        if (bytes.isEmpty()) {
            console.findings(findings.all());
            return Exit.INPUT;
        }
        Why why = Why.of(jobs.read(file, bytes.get()));
        if (console.json()) {
            String json = why.json(String.join(" ", asked), findings);
            console.findings(findings.all());
            console.print(findings.isEmpty() ? json : "");
            return findings.isEmpty() ? Exit.DONE : Exit.INPUT;
        }
        List<String> lines = asked.isEmpty() ? why.dimensions() : why.chain(String.join(" ", asked), findings);
        if (!findings.isEmpty()) {
            console.findings(findings.all());
            return Exit.INPUT;
        }
        console.print(String.join("\n", lines) + "\n");
        return Exit.DONE;
    }
}
