package stretchwright.web.lay;

import io.javalin.http.sse.SseClient;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import stretchwright.ground.Json;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.jobs.Jobs;
import stretchwright.workroom.jobs.PieceSearch;
import tools.jackson.databind.node.ObjectNode;

/** Tells those who look on how a search comes on: when it does, and every so often that it is still there. */
final class LayEvents implements AutoCloseable {
    /** How often the database is asked, ms. */
    private static final long LOOK = 400;
    /** After so many looks a line is said in any case, so that who went away is noticed. */
    private static final int STILL = 25;
    /** More who look on are sent away: each holds a connection. */
    private static final int MOST = 200;

    private final Jobs jobs;
    private final Set<Watcher> watchers = ConcurrentHashMap.newKeySet();
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "lay-events");
        thread.setDaemon(true);
        return thread;
    });

    LayEvents(Jobs jobs) {
        this.jobs = jobs;
        clock.scheduleWithFixedDelay(this::look, LOOK, LOOK, TimeUnit.MILLISECONDS);
    }

    /** One who looks on. */
    private static final class Watcher {
        private final SseClient client;
        private final String make;
        private final int cloth;
        private final Voice voice;
        private String last = "";
        private int still;

        Watcher(SseClient client, Opened make, int cloth) {
            this.client = client;
            this.make = make.id();
            this.cloth = cloth;
            this.voice = make.voice();
        }
    }

    void add(SseClient client, Opened make, int cloth) {
        if (watchers.size() >= MOST || make.demo()) {
            client.sendEvent("over", "{}");
            client.close();
            return;
        }
        Watcher watcher = new Watcher(client, make, cloth);
        client.keepAlive();
        client.onClose(() -> watchers.remove(watcher));
        watchers.add(watcher);
    }

    private void look() {
        for (Watcher w : watchers) {
            try {
                tell(w);
            } catch (RuntimeException e) {
                // who went away, or a database that is busy: the next look tells
                drop(w, w.client.terminated());
            }
        }
    }

    private void drop(Watcher w, boolean gone) {
        if (gone) {
            watchers.remove(w);
        }
    }

    private void tell(Watcher w) {
        Optional<PieceSearch> search = PieceSearch.newest(jobs, w.make, w.cloth);
        boolean over = search.map(PieceSearch::over).orElse(true);
        String now = search.map(
                        s -> s.job().state() + " " + s.before() + " " + s.job().reached())
                .orElse("");
        w.still++;
        if (over) {
            w.client.sendEvent("over", search.map(s -> node(s, w.voice)).orElse("{}"));
            watchers.remove(w);
            w.client.close();
        } else if (!now.equals(w.last)) {
            w.last = now;
            w.client.sendEvent("lay", node(search.orElseThrow(), w.voice));
        } else if (w.still % STILL == 0) {
            w.client.sendComment("-");
        }
        drop(w, w.client.terminated());
    }

    /** One line, as events are. */
    private static String node(PieceSearch s, Voice voice) {
        ObjectNode out = Json.node();
        out.put("state", s.job().state().word());
        out.put("before", s.before());
        out.put("reached", s.job().reached());
        out.put("of", s.job().asked());
        if (s.best().isPresent()) {
            out.put("mm", s.length());
            out.put("length", voice.say(new Part.Length(s.length(), Part.Told.WRITTEN, 1, false)));
        }
        return Json.text(out).replaceAll("\\s*\\n\\s*", " ").strip();
    }

    @Override
    public void close() {
        clock.shutdownNow();
        watchers.forEach(w -> w.client.close());
        watchers.clear();
    }
}
