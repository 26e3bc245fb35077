package stretchwright.cli;

import java.util.List;
import java.util.Optional;
import stretchwright.workroom.store.Address;

/** The page door as the serve command needs it; Main puts the real one behind it, so that the doors stay apart. */
@FunctionalInterface
public interface ServeDoor {
    /** Opens it for the workroom on the port, 0 for any free one; empty where the port cannot be had. */
    Optional<Served> open(Address workroom, int port, Optional<Share> share);

    /**
     * With other machines of the network.
     *
     * @param host address to listen at, or a name of it
     * @param phrase that they are asked for
     */
    record Share(String host, String phrase) {
        @Override
        public String toString() {
            return "share[" + host + "]"; // the phrase is nobody's
        }
    }

    /**
     * An open door.
     *
     * @param address for this machine
     * @param reach addresses for others, most likely first
     * @param look shows it in the system's browser, where there is one
     * @param stop closes it
     */
    record Served(String address, List<String> reach, Runnable look, Runnable stop) {}
}
