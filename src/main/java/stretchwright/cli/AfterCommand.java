package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.wearing.FirstWorn;
import stretchwright.wearing.Wearing;
import stretchwright.wearing.WearingFit;
import stretchwright.wearing.WearingJson;
import stretchwright.wearing.WearingLines;
import stretchwright.workroom.Workroom;

/** What to change after the garment was worn. */
@Command(name = "after")
final class AfterCommand extends Task {
    @Parameters(paramLabel = "MAKE", index = "0", descriptionKey = "make")
    private String file = "";

    @Parameters(paramLabel = "SYMPTOM", index = "1..*", arity = "0..*", descriptionKey = "symptom")
    private List<String> said = List.of();

    @Option(names = "--answer", paramLabel = "yes|no")
    private @Nullable String answer;

    @Option(names = "--date", paramLabel = "DATE")
    private @Nullable String date;

    @Option(names = "--write")
    private boolean write;

    @Option(names = "--out", paramLabel = "FILE")
    private @Nullable String out;

    @Option(names = "--marks", paramLabel = "FILE")
    private @Nullable String marks;

    private final Jobs jobs;

    /** What was read, where it was no file: what follows it must not follow another. */
    private Optional<Workroom.Stored> seen = Optional.empty();

    AfterCommand(Desk desk, Jobs jobs) {
        super(desk);
        this.jobs = jobs;
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        Findings findings = new Findings(file);
        seen = named().make(file);
        Optional<byte[]> bytes = seen.map(s -> s.version().text().getBytes(StandardCharsets.UTF_8))
                .or(() -> named().read(file, MakeFile.LARGEST, findings));
        if (bytes.isEmpty()) {
            return wrong(console, findings);
        }
        MakeFile make = jobs.read(file, bytes.get());
        if (marks != null) {
            return marked(console, bytes.get(), marks);
        }
        String symptom = String.join(" ", said);
        if (symptom.isBlank()) {
            listed(console);
            return Exit.DONE;
        }
        Findings aboutArguments = new Findings("after");
        if (!Wearing.knows(symptom, findings)) {
            return wrong(console, findings);
        }
        if (!answered(symptom, console, aboutArguments) || !onePlace(aboutArguments)) {
            return wrong(console, aboutArguments);
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

    /** What marks on the first pair teach. */
    private int marked(Console console, byte[] bytes, String marksFile) throws IOException {
        Findings findings = new Findings(marksFile);
        if (!onePlace(findings)) {
            return wrong(console, findings);
        }
        Optional<byte[]> marked = named().read(marksFile, MakeFile.LARGEST, findings);
        if (marked.isEmpty()) {
            return wrong(console, findings);
        }
        MakeFile make = Make.read(file, bytes, marksFile, marked.get());
        Optional<FirstWorn> worn = FirstWorn.of(make, findings);
        if (worn.isEmpty()) {
            return wrong(console, findings);
        }
        WearingLines.of(worn.get(), Voice.of(make.unit())).forEach(console::tell);
        Findings about = new Findings(file);
        String text = new String(bytes, StandardCharsets.UTF_8);
        Optional<String> place = placed(() -> worn.get().written(text, about), about, console);
        if (!about.isEmpty()) {
            return wrong(console, about);
        }
        json(console, WearingJson.of(worn.get(), place));
        return Exit.DONE;
    }

    private static void listed(Console console) {
        json(console, WearingJson.symptoms());
        if (!console.json()) {
            Wearing.symptoms()
                    .forEach(s -> console.print((Wearing.question(s).isPresent()
                                    ? Voice.plain().say(Tell.said("after.asks", Part.text(s)))
                                    : s)
                            + "\n"));
        }
    }

    private static void json(Console console, String text) {
        if (console.json()) {
            console.print(text);
        }
    }

    private boolean onePlace(Findings findings) {
        if (write && out != null) {
            findings.add("--write", Tell.said("after.two-places"), Tell.said("after.keep-one"));
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
                    "--answer", Tell.said("after.yes-or-no", Tell.quoted(answer)), Tell.said("after.write-answer"));
        } else if (question.isPresent() && answer == null) {
            console.tell(question.get());
            findings.add("--answer", Tell.said("after.answer-missing", question.get()), Tell.said("after.ask-again"));
        } else if (question.isEmpty() && answer != null) {
            findings.add("--answer", Tell.said("after.answers-nothing"), Tell.said("after.leave-out"));
        }
        return findings.isEmpty();
    }

    /** The file that has the change now; nothing is written without --write or --out. */
    private Optional<String> written(Wearing wearing, String text, Findings findings, Console console)
            throws IOException {
        return placed(() -> wearing.written(text, findings), findings, console);
    }

    private Optional<String> placed(Supplier<Optional<String>> written, Findings findings, Console console)
            throws IOException {
        if (!write && out == null) {
            console.tell("  " + Voice.plain().say(Tell.said("after.not-written", Part.text(file))));
            return Optional.empty();
        }
        Optional<String> now = written.get();
        if (now.isEmpty()) {
            return Optional.empty();
        }
        String name = out == null ? file : out;
        Findings aboutOut = new Findings("after");
        Optional<Workroom.Stored> stored = out == null ? seen : Optional.empty();
        stored.ifPresent(s -> named().room().change("after", s, now.get()));
        boolean done = stored.isPresent()
                || (out == null
                        ? AfterFile.over(name, now.get(), findings)
                        : AfterFile.fresh(name, now.get(), "--out", aboutOut));
        findings.addAll(aboutOut.all());
        if (!done) {
            return Optional.empty();
        }
        console.about(WearingLines.COLUMN, Tell.said("label.written"), Part.text(name));
        return Optional.of(name);
    }
}
