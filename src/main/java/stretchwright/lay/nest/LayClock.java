package stretchwright.lay.nest;

import java.util.function.BooleanSupplier;

/**
 * The clock outside a search; once true, both stay true. Whether to stop is asked before each part is moved, by both
 * workers.
 */
public interface LayClock {
    /** No clock: the effort alone ends the search. */
    LayClock NONE = of(() -> false, () -> false);

    boolean exploreNoMore();

    boolean stop();

    static LayClock of(BooleanSupplier exploreNoMore, BooleanSupplier stop) {
        return new LayClock() {
            @Override
            public boolean exploreNoMore() {
                return exploreNoMore.getAsBoolean();
            }

            @Override
            public boolean stop() {
                return stop.getAsBoolean();
            }
        };
    }
}
