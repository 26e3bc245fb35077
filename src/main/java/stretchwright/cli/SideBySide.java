package stretchwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import stretchwright.ground.Progress;

/**
 * Jobs that know nothing of each other, as many at a time as there are cores. What they say comes in their order: the first
 * that is not done is heard at once, the others when it is their turn.
 */
final class SideBySide {
    private final List<List<String>> waiting = new ArrayList<>();
    private final boolean[] done;
    private final Consumer<String> told;
    private int turn;

    private SideBySide(int jobs, Consumer<String> told) {
        this.done = new boolean[jobs];
        this.told = told;
        IntStream.range(0, jobs).forEach(i -> waiting.add(new ArrayList<>()));
    }

    /** A job: what it is about and where it says what it does. */
    interface Job<T> {
        T done(int number, Progress progress);
    }

    /** All results in order; what the first failed with, if one did. */
    static <T> List<T> all(int jobs, Consumer<String> told, Job<T> job) {
        SideBySide side = new SideBySide(jobs, told);
        int cores = Runtime.getRuntime().availableProcessors();
        ExecutorService workers = Executors.newFixedThreadPool(Math.max(1, Math.min(jobs, cores)), SideBySide::worker);
        try {
            List<Future<T>> results = IntStream.range(0, jobs)
                    .mapToObj(i -> workers.submit(() -> side.done(i, job)))
                    .toList();
            return results.stream().map(SideBySide::result).toList();
        } finally {
            workers.shutdownNow();
        }
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "make");
        thread.setDaemon(true);
        return thread;
    }

    private static <T> T result(Future<T> result) {
        try {
            return result.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            if (e.getCause() instanceof Error fault) {
                throw fault;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while makes were under way", e);
        }
    }

    private <T> T done(int number, Job<T> job) {
        try {
            return job.done(number, line -> say(number, line));
        } finally {
            end(number);
        }
    }

    private synchronized void say(int number, String line) {
        if (number == turn) {
            told.accept(line);
        } else {
            waiting.get(number).add(line);
        }
    }

    private synchronized void end(int number) {
        done[number] = true;
        while (turn < done.length && done[turn]) {
            turn++;
            if (turn < done.length) {
                waiting.get(turn).forEach(told);
            }
        }
    }
}
