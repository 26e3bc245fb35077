package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.wearing.Wearing;
import stretchwright.wearing.WearingFit;
import stretchwright.wearing.WearingJson;
import stretchwright.wearing.WearingLines;

/** What to change after the garment was worn. */
@Command(
        name = "after",
        description =
                "After wearing: from what the garment does to one bounded change of the next one. Without a symptom it"
                        + " lists those it knows.")
final class AfterCommand extends Task {
    @Parameters(paramLabel = "MAKE", index = "0", description = "Make file (YAML or JSON).")
    private String file = "";

    @Parameters(paramLabel = "SYMPTOM", index = "1..*", arity = "0..*", description = "Such as \"band slides down\".")
    private List<String> said = List.of();

    @Option(names = "--answer", paramLabel = "yes|no", description = "To the question that some symptoms need.")
    private @Nullable String answer;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            description = "Of the try-on, such as 2026-01-31; today if left out.")
    private @Nullable String date;

    @Option(names = "--write", description = "Write the change into the make file, at the end of its history.")
    private boolean write;

    @Option(names = "--out", paramLabel = "FILE", description = "Write the changed make file here; a new file.")
    private @Nullable String out;

    private final Jobs jobs;

    AfterCommand(Commands root, Jobs jobs) {
        super(root);
        this.jobs = jobs;
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        Findings findings = new Findings(file);
        Optional<byte[]> bytes = Intake.read(file, MakeFile.LARGEST, findings);
        if (bytes.isEmpty()) {
            return wrong(console, findings);
        }
        MakeFile make = jobs.read(file, bytes.get());
        String symptom = String.join(" ", said);
        if (symptom.isBlank()) {
            listed(console);
            return Exit.DONE;
        }
        if (!Wearing.knows(symptom, findings) || !answered(symptom, console, findings) || !onePlace(findings)) {
            return wrong(console, findings);
        }
        String day = date == null ? LocalDate.now().toString() : date;
        Voice voice = Voice.of(make.unit());
        Wearing wearing = Wearing.of(make, symptom, answer == null ? "" : answer, day);
        WearingLines.of(wearing, voice).forEach(console::tell);
        if (!wearing.findings().isEmpty()) {
            console.findings(wearing.findings());
            return Exit.INPUT;
        }
        if (!wearing.changesThePattern()) {
            json(console, WearingJson.of(wearing, Optional.empty(), Optional.empty()));
            return Exit.DONE;
        }
        WearingFit fit = WearingFit.of(make, wearing.changed());
        WearingLines.of(fit, voice).forEach(console::tell);
        Optional<String> place = written(wearing, new String(bytes.get(), StandardCharsets.UTF_8), findings, console);
        if (!findings.isEmpty()) {
            return wrong(console, findings);
        }
        json(console, WearingJson.of(wearing, Optional.of(fit), place));
        return fit.stops() ? Exit.CANNOT_WORK : Exit.DONE;
    }

    private static void listed(Console console) {
        json(console, WearingJson.symptoms());
        if (!console.json()) {
            Wearing.symptoms()
                    .forEach(s -> console.print(s + (Wearing.question(s).isPresent() ? "  (asks)" : "") + "\n"));
        }
    }

    private static void json(Console console, String text) {
        if (console.json()) {
            console.print(text);
        }
    }

    private boolean onePlace(Findings findings) {
        if (write && out != null) {
            findings.add("--write", "and --out name two places to write.", "Keep one of them.");
        }
        return findings.isEmpty();
    }

    private static int wrong(Console console, Findings findings) {
        console.findings(findings.all());
        return Exit.INPUT;
    }

    private boolean answered(String symptom, Console console, Findings findings) {
        Optional<Said> question = Wearing.question(symptom);
        if (answer != null && !List.of("yes", "no").contains(answer)) {
            findings.add(
                    "--answer", "\"" + answer + "\" is neither yes nor no.", "Write --answer yes, or --answer no.");
        } else if (question.isPresent() && answer == null) {
            console.tell(Voice.plain().say(question.get()));
            findings.add(
                    "--answer",
                    "is missing: " + Voice.plain().say(question.get()),
                    "Ask again with --answer yes, or --answer no.");
        } else if (question.isEmpty() && answer != null) {
            findings.add("--answer", "answers nothing: this symptom has one cure.", "Leave it out.");
        }
        return findings.isEmpty();
    }

    /** The file that has the change now; nothing is written without --write or --out. */
    private Optional<String> written(Wearing wearing, String text, Findings findings, Console console)
            throws IOException {
        if (!write && out == null) {
            console.tell("  not written: --write puts it into " + file + ", --out FILE into a new file");
            return Optional.empty();
        }
        Optional<String> now = wearing.written(text, findings);
        if (now.isEmpty()) {
            return Optional.empty();
        }
        String name = out == null ? file : out;
        boolean done =
                out == null ? AfterFile.over(name, now.get(), findings) : AfterFile.fresh(name, now.get(), findings);
        if (!done) {
            return Optional.empty();
        }
        console.tell("  written   " + name);
        return Optional.of(name);
    }
}
