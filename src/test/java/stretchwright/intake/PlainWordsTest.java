package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Finding;
import stretchwright.pattern.Machine;

/** Everyday words for keys and values, and what is said where words do not go together. */
class PlainWordsTest {
    @ParameterizedTest
    @CsvSource({
        "waist, WAIST_GIRTH",
        "hips, HIP_GIRTH",
        "thigh, THIGH_GIRTH",
        "knee, KNEE_GIRTH",
        "calf, CALF_GIRTH",
        "ankle, ANKLE_GIRTH",
        "inseam, CROTCH_HEIGHT"
    })
    void everydayWordsForMeasuresAreUnderstood(String word, Measure measure) {
        String text = SampleText.with(
                "    waist girth: 74.2\n    hip girth: 96.1\n", "    " + word + ": " + cm(measure) + "\n");
        assertThat(read(text).given()).containsKey(measure);
    }

    private static String cm(Measure measure) {
        return switch (measure) {
            case WAIST_GIRTH -> "74.2";
            case HIP_GIRTH -> "96.1";
            case THIGH_GIRTH -> "57";
            case KNEE_GIRTH -> "36.5";
            case CALF_GIRTH -> "35";
            case ANKLE_GIRTH -> "21.5";
            default -> "77.2";
        };
    }

    @Test
    void everydayWordsForValuesAreUnderstood() {
        assertThat(read(SampleText.with("figure: woman\n  age: 31", "figure: girl\n  age: 12")
                                .replace("stature: 162.7", "stature: 150")
                                .replace("waist girth: 74.2", "waist girth: 62")
                                .replace("hip girth: 96.1", "hip girth: 78"))
                        .figure())
                .isEqualTo(Figure.CHILD);
        assertThat(read(SampleText.with("[overlocker, coverstitch]", "[serger, home machine]"))
                        .machines())
                .containsExactly(Machine.OVERLOCKER, Machine.LOCKSTITCH);
    }

    /** By hand: 30.25 in are 768.35 mm. */
    @ParameterizedTest
    @ValueSource(strings = {"30\u00bc in", "'30 1/4\"'", "'30\u00bc\"'", "30 1/4 in", "30.25 inches", "'30 1/4\u2033'"})
    void fractionsAreReadAsATapeHasThem(String written) {
        assertThat(read(SampleText.with("waist girth: 74.2", "waist girth: " + written))
                        .given()
                        .get(Measure.WAIST_GIRTH))
                .isCloseTo(768.35, within(0.005));
    }

    @Test
    void aWordAndTheKeyItMeansCannotBothBeGiven() {
        Finding both = SampleReading.only(SampleText.with("hip girth: 96.1", "hip girth: 96.1\n    hips: 97"));
        assertThat(both.key()).isEqualTo("wearer.measurements.hips");
        assertThat(both.problem()).contains("\"hip girth\"", "line 11");
        assertThat(both.row()).isEqualTo(12);
        assertThat(SampleReading.only(SampleText.with("hip girth: 96.1", "hips: 96.1\n    hip: 97"))
                        .line())
                .contains("wearer.measurements.hip: line 12", "\"hips\" on line 11");
    }

    /** The list of 19 measures is told once, not once for each key. */
    @Test
    void theListOfKnownKeysIsToldOnce() {
        var all = findings(SampleText.with(
                "hip girth: 96.1", "hip girth: 96.1\n    shoe size: 38\n    wing span: 170\n    arm scye depth: 20"));
        assertThat(all).hasSize(3);
        assertThat(all)
                .filteredOn(f -> f.remedy().contains("total crotch length"))
                .hasSize(1);
        assertThat(all.get(2).remedy()).contains("shoe size");
    }

    @Test
    void aKeyThatBelongsElsewhereIsSentThere() {
        assertThat(SampleReading.only(SampleText.with("leg: over boot", "leg: over boot\n  usable width: 150"))
                        .remedy())
                .contains("fabric.usable width");
    }

    /** Fifty keys of a version that is not known yet are one finding. */
    @Test
    void aFileOfANewerFormatIsOneFinding() {
        StringBuilder keys = new StringBuilder("stretchwright: 2\n");
        for (int i = 0; i < 50; i++) {
            keys.append("future ")
                    .append((char) ('a' + i / 26))
                    .append((char) ('a' + i % 26))
                    .append(": 1\n");
        }
        assertThat(findings(keys.toString())).singleElement().satisfies(f -> {
            assertThat(f.key()).isEqualTo("stretchwright");
            assertThat(f.problem()).contains("format 2", "reads format 1");
            assertThat(f.remedy()).contains("newer Stretchwright");
        });
    }

    /** One machine needs no list. */
    @ParameterizedTest
    @CsvSource({"machine, home machine, LOCKSTITCH", "machines, overlocker, OVERLOCKER", "machine, serger, OVERLOCKER"})
    void oneMachineIsAListOfOne(String key, String word, Machine machine) {
        assertThat(read(SampleText.with("machines: [overlocker, coverstitch]", key + ": " + word))
                        .machines())
                .containsExactly(machine);
    }

    /** Both stand as sections: what either lacks is not told, for one of them will go. */
    @ParameterizedTest
    @CsvSource({"boots, boot, {top girth: 29}", "boots, boot, {kind: figure skate}"})
    void twoSectionsThatMeanTheSameAreOneFinding(String word, String term, String inside) {
        Finding above = SampleReading.only(SampleText.with("boot:\n", word + ": " + inside + "\nboot:\n"));
        assertThat(above.line()).contains("boot: ", "means the same as \"boots\" on line");
        Finding below = SampleReading.only(SampleText.with("style:\n", word + ": " + inside + "\nstyle:\n"));
        assertThat(below.line()).contains("boots: ", "means the same as \"boot\" on line");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cloth: {name: ink}", "cloth: none", "cloth: {usable width: 150}"})
    void twoClothsAreOneFinding(String above) {
        assertThat(SampleReading.only(SampleText.with("fabric:\n", above + "\nfabric:\n"))
                        .line())
                .contains("fabric: ", "means the same as \"cloth\"");
    }

    @Test
    void twoSectionsOfMeasuresAreOneFinding() {
        assertThat(SampleReading.only(SampleText.with("  measurements:\n", "  measures: {hips: -1}\n  measurements:\n"))
                        .line())
                .contains("wearer.measurements: ", "means the same as \"measures\"");
    }

    @Test
    void theUnitIsNamedInWordsBehindIn() {
        assertThat(SampleReading.only(SampleText.with("hip girth: 96.1", "hip girth: wide"))
                        .remedy())
                .startsWith("Write a number in cm, ");
        String inches = "stretchwright: 1\nname: J\nunit: in\n"
                + "wearer: {figure: man, measurements: {hip girth: wide, waist girth: 34 1/2}}\n"
                + "fabric: {usable width: 58, stretch across: 70 %, stretch along: 50 %}\n";
        assertThat(SampleReading.only(inches).remedy()).startsWith("Write a number in inches, ");
    }
}
