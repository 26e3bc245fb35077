package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.RandomStream;

/**
 * Two workers, each with its own search and its own random numbers, who meet after every round of work and go on from
 * the shorter of their layouts.
 *
 * <p>Rounds are counted in work, never by the clock: the clock can only end the exploring, at the end of a round, or
 * the whole search, at any time: what the broken round found is dropped. The same start, seed and rounds give the same
 * layout on one thread and on two, and on every run.
 */
public final class Crew {
    /** Work of one round: 14 to 56 ms where it was measured, beside other work (docs/maths/lay.md). */
    static final long ROUND = 12_000_000;

    private static final int WORKERS = 2;

    private final Bed bed;
    private final Effort effort;
    private final LayClock clock;
    private final Consumer<Found> better;
    private final Semaphore permits;
    private final CyclicBarrier barrier = new CyclicBarrier(WORKERS, this::endOfRound);
    private final List<Squeeze> workers = new ArrayList<>();
    private final long[] next = new long[WORKERS];
    private volatile Crowd.Snapshot best;
    private volatile Phase phase = Phase.EXPLORE;
    private volatile @Nullable Throwable fault;
    private int rounds;
    private int explored;

    enum Phase {
        EXPLORE,
        COMPRESS,
        DONE
    }

    /** A layout shorter than all before, at the end of the round in which it was found. */
    public record Found(int round, Layout layout) {}

    /** The shortest layout, and the rounds it took: given as effort they yield it again. */
    public record Result(Layout layout, Effort spent) {}

    private Crew(Bed bed, Layout start, long seed, int threads, Effort effort, LayClock clock, Consumer<Found> better) {
        this.bed = bed;
        this.effort = effort;
        this.clock = clock;
        this.better = better;
        this.permits = new Semaphore(Math.min(WORKERS, threads));
        for (int w = 0; w < WORKERS; w++) {
            workers.add(new Squeeze(bed, start, RandomStream.of(seed, "lay worker " + w), this));
            next[w] = workers.get(w).work() + ROUND;
        }
        this.best = workers.get(0).incumbent();
    }

    /**
     * @param start a valid layout of the bed's parts, in their order
     * @param better told of each shorter layout, on a worker's thread, between rounds
     */
    public static Result search(
            Bed bed, Layout start, long seed, int threads, Effort effort, LayClock clock, Consumer<Found> better) {
        Crew crew = new Crew(bed, start, seed, threads, effort, clock, better);
        crew.run();
        return new Result(crew.best.layout(bed), new Effort(crew.explored, crew.rounds - crew.explored));
    }

    private void run() {
        phase = after();
        List<Thread> threads = new ArrayList<>();
        for (Squeeze worker : workers) {
            Thread thread = new Thread(() -> work(worker), "lay worker");
            thread.setDaemon(true);
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            join(thread);
        }
        Throwable thrown = fault;
        if (thrown != null) {
            throw new IllegalStateException("the search for a layout broke off", thrown);
        }
    }

    private static void join(Thread thread) {
        boolean interrupted = false;
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void work(Squeeze worker) {
        permits.acquireUninterruptibly();
        try {
            worker.explore();
            worker.compress();
        } catch (RuntimeException | Error e) {
            fault = e;
            phase = Phase.DONE;
            barrier.reset();
        } finally {
            permits.release();
        }
    }

    boolean over(Phase asked) {
        return phase.compareTo(asked) > 0;
    }

    Crowd.Snapshot best() {
        return best;
    }

    /** Waits for the others where the round's work is done; true where the worker should give up its attempt. */
    boolean meet(Squeeze worker) {
        int w = workers.indexOf(worker);
        Phase before = phase;
        if (clock.stop()) {
            phase = Phase.DONE;
            barrier.reset();
        }
        while (worker.work() >= next[w] && phase != Phase.DONE) {
            next[w] += ROUND;
            await();
        }
        return phase != before
                || phase == Phase.DONE
                || best.length() <= worker.length()
                        && best.length() < worker.incumbent().length();
    }

    private void await() {
        permits.release();
        try {
            barrier.await();
        } catch (BrokenBarrierException e) {
            phase = Phase.DONE;
        } catch (InterruptedException e) {
            fault = e;
            phase = Phase.DONE;
            barrier.reset();
        } finally {
            permits.acquireUninterruptibly();
        }
    }

    private void endOfRound() {
        rounds++;
        explored += phase == Phase.EXPLORE ? 1 : 0;
        Crowd.Snapshot shortest = best;
        for (Squeeze worker : workers) {
            if (worker.incumbent().length() < shortest.length()) {
                shortest = worker.incumbent();
            }
        }
        if (shortest != best) {
            best = shortest;
            better.accept(new Found(rounds, shortest.layout(bed)));
        }
        phase = after();
    }

    private Phase after() {
        boolean explore = explored < effort.explore() && !clock.exploreNoMore() && phase == Phase.EXPLORE;
        boolean compress = rounds - explored < effort.compress();
        return clock.stop() || best.length() <= bed.shortest || !(explore || compress)
                ? Phase.DONE
                : explore ? Phase.EXPLORE : Phase.COMPRESS;
    }
}
