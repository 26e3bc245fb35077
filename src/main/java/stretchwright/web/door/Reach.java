package stretchwright.web.door;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Under which addresses another machine in the same network finds the page. */
public final class Reach {
    private Reach() {}

    /** Most likely first; none where it is not shared, or there is no network. */
    public static List<String> addresses(Opening opening, int port) {
        if (!opening.isShared()) {
            return List.of();
        }
        return opening.isEverywhere()
                ? ofMachine().stream().map(a -> Opening.url(a, port)).toList()
                : List.of(Opening.url(opening.host(), port));
    }

    private static List<String> ofMachine() {
        try {
            return Collections.list(NetworkInterface.getNetworkInterfaces()).stream()
                    .filter(Reach::isUp)
                    .sorted(Comparator.comparing(NetworkInterface::isVirtual).thenComparing(NetworkInterface::getIndex))
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(a -> a instanceof Inet4Address && !a.isLoopbackAddress() && !a.isLinkLocalAddress())
                    .sorted(Comparator.comparing(a -> !a.isSiteLocalAddress()))
                    .map(InetAddress::getHostAddress)
                    .toList();
        } catch (SocketException e) {
            return List.of();
        }
    }

    private static boolean isUp(NetworkInterface line) {
        try {
            return line.isUp() && !line.isLoopback();
        } catch (SocketException e) {
            return false;
        }
    }
}
