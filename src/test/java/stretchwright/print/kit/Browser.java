package stretchwright.print.kit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
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
public final class Browser implements AutoCloseable {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final long PATIENCE = 60;
    private static final String LISTENING = "DevTools listening on ";
    private static final String LOADED = "Page.loadEventFired";

    private final Process process;
    private final Path profile;
    private final LinkedBlockingQueue<String> answers = new LinkedBlockingQueue<>();
    private final LinkedBlockingQueue<String> loads = new LinkedBlockingQueue<>();
    private final WebSocket socket;
    private int calls;

    public static Optional<String> installed() {
        return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser", "google-chrome", "chrome")
                        .map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .map(Path::toString)
                .findFirst();
    }

    public Browser(String executable, URI page, int width, int height) throws Exception {
        profile = Files.createTempDirectory("browser");
        process = new ProcessBuilder(List.of(
                        executable,
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank"))
                .redirectErrorStream(true)
                .start();
        HttpClient client = HttpClient.newHttpClient();
        socket = client.newWebSocketBuilder()
                .buildAsync(tab(client, told()), listener())
                .get(PATIENCE, TimeUnit.SECONDS);
        call("Page.enable", "{}");
        call("Emulation.setDeviceMetricsOverride", """
                {"width": %d, "height": %d, "deviceScaleFactor": 1, "mobile": true}""".formatted(width, height));
        loaded("Page.navigate", "{\"url\": " + JSON.writeValueAsString(page.toString()) + "}");
    }

    public void reload() throws Exception {
        loaded("Page.reload", "{}");
    }

    /** Comes back when the browser says that the page is loaded. */
    private void loaded(String method, String parameters) throws Exception {
        loads.clear();
        call(method, parameters);
        if (loads.poll(PATIENCE, TimeUnit.SECONDS) == null) {
            throw new IllegalStateException("the page was not loaded");
        }
    }

    /** The address at which the browser listens, from its first words; the rest of them is read and dropped. */
    private URI told() throws IOException {
        BufferedReader words =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        StringBuilder said = new StringBuilder();
        for (String line = words.readLine(); line != null; line = words.readLine()) {
            said.append(line).append('\n');
            if (line.startsWith(LISTENING)) {
                Thread rest = new Thread(() -> words.lines().forEach(more -> {}), "browser's words");
                rest.setDaemon(true);
                rest.start();
                return URI.create(line.substring(LISTENING.length()).strip());
            }
        }
        throw new IllegalStateException("the browser did not start: " + said);
    }

    /** A new tab, and the socket by which it is told what to do. */
    private static URI tab(HttpClient client, URI browser) throws Exception {
        URI make = URI.create("http://" + browser.getAuthority() + "/json/new?about:blank");
        HttpRequest request = HttpRequest.newBuilder(make)
                .PUT(HttpRequest.BodyPublishers.noBody())
                .build();
        String answer =
                client.send(request, HttpResponse.BodyHandlers.ofString()).body();
        return URI.create(JSON.readTree(answer).path("webSocketDebuggerUrl").asString(""));
    }

    private WebSocket.Listener listener() {
        return new WebSocket.Listener() {
            private final StringBuilder message = new StringBuilder();

            @Override
            public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
                message.append(part);
                if (last) {
                    (message.indexOf("\"" + LOADED + "\"") >= 0 ? loads : answers).add(message.toString());
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
    public String eval(String expression) throws Exception {
        String quoted = JSON.writeValueAsString("String(" + expression + ")");
        return call("Runtime.evaluate", "{\"expression\": " + quoted + "}")
                .path("result")
                .path("value")
                .asString("");
    }

    public void tap(int x, int y) throws Exception {
        for (String kind : List.of("mousePressed", "mouseReleased")) {
            call("Input.dispatchMouseEvent", """
                    {"type": "%s", "x": %d, "y": %d, "button": "left", "clickCount": 1}""".formatted(kind, x, y));
        }
    }

    public void key(String key, String text) throws Exception {
        String event = "{\"type\": \"%s\", \"key\": \"" + key + "\", \"code\": \""
                + (key.equals(" ") ? "Space" : key) + "\"" + (text.isEmpty() ? "" : ", \"text\": \"" + text + "\"")
                + "}";
        call("Input.dispatchKeyEvent", event.formatted("keyDown"));
        call("Input.dispatchKeyEvent", event.formatted("keyUp"));
    }

    public byte[] picture() throws Exception {
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
