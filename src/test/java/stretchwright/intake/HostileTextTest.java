package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.make.Make;
import stretchwright.make.SampleRooms;

/** Texts that no maker writes by hand: each is a short, plain finding. */
class HostileTextTest {
    private static List<Finding> findings(String text) {
        List<Finding> all = new ArrayList<>();
        assertThatThrownBy(() -> Make.read("a.yaml", text.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOfSatisfying(BadInput.class, e -> all.addAll(e.findings()));
        return all;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"!!java.net.URL", "!!javax.script.ScriptEngineManager", "!!binary", "!own", "!!python/object"})
    void aForeignTagIsAFinding(String tag) {
        List<Finding> all = findings(SampleText.WHOLE.replace("name: Evening", "name: " + tag + " Evening"));
        assertThat(all).hasSize(1);
        assertThat(all.get(0).row()).isEqualTo(2);
        assertThat(all.get(0).problem()).startsWith("the tag ").contains("means nothing here");
    }

    @Test
    void theTagsOfTheCoreSchemaAreRead() {
        String text = SampleText.WHOLE.replace("name: Evening", "name: !!str Evening");
        assertThat(text).isNotEqualTo(SampleText.WHOLE);
        assertThat(SampleRooms.read("a.yaml", text.getBytes(StandardCharsets.UTF_8))
                        .name())
                .startsWith("Evening");
    }

    @Test
    void anUnknownVersionOfYamlIsToldInPlainWords() {
        List<Finding> all = findings("%YAML 9.9\n---\n" + SampleText.WHOLE);
        assertThat(all).hasSize(1);
        assertThat(all.get(0).problem()).contains("%YAML").doesNotContain("SpecVersion", "@", "[");
    }

    /** Unicode ends at U+10FFFF; an escape beyond it names no letter. */
    @ParameterizedTest
    @ValueSource(strings = {"\\UFFFFFFFF", "\\U00110000"})
    void anEscapeBeyondTheLastLetterIsAFinding(String escape) {
        List<Finding> all = findings(SampleText.WHOLE.replace("name: Evening practice", "name: \"" + escape + "\""));
        assertThat(all).hasSize(1);
        assertThat(all.get(0).problem()).contains("this is not YAML");
        assertThat(all.get(0).remedy()).isNotEmpty();
    }

    /** Cut in the middle of a letter of two halves, half a letter would be left, which no file can carry. */
    @Test
    void aLongTextIsNotCutWithinALetter() {
        String skate = Character.toString(0x26F8) + Character.toString(0x1F6FC);
        for (int before = 0; before < 50; before++) {
            String said = Echo.quoted("x".repeat(before) + skate.repeat(30));
            assertThat(said.codePoints()).as(said).noneMatch(c -> c >= 0xD800 && c <= 0xDFFF);
        }
    }

    @Test
    void aHugeKeyOrValueIsNotEchoed() {
        String huge = "x".repeat(900);
        String longer = "k".repeat(100_000);
        for (String text : List.of(
                SampleText.WHOLE + huge + ": 1\n",
                SampleText.WHOLE + "? " + longer + "\n: 1\n",
                SampleText.WHOLE + "? " + longer + "\n: {a: 1}\n",
                SampleText.WHOLE + "\"" + longer + "\": 1\n",
                SampleText.WHOLE + "last: *" + longer + "\n",
                SampleText.WHOLE + "last: !" + longer + " 1\n",
                SampleText.WHOLE.replace("unit: cm", "unit: " + longer))) {
            for (Finding f : findings(text)) {
                assertThat(f.line().length()).as(f.line().substring(0, 80)).isLessThan(500);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ~", " null", " \"\""})
    void aSectionOrListWithoutContentSaysSo(String nothing) {
        for (String key : List.of("boot", "print", "machines", "wearer", "fabric", "style")) {
            List<Finding> all = findings("stretchwright: 1\n" + key + ":" + nothing + "\n");
            assertThat(all).anySatisfy(f -> {
                assertThat(f.key()).isEqualTo(key);
                assertThat(f.problem()).contains("has no value");
                assertThat(f.remedy()).isNotEmpty();
            });
        }
        assertThat(findings(SampleText.WHOLE.replaceAll("(?m)^(\\s+)cuff:.*$", "$1cuff:" + nothing)))
                .anySatisfy(f -> {
                    assertThat(f.key()).isEqualTo("style.cuff");
                    assertThat(f.problem()).contains("has no value");
                });
    }

    /** What the body room finds is told in the unit of the file, like all else. */
    @Test
    void measuresAtOddsAreToldInTheFilesUnit() {
        String text = SampleText.WHOLE.replaceAll("(?m)^(\\s+)stature:.*$", "$1stature: 62.7");
        assertThat(text).isNotEqualTo(SampleText.WHOLE);
        assertThat(findings(text))
                .anySatisfy(f -> assertThat(f.line()).contains("62.7 cm", " cm").doesNotContain(" mm"));
    }
}
