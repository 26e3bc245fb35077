package stretchwright.lay.nest;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * Work beside the caller, who goes on as soon as the clock says stop; the work is told, and what it still finishes is
 * dropped. So a stop is answered at once even where a step of the work takes seconds.
 */
public final class Aside {
    private static final int LOOK_EVERY_MS = 10;

    private volatile boolean dropped;

    private Aside() {}

    /**
     * The work's result; empty where there is none, or where the clock came first.
     *
     * @param work given what to ask, between its steps, whether to give up; must end by itself
     */
    public static <T> Optional<T> of(LayClock clock, Function<BooleanSupplier, Optional<T>> work) {
        Aside aside = new Aside();
        CompletableFuture<Optional<T>> result = new CompletableFuture<>();
        Thread thread = new Thread(() -> aside.run(work, result), "lay aside");
        thread.setDaemon(true);
        thread.start();
        boolean interrupted = false;
        try {
            while (!clock.stop()) {
                try {
                    return result.get(LOOK_EVERY_MS, TimeUnit.MILLISECONDS);
                } catch (TimeoutException e) {
                    continue;
                } catch (InterruptedException e) {
                    interrupted = true;
                } catch (ExecutionException e) {
                    throw new IllegalStateException("the outlines could not be made ready", e.getCause());
                }
            }
            return Optional.empty();
        } finally {
            aside.dropped = true;
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private <T> void run(Function<BooleanSupplier, Optional<T>> work, CompletableFuture<Optional<T>> result) {
        try {
            result.complete(work.apply(() -> dropped));
        } catch (RuntimeException | Error e) {
            result.completeExceptionally(e);
        }
    }
}
