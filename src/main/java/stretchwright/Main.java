package stretchwright;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import stretchwright.cli.Commands;
import stretchwright.cli.ServeDoor;
import stretchwright.web.Server;

/** The program's entry: hands the arguments to the command door, and the page door to its serve command. Output is UTF-8 whatever the terminal's setting. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        ServeDoor door =
                (at, port) -> Server.start(at, port).map(server -> new ServeDoor.Served(server.address(), server::stop));
        System.exit(Commands.run(door, utf8(FileDescriptor.out), utf8(FileDescriptor.err), args));
    }

    private static Writer utf8(FileDescriptor to) {
        return new OutputStreamWriter(new FileOutputStream(to), StandardCharsets.UTF_8);
    }
}
