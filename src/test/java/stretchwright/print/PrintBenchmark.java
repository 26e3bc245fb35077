package stretchwright.print;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stretchwright.body.Measuring;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Document;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.lay.Lay;
import stretchwright.lay.Laying;
import stretchwright.make.Make;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.sheets.TiledPdf;

/** A pattern of some 64 sheets, in a heap of 200 MB: the first one of a fresh virtual machine, and warm. */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PrintBenchmark {
    /** Small sheets make many. */
    private static final Paper SHEET =
            Paper.of("160 x 180 mm").flatMap(p -> p.with(15, 12)).orElseThrow();

    private final Job job;

    public PrintBenchmark() {
        Pattern pattern = pattern(Path.of("examples/two-different-legs.yaml"));
        Fabric fabric = SampleFabric.heavyKnit();
        Lay lay = Laying.lay(pattern.pieces(), fabric, Style.LayWay.ANY, new Findings("benchmark"))
                .orElseThrow();
        job = SampleJob.of("A4", "Benchmark", "Rowan", fabric, lay, pattern);
    }

    private static Pattern pattern(Path file) {
        try {
            MakeFile make = Make.read(file.toString(), Files.readAllBytes(file));
            Findings findings = new Findings("benchmark");
            return Draft.of(
                            Measuring.body(make.measured(), findings).orElseThrow(),
                            make.fabric(),
                            make.boot(),
                            make.style(),
                            make.machines(),
                            findings)
                    .orElseThrow();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Setup
    public void say() {
        System.out.println(
                "pages, the map among them: " + TiledPdf.of(job, SHEET).pages());
    }

    @Benchmark
    @BenchmarkMode(Mode.SampleTime)
    @Fork(value = 1, jvmArgs = "-Xmx200m")
    @Warmup(iterations = 2, time = 3)
    @Measurement(iterations = 3, time = 5)
    public Document warm() {
        return TiledPdf.of(job, SHEET);
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Fork(value = 5, jvmArgs = "-Xmx200m")
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public Document second() {
        return TiledPdf.of(job, SHEET);
    }
}
