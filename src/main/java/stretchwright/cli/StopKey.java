package stretchwright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C while something is searched for: the search is asked to stop, and the program ends once what was found so far
 * is written. Before the search has begun it ends at once, and nothing is written. To be closed after writing.
 */
final class StopKey implements AutoCloseable {
    /** The program ends after so many seconds in any case: a search answers within a tenth, drawing a large club takes some. */
    private static final long PATIENCE = 120;

    private final CountDownLatch written = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "stop");
    private volatile boolean begun;
    private volatile boolean asked;

    StopKey() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Whether the search is to stop. That this is asked means that it has begun. */
    boolean asked() {
        begun = true;
        return asked;
    }

    /** The same beside the search: before it has begun there is nothing to stop, as the program ends. */
    boolean pressed() {
        return asked;
    }

    private void stop() {
        asked = true;
        if (!begun) {
            return;
        }
        try {
            written.await(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        written.countDown();
        OutFolder.removeHook(hook);
    }
}
