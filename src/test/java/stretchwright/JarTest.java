package stretchwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The built jar by itself: nothing that was left out of it is missed. */
class JarTest {
    private static final Path JAR = Path.of("target/stretchwright.jar");

    private static final String FORM = "unit=cm&name=Jar&wearer.figure=woman&wearer.measurements.hip+girth=96"
            + "&fabric.usable+width=147&fabric.stretch+across=60+%25&fabric.stretch+along=45+%25";

    private static final String SEAL = "0123456789abcdef".repeat(2);

    private @Nullable Process serving;

    private static ProcessBuilder java(String... words) throws IOException {
        assumeTrue(
                Files.exists(JAR)
                        && Files.getLastModifiedTime(JAR).compareTo(Files.getLastModifiedTime(Path.of("pom.xml"))) > 0,
                JAR + " is not built, or older than pom.xml: not looked at");
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()));
        command.addAll(List.of(words));
        return new ProcessBuilder(command);
    }

    @Test
    void theVersionIsAllItSays() throws Exception {
        Process process = java("--version").redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(said).matches("stretchwright \\S+\\R");
        assertThat(process.waitFor()).isZero();
    }

    /** In a thread of its own: what is waited for in vain cannot be interrupted, only ended by {@link #ended}. */
    @Tag("slow")
    @Test
    @Timeout(value = 3, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void thePageMakesAndShowsAndGivesItsFiles(@TempDir Path folder) throws Exception {
        Process page = java(
                        "serve",
                        "--no-browser",
                        "--workroom",
                        folder.resolve("room").toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        serving = page;
        try (BufferedReader told = page.errorReader(StandardCharsets.UTF_8)) {
            String first = String.valueOf(told.readLine());
            uses(first.replaceAll(".*(http://\\S+/) .*", "$1"));
            // by its handle: the process itself would close what is still to be read
            page.toHandle().destroy();
            assertThat(page.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(told.lines()).as("its address and nothing more").isEmpty();
        }
    }

    @AfterEach
    void ended() {
        if (serving != null) {
            serving.destroyForcibly();
        }
    }

    private static void uses(String page) throws Exception {
        assertThat(got(page).body()).contains("href=\"/new/1\"");
        assertThat(got(page + "htmx.js").body()).contains("htmx");
        assertThat(got(page + "join").body()).contains("serve --share");
        assertThat(got(page + "nothing").statusCode()).isEqualTo(404);
        HttpRequest form = HttpRequest.newBuilder(URI.create(page + "all"))
                .header("Cookie", "stretchwright-seal=" + SEAL)
                .header("seal", SEAL)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(FORM))
                .build();
        HttpResponse<String> made = HttpClient.newHttpClient().send(form, HttpResponse.BodyHandlers.ofString());
        assertThat(made.statusCode()).as(made.body()).isEqualTo(303);
        String at = page + made.headers().firstValue("Location").orElseThrow().substring(1);
        assertThat(got(at + "/print").body()).contains("pattern.svg");
        assertThat(got(at + "/all.zip").statusCode()).isEqualTo(200);
    }

    private static HttpResponse<String> got(String address) throws Exception {
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
    }
}
