package stretchwright;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import stretchwright.cli.Commands;
import stretchwright.web.Server;
import stretchwright.workroom.store.Address;

/**
 * A make, one look into a workroom and one at the page, so that Java lists the classes they need; the launcher keeps them in an archive from which
 * later runs start faster. Not for people: nothing is shown.
 */
public final class FirstRun {
    private FirstRun() {}

    /** Takes a make file and a folder to write into. */
    public static void main(String[] args) throws IOException {
        PrintWriter nobody = new PrintWriter(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        int code = Commands.run(nobody, nobody, "make", args[0], "--out", args[1], "--json");
        String room = args[1] + "-room";
        Commands.run(nobody, nobody, "workroom", "import", args[0], "--workroom", room);
        Commands.run(nobody, nobody, "workroom", "list", "--workroom", room);
        Optional<Server> server = Server.start(new Address.Folder(Path.of(room)), 0);
        if (server.isPresent()) {
            look(URI.create(server.get().address()));
            server.get().stop();
        }
        System.exit(code);
    }

    private static void look(URI page) throws IOException {
        try (Socket socket = new Socket(page.getHost(), page.getPort())) {
            String request = "GET / HTTP/1.1\r\nHost: " + page.getAuthority() + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            socket.getInputStream().readAllBytes();
        }
    }
}
