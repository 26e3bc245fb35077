package stretchwright.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.intake.MakeFile;
import stretchwright.make.Made;
import stretchwright.make.Session;

/**
 * The makes of the page, in memory only. The name of each is a hash of its make file, so the same make has the same name and
 * is computed once, also for two who ask at the same time. As many are worked at as the machine has cores; the others wait
 * in the order in which they came, and can be told how many are before them.
 */
final class Makes implements AutoCloseable {
    /** Kept of those that are done. */
    static final int MOST = 20;

    /** Who has not asked for so long, and is not begun, has gone. */
    private static final long GONE_NANOS = TimeUnit.SECONDS.toNanos(30);

    private final Map<String, Work> kept = new LinkedHashMap<>(16, 0.75f, true);
    private final ExecutorService workers;
    private final int places;
    private long came;

    Makes() {
        this(Runtime.getRuntime().availableProcessors());
    }

    Makes(int places) {
        this.places = places;
        workers = Executors.newFixedThreadPool(places, work -> {
            Thread thread = new Thread(work, "make");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** One make: what was typed, its text, and what becomes of it. */
    static final class Work {
        private final Form form;
        private final String text;
        private final Session session;
        private final long number;
        private volatile long asked = System.nanoTime();
        private volatile boolean begun;
        private volatile Future<Made> result = new java.util.concurrent.CompletableFuture<>();

        private Work(Form form, String text, Session session, long number) {
            this.form = form;
            this.text = text;
            this.session = session;
            this.number = number;
        }

        Form form() {
            return form;
        }

        String text() {
            return text;
        }

        Session session() {
            return session;
        }

        /** What became of it without its files, within so many milliseconds; empty where it is not done by then. */
        Optional<Made> made(long millis) {
            asked = System.nanoTime();
            try {
                return Optional.of(result.get(millis, TimeUnit.MILLISECONDS));
            } catch (TimeoutException e) {
                return Optional.empty();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            } catch (java.util.concurrent.ExecutionException e) {
                if (e.getCause() instanceof BadInput bad) {
                    throw bad;
                }
                throw new IllegalStateException("a make broke off", e.getCause());
            }
        }

        private Made compute() {
            if (System.nanoTime() - asked > GONE_NANOS) {
                throw new BadInput(new Finding(
                        "form",
                        "",
                        0,
                        Tell.said("make.dropped"),
                        Tell.said("make.dropped-help"),
                        session.make().unit()));
            }
            begun = true;
            return session.made(Set.of());
        }
    }

    /** For a make that follows on the one asked for last: what did not change since is not computed again. */
    synchronized Session session(MakeFile make) {
        return kept.values().stream()
                .reduce((one, later) -> later)
                .map(last -> last.session.with(make))
                .orElseGet(() -> Session.of(make));
    }

    /** Takes a make in, or finds the same one; the answer is its name. */
    synchronized String take(Form form, String text, Session session) {
        String id = id(text);
        Work known = kept.get(id);
        if (known == null || known.result.isDone() && !known.begun) {
            Work work = new Work(form, text, session, came++);
            kept.put(id, work);
            work.result = workers.submit(work::compute);
            forget();
        }
        return id;
    }

    private void forget() {
        var all = kept.values().iterator();
        while (kept.size() > MOST && all.hasNext()) {
            if (all.next().result.isDone()) {
                all.remove();
            }
        }
    }

    synchronized Optional<Work> find(String id) {
        return Optional.ofNullable(kept.get(id));
    }

    /** How many are worked at or wait before it may begin. */
    synchronized int before(Work work) {
        long open = kept.values().stream()
                .filter(w -> w.number < work.number && !w.result.isDone())
                .count();
        return work.begun ? 0 : (int) Math.max(0, open - places + 1);
    }

    @Override
    public void close() {
        workers.shutdownNow();
    }

    private static String id(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, 24);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
