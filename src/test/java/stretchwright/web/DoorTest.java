package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.web.door.Headers;
import stretchwright.web.door.Opening;
import stretchwright.web.door.Phrase;
import stretchwright.workroom.store.Address;

/** Who may ask, over real HTTP: a page for this machine alone, and one that is shared. */
class DoorTest {
    private static final String WORDS = "chalk canvas comet oyster";

    private static Server alone;
    private static Server shared;
    private static Wire here;
    private static Wire phone;

    @BeforeAll
    static void start() throws IOException {
        alone = Visitor.started();
        shared = shared();
        here = Wire.to(alone);
        phone = Wire.to(shared);
    }

    @AfterAll
    static void stop() {
        alone.stop();
        shared.stop();
    }

    private static Server shared() throws IOException {
        Opening opening = new Opening("127.0.0.1", 0, Optional.of(Phrase.of(WORDS)));
        return Server.start(new Address.Folder(Files.createTempDirectory("stretchwright-door")), opening)
                .orElseThrow();
    }

    private static String joined(Wire who) throws IOException {
        String answer = who.post("/join", "phrase=" + WORDS.replace(' ', '+'));
        assertThat(Wire.status(answer)).isEqualTo(303);
        String session = Wire.cookie(answer, "stretchwright-" + who.port());
        assertThat(session).matches("stretchwright-\\d+=[0-9a-f]{32}");
        return session;
    }

    @ParameterizedTest
    @ValueSource(strings = {"/join", "/look.css", "/icon.svg", "/favicon.ico", "/live.js", "/htmx.js", "/health"})
    void whoHasNotJoinedIsGivenWhatJoiningNeeds(String path) throws IOException {
        assertThat(Wire.status(phone.get(path))).isEqualTo(200);
    }

    /** Whatever is there or not: all of it leads to the pass phrase, or is no address at all. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/makes/demo",
                "/new/1",
                "/all",
                "/nothing",
                "//look.css",
                "//",
                "/look.css/",
                "/LOOK.CSS",
                "/health;a=b",
                "/;/makes/demo",
                "/join/../makes/demo",
                "/./makes/demo",
                "/look.css/../makes/demo",
                "/%2e%2e/makes/demo",
                "/join/%2e%2e/makes/demo",
                "/join%2f..%2fmakes%2fdemo",
                "/makes%2fdemo",
                "/join%00/makes/demo",
                "/join%5c..%5cmakes",
                "/../../../../etc/passwd",
                "/makes/demo/file/../../../look.css",
                "/META-INF/licenses/THIRD-PARTY.txt"
            })
    void whoHasNotJoinedSeesNothingElse(String path) throws IOException {
        String answer = phone.get(path);
        assertThat(Wire.status(answer)).isIn(303, 400);
        assertThat(answer).doesNotContain("Rowan", "root:", "Exception", "jetty", "Nothing hangs");
        if (Wire.status(answer) == 303) {
            assertThat(answer).containsPattern("Location: /join(\\?to=(/[A-Za-z0-9._-]+)+)?\r\n");
        } else {
            assertThat(answer).contains("This could not be read").contains("X-Content-Type-Options: nosniff");
        }
    }

    @Test
    void healthTellsThatThePageIsUpAndNothingElse() throws IOException {
        assertThat(phone.get("/health")).contains("application/json").endsWith("{\"status\":\"up\"}");
    }

    @Test
    void whoHasJoinedIsLetInUntilLeaving() throws IOException {
        String wrong = phone.post("/join", "phrase=chalk+canvas+comet+oysters");
        assertThat(Wire.status(wrong)).isEqualTo(422);
        assertThat(wrong).contains("That is not the pass phrase.").doesNotContain("oyster");
        String session = joined(phone);
        assertThat(phone.get("/makes/demo", "Cookie: " + session))
                .startsWith("HTTP/1.1 200")
                .contains("Rowan");
        String page = phone.get("/join", "Cookie: " + session);
        assertThat(page)
                .contains("class=\"qr\"", "http://127.0.0.1:" + phone.port() + "/")
                .doesNotContain("chalk");
        String cookies = "Cookie: stretchwright-seal=" + Wire.SEAL + "; " + session;
        String left = phone.post("/leave", "seal=" + Wire.SEAL, cookies);
        assertThat(Wire.status(left)).isEqualTo(303);
        assertThat(Wire.status(phone.get("/makes/demo", "Cookie: " + session))).isEqualTo(303);
    }

    @Test
    void whoJoinsComesToWhatWasAskedFor() throws IOException {
        assertThat(phone.get("/makes/demo/sew/3")).contains("Location: /join?to=/makes/demo/sew/3\r\n");
        assertThat(phone.get("/join?to=/makes/demo/sew/3")).contains("name=\"to\" value=\"/makes/demo/sew/3\"");
        String words = "phrase=" + WORDS.replace(' ', '+');
        assertThat(phone.post("/join", words + "&to=/makes/demo/sew/3")).contains("Location: /makes/demo/sew/3\r\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"//elsewhere.example", "/%5celsewhere", "http://elsewhere.example", "/a/../b", "%22><script>", ""
            })
    void nobodyIsLedElsewhere(String to) throws IOException {
        assertThat(phone.get("/join?to=" + to)).contains("name=\"to\" value=\"/\"");
        String sent = phone.post("/join", "phrase=" + WORDS.replace(' ', '+') + "&to=" + to);
        assertThat(sent).contains("Location: /\r\n");
    }

    @Test
    void theCookiesAreForNoScriptAndNoOtherSite() throws IOException {
        List<String> set = phone.post("/join", "phrase=" + WORDS.replace(' ', '+'))
                .lines()
                .filter(l -> l.startsWith("Set-Cookie: "))
                .toList();
        assertThat(set)
                .hasSize(2)
                .allSatisfy(c -> assertThat(c)
                        .contains("HttpOnly", "SameSite=Strict", "Path=/")
                        .doesNotContain("Domain"));
    }

    @Test
    void anInventedSessionIsNone() throws IOException {
        for (String token : List.of("0".repeat(32), "", "x", "../../x", "a".repeat(4000))) {
            String cookie = "Cookie: stretchwright-" + phone.port() + "=" + token;
            assertThat(Wire.status(phone.get("/", cookie))).as(token).isEqualTo(303);
        }
    }

    @Test
    void whoHasNotJoinedIsToldSoWhereAFormOrAScriptAsks() throws IOException {
        String form = phone.post("/all", "name=x");
        assertThat(Wire.status(form)).isEqualTo(403);
        assertThat(form).contains("Join first");
        assertThat(phone.get("/makes/demo", "HX-Request: true"))
                .startsWith("HTTP/1.1 403")
                .contains("HX-Redirect: /join");
    }

    /** Missing, forged, another browser's, only in the cookie, twice. */
    @Test
    void aFormWithoutItsSealIsRefused() throws IOException {
        String other = "f".repeat(32);
        String own = "Cookie: stretchwright-seal=" + Wire.SEAL;
        List<String> answers = List.of(
                here.post("/all", "name=x", "Cookie: a=b"),
                here.post("/all", "seal=" + Wire.SEAL + "&name=x", "Cookie: a=b"),
                here.post("/all", "name=x", own),
                here.post("/all", "seal=&name=x", own),
                here.post("/all", "seal=" + other, own),
                here.post("/all", "seal=" + Wire.SEAL + "&seal=" + other, own),
                here.post("/all", "seal=" + Wire.SEAL, own, "Seal: " + other),
                here.post("/all", "seal=x", "Cookie: stretchwright-seal=x"),
                here.post("/all", "seal=", "Cookie: stretchwright-seal="),
                phone.post("/join", "phrase=" + WORDS.replace(' ', '+'), own));
        for (String answer : answers) {
            assertThat(answer).startsWith("HTTP/1.1 403").contains("This form is not known here");
        }
        assertThat(Wire.status(here.post("/all", "name=x"))).isEqualTo(422);
        assertThat(Wire.status(here.post("/all", "name=x", own, "Seal: " + Wire.SEAL)))
                .isEqualTo(422);
    }

