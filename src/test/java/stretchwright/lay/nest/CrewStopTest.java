package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;

/** A search that is stopped at any moment ends, and with a layout; also where one of its workers fails. Outlines invented. */
@Tag("slow")
class CrewStopTest {
    /** Work of one round: a fraction of a millisecond, so that workers meet all the time. */
    private static final long SHORT = 50_000;
    /** Of the stress test, on one thread and on two together. */
    private static final int STOPS = 10_000;
    /** The latest stop of the stress test, ms. */
    private static final double LATEST = 6;
    /** A search of a few milliseconds that takes so long, in s, hangs: so long even on a machine that is busy with much else. */
    private static final long HANGS = 60;

    private static final CrowdSample SAMPLE = new CrowdSample(new StripInstance(
            "angles",
            40,
            List.of(0.0, 180.0),
            List.of(
                    item(0, 0, 0, 13, 0, 13, 4, 5, 4, 5, 17, 0, 17),
                    item(1, 0, 0, 11, 0, 3, 19),
                    item(2, 0, 0, 7, 2, 9, 8, 2, 10))));

    private static StripInstance.Item item(int id, double... xy) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new Point(xy[i], xy[i + 1]));
        }
        return new StripInstance.Item("part " + id, 3, new Polygon(corners));
    }

    private static Crew.Result search(
            long seed, int threads, Effort effort, LayClock clock, Consumer<Crew.Found> better) {
        CompletableFuture<Crew.Result> result = new CompletableFuture<>();
        Thread thread = new Thread(
                () -> {
                    try {
                        result.complete(
                                Crew.search(SAMPLE.bed, SAMPLE.layout, seed, threads, effort, clock, better, SHORT));
                    } catch (RuntimeException | Error e) {
                        result.completeExceptionally(e);
                    }
                },
                "search under test");
        thread.setDaemon(true);
        thread.start();
        return result.orTimeout(HANGS, TimeUnit.SECONDS).join();
    }

    private static LayClock stop(BooleanSupplier when) {
        return LayClock.of(() -> false, when);
    }

    private static List<List<Long>> places(Layout layout) {
        return layout.spots().stream()
                .map(s -> List.of((long) s.variant(), s.x(), s.y()))
                .toList();
    }

    /** Each ends; and what it found is what the whole rounds it tells find again. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void everyTimedStopIsAnswered(int threads) {
        RandomStream random = RandomStream.of(threads, "timed stops");
        for (int k = 0; k < STOPS / 2; k++) {
            long end = System.nanoTime() + (long) (random.between(0, LATEST) * 1e6);
            Crew.Result result =
                    search(k, threads, Effort.UNLIMITED, stop(() -> System.nanoTime() - end >= 0), f -> {});
            assertThat(result.layout().length()).as("seed %d", k).isLessThanOrEqualTo(SAMPLE.layout.length());
            if (k % 50 == 0) {
                Crew.Result again = search(k, 3 - threads, result.spent(), LayClock.NONE, f -> {});
                assertThat(again.spent()).isEqualTo(result.spent());
                assertThat(places(again.layout())).as("seed %d", k).isEqualTo(places(result.layout()));
            }
        }
    }

    /** Whichever question is the first to be answered by a stop, a worker asks but once or twice more. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void everyQuestionMayBeTheLast(int threads) {
        lastQuestion(threads, 0, 100);
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void everyLaterQuestionMayBeTheLast(int threads) {
        lastQuestion(threads, 100, 500);
    }

    private static void lastQuestion(int threads, int from, int to) {
        for (int last = from; last < to; last++) {
            int first = last;
            AtomicInteger asked = new AtomicInteger();
            search(1, threads, Effort.UNLIMITED, stop(() -> asked.incrementAndGet() > first), f -> {});
            assertThat(asked.get() - last).isBetween(1, 4);
        }
    }

    /** A clock that fails, for whichever worker asks, ends the search as a fault of the program. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void aWorkerThatFailsIsNotWaitedFor(int threads) {
        for (int last = 1; last < 300; last++) {
            int failing = last;
            AtomicInteger asked = new AtomicInteger();
            LayClock clock = stop(() -> {
                if (asked.getAndIncrement() == failing) {
                    throw new IllegalStateException("out of order");
                }
                return false;
            });
            assertThatThrownBy(() -> search(1, threads, Effort.UNLIMITED, clock, f -> {}))
                    .isInstanceOf(CompletionException.class)
                    .hasRootCauseMessage("out of order");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void aFaultBetweenRoundsEndsTheSearch(int threads) {
        assertThatThrownBy(() -> search(1, threads, Effort.UNLIMITED, LayClock.NONE, f -> {
                    throw new IllegalStateException("not told");
                }))
                .isInstanceOf(CompletionException.class)
                .hasRootCauseMessage("not told");
    }
}
