package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

/** What is remembered of orders that begin alike changes neither a layout nor the work that is counted. Outlines invented. */
class BottomLeftTest {
    private static final long WIDTH = 900;

    private static List<Part> parts(RandomStream random) {
        List<Part> parts = new ArrayList<>();
        for (int kind = 0; kind < 4; kind++) {
            List<Part.Variant> turns = new ArrayList<>();
            Shape shape = Outlines.star(random, 7, 200);
            turns.add(Part.Variant.of(0, shape, 0, Beat.FREE));
            turns.add(Part.Variant.of(180, turned(shape), 0, Beat.FREE));
            Part part = new Part(kind, turns, Across.between(0, WIDTH));
            parts.addAll(Collections.nCopies(1 + kind % 2, part));
        }
        return parts;
    }

    private static Shape turned(Shape shape) {
        return Shape.of(
                Arrays.stream(shape.x).map(v -> -v).toArray(),
                Arrays.stream(shape.y).map(v -> -v).toArray());
    }

    /** Held to one turn, as an order that is changed may ask. */
    private static Part held(Part part, RandomStream random) {
        return new Part(part.kind(), List.of(part.variants().get(random.below(2))), part.across());
    }

    private static List<List<Long>> places(@Nullable Layout layout) {
        return layout == null
                ? List.of()
                : layout.spots().stream()
                        .map(s -> List.of((long) s.part().kind(), s.variant() + 0L, s.x(), s.y()))
                        .toList();
    }

    @Test
    void ordersAreLaidAsIfNoneHadBeenLaidBefore() {
        RandomStream random = RandomStream.of(5, "orders that begin alike");
        List<Part> order = parts(random);
        BottomLeft remembering = new BottomLeft(Strip.plain(WIDTH), false);
        for (int k = 0; k < 60; k++) {
            Collections.swap(order, random.below(order.size()), random.below(order.size()));
            List<Part> now = new ArrayList<>(order);
            if (k % 3 == 0) {
                now.set(2, held(now.get(2), random));
            }
            long limit = k % 4 == 0 ? 900 : Long.MAX_VALUE;
            BottomLeft anew = new BottomLeft(Strip.plain(WIDTH), false);
            long before = remembering.work();
            assertThat(places(remembering.lay(now, limit))).isEqualTo(places(anew.lay(now, limit)));
            assertThat(remembering.work() - before).isEqualTo(anew.work());
        }
    }
}