    @Test
    void everyAnswerTellsTheBrowserWhatToRefuse() throws IOException {
        List<String> answers = List.of(
                here.get("/"),
                here.get("/look.css"),
                here.get("/health"),
                here.get("/nothing"),
                here.get("/%2e%2e/"),
                here.ask("PUT /", ""),
                phone.get("/"),
                here.get("/", "Host: elsewhere.example"));
        for (String answer : answers) {
            Headers.all().forEach((name, value) -> assertThat(answer).contains(name + ": " + value + "\r\n"));
            assertThat(answer).doesNotContain("Server:", "X-Powered-By");
        }
    }

    @Tag("slow")
    @Test
    void aRestartAsksAgainAndAnOpenFormOutlivesIt() throws IOException {
        Server first = shared();
        Wire wire = Wire.to(first);
        String session = "Cookie: " + joined(wire);
        first.stop();
        Opening again = new Opening("127.0.0.1", wire.port(), Optional.of(Phrase.of(WORDS)));
        Server second = Server.start(new Address.Folder(Files.createTempDirectory("stretchwright-door")), again)
                .orElseThrow();
        assertThat(Wire.status(wire.get("/", session))).isEqualTo(303);
        assertThat(Wire.status(wire.post("/join", "phrase=" + WORDS.replace(' ', '+'))))
                .isEqualTo(303);
        second.stop();
    }

    /** By the thousand: none is right, few are even looked at, nobody who has joined waits, and memory stays as it was. */
    @Tag("slow")
    @Test
    void wrongPhrasesByTheThousand() throws IOException {
        Server own = shared();
        Wire wire = Wire.to(own);
        String session = "Cookie: " + joined(wire);
        wire.get("/makes/demo", session);
        long before = used();
        long start = System.nanoTime();
        List<Integer> answers = new ArrayList<>();
        List<Long> pages = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            answers.add(Wire.status(wire.post("/join", "phrase=chalk+canvas+comet+oyster+" + i)));
            if (i % 100 == 0) {
                long asked = System.nanoTime();
                assertThat(Wire.status(wire.get("/makes/demo", session))).isEqualTo(200);
                pages.add(Duration.ofNanos(System.nanoTime() - asked).toMillis());
            }
        }
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        long grown = used() - before;
        long looked = answers.stream().filter(a -> a == 422).count();
        System.out.printf(
                "3000 wrong phrases: %d looked at, %d ms, slowest page %d ms, memory %+d kB%n",
                looked, took.toMillis(), pages.stream().max(Long::compare).orElseThrow(), grown / 1000);
        assertThat(answers).containsOnly(422, 429);
        assertThat(looked).isBetween(1L, 6 + took.toSeconds() / 12);
        assertThat(pages).allSatisfy(p -> assertThat(p).isLessThan(1500));
        assertThat(grown).isLessThan(20_000_000);
        String refused = wire.post("/join", "phrase=" + WORDS.replace(' ', '+'));
        assertThat(refused).startsWith("HTTP/1.1 429").contains("Retry-After: ", "Too many tries.");
        own.stop();
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
