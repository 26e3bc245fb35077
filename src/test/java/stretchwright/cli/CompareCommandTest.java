package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.SAXException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Two whole makes through the compare command. */
@Tag("slow")
class CompareCommandTest {
    private static final String EXAMPLE = "examples/evening-practice.yaml";

    @TempDir
    Path folder;

    private String out = "";
    private String err = "";

    private int run(String... args) {
        Ran ran = Ran.of((Object[]) args);
        out = ran.out();
        err = ran.err();
        return ran.code();
    }

    private String changed(String old, String now) throws IOException {
        String text = Files.readString(Path.of(EXAMPLE));
        assertThat(text).contains(old);
        Path file = folder.resolve("b & <c>.yaml");
        Files.writeString(file, text.replace(old, now));
        return file.toString();
    }

    private JsonNode json() throws IOException {
        return JsonMapper.builder().build().readTree(Files.readAllBytes(folder.resolve("out/compare.json")));
    }

    @Test
    void aWiderHipIsSeenAllTheWayDown() throws IOException, ParserConfigurationException, SAXException {
        String b = changed("hip girth: 96.1", "hip girth: 99.0");
        assertThat(run("compare", EXAMPLE, b, "--out", folder.resolve("out").toString()))
                .isZero();
        assertThat(out.lines()).allMatch(l -> l.length() <= 100);
        assertThat(out).contains("hip girth", "+2.9 cm", "hip: flat width");
        JsonNode compare = json().get("compare");
        assertThat(compare.at("/inputs/0/what").asString()).isEqualTo("hip girth");
        assertThat(compare.at("/inputs/0/change").asDouble()).isEqualTo(29);
        Path svg = folder.resolve("out/compare.svg");
        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(svg.toFile())
                        .getElementsByTagName("g")
                        .getLength())
                .isEqualTo(3);
        // the folder is known as its own and may be written again
        assertThat(run("compare", EXAMPLE, b, "--out", folder.resolve("out").toString(), "--json"))
                .isZero();
        assertThat(out).isEqualTo(Files.readString(folder.resolve("out/compare.json")));
    }

    @Test
    void theSameMakeTwiceDiffersInNothing() throws IOException {
        assertThat(run(
                        "compare",
                        EXAMPLE,
                        EXAMPLE,
                        "--out",
                        folder.resolve("out").toString()))
                .isZero();
        for (String part :
                new String[] {"inputs", "dimensions", "seams", "areas", "work", "fit", "onlyInA", "onlyInB"}) {
            assertThat(json().get("compare").get(part)).as(part).isEmpty();
        }
        json().get("compare")
                .get("verdicts")
                .forEach(v -> assertThat(v.get("status").asString()).isEqualTo("same"));
    }

    @Test
    void piecesOfOnlyOneAndNewVerdictsAreNamed() throws IOException {
        String b = changed("cuff: {height: 3.2}", "waistband: {height: 15}").toString();
        Files.writeString(
                Path.of(b),
                Files.readString(Path.of(b))
                        .replace("  waistband: {shape: straight, height: 6.5, elastic: none}\n", ""));
        assertThat(run("compare", EXAMPLE, b, "--out", folder.resolve("out").toString()))
                .isZero();
        assertThat(out).contains("Pieces only in A: cuff", "new caution: waistband");
        assertThat(run("compare", b, EXAMPLE, "--out", folder.resolve("out").toString()))
                .isZero();
        assertThat(out).contains("Only in B: cuff", "gone caution: waistband");
    }

    @Test
    void aMakeThatCannotWorkGivesThreeAndABrokenOneTwo() throws IOException {
        String stops = "examples/too-little-stretch.yaml";
        assertThat(run("compare", EXAMPLE, stops, "--out", folder.resolve("out").toString()))
                .isEqualTo(3);
        assertThat(folder.resolve("out/compare.svg")).exists();
        assertThat(run(
                        "compare",
                        EXAMPLE,
                        "examples/none.yaml",
                        "--out",
                        folder.resolve("x").toString()))
                .isEqualTo(2);
        assertThat(err).contains("no such file").doesNotContain("lay:");
        assertThat(folder.resolve("x")).doesNotExist();
    }

    /** Two makes that differ in nothing but own pressures and the pose tape do differ. */
    @Test
    void ownPressuresAndPoseLengthsAreInputs() throws IOException {
        Path a = folder.resolve("a.yaml");
        String text = Files.readString(Path.of(EXAMPLE));
        Files.writeString(a, text.replace("hold: medium", "hold: {calf: 8 mmHg}"));
        String b = changed("hold: medium", "hold: {calf: 10 mmHg, ankle: 12 mmHg}");
        Files.writeString(
                Path.of(b),
                Files.readString(Path.of(b))
                        .replace("  age: 31\n", "  age: 31\n  pose lengths: {top of thigh to shin: [52, 60]}\n"));
        run("compare", a.toString(), b, "--out", folder.resolve("out").toString());
        assertThat(out).contains("style hold calf", "+2.0 mmHg", "style hold ankle", "only in B");
        assertThat(out).contains("pose lengths top of thigh to shin", "52 cm, 60 cm");
    }
}
