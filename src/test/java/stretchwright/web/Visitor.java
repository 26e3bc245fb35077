package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import stretchwright.web.form.Form;
import stretchwright.workroom.store.Address;

/** Who visits a page over real HTTP, for tests. */
final class Visitor {
    private static final AtomicInteger NUMBER = new AtomicInteger();

    private final Server server;
    private final HttpClient http =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private String seal = "";

    /** A page of a new workroom, on a free port. */
    static Server started() {
        try {
            Path folder = Files.createTempDirectory("stretchwright-page");
            return Server.start(new Address.Folder(folder.resolve("room")), 0).orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where a sent form was answered with a make. */
    static String at(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("^/", "");
    }

    Visitor(Server server) {
        this.server = server;
    }

    /** What a pattern holds in its brackets where it first fits; that it does is asserted. */
    static String found(String page, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(page);
        assertThat(m.find()).as(pattern).isTrue();
        return m.group(1);
    }

    /** A new make of a filled form; where it is. */
    String make() throws Exception {
        return at(post(example()));
    }

    /** The make's text as it is kept. */
    String text(String make) throws Exception {
        return get(make + "/make.yaml").body();
    }

    /** Which version the page at this path shows. */
    String seen(String path) throws Exception {
        return found(get(path).body(), "name=\"seen\" value=\"([0-9]+)\"");
    }

    /** A filled form, each time under another name. */
    static Map<String, List<String>> example() {
        try {
            Map<String, List<String>> typed =
                    new LinkedHashMap<>(Form.of(Files.readString(Path.of("examples/evening-practice.yaml")))
                            .typed());
            typed.put("name", List.of("Evening practice " + NUMBER.incrementAndGet()));
            return typed;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    HttpResponse<String> get(String path) throws Exception {
        return http.send(request(path).build(), HttpResponse.BodyHandlers.ofString());
    }

    byte[] bytes(String path) throws Exception {
        return http.send(request(path).build(), HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(server.address() + path));
    }

    HttpResponse<String> post(Map<String, List<String>> typed) throws Exception {
        return post("all", typed);
    }

    /** As every form of the page has it, in the field and in the browser's cookie. */
    String seal() throws Exception {
        if (seal.isEmpty()) {
            seal = found(get("join").body(), "seal&#34;:&#34;([0-9a-f]{32})&#34;");
        }
        return seal;
    }

    /** @param headers names and values in turns */
    HttpResponse<String> post(String path, Map<String, List<String>> typed, String... headers) throws Exception {
        List<String> pairs = new ArrayList<>(List.of("seal=" + seal()));
        typed.forEach((key, values) -> values.forEach(v -> pairs.add(coded(key) + "=" + coded(v))));
        HttpRequest.Builder request = request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(pairs.stream().collect(Collectors.joining("&"))));
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    static Map<String, byte[]> unzipped(byte[] bytes) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                files.put(e.getName(), zip.readAllBytes());
            }
        }
        return files;
    }
}
