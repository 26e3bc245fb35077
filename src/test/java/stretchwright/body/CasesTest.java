package stretchwright.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;

/** The cases under src/test/cases/body, each with its source in the file. */
class CasesTest {
    private record Line(String key, String text) {}

    @TestFactory
    Stream<DynamicTest> bodies() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("src/test/cases/body"))) {
            for (Path file : files.sorted().toList()) {
                for (List<Line> lines : cases(Files.readAllLines(file))) {
                    tests.add(
                            DynamicTest.dynamicTest(file.getFileName() + ": " + lines.get(0).text, () -> check(lines)));
                }
            }
        }
        assertThat(tests).hasSizeGreaterThan(25);
        return tests.stream();
    }

    private static List<List<Line>> cases(List<String> text) {
        List<List<Line>> cases = new ArrayList<>();
        for (String line : text) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] parts = line.split(":", 2);
            if (parts[0].equals("case")) {
                cases.add(new ArrayList<>());
            }
            cases.get(cases.size() - 1).add(new Line(parts[0], parts[1].strip()));
        }
        return cases;
    }

    private static void check(List<Line> lines) {
        Figure figure = Figure.valueOf(texts(lines, "figure").get(0).toUpperCase(Locale.ROOT));
        OptionalDouble age =
                texts(lines, "age").stream().mapToDouble(Double::parseDouble).findFirst();
        Map<Measure, Double> given = new EnumMap<>(Measure.class);
        for (String part : texts(lines, "given").get(0).split(";")) {
            int blank = part.strip().lastIndexOf(' ');
            given.put(
                    measure(part.strip().substring(0, blank)),
                    Double.parseDouble(part.strip().substring(blank + 1)));
        }
        Findings findings = new Findings("case");
        Optional<Body> body = Measuring.body(figure, age, given, findings);
        checkFindings(lines, findings.all());
        for (String expect : texts(lines, "expect")) {
            String[] parts = expect.split(" within ");
            int blank = parts[0].lastIndexOf(' ');
            assertThat(body.orElseThrow().mm(measure(parts[0].substring(0, blank))))
                    .as(expect)
                    .isCloseTo(
                            Double.parseDouble(parts[0].substring(blank + 1)),
                            org.assertj.core.data.Offset.offset(Double.parseDouble(parts[1])));
        }
        List<String> doubts = texts(lines, "doubt");
        if (!doubts.isEmpty()) {
            assertThat(Measuring.doubts(body.orElseThrow()).stream()
                            .map(d -> d.measure().term()))
                    .isEqualTo(doubts.equals(List.of("none")) ? List.of() : doubts);
        }
    }

    private static void checkFindings(List<Line> lines, List<Finding> findings) {
        String all = findings.stream().map(Finding::line).collect(Collectors.joining("\n"));
        List<String> wanted = texts(lines, "finding");
        assertThat(findings.stream().map(f -> f.key().substring(f.key().lastIndexOf('.') + 1)))
                .as(all)
                .containsExactlyInAnyOrderElementsOf(wanted.equals(List.of("none")) ? List.of() : wanted);
        texts(lines, "says").forEach(words -> assertThat(all).contains(words));
    }

    private static Measure measure(String term) {
        return Measure.of(term).orElseThrow(() -> new AssertionError("no measure " + term));
    }

    private static List<String> texts(List<Line> lines, String key) {
        return lines.stream().filter(l -> l.key.equals(key)).map(Line::text).toList();
    }
}
