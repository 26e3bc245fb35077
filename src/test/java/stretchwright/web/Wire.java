package stretchwright.web;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A client that sends what no browser would, letter by letter as it is told. */
record Wire(int port) {
    /** As a browser has it after its first page; whoever sends both is the page's own. */
    static final String SEAL = "0123456789abcdef".repeat(2);

    private static final String FORM = "Content-Type: application/x-www-form-urlencoded";

    static Wire to(Server server) {
        return new Wire(URI.create(server.address()).getPort());
    }

    /** @param headers beside Host, unless they name it */
    String get(String path, String... headers) throws IOException {
        return ask("GET " + path, "", headers);
    }

    /** With the seal in cookie and field, unless the headers bring a cookie. */
    String post(String path, String form, String... headers) throws IOException {
        List<String> all = new ArrayList<>(List.of(headers));
        all.add(FORM);
        boolean own = all.stream().noneMatch(h -> h.startsWith("Cookie:"));
        if (own) {
            all.add("Cookie: stretchwright-seal=" + SEAL);
        }
        return ask("POST " + path, own ? "seal=" + SEAL + "&" + form : form, all.toArray(String[]::new));
    }

    String ask(String line, String body, String... headers) throws IOException {
        StringBuilder request = new StringBuilder(line).append(" HTTP/1.1\r\nConnection: close\r\n");
        boolean named = false;
        for (String header : headers) {
            request.append(header).append("\r\n");
            named |= header.startsWith("Host:");
        }
        if (!named) {
            request.append("Host: 127.0.0.1:").append(port).append("\r\n");
        }
        if (!body.isEmpty()) {
            request.append("Content-Length: ").append(body.length()).append("\r\n");
        }
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.getOutputStream()
                    .write(request.append("\r\n").append(body).toString().getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static int status(String answer) {
        return Integer.parseInt(answer.split(" ", 3)[1]);
    }

    /** What a cookie was set to, as a request brings it. */
    static String cookie(String answer, String name) {
        return answer.lines()
                .filter(l -> l.startsWith("Set-Cookie: " + name + "="))
                .map(l -> l.replaceAll("^Set-Cookie: |;.*", ""))
                .reduce((first, last) -> last)
                .orElse("");
    }
}
