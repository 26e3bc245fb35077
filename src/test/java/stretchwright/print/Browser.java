package stretchwright.print;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A browser without a window, told what to do by its own debugging protocol (JSON over a web socket). */
final class Browser implements AutoCloseable {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final long PATIENCE = 60;

    private final Process process;
    private final Path profile;
    private final LinkedBlockingQueue<String> answers = new LinkedBlockingQueue<>();
    private final WebSocket socket;
    private int calls;

    static Optional<String> installed() {
        return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser", "google-chrome", "chrome")
                        .map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .map(Path::toString)
                .findFirst();
    }

    Browser(String executable, URI page, int width, int height) throws Exception {
        profile = Files.createTempDirectory("browser");
        process = new ProcessBuilder(List.of(
                        executable,
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        page.toString()))
                .redirectErrorStream(true)
                .redirectOutput(profile.resolve("log").toFile())
                .start();
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(pageSocket(), listener())
                .get(PATIENCE, TimeUnit.SECONDS);
        call("Emulation.setDeviceMetricsOverride", """
                {"width": %d, "height": %d, "deviceScaleFactor": 1, "mobile": true}""".formatted(width, height));
        call("Page.reload", "{}");
        Thread.sleep(500);
        while (!eval("document.readyState").equals("complete")) {
            Thread.sleep(50);
        }
    }

    /** The browser writes its port into its profile; there it tells the socket of each page. */
    private URI pageSocket() throws Exception {
        Path file = profile.resolve("DevToolsActivePort");
        for (int i = 0; i < PATIENCE * 10; i++) {
            if (Files.exists(file) && Files.size(file) > 0) {
                String port = Files.readAllLines(file).get(0);
                for (JsonNode target : JSON.readTree(
                        URI.create("http://127.0.0.1:" + port + "/json").toURL().openStream())) {
                    if (target.path("type").asString("").equals("page")) {
                        return URI.create(target.path("webSocketDebuggerUrl").asString(""));
                    }
                }
            }
            Thread.sleep(100);
        }
        throw new IllegalStateException("the browser did not start: " + Files.readString(profile.resolve("log")));
    }

    private WebSocket.Listener listener() {
        return new WebSocket.Listener() {
            private final StringBuilder message = new StringBuilder();

            @Override
            public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
                message.append(part);
                if (last) {
                    answers.add(message.toString());
                    message.setLength(0);
                }
                from.request(1);
                return java.util.concurrent.CompletableFuture.completedStage(null);
            }
        };
    }

    JsonNode call(String method, String parameters) throws Exception {
        int id = ++calls;
        socket.sendText("{\"id\": " + id + ", \"method\": \"" + method + "\", \"params\": " + parameters + "}", true);
        while (true) {
            String answer = answers.poll(PATIENCE, TimeUnit.SECONDS);
            if (answer == null) {
                throw new IllegalStateException("no answer to " + method);
            }
            JsonNode json = JSON.readTree(answer);
            if (json.path("id").asInt(0) == id) {
                return json.path("result");
            }
        }
    }

    /** What the expression gives, as a string. */
    String eval(String expression) throws Exception {
        String quoted = JSON.writeValueAsString("String(" + expression + ")");
        return call("Runtime.evaluate", "{\"expression\": " + quoted + "}")
                .path("result")
                .path("value")
                .asString("");
    }

    void tap(int x, int y) throws Exception {
        for (String kind : List.of("mousePressed", "mouseReleased")) {
            call("Input.dispatchMouseEvent", """
                    {"type": "%s", "x": %d, "y": %d, "button": "left", "clickCount": 1}""".formatted(kind, x, y));
        }
    }

    void key(String key, String text) throws Exception {
        String event = "{\"type\": \"%s\", \"key\": \"" + key + "\", \"code\": \""
                + (key.equals(" ") ? "Space" : key) + "\"" + (text.isEmpty() ? "" : ", \"text\": \"" + text + "\"")
                + "}";
        call("Input.dispatchKeyEvent", event.formatted("keyDown"));
        call("Input.dispatchKeyEvent", event.formatted("keyUp"));
    }

    byte[] picture() throws Exception {
        return Base64.getDecoder()
                .decode(call("Page.captureScreenshot", "{}").path("data").asString(""));
    }

    @Override
    public void close() throws IOException {
        socket.abort();
        process.destroy();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        try (Stream<Path> all = Files.walk(profile)) {
            for (Path p : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(p);
            }
        } catch (IOException | java.io.UncheckedIOException e) {
            System.out.println("left behind: " + profile);
        }
    }
}
