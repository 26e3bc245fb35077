package stretchwright.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** Who visits a page over real HTTP, for tests. */
final class Visitor {
    private static final HttpClient HTTP = HttpClient.newHttpClient();

    private final Server server;

    Visitor(Server server) {
        this.server = server;
    }

    static Map<String, List<String>> example() {
        return new LinkedHashMap<>(Form.example().typed());
    }

    HttpResponse<String> get(String path) throws Exception {
        return HTTP.send(request(path).build(), HttpResponse.BodyHandlers.ofString());
    }

    byte[] bytes(String path) throws Exception {
        return HTTP.send(request(path).build(), HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(server.address() + path));
    }

    HttpResponse<String> post(Map<String, List<String>> typed) throws Exception {
        return post("make", typed);
    }

    HttpResponse<String> post(String path, Map<String, List<String>> typed) throws Exception {
        List<String> pairs = new ArrayList<>();
        typed.forEach((key, values) -> values.forEach(v -> pairs.add(coded(key) + "=" + coded(v))));
        HttpRequest request = request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(pairs.stream().collect(Collectors.joining("&"))))
                .build();
        return HTTP.send(request, HttpResponse.BodyHandlers.ofString());
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

    /** The result page; each answer before it is done waits a little. */
    String done(String at) throws Exception {
        HttpResponse<String> page = get(at);
        for (int i = 0; i < 200 && page.statusCode() == 202; i++) {
            page = get(at);
        }
        return page.body();
    }
}
