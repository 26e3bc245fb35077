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
@Command(
        name = "survey",
        description =
                "Drafts every body of the tables, checks what must hold of every draft, and counts: drafted, stopped by"
                        + " the fit check, measures at odds, broken. A table has terms as its header, like that of the body"
                        + " command, or the columns of a public survey. Exit code 1 where a draft crashed or broke.")
final class SurveyCommand extends Task {
    @Option(
            names = "--bodies",
            paramLabel = "TABLE.csv",
            arity = "1..*",
            required = true,
            description = "Tables of bodies.")
    private List<String> bodies = new ArrayList<>();

    @Option(
            names = "--style",
            paramLabel = "MAKE",
            arity = "1..*",
            description = "Make files that give fabric, boot and style (the boot grows with the wearer's heel girth)."
                    + " Without: over boot, ankle and short, in cloths of 60/45 %% and 30/20 %%.")
    private List<String> styles = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Where to write survey.json, survey.md and worst.svg: a new folder, an empty one, or one this"
                    + " program wrote (it is replaced).")
    private String out = "";

    SurveyCommand(Commands root) {
        super(root);
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        List<Finding> wrong = new ArrayList<>();
        Findings aboutOut = new Findings(out);
        Optional<OutFolder> folder = folder(out, aboutOut);
        wrong.addAll(aboutOut.all());
        List<SurveyRun.Source> tables = read(bodies, BodyTable.LARGEST, wrong);
        List<SurveyRun.Source> makes = read(styles, MakeFile.LARGEST, wrong);
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

    private static List<SurveyRun.Source> read(List<String> names, int limit, List<Finding> wrong) {
        List<SurveyRun.Source> sources = new ArrayList<>();
        for (String name : names) {
            Findings findings = new Findings(name);
            Intake.read(name, limit, findings).ifPresent(b -> sources.add(new SurveyRun.Source(name, b)));
            wrong.addAll(findings.all());
        }
        return sources;
    }
}
