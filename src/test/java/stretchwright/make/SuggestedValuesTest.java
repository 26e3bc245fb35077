package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.BadInput;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;

/** Whoever does what a finding asks for is not asked for it again. */
class SuggestedValuesTest {
    private static final String NUMBER = "([0-9]+(?: [0-9]+/[0-9]+)?) in";

    private static String make(String key, String value) throws IOException {
        String text = Files.readString(Path.of("examples/hockey-boots.yaml"));
        return key.equals("usable width")
                ? text.replaceFirst("usable width: 58", "usable width: " + value)
                : text.replaceFirst("(?m)^style:$", "style:\n  " + key + ": {width: " + value + "}");
    }

    private static List<String> found(String text, Consumer<Session> stage) {
        try {
            stage.accept(Session.of(Make.read("a.yaml", text.getBytes(StandardCharsets.UTF_8))));
            return List.of();
        } catch (BadInput e) {
            return e.findings().stream().map(f -> f.line()).toList();
        }
    }

    @ParameterizedTest
    @CsvSource({"usable width, 15 in, at least", "panel, 11 in, a panel of"})
    void theValueThatIsToldIsTaken(String key, String value, String before) throws IOException {
        Consumer<Session> stage = key.equals("panel") ? Session::pattern : Session::lays;
        List<String> first = found(make(key, value), stage);
        String told = Pattern.compile(before + " " + NUMBER)
                .matcher(String.join("\n", first))
                .results()
                .map(m -> m.group(1) + " in")
                .max(Comparator.comparingDouble(
                        v -> Quantities.length(v, Unit.IN).orElseThrow()))
                .orElseThrow(() -> new AssertionError("no value is told in " + first));
        assertThat(found(make(key, told), stage)).isEmpty();
    }
}
