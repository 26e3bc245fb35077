package stretchwright.cli;

import java.util.Optional;
import stretchwright.workroom.store.Address;

/** The page door as the serve command needs it; Main puts the real one behind it, so that the doors stay apart. */
@FunctionalInterface
public interface ServeDoor {
    /** Opens it for the workroom on the port, 0 for any free one; empty where the port cannot be had. */
    Optional<Served> open(Address workroom, int port);

    /** An open door. */
    record Served(String address, Runnable stop) {}
}
