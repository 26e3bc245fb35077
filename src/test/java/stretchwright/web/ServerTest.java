package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import stretchwright.ground.Document;
import stretchwright.intake.MakeFile;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.web.form.Form;

/** The page over real HTTP. */
class ServerTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    private static final HttpClient HTTP = HttpClient.newHttpClient();

    @Test
    void theFirstPageOfANewWorkroomIsEmptyAndTellsTheBrowserWhatToRefuse() throws Exception {
        Server fresh = Visitor.started();
        HttpResponse<String> page = new Visitor(fresh).get("");
        fresh.stop();
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("<html lang=\"en\"", "Nothing hangs here yet.", "href=\"/makes/demo\"", "href=\"/new/1\"")
                .doesNotContain("Rowan", "style=", "//");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                .startsWith("default-src 'none'")
                .doesNotContain("unsafe");
        assertThat(page.headers().firstValue("Cache-Control")).contains("no-store");
    }

    @Test
    void theDemoIsLookedAtAndStoredNowhere() throws Exception {
        for (String screen : List.of("", "/lay", "/print", "/sew", "/sew/2", "/numbers", "/all", "/file/pattern.svg")) {
            assertThat(PAGE.visitor().get("makes/demo" + screen).statusCode())
                    .as(screen)
                    .isEqualTo(200);
        }
        assertThat(PAGE.visitor().get("makes/demo").body()).contains("Rowan", "FRONT", "BACK");
        assertThat(PAGE.visitor().get("").body()).doesNotContain("href=\"/makes/demo\"><svg");
    }

    @Test
    void anotherPlaceOfAListIsAddedWithoutLosingWhatWasTyped() throws Exception {
        Map<String, List<String>> typed = Map.of(
                "name", List.of("Two pockets"),
                "style.pockets.1.kind", List.of("phone"),
                "style.pockets.1.width", List.of("9"));
        HttpResponse<String> page = PAGE.visitor().post("all/more", typed);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("value=\"Two pockets\"", "name=\"style.pockets.2.kind\"");
    }

    @Test
    void aFindingInAListStandsAtItsField() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("style.pockets.1.kind", List.of("phone"));
        typed.put("style.pockets.1.width", List.of("9"));
        typed.put("style.pockets.1.height", List.of("tall"));
        HttpResponse<String> answer = PAGE.visitor().post(typed);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"style-pockets-1-height-wrong\"", "<details open>");
    }

    @Tag("slow")
    @Test
    void aPressShowsTheResultAndItsFilesAreThoseOfTheCommand() throws Exception {
        HttpResponse<String> answer = PAGE.visitor().post(Visitor.example());
        assertThat(answer.statusCode()).isEqualTo(303);
        String at = Visitor.at(answer);
        assertThat(PAGE.visitor().get(at).body()).contains("mid-thigh", "Rowan");
        assertThat(PAGE.visitor().get(at + "/lay").body()).contains("class=\"ground\"", "Cutting card");
        assertThat(PAGE.visitor().get(at + "/print").body()).contains("pattern.svg");
        assertThat(PAGE.visitor().get(at + "/numbers").body())
                .contains("/file/fit.svg\"", "/file/load.svg\"", "Poses: stretch needed", "wanted mmHg");
        byte[] yaml = PAGE.visitor().bytes(at + "/make.yaml");
        Made made =
                stretchwright.make.Session.of(Make.read("form", yaml)).made(stretchwright.print.kit.FileGroup.all());
        assertThat(PAGE.visitor().get(at + "/sew").body())
                .contains(stretchwright.ground.Voice.plain()
                        .say(made.sewing().operations().get(0).name().said()));
        Map<String, byte[]> zipped = Visitor.unzipped(PAGE.visitor().bytes(at + "/all.zip"));
        assertThat(zipped).hasSize(made.documents().size() + 1);
        assertThat(PAGE.visitor().get(at + "/file/pattern.dxf").headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("image/vnd.dxf"));
        assertThat(PAGE.visitor().get(at + "/file/report.json").headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("application/json"));
        for (Document d : made.documents()) {
            assertThat(PAGE.visitor().bytes(at + "/file/" + d.name()))
                    .as(d.name())
                    .isEqualTo(d.bytes());
            assertThat(zipped.get(d.name())).as("zipped " + d.name()).isEqualTo(d.bytes());
        }
        assertThat(PAGE.visitor().get(at + "/all").body()).contains("value=\"Rowan\"");
        assertThat(PAGE.visitor().get(at + "/file/nothing.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void findingsStandAtTheirFieldsWithWhatWasTyped() throws Exception {
        Map<String, List<String>> typed = Visitor.example();
        typed.put("wearer.measurements.hip girth", List.of("ninety"));
        typed.put("fabric.stretch across", List.of("sixty"));
        typed.remove("fabric.usable width");
        HttpResponse<String> answer = PAGE.visitor().post(typed);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("value=\"ninety\"", "value=\"sixty\"", "id=\"wearer-measurements-hip-girth-wrong\"")
                .contains("id=\"fabric-stretch-across-wrong\"", "id=\"fabric-usable-width-wrong\"")
                .contains("href=\"#wearer-measurements-hip-girth\"")
                .doesNotContain("id=\"fabric-stretch-along-wrong\"");
        assertThat(answer.body().split(" autofocus", -1))
                .as("one place takes the focus")
                .hasSize(2);
    }

    @Test
    void hostileNamesAreTextOnly() throws Exception {
        String nasty = "\"><script>alert(1)</script> ' \\ : # \u202Eabc \uD83D\uDE00";
        Map<String, List<String>> typed = Visitor.example();
        typed.put("name", List.of(nasty));
        typed.put("wearer.age", List.of("x"));
        assertThat(PAGE.visitor().post(typed).body()).contains("&lt;script>").doesNotContain("<script>alert");
        MakeFile read = Make.read(
                "x",
                new Form(Map.of(
                                "name",
                                List.of(nasty),
                                "unit",
                                List.of("cm"),
                                "wearer.figure",
                                List.of("woman"),
                                "wearer.measurements.hip girth",
                                List.of("96"),
                                "fabric.usable width",
                                List.of("147"),
                                "fabric.stretch across",
                                List.of("60"),
                                "fabric.stretch along",
                                List.of("45")))
                        .makeText()
                        .getBytes(StandardCharsets.UTF_8));
        assertThat(read.name()).isEqualTo(nasty);
        typed.put("name", List.of("n".repeat(10_000)));
        assertThat(PAGE.visitor().post(typed).statusCode()).isEqualTo(422);
    }

    @Test
    void whatIsNotAskedForIsRefusedWithAPlainPage() throws Exception {
        assertThat(PAGE.visitor().get("makes/nothing").statusCode()).isEqualTo(404);
        assertThat(PAGE.visitor().get("makes/nothing").body()).contains("<bdi>Nothing here</bdi>");
        assertThat(PAGE.visitor().get("nowhere").statusCode()).isEqualTo(404);
        Map<String, List<String>> large = Map.of("name", List.of("n".repeat(300_000)));
        assertThat(PAGE.visitor().post(large).statusCode()).isEqualTo(413);
        HttpRequest foreign = HttpRequest.newBuilder(URI.create(PAGE.server().address() + "all"))
                .header("Origin", "http://elsewhere.example")
                .POST(HttpRequest.BodyPublishers.ofString("name=x"))
                .build();
        assertThat(HTTP.send(foreign, HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(403);
    }

    @Test
    void aForeignHostIsRefused() throws Exception {
        int port = URI.create(PAGE.server().address()).getPort();
        try (Socket socket = new Socket("127.0.0.1", port)) {
            String request = "GET / HTTP/1.1\r\nHost: elsewhere.example:" + port + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 403").doesNotContain("Rowan");
        }
    }

    @Test
    void aTakenPortIsToldByAnEmptyAnswer() throws Exception {
        java.nio.file.Path folder = java.nio.file.Files.createTempDirectory("stretchwright-page");
        assertThat(Server.start(
                        new stretchwright.workroom.store.Address.Folder(folder),
                        URI.create(PAGE.server().address()).getPort()))
                .isEmpty();
    }
}
