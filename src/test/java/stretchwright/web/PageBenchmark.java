package stretchwright.web;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** One person at the page, over real HTTP: a line that is dragged, one that is let go, the make and the workroom opened. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 3, time = 5)
public class PageBenchmark {
    private Server server = Visitor.started();
    private Visitor visitor = new Visitor(server);
    private String make = "";
    private int moved;

    @Setup
    public void open() throws Exception {
        make = visitor.make();
    }

    @TearDown
    public void close() {
        server.stop();
    }

    private Map<String, List<String>> next() {
        moved = (moved + 7) % 40;
        return Map.of("style.shifts.hem", List.of(moved - 20 + " mm"));
    }

    private static String sound(HttpResponse<String> answer, int status) {
        if (answer.statusCode() != status) {
            throw new IllegalStateException("answered with " + answer.statusCode());
        }
        return answer.body();
    }

    @Benchmark
    public String dragged() throws Exception {
        return sound(visitor.post(make + "/try", next()), 200);
    }

    @Benchmark
    public String letGo() throws Exception {
        sound(visitor.post(make + "/change", next()), 303);
        return sound(visitor.get(make), 200);
    }

    @Benchmark
    public String opened() throws Exception {
        return sound(visitor.get(make), 200);
    }

    @Benchmark
    public String workroom() throws Exception {
        return sound(visitor.get(""), 200);
    }
}
