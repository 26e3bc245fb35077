package stretchwright.lay;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/** The no-fit polygons of all pairs of variants, each worked out when first asked for and then shared by all threads. */
final class NoFits {
    private final List<List<long[][]>> parts;
    private final int count;
    private final AtomicReferenceArray<@Nullable NoFit> known;

    /** @param parts the convex parts of the variants' outlines, by number */
    NoFits(List<List<long[][]>> parts) {
        this.parts = List.copyOf(parts);
        this.count = parts.size();
        this.known = new AtomicReferenceArray<>(count * (count + 1) / 2);
    }

    /** Of two variants, the first not after the second: shifts of the first from the second at which they overlap. */
    NoFit of(int first, int second) {
        int at = second * (second + 1) / 2 + first;
        NoFit there = known.getPlain(at);
        if (there == null) {
            there = NoFit.of(parts.get(first), parts.get(second));
            known.setRelease(at, there);
        }
        return there;
    }
}
