package stretchwright.web.frame;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stretchwright.lay.Placed;
import stretchwright.make.Make;
import stretchwright.make.Session;

/** What makes became, those that were asked for last; of a make that is changed what does not hang on the change stays. */
final class Drafts {
    /** Each holds some megabytes once its papers were asked for. */
    static final int MOST = 64;

    private final Map<String, Drafted> kept = new LinkedHashMap<>(16, 0.75f, true);

    private record Drafted(String text, Map<Integer, Placed> places, Session session) {
        boolean says(String other) {
            return text.equals(other);
        }
    }

    /**
     * What the text becomes.
     *
     * @param id of the make that it is a text of
     * @param places of pieces that were put by hand or found by a search
     * @throws stretchwright.ground.BadInput where it is no make
     */
    Session session(String id, String name, String text, Map<Integer, Placed> places) {
        Drafted last = last(id);
        if (last != null && last.says(text) && last.places.equals(places)) {
            return last.session;
        }
        Session read = last != null && last.says(text) ? last.session : with(last, name, text);
        Session session = read.put(places);
        synchronized (kept) {
            kept.put(id, new Drafted(text, places, session));
            kept.keySet().stream()
                    .limit(Math.max(0, kept.size() - MOST))
                    .toList()
                    .forEach(kept::remove);
        }
        return session;
    }

    /** The same without keeping it: it was only tried. */
    Session tried(String id, String name, String text) {
        return with(last(id), name, text);
    }

    private static Session with(@Nullable Drafted last, String name, String text) {
        var make = Make.read(name, text.getBytes(StandardCharsets.UTF_8));
        return last == null ? Session.of(make) : last.session.with(make);
    }

    private @Nullable Drafted last(String id) {
        synchronized (kept) {
            return kept.get(id);
        }
    }

    void clear() {
        synchronized (kept) {
            kept.clear();
        }
    }
}
