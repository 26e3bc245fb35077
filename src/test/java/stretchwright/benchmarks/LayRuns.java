package stretchwright.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import stretchwright.ground.Findings;
import stretchwright.lay.nest.CrowdSample;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.StripInstance;
import stretchwright.lay.nest.StripLay;
import stretchwright.lay.nest.StripResult;

/**
 * Lays instances for some seconds each, one run at a time on two threads, and writes tables of what was reached when.
 * Run by benchmarks/lay; the options stand there.
 */
public final class LayRuns {
    private static final List<Double> MARKS = List.of(1.0, 10.0, 60.0, 600.0);
    private static final List<Integer> GROWTH = List.of(8, 40, 120, 300, 600);
    private static final double EXPLORING = 0.8;
    private static final int THREADS = 2;
    /** Before the first run, s: so that all are run by warm code. */
    private static final double WARM_UP = 5;

    /** One run: when each layout was found, s, and its density; seconds in all and what was asked for. */
    private record Run(List<double[]> steps, double density, double took, double asked, int rounds, double heap) {
        /** The density at a time; 0 before the first layout. */
        double at(double time) {
            return steps.stream()
                    .filter(s -> s[0] <= time)
                    .mapToDouble(s -> s[1])
                    .max()
                    .orElse(0);
        }

        /** From the stop by the clock to the answer, ms; none where it ended before. */
        DoubleStream latency() {
            return took >= asked ? DoubleStream.of(1000 * (took - asked)) : DoubleStream.empty();
        }

        double when(double share) {
            return steps.stream()
                    .filter(s -> s[1] >= share * density)
                    .mapToDouble(s -> s[0])
                    .findFirst()
                    .orElse(took);
        }
    }

    private final Path data;
    private final int seeds;
    private final double seconds;
    private final Path out;
    private final StringBuilder text = new StringBuilder();

    private LayRuns(Map<String, String> options) {
        data = Path.of(options.getOrDefault("--data", "../shared/data/layout"));
        seeds = Integer.parseInt(options.getOrDefault("--seeds", "5"));
        seconds = Double.parseDouble(options.getOrDefault("--seconds", "60"));
        out = Path.of(options.getOrDefault("--out", "out/lay.md"));
    }

    public static void main(String[] args) throws IOException {
        Map<String, String> options = new HashMap<>();
        for (int i = 0; i < args.length; i++) {
            options.put(args[i], args[i].equals("--growth") ? "" : args[++i]);
        }
        LayRuns runs = new LayRuns(options);
        List<String> there = Instances.in(runs.data);
        boolean growth = options.containsKey("--growth");
        List<String> wanted = options.containsKey("--instances")
                ? List.of(options.get("--instances").split(","))
                : growth ? List.of("trousers") : there;
        List<String> found = wanted.stream().filter(there::contains).toList();
        wanted.stream()
                .filter(w -> !there.contains(w))
                .forEach(w -> System.out.println("skipped: no instance " + w + " in " + runs.data));
        if (found.isEmpty()) {
            System.out.println("skipped: nothing to lay in " + runs.data);
            return;
        }
        run(Instances.read(runs.data.resolve(found.get(0) + ".json")), 0, WARM_UP);
        if (growth) {
            runs.growth(found);
        } else {
            runs.table(found);
        }
    }

    private void table(List<String> names) throws IOException {
        Known known = Known.in(data);
        List<Double> marks = MARKS.stream().filter(m -> m < seconds).toList();
        head();
        line("| instance | pieces | "
                + String.join(
                        " | ", marks.stream().map(m -> format("at %.0f s", m)).toList())
                + (marks.isEmpty() ? "" : " | ") + format("at %s s", number(seconds)) + " | least | most | "
                + String.join(" | ", Known.HEADINGS)
                + " | stop to answer, median / worst, ms | rounds | places per s and core | peak heap, MB |");
        line("|---|" + "---|".repeat(1 + marks.size() + 1 + 2 + Known.HEADINGS.size() + 4));
        for (String name : names) {
            StripInstance instance = Instances.read(data.resolve(name + ".json"));
            List<Run> runs = runs(instance);
            StringBuilder row = new StringBuilder(format("| %s | %d", name, Instances.pieces(instance)));
            marks.forEach(m ->
                    row.append(" | ").append(percent(median(runs.stream().mapToDouble(r -> r.at(m))))));
            DoubleStream last = runs.stream().mapToDouble(Run::density);
            row.append(" | ").append(percent(median(last)));
            double[] ends = runs.stream().mapToDouble(Run::density).sorted().toArray();
            row.append(format(" | %s | %s | ", percent(ends[0]), percent(ends[ends.length - 1])));
            row.append(known.cells(name)).append(" | ").append(latency(runs));
            row.append(format(" | %.0f", median(runs.stream().mapToDouble(Run::rounds))));
            row.append(format(" | %.0f", new CrowdSample(instance).placesPerSecond()));
            line(row.append(format(
                            " | %.0f |",
                            runs.stream().mapToDouble(Run::heap).max().orElse(0)))
                    .toString());
        }
    }

