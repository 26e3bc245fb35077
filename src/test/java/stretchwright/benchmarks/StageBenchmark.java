package stretchwright.benchmarks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measuring;
import stretchwright.body.SampleBody;
import stretchwright.boot.SampleBoot;
import stretchwright.draft.Draft;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.FitCheck;
import stretchwright.fit.FitReport;
import stretchwright.ground.Findings;
import stretchwright.lay.Lay;
import stretchwright.lay.Laying;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;
import stretchwright.sewing.Planning;
import stretchwright.sewing.SewingPlan;

/** One make, stage by stage, warm. Run by benchmarks/run; the numbers go to benchmarks/README.md. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class StageBenchmark {
    private static final Style STYLE = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32));
    private static final Set<Machine> MACHINES = Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH);

    private final Body body = SampleBody.smallAdult();
    private final Pattern pattern = draft();
    private final List<Piece> pieces = pattern.pieces();

    @Benchmark
    public Optional<Body> bodyFromStature() {
        return Measuring.body(
                Figure.WOMAN, OptionalDouble.empty(), Map.of(Measure.STATURE, 1627.0), new Findings("benchmark"));
    }

    @Benchmark
    public Pattern draft() {
        return Draft.of(
                        SampleBody.smallAdult(),
                        SampleFabric.heavyKnit(),
                        Optional.of(SampleBoot.figure()),
                        STYLE,
                        new Findings("benchmark"))
                .orElseThrow();
    }

    @Benchmark
    public FitReport fit() {
        return FitCheck.of(pattern, body, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), STYLE, MACHINES);
    }

    @Benchmark
    public Optional<Lay> lay() {
        return Laying.lay(pieces, SampleFabric.heavyKnit(), Style.LayWay.ANY, new Findings("benchmark"));
    }

    @Benchmark
    public SewingPlan sewing() {
        return Planning.plan(pattern, SampleFabric.heavyKnit(), MACHINES);
    }
}
