package stretchwright.ground;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.function.Predicate;

/** Waiting for what happens elsewhere, in tests. */
public final class Waiting {
    private static final long PAUSE_MILLIS = 50;

    private Waiting() {}

    /** Looks again until it is enough or the time is over; what was seen last, for the test to judge. */
    public static <T> T until(Duration most, Callable<T> look, Predicate<T> enough) throws Exception {
        long end = System.nanoTime() + most.toNanos();
        T seen = look.call();
        while (!enough.test(seen) && System.nanoTime() < end) {
            Thread.sleep(PAUSE_MILLIS);
            seen = look.call();
        }
        return seen;
    }
}
