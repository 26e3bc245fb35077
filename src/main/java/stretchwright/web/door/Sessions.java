package stretchwright.web.door;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** Who gave the pass phrase. In memory only: after a restart it is asked for again. */
final class Sessions {
    /** Without use. */
    static final Duration LASTS = Duration.ofDays(30);

    /** Phones and computers of a large club; one more ends the one that was not used for longest. */
    static final int MOST = 200;

    private final LongSupplier millis;
    private final Map<String, Long> used = new LinkedHashMap<>(16, 0.75f, true);

    /** @param millis of a clock */
    Sessions(LongSupplier millis) {
        this.millis = millis;
    }

    /** A new one, by the word that its cookie holds. */
    synchronized String begin() {
        String token = Secret.fresh();
        used.put(token, millis.getAsLong());
        used.keySet().stream().limit(Math.max(0, used.size() - MOST)).toList().forEach(used::remove);
        return token;
    }

    /** Whether there is such a one; it is used by this. */
    synchronized boolean use(String token) {
        Long last = used.get(token);
        if (last == null) {
            return false;
        }
        long now = millis.getAsLong();
        if (now - last > LASTS.toMillis()) {
            used.remove(token);
            return false;
        }
        used.put(token, now);
        return true;
    }

    synchronized void end(String token) {
        used.remove(token);
    }
}
