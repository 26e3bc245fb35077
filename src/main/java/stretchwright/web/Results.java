package stretchwright.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stretchwright.make.Made;

/** The last makes, in memory only; the name of each is a hash of its make file, so the same make has the same name. */
final class Results {
    /** About 0.5 MB each. */
    static final int MOST = 20;

    private final Map<String, Result> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Result> eldest) {
            return size() > MOST;
        }
    };

    record Result(Form form, String makeText, Made made) {}

    synchronized String keep(Result result) {
        String id = id(result.makeText());
        kept.put(id, result);
        return id;
    }

    synchronized Optional<Result> find(String id) {
        return Optional.ofNullable(kept.get(id));
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
