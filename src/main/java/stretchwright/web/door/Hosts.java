package stretchwright.web.door;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Under which names the page answers: the address that the request came to, this machine's names for itself, and what was given at
 * the start. Another site whose name was pointed at this machine has its own name in Host.
 */
final class Hosts {
    private static final Set<String> HERE = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Pattern NAMED = Pattern.compile("(\\[[0-9a-fA-F:.]+]|[^:\\[\\]]+)(?::(\\d{1,5}))?");
    private static final int USUAL_PORT = 80;

    private final String given;

    /** @param given address or name that the page was opened at */
    Hosts(String given) {
        this.given = given.toLowerCase(Locale.ROOT);
    }

    /**
     * Whether a request that came to this address and port was meant for us.
     *
     * @param host as the request names it
     */
    boolean has(@Nullable String host, String address, int port) {
        Matcher named = NAMED.matcher(host == null ? "" : host);
        if (!named.matches()) {
            return false;
        }
        String name = named.group(1).toLowerCase(Locale.ROOT);
        int asked = named.group(2) == null ? USUAL_PORT : Integer.parseInt(named.group(2));
        return asked == port && (name.equals(given) || isAt(name, address));
    }

    private static boolean isAt(String name, String address) {
        try {
            InetAddress at = InetAddress.getByName(address);
            return HERE.contains(name) && at.isLoopbackAddress()
                    || isWrittenAddress(name) && InetAddress.getByName(name).equals(at);
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** A name is never looked up: it is somebody else's who says where it leads. */
    private static boolean isWrittenAddress(String name) {
        return name.startsWith("[") || name.matches("\\d{1,3}(\\.\\d{1,3}){3}");
    }
}
