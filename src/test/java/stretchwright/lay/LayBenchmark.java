package stretchwright.lay;

import java.util.ArrayList;
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
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.CrowdSample;
import stretchwright.lay.nest.Layout;
import stretchwright.lay.nest.NoFit;
import stretchwright.lay.nest.StripCheck;
import stretchwright.lay.nest.StripInstance;
import stretchwright.pattern.SamplePattern;

/**
 * What the search for a layout is made of, warm, on 64 invented outlines of 6 to 10 corners: as many as a large
 * published garment instance has; and the floors under the lay of one pair of leggings. Run by {@code benchmarks/run LayBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class LayBenchmark {
    private static final int KINDS = 16;
    private static final int COPIES = 4;
    /** 1470 mm, in units. */
    private static final long CLOTH = 147_000;

    private final CrowdSample sample = new CrowdSample(stars());
    private final List<StripCheck.Placed> placed = sample.placed();
    private final int[] demand = new int[KINDS];
    private final NoFit noFit = sample.bed.noFits.of(0, 2);
    private final List<Cut> leggings = Cut.all(SamplePattern.overBoot().pieces(), Lay.Method.OPEN);

    public LayBenchmark() {
        java.util.Arrays.fill(demand, COPIES);
    }

    private static StripInstance stars() {
        RandomStream random = RandomStream.of(2, "lay benchmark");
        List<StripInstance.Item> items = new ArrayList<>();
        for (int k = 0; k < KINDS; k++) {
            int corners = 6 + random.below(5);
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < corners; i++) {
                double angle = 2 * Math.PI * (i + random.between(0, 0.5)) / corners;
                double radius = random.between(6, 12);
                points.add(new Point(Math.rint(radius * Math.cos(angle)), Math.rint(radius * Math.sin(angle))));
            }
            items.add(new StripInstance.Item("star " + k, COPIES, new Polygon(points)));
        }
        return new StripInstance("stars", 80, List.of(0.0, 180.0), items);
    }

    @Benchmark
    public double noFitDepth() {
        RandomStream random = sample.random;
        return noFit.depth(random.between(-1e6, 1e6), random.between(-1e6, 1e6));
    }

    @Benchmark
    public double place() {
        return sample.place();
    }

    @Benchmark
    public boolean separationPass() {
        return sample.pass();
    }

    @Benchmark
    public int exactCheck() {
        StripCheck.mustHold(placed, demand, sample.width, sample.layout.length());
        return placed.size();
    }

    @Benchmark
    public Layout firstLayout() {
        return sample.first();
    }

    @Benchmark
    public long floorBySections() {
        return Floor.under(leggings, CLOTH, 0);
    }

    @Benchmark
    public long floorByPlaces() {
        return StackFloor.under(leggings, CLOTH, true, 0, 10 * CLOTH, () -> false);
    }
}
