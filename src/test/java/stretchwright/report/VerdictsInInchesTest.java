package stretchwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.fit.FitReport;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.InUnit;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.print.fit.FitTables;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Every example, as a maker in inches has it: verdicts, what was tried and the fit sheet are told as a tape reads them. */
@Tag("slow")
class VerdictsInInchesTest {
    private static final Pattern DECIMAL_INCHES = Pattern.compile("\\d\\.\\d+( to [\\d./ ]+)? in\\b");

    /** Millimetres that nobody in inches can measure by; what is sewn has its inches behind it. */
    private static final Pattern MILLIMETRES = Pattern.compile("\\d mm\\b(?! \\()");

    private static final Pattern INCHES = Pattern.compile("\\d in\\b");
    private static final Pattern TAPE = Pattern.compile("[-+]?(\\d+|(\\d+ )?\\d+/(2|4|8|16))");

    static Stream<Path> examples() throws IOException {
        return Files.list(Path.of("examples"))
                .filter(f -> f.toString().endsWith(".yaml"))
                .sorted();
    }

    private static Session session(Path example) throws IOException {
        MakeFile make = Make.read(example.toString(), Files.readAllBytes(example));
        return Session.of(InUnit.of(make, Unit.IN));
    }

    private static List<String> told(JsonNode node) {
        List<String> out = new ArrayList<>();
        if (node.isString()) {
            out.add(node.asString());
        }
        node.forEach(n -> out.addAll(told(n)));
        return out;
    }

    @ParameterizedTest
    @MethodSource("examples")
    void lengthsAreSixteenths(Path example) throws IOException {
        FitReport fit = session(example).advised();
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        ReportResults.fit(out, fit, Voice.of(Unit.IN));
        List<String> told = told(out);
        assertThat(told).anyMatch(words -> INCHES.matcher(words).find());
        assertThat(told)
                .noneMatch(words -> DECIMAL_INCHES.matcher(words).find())
                .noneMatch(words -> MILLIMETRES.matcher(words).find());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void tablesAreTooWhereTheyTellLengths(Path example) throws IOException {
        Session session = session(example);
        List<FitTables.Table> tables = FitTables.of(session.fit(), session.pattern(), Unit.IN);
        assertThat(tables.get(0).rows())
                .allSatisfy(row -> assertThat(row.subList(1, 3))
                        .allMatch(cell -> TAPE.matcher(cell).matches()));
        assertThat(tables.get(1).rows())
                .allSatisfy(row -> assertThat(row.subList(1, 3))
                        .allMatch(cell -> TAPE.matcher(cell).matches()));
    }
}
