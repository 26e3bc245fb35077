package stretchwright.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;
import stretchwright.make.Make;

/** A make that is opened in the form and sent unchanged says what it said. */
class WrittenTest {
    static Stream<Path> makes() throws IOException {
        try (Stream<Path> examples = Files.list(Path.of("examples"));
                Stream<Path> cases = Files.walk(Path.of("src/test/cases"))) {
            return Stream.concat(examples, cases)
                    .filter(p -> p.toString().endsWith(".yaml"))
                    .filter(WrittenTest::reads)
                    .toList()
                    .stream();
        }
    }

    private static boolean reads(Path file) {
        try {
            Make.read("x", Files.readAllBytes(file));
            return true;
        } catch (BadInput e) {
            return false;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("makes")
    void aMakeComesThroughTheFormAsItWas(Path file) throws IOException {
        String text = Files.readString(file);
        String through = Form.of(text).makeText();
        assertThat(Make.read("x", through.getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(Make.read("x", text.getBytes(StandardCharsets.UTF_8)));
        assertThat(Form.of(through).makeText()).isEqualTo(through);
    }

    @Test
    void placesOfListsAreNumbered() {
        Form form = Form.of("style:\n  pockets:\n    - {kind: phone, width: 9}\n    - {kind: hip pad, width: 12}\n");
        assertThat(form.typed()).contains(Map.entry("style.pockets.2.kind", List.of("hip pad")));
        assertThat(form.with(Map.of("style.pockets.1.width", "", "name", " Two "))
                        .typed())
                .doesNotContainKey("style.pockets.1.width")
                .contains(Map.entry("name", List.of("Two")));
    }
}
