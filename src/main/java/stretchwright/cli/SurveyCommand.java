package stretchwright.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.many.BodyTable;
import stretchwright.many.SurveyRun;

/** Drafts every body of some tables and tells for how many the draft holds. */
@Command(name = "survey")
final class SurveyCommand extends Task {
    @Option(names = "--bodies", paramLabel = "TABLE.csv", arity = "1..*", required = true)
    private List<String> bodies = new ArrayList<>();

    @Option(names = "--style", paramLabel = "MAKE", arity = "1..*")
    private List<String> styles = new ArrayList<>();

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private String out = "";

    SurveyCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        List<Finding> wrong = new ArrayList<>();
        Findings aboutOut = new Findings(out);
        Optional<OutFolder> folder = folder(out, aboutOut);
        wrong.addAll(aboutOut.all());
        List<SurveyRun.Source> tables = read(bodies, BodyTable.LARGEST, Intake::read, wrong);
        List<SurveyRun.Source> makes = read(styles, MakeFile.LARGEST, named()::read, wrong);
        if (!wrong.isEmpty()) {
            console.findings(wrong);
            return Exit.INPUT;
        }
        SurveyRun survey;
        try {
            survey = SurveyRun.of(tables, makes, SurveyCommand::computing, console.progress(""));
        } catch (BadInput e) {
            console.findings(e.findings());
            return Exit.INPUT;
        }
        folder.orElseThrow().write(survey.documents());
        survey.summary().forEach(console::tell);
        if (console.json()) {
            console.print(survey.json());
        }
        return survey.hasFaults() ? Exit.FAULT : Exit.DONE;
    }

    /** Time this thread computed, ns: what other programs do meanwhile does not count. The clock where there is no such. */
    private static long computing() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return threads.isCurrentThreadCpuTimeSupported() ? threads.getCurrentThreadCpuTime() : System.nanoTime();
    }

    private interface Reader {
        Optional<byte[]> read(String name, int limit, Findings findings);
    }

    private static List<SurveyRun.Source> read(List<String> names, int limit, Reader reader, List<Finding> wrong) {
        List<SurveyRun.Source> sources = new ArrayList<>();
        for (String name : names) {
            Findings findings = new Findings(name);
            reader.read(name, limit, findings).ifPresent(b -> sources.add(new SurveyRun.Source(name, b)));
            wrong.addAll(findings.all());
        }
        return sources;
    }
}
