package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stretchwright.body.Measure;
import stretchwright.make.Make;

/** What measures usually are holds of real bodies and of the examples: nobody is asked about a number that is right. */
class MeasuresTest {
    private static final Pattern GIVEN = Pattern.compile("([a-z -]+?) ([0-9.]+)");

    private static boolean isUsual(Measure measure, double mm) {
        return Measures.kind(measure).usual().orElseThrow().holds(mm);
    }

    /** First rows of the US Army survey of 2012. */
    @Test
    void realBodiesAreUsual() throws IOException {
        List<String> given = Files.readAllLines(Path.of("src/test/cases/body/fixtures.txt")).stream()
                .filter(l -> l.startsWith("given: "))
                .toList();
        assertThat(given).hasSizeGreaterThan(5);
        for (String line : given) {
            for (String one : line.substring("given: ".length()).split("; ")) {
                Matcher m = GIVEN.matcher(one);
                assertThat(m.matches()).as(one).isTrue();
                assertThat(isUsual(Measure.of(m.group(1)).orElseThrow(), Double.parseDouble(m.group(2))))
                        .as(one)
                        .isTrue();
            }
        }
    }

    @Test
    void theWearersOfTheExamplesAreUsual() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            for (Path file : files.filter(p -> p.toString().endsWith(".yaml")).toList()) {
                String text = Files.readString(file);
                Map<Measure, Double> given = Make.read(file.toString(), text.getBytes(StandardCharsets.UTF_8))
                        .given();
                given.forEach((measure, mm) -> assertThat(isUsual(measure, mm))
                        .as("%s: %s %s", file, measure, mm)
                        .isTrue());
            }
        }
    }

    /** By hand: a child of three, 95 cm tall, and a man of 2.05 m with a hip of 150 cm. */
    @Test
    void smallChildrenAndLargeAdultsAreUsual() {
        assertThat(isUsual(Measure.STATURE, 950)).isTrue();
        assertThat(isUsual(Measure.HIP_GIRTH, 520)).isTrue();
        assertThat(isUsual(Measure.KNEE_HEIGHT, 240)).isTrue();
        assertThat(isUsual(Measure.STATURE, 2050)).isTrue();
        assertThat(isUsual(Measure.HIP_GIRTH, 1500)).isTrue();
        assertThat(isUsual(Measure.STATURE, 64)).isFalse();
    }
}
