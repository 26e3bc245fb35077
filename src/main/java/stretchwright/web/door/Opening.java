package stretchwright.web.door;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Optional;

/**
 * Where the page is to be had, and by whom.
 *
 * @param host address that it listens at, or a name of it
 * @param port 0 for any free one
 * @param phrase what is asked for; must be there for any address but this machine's own
 */
public record Opening(String host, int port, Optional<Phrase> phrase) {
    private static final String HERE = "127.0.0.1";

    public Opening {
        if (phrase.isEmpty() && !isHere(host)) {
            throw new IllegalArgumentException("an open page must have a pass phrase");
        }
    }

    /** For this machine alone; nobody is asked. */
    public static Opening here(int port) {
        return new Opening(HERE, port, Optional.empty());
    }

    public boolean isShared() {
        return phrase.isPresent();
    }

    /** Whether it listens at every address of the machine. */
    public boolean isEverywhere() {
        return address().isAnyLocalAddress();
    }

    /** Under which this machine's own browser finds it. */
    public String own(int port) {
        return url(isEverywhere() ? HERE : host, port);
    }

    static String url(String host, int port) {
        return "http://" + (host.contains(":") ? "[" + host + "]" : host) + ":" + port + "/";
    }

    private InetAddress address() {
        try {
            return InetAddress.getByName(host);
        } catch (UnknownHostException e) {
            throw new IllegalArgumentException("a host must have an address: " + host, e);
        }
    }

    private static boolean isHere(String host) {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
