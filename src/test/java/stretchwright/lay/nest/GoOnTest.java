package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;

/** A search that goes on from a layout that had gone out: also where outlines were rounded, and where there are many. */
@Tag("slow")
class GoOnTest {
    private static StripInstance instance(int demand) {
        RandomStream random = RandomStream.of(demand, "go on");
        List<StripInstance.Item> items = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                double radius = 8 + 14 * random.nextDouble();
                points.add(new Point(radius * Math.cos(i * Math.PI / 3), radius * Math.sin(i * Math.PI / 3)));
            }
            items.add(new StripInstance.Item("item " + k, demand, new Polygon(points)));
        }
        return new StripInstance("go on", 100, List.of(0.0, 37.5, 180.0), items);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 40, 400})
    void itStaysValidAndGrowsNoLonger(int demand) {
        StripInstance instance = instance(demand);
        Findings findings = new Findings("go on");
        StripResult first = StripLay.lay(instance, 1, new Effort(2, 1), 2, LayClock.NONE, s -> {}, findings)
                .orElseThrow();
        StripResult same = StripLay.goOn(instance, first, 2, Effort.NONE, 2, LayClock.NONE, findings)
                .orElseThrow();
        assertThat(same.length()).isLessThanOrEqualTo(first.length());
        StripResult one = StripLay.goOn(instance, first, 2, new Effort(2, 1), 1, LayClock.NONE, findings)
                .orElseThrow();
        StripResult two = StripLay.goOn(instance, first, 2, new Effort(2, 1), 2, LayClock.NONE, findings)
                .orElseThrow();
        assertThat(one).isEqualTo(two);
        assertThat(one.length()).isLessThanOrEqualTo(first.length());
        assertThat(one.placements()).hasSize(3 * demand);
    }
}
