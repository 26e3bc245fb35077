package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.ground.Progress;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.StripInstance;
import stretchwright.lay.nest.StripLay;
import stretchwright.lay.nest.StripResult;

/** Lays a plain layout instance for a number of seconds. */
@Command(name = "lay", description = "Lays a plain layout instance on its strip and writes lay.json and lay.svg.")
final class LayCommand extends Task {
    @Parameters(paramLabel = "INSTANCE.json", description = "Layout instance, format strip-instance/1.")
    private String file = "";

    @Option(
            names = "--seconds",
            paramLabel = "S",
            defaultValue = "10",
            description = "How long to look for a shorter layout (default: ${DEFAULT-VALUE}).")
    private double seconds;

    @Option(
            names = "--threads",
            paramLabel = "T",
            defaultValue = "2",
            description = "1 or 2 threads; the layout is the same, only sooner (default: ${DEFAULT-VALUE}).")
    private int threads;

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Where to write: a new folder, an empty one, or one this program wrote (it is replaced).")
    private String out = "";

    LayCommand(Commands root) {
        super(root);
    }

    @Override
    public Integer call() throws IOException {
        try (StopKey stop = new StopKey()) {
            return laid(stop);
        }
    }

    private int laid(StopKey stop) throws IOException {
        Console console = console();
        Findings aboutArguments = new Findings(out);
        Optional<OutFolder> folder = folder(out, aboutArguments);
        if (!(seconds > 0 && seconds <= SearchOptions.LONGEST)) {
            aboutArguments.add("--seconds", seconds + " seconds cannot be.", "Give more than 0, at most 86400.");
        }
        search.check(aboutArguments);
        if (threads != 1 && threads != 2) {
            aboutArguments.add("--threads", threads + " threads cannot be.", "Give 1 or 2.");
        }
        Findings findings = new Findings(file);
        Optional<StripInstance> instance =
                Intake.read(file, StripFile.LARGEST, findings).flatMap(bytes -> StripFile.read(bytes, findings));
        StripHistory history = new StripHistory(console.progress(""), stop);
        Optional<StripResult> result = aboutArguments.isEmpty() && findings.isEmpty()
                ? instance.flatMap(i -> history.lay(i, findings))
                : Optional.empty();
        if (result.isEmpty()) {
            console.findings(aboutArguments.all());
            console.findings(findings.all());
            return Exit.INPUT;
        }
        write(folder.orElseThrow(), instance.orElseThrow(), result.get(), history, console);
        return Exit.DONE;
    }

    private void write(
            OutFolder folder, StripInstance instance, StripResult result, StripHistory history, Console console)
            throws IOException {
        String json = StripOutput.json(instance, result, history.lines(), search.seed(), seconds);
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("lay.json", json.getBytes(StandardCharsets.UTF_8));
        files.put("lay.svg", StripOutput.svg(instance, result).getBytes(StandardCharsets.UTF_8));
        folder.write(files);
        console.tell(String.format(
                Locale.ROOT,
                "%s: length %.4f on a strip of %s, density %.2f %%",
                instance.name(),
                result.length(),
                instance.stripHeight(),
                result.density() * 100));
        console.tell("  files          " + out);
        if (console.json()) {
            console.print(json);
        }
    }

    /** The clock of one run: stops the search, and notes when each better layout was found. */
    private final class StripHistory {
        private final Progress progress;
        private final StopKey stop;
        private final List<double[]> lines = new ArrayList<>();
        private final long start = System.nanoTime();

        StripHistory(Progress progress, StopKey stop) {
            this.progress = progress;
            this.stop = stop;
        }

        Optional<StripResult> lay(StripInstance instance, Findings findings) {
            LayClock clock = search.clock(this::elapsed, seconds, stop);
            Effort effort = search.effort().orElse(Effort.UNLIMITED);
            return StripLay.lay(instance, search.seed(), effort, threads, clock, this::note, findings);
        }

        private void note(StripResult.Step step) {
            lines.add(new double[] {elapsed(), step.length()});
            progress.say(String.format(Locale.ROOT, "lay: %.1f s, length %.4f", elapsed(), step.length()));
        }

        private double elapsed() {
            return (System.nanoTime() - start) / 1e9;
        }

        List<double[]> lines() {
            return lines;
        }
    }
}
