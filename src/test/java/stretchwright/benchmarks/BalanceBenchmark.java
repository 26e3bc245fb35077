package stretchwright.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stretchwright.balance.Balance;
import stretchwright.balance.EveningTube;
import stretchwright.balance.Pose;
import stretchwright.balance.Settled;
import stretchwright.balance.Tube;

/** Half a pair of leggings of 34 unknowns settles: standing, and standing, squat and back. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 4)
public class BalanceBenchmark {
    private final Tube tube = EveningTube.standard().tube();
    private final Pose standing = EveningTube.standard().standing();
    private final Pose squat = EveningTube.standard().squat();

    @Benchmark
    public Settled standing() {
        return Balance.settle(tube, standing);
    }

    @Benchmark
    public List<Settled> squatAndBack() {
        return Balance.through(tube, List.of(standing, squat, standing));
    }
}
