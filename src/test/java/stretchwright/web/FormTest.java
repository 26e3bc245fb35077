package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed becomes the make file that it says. */
class FormTest {
    @ParameterizedTest
    @ValueSource(strings = {"100 mm; 160 mm; 102.5 mm", "[100 mm, 160 mm, 102.5 mm]", " 100 mm ;160 mm; 102.5 mm; "})
    void aFoldTestIsAListOfLengths(String typed) {
        assertThat(new Form(Map.of("fabric.fold across", List.of(typed))).makeText())
                .contains("  fold across: [\"100 mm\", \"160 mm\", \"102.5 mm\"]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  "})
    void anEmptyFoldTestIsLeftOut(String typed) {
        assertThat(new Form(Map.of("fabric.fold across", List.of(typed))).makeText())
                .doesNotContain("fold");
    }
}
