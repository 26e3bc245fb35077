package stretchwright;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import stretchwright.cli.Commands;
import stretchwright.cli.ServeDoor;
import stretchwright.web.Browser;
import stretchwright.web.Server;
import stretchwright.web.door.Opening;
import stretchwright.web.door.Phrase;
import stretchwright.workroom.store.Address;

/** The program's entry: hands the arguments to the command door, and the page door to its serve command. Output is UTF-8 whatever the terminal's setting. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(Commands.run(Main::serve, utf8(FileDescriptor.out), utf8(FileDescriptor.err), args));
    }

    private static Optional<ServeDoor.Served> serve(Address at, int port, Optional<ServeDoor.Share> share) {
        Opening opening = share.map(s -> new Opening(s.host(), port, Optional.of(Phrase.of(s.phrase()))))
                .orElseGet(() -> Opening.here(port));
        return Server.start(at, opening)
                .map(s -> new ServeDoor.Served(s.address(), s.reach(), () -> Browser.open(s.address()), s::stop));
    }

    private static Writer utf8(FileDescriptor to) {
        return new OutputStreamWriter(new FileOutputStream(to), StandardCharsets.UTF_8);
    }
}
