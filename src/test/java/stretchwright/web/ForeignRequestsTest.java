package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a page for this machine alone turns away: other names, other sites, forms without their seal, what is too large or makes no sense. */
class ForeignRequestsTest {
    private static Server server;
    private static Wire here;

    @BeforeAll
    static void start() {
        server = Visitor.started();
        here = Wire.to(server);
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    /** The same tricks of who may ask reach no file and no fault. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../look.css",
                "/%2e%2e/look.css",
                "/makes/demo/file/..%2f..%2flook.css",
                "/makes/demo/file/%2e%2e%2fmake.yaml",
                "/makes/demo;x=1/../../etc/passwd",
                "//makes//demo",
                "/makes/..%5c..%5cetc",
                "/makes/%00",
                "/makes/%zz",
                "/makes/demo/file/....//pattern.svg"
            })
    void pathTricksLeadNowhere(String path) throws IOException {
        String answer = here.get(path);
        assertThat(Wire.status(answer)).isIn(400, 404);
        assertThat(answer)
                .containsAnyOf("Nothing here", "This could not be read")
                .doesNotContain("Exception", "root:");
    }

    @Test
    void onThisMachineNobodyIsAsked() throws IOException {
        assertThat(here.get("/makes/demo")).startsWith("HTTP/1.1 200");
        assertThat(here.get("/join"))
                .contains("./stretchwright serve --share")
                .doesNotContain("class=\"qr\"", "password");
        assertThat(Wire.status(here.post("/join", "phrase=x"))).isEqualTo(303);
    }

    /** A name that somebody pointed at this machine, in every spelling. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "elsewhere.example:PORT",
                "127.0.0.1.elsewhere.example:PORT",
                "localhost.elsewhere.example:PORT",
                "localhost:1",
                "127.0.0.1",
                "127.0.0.2:PORT",
                "0.0.0.0:PORT",
                "elsewhere.example@127.0.0.1:PORT",
                "127.0.0.1:PORT:PORT"
            })
    void aForeignHostIsRefused(String host) throws IOException {
        String answer = here.get("/makes/demo", "Host: " + host.replace("PORT", Integer.toString(here.port())));
        assertThat(Wire.status(answer)).isIn(400, 403);
        assertThat(answer).doesNotContain("Rowan");
    }

    @Test
    void ourOwnNamesAreNot() throws IOException {
        for (String host : List.of("127.0.0.1", "localhost", "LocalHost")) {
            assertThat(Wire.status(here.get("/", "Host: " + host + ":" + here.port())))
                    .isEqualTo(200);
        }
    }

    @Test
    void anotherSitesPageSendsNothingAndTakesNothing() throws IOException {
        String own = "http://127.0.0.1:" + here.port();
        for (String origin :
                List.of("http://elsewhere.example", "null", "http://127.0.0.1:1", "https" + own.substring(4))) {
            String answer = here.post("/all", "name=x", "Origin: " + origin);
            assertThat(answer).as(origin).startsWith("HTTP/1.1 403").contains("Not from another site");
        }
        assertThat(Wire.status(here.post("/all", "name=x", "Origin: " + own))).isEqualTo(422);
        for (String site : List.of("cross-site", "same-site")) {
            String from = "Sec-Fetch-Site: " + site;
            assertThat(Wire.status(here.post("/all", "name=x", from, "Sec-Fetch-Mode: navigate")))
                    .isEqualTo(403);
            assertThat(Wire.status(here.get("/makes/demo/file/pattern.svg", from, "Sec-Fetch-Mode: no-cors")))
                    .isEqualTo(403);
            assertThat(Wire.status(here.get("/", from, "Sec-Fetch-Mode: navigate")))
                    .isEqualTo(200);
        }
    }

    @Test
    void whatIsTooLargeOrOfAnotherKindIsToldInPlainWords() throws IOException {
        assertThat(here.get("/", "X: " + "a".repeat(20_000)))
                .startsWith("HTTP/1.1 431")
                .contains("Too much at once");
        assertThat(here.get("/?" + "a".repeat(20_000)))
                .startsWith("HTTP/1.1 414")
                .contains("Too much at once");
        assertThat(here.post("/all", "name=" + "a".repeat(300_000)))
                .startsWith("HTTP/1.1 413")
                .contains("Too large");
        String[] file = {"Content-Type: multipart/form-data; boundary=b", "Cookie: stretchwright-seal=" + Wire.SEAL};
        String part = "--b\r\nContent-Disposition: form-data; name=\"f\"; filename=\"x.exe\"\r\n\r\nMZ\r\n--b--\r\n";
        assertThat(here.ask("POST /all", part, file)).startsWith("HTTP/1.1 415").contains("Not a form of this page");
        assertThat(here.ask("POST /all", "{}", "Content-Type: application/json"))
                .startsWith("HTTP/1.1 415");
    }

    @Test
    void methodsThatAreNotThereAreToldSo() throws IOException {
        for (String method : List.of("PUT", "DELETE", "PATCH", "POST")) {
            assertThat(Wire.status(here.ask(method + " /", "x"))).as(method).isEqualTo(405);
        }
        for (String method : List.of("TRACE", "CONNECT", "BREW", "PROPFIND")) {
            String answer = here.ask(method + " /", "");
            assertThat(Wire.status(answer)).as(method).isIn(400, 404, 405, 501);
            assertThat(answer).doesNotContain("Exception", "Connection: close\r\nHost");
        }
        assertThat(Wire.status(here.get("/leave"))).isEqualTo(405);
        assertThat(Wire.status(here.ask("HEAD /", ""))).isEqualTo(200);
    }
}
