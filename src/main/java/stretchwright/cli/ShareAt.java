package stretchwright.cli;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;

/** Where a shared page listens: an address of this machine, or a name that leads to one. */
final class ShareAt {
    static final String EVERYWHERE = "0.0.0.0";

    private ShareAt() {}

    static void check(String address, Findings findings) {
        if (address.isBlank() || !isOurs(address)) {
            findings.add("--share", Tell.said("share.none", Part.text(address)), Tell.said("share.give"));
        }
    }

    private static boolean isOurs(String address) {
        try {
            InetAddress at = InetAddress.getByName(address);
            return at.isAnyLocalAddress() || at.isLoopbackAddress() || NetworkInterface.getByInetAddress(at) != null;
        } catch (UnknownHostException | SocketException e) {
            return false;
        }
    }
}
