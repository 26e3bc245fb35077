package stretchwright.lay.nest;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/**
 * The no-fit polygons of all pairs of variants, each worked out when first asked for and then shared by all threads.
 *
 * <p>They can take more memory than a desk has to spare: once they hold {@value #MOST} numbers all are forgotten, and
 * worked out again as they are asked for. What is answered does not depend on it.
 */
public final class NoFits {
    /** 160 MB of numbers. */
    private static final long MOST = 20_000_000;

    private final List<List<long[][]>> parts;
    private final AtomicLong held = new AtomicLong();
    private final int count;
    private final AtomicReferenceArray<@Nullable NoFit> known;

    /** @param parts the convex parts of the variants' outlines, by number */
    public NoFits(List<List<long[][]>> parts) {
        this.parts = List.copyOf(parts);
        this.count = parts.size();
        this.known = new AtomicReferenceArray<>(count * (count + 1) / 2);
    }

    /** Of two variants, the first not after the second: shifts of the first from the second at which they overlap. */
    public NoFit of(int first, int second) {
        int at = second * (second + 1) / 2 + first;
        NoFit there = known.getAcquire(at);
        if (there == null) {
            there = NoFit.of(parts.get(first), parts.get(second));
            if (held.addAndGet(there.size()) > MOST) {
                forget();
                held.addAndGet(there.size());
            }
            known.setRelease(at, there);
        }
        return there;
    }

    private void forget() {
        held.set(0);
        for (int i = 0; i < known.length(); i++) {
            known.setRelease(i, null);
        }
    }
}
