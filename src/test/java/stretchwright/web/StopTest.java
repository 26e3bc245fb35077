package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.web.door.Opening;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.store.Address;

/** The page ends within seconds of being told so, whoever still listens. */
@Tag("slow")
class StopTest {
    private static final int STREAMS = 20;

    @Test
    void openEventStreamsHoldNothingUp() throws Exception {
        Screen ticking = routes -> routes.sse("/ticks", client -> {
            client.keepAlive();
            client.sendEvent("tick", "1");
        });
        Server server = Server.start(
                        new Address.Folder(Files.createTempDirectory("stretchwright-stop")),
                        Opening.here(0),
                        List.of(ticking))
                .orElseThrow();
        int port = Wire.to(server).port();
        List<Socket> open = new ArrayList<>();
        for (int i = 0; i < STREAMS; i++) {
            open.add(listening(port));
        }
        long start = System.nanoTime();
        server.stop();
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        System.out.println("stopped with " + STREAMS + " open streams in " + took.toMillis() + " ms");
        assertThat(took).isLessThan(Duration.ofSeconds(3));
        for (Socket socket : open) {
            socket.setSoTimeout(1000);
            assertThat(socket.getInputStream().readAllBytes())
                    .as("the line is closed")
                    .isNotNull();
            socket.close();
        }
    }

    @Test
    void aFormThatNeverComesHoldsNothingUpEither() throws Exception {
        Server server = Visitor.started();
        int port = Wire.to(server).port();
        try (Socket dawdling = new Socket("127.0.0.1", port)) {
            String head = "POST /all HTTP/1.1\r\nHost: 127.0.0.1:" + port
                    + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 100\r\n\r\nname=";
            dawdling.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
            Thread.sleep(300);
            long start = System.nanoTime();
            server.stop();
            assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(3));
        }
    }

    private static Socket listening(int port) throws IOException {
        Socket socket = new Socket("127.0.0.1", port);
        socket.getOutputStream()
                .write(("GET /ticks HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nAccept: text/event-stream\r\n\r\n")
                        .getBytes(StandardCharsets.US_ASCII));
        InputStream in = socket.getInputStream();
        StringBuilder told = new StringBuilder();
        while (!told.toString().contains("event: tick")) {
            int letter = in.read();
            assertThat(letter).as(told.toString()).isNotNegative();
            told.append((char) letter);
        }
        return socket;
    }
}