    private void growth(List<String> names) throws IOException {
        head();
        line("| instance | pieces | first layout, s | its density | last density | 98 % of it reached after, s |"
                + " stop to answer, median / worst, ms | peak heap, MB |");
        line("|---|---|---|---|---|---|---|---|");
        for (String name : names) {
            StripInstance whole = Instances.read(data.resolve(name + ".json"));
            for (int pieces : GROWTH) {
                List<Run> runs = runs(Instances.of(whole, pieces));
                line(format(
                        "| %s | %d | %.2f | %s | %s | %.2f | %s | %.0f |",
                        name,
                        pieces,
                        median(runs.stream().mapToDouble(r -> r.steps.get(0)[0])),
                        percent(median(runs.stream().mapToDouble(r -> r.steps.get(0)[1]))),
                        percent(median(runs.stream().mapToDouble(Run::density))),
                        median(runs.stream().mapToDouble(r -> r.when(0.98))),
                        latency(runs),
                        runs.stream().mapToDouble(Run::heap).max().orElse(0)));
            }
        }
    }

    private List<Run> runs(StripInstance instance) {
        return LongStream.rangeClosed(1, seeds)
                .mapToObj(seed -> run(instance, seed, seconds))
                .toList();
    }

    private static Run run(StripInstance instance, long seed, double seconds) {
        System.gc();
        heapPools().forEach(MemoryPoolMXBean::resetPeakUsage);
        long start = System.nanoTime();
        List<double[]> steps = new ArrayList<>();
        double ideal = instance.area() / instance.stripHeight();
        StripResult result = StripLay.lay(
                        instance,
                        seed,
                        Effort.UNLIMITED,
                        THREADS,
                        LayClock.of(() -> since(start) >= EXPLORING * seconds, () -> since(start) >= seconds),
                        step -> steps.add(new double[] {since(start), ideal / step.length()}),
                        new Findings(instance.name()))
                .orElseThrow();
        double took = since(start);
        double heap = heapPools().stream()
                .mapToDouble(p -> p.getPeakUsage().getUsed() / 1e6)
                .sum();
        System.err.printf(Locale.ROOT, "%s seed %d: %s %%%n", instance.name(), seed, percent(result.density()));
        int rounds = result.spent().explore() + result.spent().compress();
        return new Run(steps, result.density(), took, seconds, rounds, heap);
    }

    private static List<MemoryPoolMXBean> heapPools() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(p -> p.getType() == MemoryType.HEAP)
                .toList();
    }

    private static String latency(List<Run> runs) {
        double[] all = runs.stream().flatMapToDouble(Run::latency).sorted().toArray();
        return all.length == 0
                ? "ended before"
                : format("%.0f / %.0f", median(DoubleStream.of(all)), all[all.length - 1]);
    }

    private void head() throws IOException {
        line(format(
                "Densities in %%, medians of %d seeds; %s s each, two threads, a warm virtual machine (Java %s, %s;"
                        + " %d cores, load at the start %.1f).",
                seeds,
                number(seconds),
                Runtime.version(),
                String.join(" ", ManagementFactory.getRuntimeMXBean().getInputArguments()),
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage()));
        line("Bars and published densities: best-known.md beside the instances, where their sources stand. The heap is"
                + " counted with what is not yet collected.");
        line("");
    }

    /** Written at once, so that a long series can be read while it goes on. */
    private void line(String line) throws IOException {
        text.append(line).append('\n');
        System.out.println(line);
        Path folder = out.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Files.writeString(out, text);
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static double median(DoubleStream values) {
        double[] sorted = values.sorted().toArray();
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }

    private static String percent(double share) {
        return share == 0 ? "none yet" : format("%.2f", 100 * share);
    }

    private static String number(double value) {
        return value == Math.rint(value) ? format("%.0f", value) : Double.toString(value);
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
