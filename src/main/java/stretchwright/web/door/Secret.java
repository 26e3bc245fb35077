package stretchwright.web.door;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** Words of 128 random bits, which nobody guesses. */
final class Secret {
    private static final int BYTES = 16;
    private static final Pattern WRITTEN = Pattern.compile("[0-9a-f]{32}");
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secret() {}

    static String fresh() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** Whether it could be one of ours. */
    static boolean isOne(String text) {
        return WRITTEN.matcher(text).matches();
    }
}
