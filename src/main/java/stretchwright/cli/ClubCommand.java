package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClubClock;
import stretchwright.lay.SearchWork;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.make.Made;
import stretchwright.many.Club;

/** Many makes laid together on one roll. */
@Command(name = "club")
final class ClubCommand extends Task {
    /** Of a table, mm; limits of our own. */
    private static final double SHORTEST_TABLE = 200;

    private static final double LONGEST_TABLE = 100_000;

    @Parameters(paramLabel = "FILE", arity = "1..*", descriptionKey = "file")
    private String[] files = {};

    @Option(names = "--table", paramLabel = "LENGTH")
    private @Nullable String table;

    @Option(names = "--seconds", paramLabel = "S", defaultValue = "10")
    private double seconds;

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private String out = "";

    private final Jobs jobs;

    ClubCommand(Desk desk, Jobs jobs) {
        super(desk);
        this.jobs = jobs;
    }

    @Override
    public Integer call() throws IOException {
        try (StopKey stop = new StopKey()) {
            return laid(stop);
        }
    }

    private int laid(StopKey stop) throws IOException {
        Console console = console();
        Findings aboutOut = new Findings(out);
        Optional<OutFolder> folder = folder(out, aboutOut);
        Findings aboutArguments = new Findings("club");
        OptionalDouble length = arguments(aboutArguments);
        List<Finding> wrong = new ArrayList<>(aboutOut.all());
        wrong.addAll(aboutArguments.all());
        try {
            List<MakeFile> makes = files.length > Club.MOST ? List.of() : read(wrong);
            if (wrong.isEmpty()) {
                ClubClock clock = ClubClock.of((from, to) -> watch(from, to, stop), beside(stop));
                Club.Wish wish = new Club.Wish(length, new SearchWork(search.seed(), effort(), clock));
                return tell(Club.of(makes, wish, console.progress("")), folder.orElseThrow(), console);
            }
        } catch (BadInput e) {
            wrong.addAll(e.findings());
        }
        console.findings(wrong);
        return Exit.INPUT;
    }

    private Effort effort() {
        return search.effort().orElse(seconds == 0 ? Effort.NONE : Effort.UNLIMITED);
    }

    private OptionalDouble arguments(Findings findings) {
        if (files.length > Club.MOST) {
            findings.add(
                    "FILE",
                    Tell.said("files.many", Part.count(files.length)),
                    Tell.said("files.most", Part.count(Club.MOST)));
        }
        if (!(seconds >= 0 && seconds <= SearchOptions.LONGEST)) {
            findings.add(
                    "--seconds",
                    Tell.said("seconds.more", Part.text(Double.toString(seconds))),
                    Tell.said("seconds.give-none"));
        }
        search.check(findings);
        return table == null ? OptionalDouble.empty() : table(table, findings);
    }

    static OptionalDouble table(String words, Findings findings) {
        OptionalDouble mm = Quantities.length(words, Unit.MM);
        Said example = Tell.said("table.write");
        if (mm.isEmpty()) {
            findings.add("--table", Tell.said("table.is-not", Tell.quoted(words)), example);
        } else if (Quantities.number(words).isPresent()) {
            findings.add("--table", Tell.said("table.no-unit", Tell.quoted(words)), example);
        } else if (!(mm.getAsDouble() >= SHORTEST_TABLE && mm.getAsDouble() <= LONGEST_TABLE)) {
            findings.add("--table", Tell.said("table.none", Tell.quoted(words)), Tell.said("table.allowed"));
        } else {
            return mm;
        }
        return OptionalDouble.empty();
    }

    /** One make for each file named; a file named again is not read again. */
    private List<MakeFile> read(List<Finding> wrong) {
        Map<String, Optional<MakeFile>> read = new LinkedHashMap<>();
        List<MakeFile> makes = new ArrayList<>();
        for (String file : files) {
            read.computeIfAbsent(file, f -> named().make(f, jobs, wrong)).ifPresent(makes::add);
        }
        return makes;
    }

    private int tell(Club club, OutFolder folder, Console console) throws IOException {
        List<Document> documents = club.documents();
        folder.write(documents);
        club.stopLines().forEach(console::warn);
        club.summary().forEach(console::tell);
        console.about(Made.COLUMN, Tell.said("label.files"), Part.text(out));
        if (console.json()) {
            console.print(new String(documents.get(0).bytes(), StandardCharsets.UTF_8));
        }
        return club.stops() ? Exit.CANNOT_WORK : Exit.DONE;
    }

    private static LayClock beside(StopKey stop) {
        return LayClock.of(stop::pressed, stop::pressed);
    }

    /** A part of the seconds, running from when it is first asked: the first lays take what they take. */
    private LayClock watch(double from, double to, StopKey stop) {
        double part = seconds * (to - from);
        AtomicLong start = new AtomicLong(-1);
        DoubleSupplier elapsed = () -> {
            start.compareAndSet(-1, System.nanoTime());
            return (System.nanoTime() - start.get()) / 1e9;
        };
        return search.clock(elapsed, part, stop);
    }
}
