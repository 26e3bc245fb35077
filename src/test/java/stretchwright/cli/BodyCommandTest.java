package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.ground.RandomStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The body command through the whole program; all bodies invented. */
class BodyCommandTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String WEARER = """
            unit: cm
            wearer:
              name: Rowan
              figure: woman
              measurements:
                stature: 162.7
                hip girth: [96.0, 96.2]
                crotch height: 77.2
                calf girth: {left: 35.0, right: 33.0}
            """;

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void aFileWithOnlyAWearerIsShownAsATable() throws IOException {
        Ran ran = Ran.of("body", file("w.yaml", WEARER));
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(0);
        assertThat(ran.out().lines())
                .anyMatch(l -> l.matches("  hip girth +96\\.1 +given +\\+- 0\\.3 +\\d+\\.\\d \\+- \\d+\\.\\d"))
                .anyMatch(l -> l.matches("  knee girth +\\d+\\.\\d +estimated +\\+- \\d\\.\\d"))
                .anyMatch(l -> l.matches("    right +33\\.0 +given.*"))
                .anyMatch(l -> l.startsWith("measure next: "));
    }

    @Test
    void theDrawingAndItsNumbersAreWrittenAndReplaced() throws IOException {
        Path w = file("w.yaml", WEARER);
        Path out = folder.resolve("out");
        assertThat(Ran.of("body", w, "--out", out).code()).isEqualTo(0);
        assertThat(Files.readString(out.resolve("body.svg"))).contains("L 35.0, R 33.0", "hip girth 96.1", "~");
        Ran again = Ran.of("body", w, "--out", out, "--json");
        assertThat(again.code()).isEqualTo(0);
        JsonNode json = JSON.readTree(again.out());
        assertThat(JSON.readTree(Files.readAllBytes(out.resolve("body.json")))).isEqualTo(json);
        assertThat(json.at("/measurements/hip girth/value").asDouble()).isEqualTo(961);
        assertThat(json.at("/measurements/calf girth/right/value").asDouble()).isEqualTo(330);
        Files.writeString(out.resolve("mine.txt"), "mine");
        assertThat(Ran.of("body", w, "--out", out).code()).isEqualTo(2);
    }

    @Test
    void aSlipIsShownBesideWhatTheOthersSayAndNothingIsWritten() throws IOException {
        Path out = folder.resolve("out");
        Path w = file("w.yaml", WEARER.replace("77.2", "30.4"));
        Ran ran = Ran.of("body", w, "--out", out);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith(w + ": wearer.measurements.crotch height: ");
        assertThat(ran.out().lines()).anyMatch(l -> l.matches("  crotch height +30\\.4 .*FINDING: .*"));
        assertThat(out).doesNotExist();
        assertThat(JSON.readTree(Ran.of("body", w, "--json").out())
                        .at("/findings/0/key")
                        .asString())
                .isEqualTo("wearer.measurements.crotch height");
    }

    @Test
    void badFilesAndArgumentsAreFindings() throws IOException {
        assertThat(Ran.of("body").code()).isEqualTo(2);
        assertThat(Ran.of("body", folder.resolve("none.yaml")).code()).isEqualTo(2);
        assertThat(Ran.of("body", file("e.yaml", "")).code()).isEqualTo(2);
        assertThat(Ran.of("body", file("u.yaml", WEARER.replace("unit: cm\n", "")))
                        .code())
                .isEqualTo(2);
        assertThat(Ran.of("body", file("n.yaml", WEARER.replace("162.7", ".nan")))
                        .code())
                .isEqualTo(2);
        assertThat(Ran.of("body", file("t.csv", "figure,stature\nwoman,160\n")).code())
                .isEqualTo(2);
        Path out = folder.resolve("o");
        assertThat(Ran.of("body", file("h.csv", "figure,statur\nwoman,160\n"), "--unit", "cm", "--out", out)
                        .err())
                .contains("Is \"stature\" meant?");
        assertThat(Ran.of("body", file("l.csv", "figure,stature\nwoman,160\n"), "--unit", "ell", "--out", out)
                        .err())
                .contains("--unit");
        assertThat(out).doesNotExist();
    }

    @Test
    void theGuideIsToldWithoutAFile() throws IOException {
        Ran ran = Ran.of("body", "--guide");
        assertThat(ran.code()).isEqualTo(0);
        assertThat(ran.out()).isEqualTo(Files.readString(Path.of("docs/measuring.md")));
    }

    @Test
    void goodRowsAreWrittenThoughOthersAreBroken() throws IOException {
        Path table = file("t.csv", """
                name,figure,age,unit,stature,hip girth
                "Rowan, A",woman,31,,162.7,96.1
                Kim,woman,,in,64,"38 1/2"
                Lee,lord,,,160,90
                Ash,child,9,mm,1330,6900
                =evil,man,,cm,177,-4
                Sam,man,,,177,98,12
                """);
        Path out = folder.resolve("out");
        Ran ran = Ran.of("body", table, "--unit", "cm", "--out", out);
        assertThat(ran.code()).isEqualTo(2);
        List<String> rows = Files.readAllLines(out.resolve("bodies.csv"));
        assertThat(rows).hasSize(3);
        assertThat(rows.get(1)).startsWith("2,\"Rowan, A\",woman,31,mm,1627,given,3.6,");
        assertThat(rows.get(2)).startsWith("3,Kim,woman,,mm,1625.6,given,").contains(",977.9,given,");
        assertThat(ran.err().lines())
                .anyMatch(l -> l.contains("row 4, column figure"))
                .anyMatch(l -> l.contains("row 5, column hip girth"))
                .anyMatch(l -> l.contains("row 6, column hip girth"))
                .anyMatch(l -> l.contains("row 7: has 7 cells"));
        assertThat(Ran.of("body", table, "--unit", "cm", "--out", out).code()).isEqualTo(2);
    }

    /** One document, with or without a folder: good rows, broken ones by row and column in the row's own unit. */
    @Test
    void aTableAsJsonIsOneDocument() throws IOException {
        Path table = file("t.csv", """
                name,figure,age,unit,stature,hip girth
                "Rowan, A",woman,31,,162.7,96.1
                Lee,lord,,,160,
                Ash,child,9,in,52.4,272
                Sam,man,,,177,98,12
                """);
        Ran ran = Ran.of("body", table, "--unit", "cm", "--json");
        assertThat(ran.code()).isEqualTo(2);
        JsonNode json = JSON.readTree(ran.out());
        assertThat(json.get("bodyTable").asInt()).isEqualTo(1);
        assertThat(json.get("bodies")).hasSize(1);
        assertThat(json.at("/bodies/0/row").asInt()).isEqualTo(2);
        assertThat(json.at("/bodies/0/name").asString()).isEqualTo("Rowan, A");
        assertThat(json.at("/bodies/0/measurements/hip girth/value").asDouble()).isEqualTo(961);
        assertThat(json.at("/bodies/0/measurements")).hasSize(19);
        assertThat(json.at("/bodies/0/measurements/calf girth/origin").asString())
                .isEqualTo("estimated");
        assertThat(json.get("broken")).hasSize(3);
        assertThat(json.at("/broken/0/row").asInt()).isEqualTo(3);
        assertThat(json.at("/broken/0/column").asString()).isEqualTo("figure");
        assertThat(json.at("/broken/1/column").asString()).isEqualTo("hip girth");
        assertThat(json.at("/broken/1/problem").asString()).contains("is no measure of a body");
        assertThat(json.at("/broken/2/column").asString()).isEmpty();
        Path out = folder.resolve("out");
        assertThat(Ran.of("body", table, "--unit", "cm", "--json", "--out", out).out())
                .isEqualTo(ran.out());
        assertThat(out.resolve("bodies.csv")).exists();
        assertThat(Ran.of("body", file("h.csv", "figur\nwoman\n"), "--json").out())
                .isEmpty();
    }

    @Test
    void aSlipOnOneLegIsNamedWithItsSide() throws IOException {
        Path w = file("w.yaml", WEARER.replace("{left: 35.0, right: 33.0}", "{left: 53.2, right: 35.0}"));
        Ran ran = Ran.of("body", w);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .startsWith(w + ": wearer.measurements.calf girth.left: 53.2 cm ")
                .contains("two digits swapped, 35.2 cm?");
        assertThat(ran.out().lines()).anyMatch(l -> l.startsWith("  calf girth") && l.contains("FINDING"));
    }

    @Test
    void semicolonsAndDecimalCommasAreRead() throws IOException {
        Path out = folder.resolve("out");
        Path table = file("s.csv", "\uFEFFname;figure;stature\r\nKim;woman;162,7\r\n");
        assertThat(Ran.of("body", table, "--unit", "cm", "--out", out).err()).isEmpty();
        assertThat(Files.readAllLines(out.resolve("bodies.csv")).get(1)).contains(",1627,given,");
    }

    /** 10,000 rows, every 333rd broken: 30 findings, the rest written; the time is printed. */
    @Test
    @Tag("slow")
    void tenThousandBodiesInAFewSeconds() throws IOException {
        RandomStream random = new RandomStream(1);
        StringBuilder table = new StringBuilder("name,figure,stature,waist girth,hip girth,crotch height,calf girth\n");
        for (int i = 1; i <= 10_000; i++) {
            double scale = random.between(0.94, 1.06);
            double hip = i % 333 == 0 ? 9610 : 961 * scale;
            table.append(String.format(
                    Locale.ROOT,
                    "b%d,woman,%.0f,%.0f,%.0f,%.0f,%.0f%n",
                    i,
                    1627 * scale,
                    742 * scale,
                    hip,
                    772 * scale,
                    350 * scale));
        }
        Path file = file("many.csv", table.toString());
        Path out = folder.resolve("out");
        long start = System.nanoTime();
        Ran ran = Ran.of("body", file, "--unit", "mm", "--out", out);
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "10000 bodies: %.2f s%n", seconds);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().lines().filter(l -> l.contains("column hip girth")))
                .hasSize(30);
        assertThat(Files.readAllLines(out.resolve("bodies.csv"))).hasSize(1 + 10_000 - 30);
        assertThat(seconds).isLessThan(15);
    }

    @Test
    void oneIsTold() throws IOException {
        Path one = file("one.csv", "figure,stature\nwoman,162.7\n");
        assertThat(Ran.of("body", one, "--unit", "cm", "--out", folder.resolve("a"))
                        .out())
                .isEqualTo("1 body written, 0 findings\n");
        Path none = file("none.csv", "figure,stature\nwoman,-1\n");
        assertThat(Ran.of("body", none, "--unit", "cm", "--out", folder.resolve("b"))
                        .out())
                .isEqualTo("0 bodies written, 1 finding\n");
        Path two = file("two.csv", "figure,stature\nwoman,162.7\nman,177\nman,x\nman,y\n");
        assertThat(Ran.of("body", two, "--unit", "cm", "--out", folder.resolve("c"))
                        .out())
                .isEqualTo("2 bodies written, 2 findings\n");
    }

    private static final String INCHES = """
            unit: in
            wearer:
              name: Alex
              figure: man
              measurements: {stature: 70, waist girth: 34 1/2, hip girth: 39}
            """;

    @Test
    void theUnitOfTheTableIsNamed() throws IOException {
        assertThat(Ran.of("body", file("in.yaml", INCHES)).out()).startsWith("Alex, man, in inches\n");
        assertThat(Ran.of("body", file("no.yaml", INCHES.replace("  name: Alex\n", "")))
                        .out())
                .startsWith("man, in inches\n");
        assertThat(Ran.of("body", file("cm.yaml", WEARER)).out()).startsWith("Rowan, woman, in cm\n");
    }

    /** The digits are those the maker wrote: 19 1/2 in are 495 mm, and 945 mm are nothing that was ever swapped. */
    @Test
    void digitsAreSwappedInTheUnitTheyWereWrittenIn() throws IOException {
        Ran fraction = Ran.of("body", file("f.yaml", INCHES.replace("34 1/2", "19 1/2")));
        assertThat(fraction.err()).contains("waist girth").doesNotContain("two digits swapped");
        Ran whole = Ran.of("body", file("w.yaml", INCHES.replace("hip girth: 39", "hip girth: 93 in")));
        assertThat(whole.err()).contains("two digits swapped, 39 in?");
        Ran half = Ran.of("body", file("h.yaml", INCHES.replace("hip girth: 39", "hip girth: 93 1/2 in")));
        assertThat(half.err()).contains("two digits swapped, 39 1/2 in?");
    }

    @Test
    void digitsOfOneLegAreSwappedInInchesToo() throws IOException {
        Path w = file("w.yaml", INCHES.replace("hip girth: 39", "hip girth: 39, calf girth: {left: 41 in, right: 14}"));
        assertThat(Ran.of("body", w).err())
                .contains("wearer.measurements.calf girth.left: 41 in ")
                .contains("two digits swapped, 14 in?");
    }
}
