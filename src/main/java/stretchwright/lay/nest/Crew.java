package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Phaser;
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
 *
 * <p>The phase changes only where all workers that are left have met, and none ends before it is DONE: so none waits for
 * one that is gone. Who sees the clock stop leaves its round early, for that meeting, and so does the other: there the
 * round is found broken, and the search is over. Who fails breaks its round too, and is waited for no longer.
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
    private final Phaser meeting = new Phaser(WORKERS) {
        @Override
        protected boolean onAdvance(int meetings, int left) {
            endOfRound();
            return phase == Phase.DONE;
        }
    };
    private final List<Squeeze> workers = new ArrayList<>();
    private final long[] next = new long[WORKERS];
    /** Work of one round here. */
    final long round;

    private volatile Crowd.Snapshot best;
    private volatile Phase phase = Phase.EXPLORE;
    /** Whether a worker has left its round before its end. */
    private volatile boolean broken;

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

    private Crew(
            Bed bed,
            Layout start,
            long seed,
            int threads,
            Effort effort,
            LayClock clock,
            Consumer<Found> better,
            long round) {
        this.bed = bed;
        this.effort = effort;
        this.clock = clock;
        this.better = better;
        this.round = round;
        this.permits = new Semaphore(Math.min(WORKERS, threads));
        for (int w = 0; w < WORKERS; w++) {
            workers.add(new Squeeze(bed, start, RandomStream.of(seed, "lay worker " + w), this));
            next[w] = workers.get(w).work() + round;
        }
        this.best = workers.get(0).incumbent();
    }

    /**
     * @param start a valid layout of the bed's parts, in their order
     * @param better told of each shorter layout, on a worker's thread, between rounds
     */
    public static Result search(
            Bed bed, Layout start, long seed, int threads, Effort effort, LayClock clock, Consumer<Found> better) {
        return search(bed, start, seed, threads, effort, clock, better, ROUND);
    }

    /** The same with rounds of another length, which give other layouts. */
    static Result search(
            Bed bed,
            Layout start,
            long seed,
            int threads,
            Effort effort,
            LayClock clock,
            Consumer<Found> better,
            long round) {
        Crew crew = new Crew(bed, start, seed, threads, effort, clock, better, round);
        crew.run();
        return new Result(crew.best.layout(bed), new Effort(crew.explored, crew.rounds - crew.explored));
    }

    private void run() {
        phase = after();
        if (phase == Phase.DONE) {
            return;
        }
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
            broken = true;
        } finally {
            permits.release();
            meeting.arriveAndDeregister();
        }
    }

    boolean over(Phase asked) {
        return phase.compareTo(asked) > 0;
    }

    Crowd.Snapshot best() {
        return best;
    }

    /** Waits for the others where the round is over; true where the worker should give up its attempt. */
    boolean meet(Squeeze worker) {
        int w = workers.indexOf(worker);
        Phase before = phase;
        while (phase != Phase.DONE && isOver(worker.work() >= next[w])) {
            next[w] += round;
            permits.release();
            meeting.arriveAndAwaitAdvance();
            permits.acquireUninterruptibly();
        }
        return phase != before
                || phase == Phase.DONE
                || best.length() <= worker.length()
                        && best.length() < worker.incumbent().length();
    }

    private boolean isOver(boolean worked) {
        if (!worked && clock.stop()) {
            broken = true;
        }
        return worked || broken;
    }

    /** On the thread of the worker that came last, while the others wait. */
    private void endOfRound() {
        try {
            phase = broken ? Phase.DONE : counted();
        } catch (RuntimeException | Error e) {
            fault = e;
            phase = Phase.DONE;
        }
    }

    private Phase counted() {
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
        return after();
    }

    private Phase after() {
        boolean explore = explored < effort.explore() && !clock.exploreNoMore() && phase == Phase.EXPLORE;
        boolean compress = rounds - explored < effort.compress();
        return clock.stop() || best.length() <= bed.enough || !(explore || compress)
                ? Phase.DONE
                : explore ? Phase.EXPLORE : Phase.COMPRESS;
    }
}
