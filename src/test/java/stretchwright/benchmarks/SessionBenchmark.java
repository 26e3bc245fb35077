package stretchwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
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
import stretchwright.fit.FitReport;
import stretchwright.ground.Document;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.pattern.TopEnd;

/** One style value of a make is changed, another one each time: what the page asks for while somebody types or drags. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 4)
public class SessionBenchmark {
    private Session session = Session.of(example());
    private double band = 60;

    private static MakeFile example() {
        try {
            return Make.read("a.yaml", Files.readAllBytes(Path.of("examples/evening-practice.yaml")));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Setup
    public void warm() {
        session = Session.of(example());
        session.fit();
    }

    private Session changed() {
        band = band < 90 ? band + 0.01 : 60;
        MakeFile make = session.make();
        session = session.with(make.with(make.style().with(TopEnd.band(band))));
        return session;
    }

    /** Draft and verdicts again. */
    @Benchmark
    public FitReport verdicts() {
        return changed().fit();
    }

    /** The same, and the pattern drawn. */
    @Benchmark
    public Optional<Document> verdictsAndDrawing() {
        changed().fit();
        return session.document("pattern.svg");
    }

    /** The same, and the remedies tried. */
    @Benchmark
    public FitReport remedies() {
        return changed().advised();
    }
}
