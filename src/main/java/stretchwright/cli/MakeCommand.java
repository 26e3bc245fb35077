package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.PrintKeys;
import stretchwright.make.Made;
import stretchwright.print.kit.FileGroup;
import stretchwright.workroom.Workroom;

/** The whole job for each make file. Either all of them are written, or none. */
@Command(name = "make")
final class MakeCommand extends Task {
    @Parameters(paramLabel = "FILE", arity = "1..*", descriptionKey = "file")
    private String[] files = {};

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private String out = "";

    @Option(names = "--files", paramLabel = "NAMES", split = ",")
    private @Nullable List<String> wanted;

    private final Jobs jobs;

    MakeCommand(Desk desk, Jobs jobs) {
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
        Set<FileGroup> groups = groups(wrong);
        boolean asked = wrong.isEmpty();
        List<MakeFile> makes = read(wrong).stream()
                .map(m -> groups.isEmpty() ? m : m.with(m.print().with(groups)))
                .toList();
        List<Made> made = asked ? run(makes, console, wrong) : List.of();
        if (!wrong.isEmpty()) {
            console.findings(wrong);
            return Exit.INPUT;
        }
        List<String> places = places();
        folder.orElseThrow().write(content(made, places));
        tell(made, places, console);
        made.forEach(m -> keep(m, console));
        return made.stream().anyMatch(Made::stops) ? Exit.CANNOT_WORK : Exit.DONE;
    }

    /** Those of the option; empty where it was left out. */
    private Set<FileGroup> groups(List<Finding> wrong) {
        if (wanted == null) {
            return Set.of();
        }
        Findings findings = new Findings("make");
        Set<FileGroup> groups = PrintKeys.files(wanted, (problem, remedy) -> findings.add("--files", problem, remedy));
        wrong.addAll(findings.all());
        return groups;
    }

    private List<MakeFile> read(List<Finding> wrong) {
        List<MakeFile> makes = new ArrayList<>();
        for (String file : files) {
            named().make(file, jobs, wrong).ifPresent(makes::add);
        }
        return makes;
    }

    /** All that could be read are run, so that what the draft or the lay find wrong is told at once too. */
    private List<Made> run(List<MakeFile> makes, Console console, List<Finding> wrong) {
        List<Outcome> outcomes = SideBySide.all(makes.size(), console.progress("")::say, (i, progress) -> {
            MakeFile make = makes.get(i);
            String label = files.length > 1 ? make.file() + ": " : "";
            return outcome(make, line -> progress.say(label + line));
        });
        outcomes.forEach(o -> wrong.addAll(o.wrong));
        return outcomes.stream().flatMap(o -> o.made.stream()).toList();
    }

    private record Outcome(Optional<Made> made, List<Finding> wrong) {}

    private Outcome outcome(MakeFile make, Progress progress) {
        try {
            return new Outcome(Optional.of(jobs.run(make, progress)), List.of());
        } catch (BadInput e) {
            return new Outcome(Optional.empty(), e.findings());
        }
    }

    /** One folder name per file, unique also where capitals do not count; one empty name for a single file. */
    private List<String> places() {
        if (files.length == 1) {
            return List.of("");
        }
        Set<String> taken = new HashSet<>();
        return Arrays.stream(files)
                .map(file -> {
                    String stem = stem(file);
                    String place = stem;
                    for (int i = 2; !taken.add(place.toLowerCase(Locale.ROOT)); i++) {
                        place = stem + "-" + i;
                    }
                    return place + "/";
                })
                .toList();
    }

    private static String stem(String file) {
        Path name = Path.of(file).getFileName();
        String stem = name == null ? "" : name.toString().replaceFirst("\\.[^.]*$", "");
        return stem.isEmpty() ? "make" : stem;
    }

    private static SortedMap<String, byte[]> content(List<Made> made, List<String> places) {
        SortedMap<String, byte[]> content = new TreeMap<>();
        for (int i = 0; i < made.size(); i++) {
            for (Document document : made.get(i).documents()) {
                content.put(places.get(i) + document.name(), document.bytes());
            }
        }
        return content;
    }

    /**
     * What a make of the workroom became is kept with it; that its files are other ones now is told. What became of a few of its
     * files is not: it would stand in place of what is known of all.
     */
    private void keep(Made made, Console console) {
        try {
            named().make(made.make().file()).filter(Workroom.Stored::stands).ifPresent(stored -> {
                List<String> others = wanted == null
                        ? named().room().keep(stored.thing(), made)
                        : named().room().others(stored.thing(), made);
                if (!others.isEmpty()) {
                    console.warn(Tell.said(
                            "make.others",
                            Tell.words(others),
                            Part.text(stored.version().program())));
                }
            });
        } catch (BadInput e) {
            console.findings(e.findings()); // the files are written all the same
        }
    }

    private void tell(List<Made> made, List<String> places, Console console) {
        for (int i = 0; i < made.size(); i++) {
            String file = made.get(i).make().file();
            for (String v : made.get(i).verdicts(console.quiet())) {
                if (files.length > 1) {
                    console.warn(Tell.said("labelled", Part.text(file), Part.text(v)));
                } else {
                    console.warn(v);
                }
            }
        }
        for (int i = 0; i < made.size(); i++) {
            made.get(i).summary().forEach(console::tell);
            console.about(
                    Made.COLUMN,
                    Tell.said("label.files"),
                    Part.text(Path.of(out, places.get(i)).toString()));
        }
        if (console.json()) {
            List<String> reports = made.stream()
                    .map(m -> new String(m.report().bytes(), StandardCharsets.UTF_8))
                    .toList();
            console.print(files.length == 1 ? reports.get(0) : "[\n" + String.join(",\n", reports) + "]\n");
        }
    }
}
