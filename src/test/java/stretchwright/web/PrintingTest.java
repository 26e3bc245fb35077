package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The pattern on paper over real HTTP: which paper, which sheets, and what was printed before. */
class PrintingTest {
    private static Server server;
    private static Visitor visitor;
    private static String make;
    private static String print;

    @BeforeAll
    static void start() throws Exception {
        server = Visitor.started();
        visitor = new Visitor(server);
        make = visitor.make();
        print = make + "/print";
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    @BeforeEach
    void onA4() throws Exception {
        paper("A4");
    }

    @Test
    void theTickedSheetsAreThePagesOfTheWholeFileAndNoOthers() throws Exception {
        List<String> sheets = sheets(page());
        String two = sheets.get(3) + "," + sheets.get(5);
        HttpResponse<String> sent = print(List.of(sheets.get(3), sheets.get(5)));
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(Visitor.at(sent)).isEqualTo(print + "/pattern-A4.pdf?sheets=" + two);
        byte[] whole = visitor.bytes(make + "/file/pattern-A4.pdf");
        byte[] part = visitor.bytes(Visitor.at(sent));
        try (PDDocument all = Loader.loadPDF(whole);
                PDDocument chosen = Loader.loadPDF(part)) {
            int before = all.getNumberOfPages() - sheets.size();
            assertThat(chosen.getNumberOfPages()).isEqualTo(2);
            assertThat(content(chosen, 0)).isEqualTo(content(all, before + 3));
            assertThat(content(chosen, 1)).isEqualTo(content(all, before + 5));
            assertThat(chosen.getPage(0).getMediaBox().toString())
                    .isEqualTo(all.getPage(before).getMediaBox().toString());
        }
        assertThat(visitor.bytes(Visitor.at(sent))).as("the same each time").isEqualTo(part);
        List<String> every = new ArrayList<>(sheets);
        every.add(0, "map");
        assertThat(visitor.bytes(Visitor.at(print(every)))).isEqualTo(whole);
    }

    @Tag("slow")
    @Test
    void afterAChangeThoseAreTickedThatWereNotPrintedAsTheyAreNow() throws Exception {
        List<String> sheets = sheets(page());
        print(withMap(sheets));
        assertThat(page()).contains("All of them were printed as they are now.");
        changed("style.waistband.height", "75 mm");
        assertThat(page()).as("a higher band lowers the leg").doesNotContain("printed as they are now.");
        List<String> first = withMap(sheets(page()).subList(0, 4));
        print(first);
        List<String> rest = sheets(page()).subList(4, sheets(page()).size());
        assertThat(ticked(page())).isEqualTo(rest);
        assertThat(ticked(get(print + "?only=all"))).isEqualTo(withMap(sheets(page())));
        print(rest);
        assertThat(page()).contains("All of them were printed as they are now.");
    }

    @Test
    void aPieceTicksTheSheetsThatCarryIt() throws Exception {
        String page = page();
        List<String> band = ticked(get(print + "?only=waistband"));
        assertThat(page).contains(">Waistband</a>: " + String.join(", ", band) + "<");
        assertThat(band).isNotEmpty().hasSizeLessThan(sheets(page).size());
        assertThat(ticked(get(print + "?only=%3Cb%3E"))).isEqualTo(ticked(get(print + "?only=all")));
    }

    @Tag("slow")
    @Test
    void thePaperIsAChangeOfTheMake() throws Exception {
        assertThat(sheets(page()).size()).isGreaterThan(10);
        assertThat(paper("A0").statusCode()).isEqualTo(303);
        assertThat(page()).contains("A0, ", "value=\"A0\" aria-pressed=\"true\"");
        assertThat(sheets(page()).size()).isLessThan(4);
        assertThat(visitor.text(make)).contains("paper: \"A0\"");
        HttpResponse<String> roll = visitor.post(
                print + "/paper",
                Map.of(
                        "seen", List.of(seen()),
                        "other", List.of("yes"),
                        "print.paper", List.of("roll 914 mm"),
                        "print.margin", List.of("5 mm")));
        assertThat(roll.statusCode()).isEqualTo(303);
        assertThat(page()).contains("roll 914 mm, ", "leaves 5 mm white");
        visitor.post(print + "/paper", Map.of("seen", List.of(seen()), "other", List.of("yes")));
        assertThat(page()).as("as usual").contains("A4, ", "leaves 10 mm white");
    }

    @Test
    void paperThatCannotBeIsToldAndKeptAsTyped() throws Exception {
        for (String wrong : List.of("A9", "5 x 5 in", "<b>paper</b>", "'; DROP TABLE thing; --")) {
            HttpResponse<String> answer = visitor.post(
                    print + "/paper",
                    Map.of("seen", List.of(seen()), "other", List.of("yes"), "print.paper", List.of(wrong)));
            assertThat(answer.statusCode()).as(wrong).isEqualTo(422);
            assertThat(answer.body())
                    .as(wrong)
                    .contains("value=\"" + wrong.replace("<", "&lt;").replace("'", "&#39;"))
                    .contains("role=\"alert\"")
                    .doesNotContain("<b>paper");
        }
        assertThat(page()).contains("A4, ");
    }

    @Test
    void whatIsNotASheetIsNotPrinted() throws Exception {
        String file = print + "/pattern-A4.pdf";
        for (String wrong :
                List.of("", "?sheets=", "?sheets=ZZ99", "?sheets=0", "?sheets=-1", "?sheets=A1,%3Cb%3E", "?sheets=,")) {
            assertThat(visitor.get(file + wrong).statusCode()).as(wrong).isEqualTo(404);
        }
        assertThat(visitor.get(print + "/other.pdf?sheets=map").statusCode()).isEqualTo(404);
        HttpResponse<String> nothing = print(List.of());
        assertThat(nothing.statusCode()).isEqualTo(422);
        assertThat(nothing.body()).contains("Nothing is ticked.");
        assertThat(print(List.of("ZZ99")).statusCode()).isEqualTo(409);
        String sheet = sheets(page()).get(0);
        HttpResponse<String> stale = visitor.post(print, Map.of("seen", List.of("1"), "sheet", List.of(sheet, "map")));
        assertThat(stale.statusCode()).isEqualTo(409);
        assertThat(stale.body()).contains("changed in another window");
        assertThat(ticked(stale.body())).as("what was ticked stays").containsExactlyInAnyOrder("map", sheet);
    }

    @Test
    void theSquareIsAnsweredAndSaysWhatToDo() throws Exception {
        assertThat(page()).contains("does the square measure 10 cm?").doesNotContain("The print was");
        assertThat(get(print + "?square=smaller")).contains("The print was shrunk.");
        assertThat(get(print + "?square=larger")).contains("The print was enlarged.");
        assertThat(get(print + "?square=yes")).contains("Then it is true to size.");
        assertThat(get(print + "?square=%3Cb%3E")).doesNotContain("<b>", "The print was");
    }

    @Test
    void ofTheDemoNothingIsRememberedAndNothingChanged() throws Exception {
        HttpResponse<String> sent =
                visitor.post("makes/demo/print", Map.of("seen", List.of("1"), "sheet", List.of("map")));
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(visitor.get(Visitor.at(sent)).statusCode()).isEqualTo(200);
        assertThat(visitor.post("makes/demo/print/paper", Map.of("print.paper", List.of("A3")))
                        .statusCode())
                .isEqualTo(404);
        assertThat(get("makes/demo/print")).doesNotContain("/print/paper");
    }

    private HttpResponse<String> print(List<String> sheets) throws Exception {
        return visitor.post(print, Map.of("seen", List.of(seen()), "sheet", sheets));
    }

    private HttpResponse<String> paper(String name) throws Exception {
        return visitor.post(print + "/paper", Map.of("seen", List.of(seen()), "print.paper", List.of(name)));
    }

    private void changed(String key, String value) throws Exception {
        assertThat(visitor.post(make + "/change", Map.of("seen", List.of(seen()), key, List.of(value)))
                        .statusCode())
                .isEqualTo(303);
    }

    private static String get(String path) throws Exception {
        return visitor.get(path).body();
    }

    private static String page() throws Exception {
        return get(print);
    }

    private static String seen() throws Exception {
        return visitor.seen(print);
    }

    private static List<String> sheets(String page) {
        return all(page, "name=\"sheet\" value=\"([A-Z]+[0-9]+)\"");
    }

    private static List<String> ticked(String page) {
        return all(page, "name=\"sheet\" value=\"([^\"]*)\" checked");
    }

    private static List<String> withMap(List<String> sheets) {
        List<String> all = new ArrayList<>(sheets);
        all.add("map");
        return all;
    }

    private static List<String> all(String page, String pattern) {
        List<String> found = new ArrayList<>();
        Matcher m = Pattern.compile(pattern).matcher(page);
        while (m.find()) {
            found.add(m.group(1));
        }
        return found;
    }

    private static String content(PDDocument pdf, int page) throws IOException {
        return Arrays.toString(pdf.getPage(page).getContents().readAllBytes());
    }
}
