package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import stretchwright.workroom.store.Address;

/** Clients that dawdle or hang up: the others are served, and nothing of it is told on standard error. Alone, as that is everybody's. */
@Isolated
@Tag("slow")
class BadClientsTest {
    /** More than the server has threads. */
    private static final int MANY = 300;

    private final ByteArrayOutputStream told = new ByteArrayOutputStream();
    private final PrintStream before = System.err;
    private Server server;
    private int port;

    @BeforeEach
    void start() {
        server = Visitor.started();
        port = URI.create(server.address()).getPort();
        System.setErr(new PrintStream(told, true, StandardCharsets.UTF_8));
    }

    @AfterEach
    void stop() {
        System.setErr(before);
        server.stop();
    }

    private Socket send(String request) throws IOException {
        Socket socket = new Socket("127.0.0.1", port);
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private String head(String line, String more) {
        String seal = "0123456789abcdef".repeat(2);
        return line + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nCookie: stretchwright-seal=" + seal + "\r\nSeal: "
                + seal + "\r\n" + more + "\r\n";
    }

    private String form(int length) {
        return head(
                "POST /all", "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: " + length + "\r\n");
    }

    private String answer(Socket socket) throws IOException {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private long millisOfAPage() throws IOException {
        long start = System.nanoTime();
        try (Socket page = send(head("GET /", "Connection: close\r\n"))) {
            assertThat(answer(page)).startsWith("HTTP/1.1 200");
        }
        return Duration.ofNanos(System.nanoTime() - start).toMillis();
    }

    /** A byte every tenth of a second, of 100,000: cut off within seconds, long before it is done. */
    @Test
    void aFormThatDripsIsCutOff() throws Exception {
        long start = System.nanoTime();
        try (Socket dripping = send(form(100_000))) {
            int drops = 0;
            try {
                for (; drops < 300; drops++) {
                    dripping.getOutputStream().write('x');
                    Thread.sleep(100);
                }
            } catch (SocketException e) {
                // cut off
            }
            assertThat(drops).isLessThan(300);
        }
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(12));
        assertThat(told.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    /** Nothing at all after the head. */
    @Test
    void aFormThatNeverComesIsCutOff() throws Exception {
        long start = System.nanoTime();
        try (Socket silent = send(form(100))) {
            assertThat(answer(silent)).matches("(?s)|HTTP/1.1 408.*");
        }
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(12));
        assertThat(told.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Tag("slow")
    @Test
    void manyThatDawdleHoldNobodyUp() throws Exception {
        millisOfAPage();
        List<Socket> dawdling = new ArrayList<>();
        try {
            for (int i = 0; i < MANY; i++) {
                dawdling.add(send(form(100) + "name="));
            }
            Thread.sleep(500);
            assertThat(millisOfAPage()).isLessThan(2500);
        } finally {
            for (Socket socket : dawdling) {
                socket.close();
            }
        }
        Thread.sleep(500);
        assertThat(told.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    /** Hung up in the middle of the head, the form and the answer. */
    @Tag("slow")
    @Test
    void whoHangsUpIsNotTalkedAbout() throws Exception {
        String pairs = Visitor.example().entrySet().stream()
                .flatMap(e -> e.getValue().stream()
                        .map(v -> URLEncoder.encode(e.getKey(), StandardCharsets.UTF_8) + "="
                                + URLEncoder.encode(v, StandardCharsets.UTF_8)))
                .collect(Collectors.joining("&"));
        String at;
        try (Socket socket = send(form(pairs.length()).replace("\r\n\r\n", "\r\nConnection: close\r\n\r\n") + pairs)) {
            at = answer(socket).replaceAll("(?s).*Location: (\\S+).*", "$1");
        }
        assertThat(at).startsWith("/makes/");
        for (int i = 0; i < 20; i++) {
            hangUp(send("GET / HTTP/1.1\r\nHo"));
            hangUp(send(form(100) + "name="));
            Socket asking = send(head("GET " + at + "/all.zip", ""));
            assertThat(asking.getInputStream().read()).isEqualTo('H');
            hangUp(asking);
        }
        millisOfAPage();
        Thread.sleep(1000);
        assertThat(told.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test
    void aTakenPortIsToldByTheAnswerAlone() throws Exception {
        Address room = new Address.Folder(Files.createTempDirectory("stretchwright-page"));
        assertThat(Server.start(room, port)).isEmpty();
        assertThat(told.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    /** What no browser sends is answered, and not talked about. */
    @Test
    void whatMakesNoSenseIsNotTalkedAbout() throws Exception {
        Wire wire = new Wire(port);
        for (String path :
                List.of("/%2e%2e/", "/%zz", "/\u0001", "//", "/;;;", "http://elsewhere.example/", "*", "/?%%%")) {
            assertThat(Wire.status(wire.get(path))).as(path).isLessThan(500);
        }
        for (String host : List.of("Host:", "Host: a b", "Host: [::", "Host: x@y:1", "Host: a:b:c")) {
            assertThat(Wire.status(wire.get("/", host))).as(host).isBetween(400, 499);
        }
        for (String header : List.of("Cookie: ;;=;\u00ff", "Content-Length: -1", "Transfer-Encoding: x", "Expect: y")) {
            assertThat(Wire.status(wire.ask("POST /all", "", header)))
                    .as(header)
                    .isBetween(400, 501);
        }
        assertThat(Wire.status(wire.get("/", "X: " + "a".repeat(100_000)))).isEqualTo(431);
        for (String garbage : List.of("\r\n\r\n", "GET\r\n\r\n", "\u0016\u0003\u0001", "GET / HTTP/9.9\r\n\r\n")) {
            try (Socket socket = send(garbage)) {
                socket.shutdownOutput();
                assertThat(answer(socket)).doesNotContain("Exception", "200 OK");
            }
        }
        millisOfAPage();
        assertThat(told.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    /** Heads that drip a letter at a time take no thread each. */
    @Test
    void headsThatDripHoldNobodyUp() throws Exception {
        millisOfAPage();
        List<Socket> dripping = new ArrayList<>();
        try {
            for (int i = 0; i < MANY; i++) {
                dripping.add(send("GET / HTTP/1.1\r\nX: "));
            }
            for (int round = 0; round < 5; round++) {
                for (Socket socket : dripping) {
                    socket.getOutputStream().write('x');
                }
                assertThat(millisOfAPage()).isLessThan(2500);
            }
        } finally {
            for (Socket socket : dripping) {
                socket.close();
            }
        }
        assertThat(told.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    /** As a browser that is closed: the line is reset. */
    private static void hangUp(Socket socket) throws IOException {
        socket.setSoLinger(true, 0);
        socket.close();
    }
}
