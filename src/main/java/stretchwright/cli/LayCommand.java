package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Progress;
import stretchwright.ground.Voice;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.StripInstance;
import stretchwright.lay.nest.StripLay;
import stretchwright.lay.nest.StripResult;
import stretchwright.make.Made;

/** Lays a plain layout instance for a number of seconds. */
@Command(name = "lay")
final class LayCommand extends Task {
    /** Of a length in units of the instance's own. */
    private static final int DECIMALS = 4;

    @Parameters(paramLabel = "INSTANCE.json", descriptionKey = "instance")
    private String file = "";

    @Option(names = "--seconds", paramLabel = "S", defaultValue = "10")
    private double seconds;

    @Option(names = "--threads", paramLabel = "T", defaultValue = "2")
    private int threads;

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private String out = "";

    LayCommand(Desk desk) {
        super(desk);
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
        Findings aboutArguments = arguments();
        Findings findings = new Findings(file);
        Optional<StripInstance> instance =
                Intake.read(file, StripFile.LARGEST, findings).flatMap(bytes -> StripFile.read(bytes, findings));
        StripHistory history = new StripHistory(console.progress(""), stop);
        Optional<StripResult> result = aboutOut.isEmpty() && aboutArguments.isEmpty() && findings.isEmpty()
                ? instance.flatMap(i -> history.lay(i, findings))
                : Optional.empty();
        if (result.isEmpty()) {
            console.findings(aboutOut.all());
            console.findings(aboutArguments.all());
            console.findings(findings.all());
            return Exit.INPUT;
        }
        write(folder.orElseThrow(), instance.orElseThrow(), result.get(), history, console);
        return Exit.DONE;
    }

    private Findings arguments() {
        Findings findings = new Findings("lay");
        if (!(seconds > 0 && seconds <= SearchOptions.LONGEST)) {
            findings.add(
                    "--seconds",
                    Tell.said("seconds.more", Part.text(Double.toString(seconds))),
                    Tell.said("seconds.give"));
        }
        search.check(findings);
        if (threads != 1 && threads != 2) {
            findings.add("--threads", Tell.said("threads.cannot", Part.count(threads)), Tell.said("threads.give"));
        }
        return findings;
    }

    private void write(
            OutFolder folder, StripInstance instance, StripResult result, StripHistory history, Console console)
            throws IOException {
        String json = StripOutput.json(instance, result, history.lines(), search.seed(), seconds);
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("lay.json", json.getBytes(StandardCharsets.UTF_8));
        files.put("lay.svg", StripOutput.svg(instance, result).getBytes(StandardCharsets.UTF_8));
        folder.write(files);
        console.tell(Tell.said(
                "lay.done",
                Part.text(instance.name()),
                Part.text(Voice.fixed(result.length(), DECIMALS)),
                Part.text(Double.toString(instance.stripHeight())),
                Part.share(result.density(), 2)));
        console.about(Made.COLUMN, Tell.said("label.files"), Part.text(out));
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
            progress.say(Voice.plain()
                    .say(Tell.said(
                            "lay.step",
                            Part.text(Voice.fixed(elapsed(), 1)),
                            Part.text(Voice.fixed(step.length(), DECIMALS)))));
        }

        private double elapsed() {
            return (System.nanoTime() - start) / 1e9;
        }

        List<double[]> lines() {
            return lines;
        }
    }
}
