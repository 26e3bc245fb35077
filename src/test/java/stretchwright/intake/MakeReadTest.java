package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.only;
import static stretchwright.intake.SampleReading.read;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.Readings;
import stretchwright.body.Side;
import stretchwright.boot.Boot;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.RandomStream;
import stretchwright.make.SampleRooms;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** What the reader makes of good files, and what it says about bad ones. */
class MakeReadTest {
    @Test
    void theWholeFileIsReadInMillimetresAndShares() {
        MakeFile make = read(SampleText.WHOLE);
        assertThat(make.name()).isEqualTo("Evening practice");
        assertThat(make.wearer()).isEqualTo("Rowan");
        assertThat(make.figure()).isEqualTo(Figure.WOMAN);
        assertThat(make.age()).hasValue(31);
        assertThat(make.given().get(Measure.HIP_GIRTH)).isCloseTo(961, within(1e-9));
        assertThat(make.fabric().roll().usableWidth()).isEqualTo(1470);
        assertThat(make.fabric().roll().onHand()).hasValue(1600);
        assertThat(make.fabric().test().stretchAcross()).isEqualTo(0.6);
        assertThat(make.fabric().roll().price().orElseThrow().perMetre()).isCloseTo(14.5, within(1e-9));
        // by hand: 3.1 N on 50 mm is 62 N/m
        assertThat(make.fabric().test().loadAcross().tension(0.20)).isCloseTo(62, within(1e-9));
        assertThat(make.fabric().test().loadAcross().isAssumed()).isFalse();
        Boot boot = make.boot().orElseThrow();
        assertThat(boot.ankleToHem()).isEqualTo(140);
        assertThat(boot.ankleToTop()).isEqualTo(Boot.USUAL_ANKLE_TO_TOP);
        assertThat(boot.topEstimated()).isTrue();
        assertThat(make.style().cuffHeight()).hasValue(32);
        assertThat(make.style().allowance(Seam.Role.INSEAM)).isEqualTo(7);
        assertThat(make.machines()).containsExactly(Machine.OVERLOCKER, Machine.COVERSTITCH);
        assertThat(make.seed()).isEqualTo(1);
    }

    @Test
    void jsonIsReadLikeYaml() {
        String json = "{\n\t\"stretchwright\": 1, \"name\": \"J\", \"unit\": \"in\","
                + "\"wearer\": {\"figure\": \"man\", \"measurements\": {\"hip girth\": 39, \"waist girth\": \"34 1/2\"}},"
                + "\"fabric\": {\"usable width\": 58, \"stretch across\": \"70 %\", \"stretch along\": \"50%\"}}";
        MakeFile make = read(json);
        assertThat(make.given().get(Measure.HIP_GIRTH)).isCloseTo(39 * 25.4, within(1e-9));
        assertThat(make.given().get(Measure.WAIST_GIRTH)).isCloseTo(34.5 * 25.4, within(1e-9));
        assertThat(make.style().leg()).isEqualTo(Style.Leg.ANKLE);
        assertThat(make.machines()).containsExactly(Machine.LOCKSTITCH);
        assertThat(make.style().allowance(Seam.Role.HEM)).isEqualTo(stretchwright.pattern.LowerEnd.TURN_UP);
    }

    @Test
    void aByteOrderMarkAndOwnUnitsAreLetThrough() {
        MakeFile make = read("\uFEFF" + SampleText.with("hip girth: 96.1", "hip girth: 38 in"));
        assertThat(make.given().get(Measure.HIP_GIRTH)).isCloseTo(965.2, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "stretch across: 60 % | stretch across: 60 | fabric.stretch across | has no unit. Write the share with its sign: 60 %",
                "stretch across: 60 % | stretch across: 0.6 | fabric.stretch across | Write the share with its sign: 60 %",
                "stretch across: 60 % | stretch across: 60 mm | fabric.stretch across | is not a share",
                "stretch across: 60 % | stretch across: 0 % | fabric.stretch across | is zero",
                "stretch across: 60 % | stretch across: 301 % | fabric.stretch across | out of range",
                "stretch across: 60 % | stretch across: -5 % | fabric.stretch across | is negative",
                "stretch across: 60 % | stretch across: .inf | fabric.stretch across | cannot be measured",
                "stretch across: 60 % | stretch across: | fabric.stretch across | has no value",
                "stretch across: 60 % | stretch across: [60 %] | fabric.stretch across | is a list",
                "stretch across: 60 % | strech across: 60 % | fabric.strech across | Is \"stretch across\" meant?",
                "hip girth: 96.1 | hip girth: 96.1 kg | wearer.measurements.hip girth | is not a length",
                "hip girth: 96.1 | hip girth: -96.1 | wearer.measurements.hip girth | is negative",
                "hip girth: 96.1 | hip girth: 0 | wearer.measurements.hip girth | is zero",
                "hip girth: 96.1 | hip girth: 9610 | wearer.measurements.hip girth | out of range. Allowed is 1 cm to 275 cm",
                "hip girth: 96.1 | hip girth: .nan | wearer.measurements.hip girth | cannot be measured",
                "hip girth: 96.1 | hip girth: wide | wearer.measurements.hip girth | is not a length",
                "hip girth: 96.1 | hop: 96.1 | wearer.measurements.hop | is not a key that is known here",
                "hip girth: 96.1 | hip grith: 96.1 | wearer.measurements.hip grith | Is \"hip girth\" meant?",
                "unit: cm | unit: furlong | unit | Choose: mm, cm, in",
                "figure: woman | figure: adult | wearer.figure | Choose: woman, man, child",
                "figure: woman | note: woman | wearer.figure | is missing",
                "age: 31 | age: 310 | wearer.age | out of range",
                "load along:  [[20 %, 4.0 N], [40 %, 9.5 N]] | load along: [[20 %, 4.0 N], [40 %, 3.5 N]] | fabric.load along | does not grow",
                "load along:  [[20 %, 4.0 N], [40 %, 9.5 N]] | load along: [[20 %, 4.0 N], [20 %, 9.5 N]] | fabric.load along | does not grow",
                "load along:  [[20 %, 4.0 N], [40 %, 9.5 N]] | load along: [[20 %, 4]] | fabric.load along | is not a force",
                "load along:  [[20 %, 4.0 N], [40 %, 9.5 N]] | load along: [[20, 4 N]] | fabric.load along | has no unit",
                "load along:  [[20 %, 4.0 N], [40 %, 9.5 N]] | load along: [[20 %, 3,1 N]] | fabric.load along | is a pair",
                "load along:  [[20 %, 4.0 N], [40 %, 9.5 N]] | load along: 4 N | fabric.load along | a list is wanted",
                "load along:  [[20 %, 4.0 N], [40 %, 9.5 N]] | load along: [] | fabric.load along | holds 0 readings",
                "recovery: 95 % | recovery: 101 % | fabric.recovery | out of range",
                "shrinkage along: 2 % | shrinkage along: 50 % | fabric.shrinkage along | out of range",
                "one way: true | one way: yes | fabric.one way | Choose: true, false",
                "price: 14.50 per m | price: 14.50 | fabric.price | is not a price by length",
                "weight: 260 g/m2 | weight: 260 kg | fabric.weight | is not a weight of cloth",
                "usable width: 147 | usable width: 14.7 m | fabric.usable width | out of range",
                "hem girth: 38.5 | hem girth: 48.5 | boot.hem girth | longer than the heel girth",
                "dressing: leg first | dressing: boot first | boot.dressing | Choose: leg first, over the laced boot",
                "[overlocker, coverstitch] | [overlocker, coverstich] | machines | Is \"coverstitch\" meant?",
                "[overlocker, coverstitch] | [overlocker, overlocker] | machines | listed twice",
                "paper: A4 | paper: A44 | print.paper | is not a paper",
                "print: {paper: A4} | seed: many | seed | is not a whole number",
                "print: {paper: A4} | prnt: {paper: A4} | prnt | Is \"print\" meant?",
                "stretchwright: 1 | stretchwright: 2 | stretchwright | this program reads format 1",
                "stretchwright: 1 | stretchwright: one | stretchwright | is not a version",
                "name: Evening practice | name: | name | has no value",
                "name: Evening practice | name: [a] | name | is a list",
            })
    void eachSlipIsFoundAtItsKey(String old, String now, String key, String words) {
        assertThat(findings(SampleText.with(old, now))).anySatisfy(f -> {
            assertThat(f.key()).isEqualTo(key);
            assertThat(f.problem() + " " + f.remedy()).contains(words);
            assertThat(f.file()).isEqualTo("a.yaml");
        });
    }

    @Test
    void aFindingNamesTheLine() {
        assertThat(only(SampleText.with("stretch across: 60 %", "stretch across: 60"))
                        .line())
                .isEqualTo("a.yaml: fabric.stretch across: line 17: \"60\" has no unit."
                        + " Write the share with its sign: 60 %.");
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        String text = SampleText.WHOLE
                .replace("60 %\n", "60\n")
                .replace("hip girth: 96.1", "hip girth: -1")
                .replace("A4", "papyrus")
                .replace("waist girth: 74.2", "waist girth: 205")
                .replace("leg: over boot", "leg: trailing");
        assertThat(findings(text))
                .extracting(Finding::key)
                .containsExactlyInAnyOrder(
                        "fabric.stretch across",
                        "wearer.measurements.hip girth",
                        "wearer.measurements.waist girth",
                        "style.leg",
                        "print.paper");
    }

    @Test
    void requiredKeysAreNamedWhenMissing() {
        assertThat(findings("stretchwright: 1\n"))
                .extracting(Finding::key)
                .containsExactlyInAnyOrder("name", "unit", "wearer", "fabric");
        assertThat(findings("name: x\nunit: cm\nwearer: {figure: man, measurements: {}}\nfabric: {}\n"))
                .extracting(Finding::key)
                .containsExactlyInAnyOrder(
                        "stretchwright",
                        "wearer.measurements",
                        "fabric.usable width",
                        "fabric.stretch across",
                        "fabric.stretch along");
    }

    @Test
    void overBootNeedsABoot() {
        String text = SampleText.WHOLE.replaceAll("(?s)boot:\n.*?style:", "style:");
        assertThat(only(text).key()).isEqualTo("style.leg");
    }

    @Test
    void aKeyThatStandsTwiceIsNamedWithBothLines() {
        Finding f = only(SampleText.with("name: Evening practice", "name: a\nname: b"));
        assertThat(f.key()).isEqualTo("name");
        assertThat(f.line()).contains("line 3").contains("line 2");
    }

    @Test
    void bytesThatAreNotUtf8AreNamedByPosition() {
        byte[] bytes = SampleText.WHOLE.getBytes(StandardCharsets.UTF_8);
        bytes[30] = (byte) 0xFF;
        assertThat(findings(bytes).get(0).problem()).contains("not UTF-8").contains("byte 30 ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  \n",
                "# only a remark\n",
                "just words",
                "- a\n- b\n",
                "a: b: c\n",
                "a: [1, 2\n",
                "a:\n\t- 1\n",
                "a: \"open\n",
                "a: 1\n---\nb: 2\n",
                "a: !java 1\n",
                "? [a]\n: 1\n",
                "a: *nowhere\n",
                "a: &x [*x]\n",
                "{\"a\": 1",
                "\u0000",
                "%PDF-1.4\n",
            })
    void whatIsNotAMakeFileIsRefusedCalmly(String text) {
        assertThat(findings(text))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.problem()).isNotBlank());
    }

    @Test
    void depthSizeAndAliasesAreBounded() {
        assertThat(only("[".repeat(200_000)).problem()).contains("nested more than");
        assertThat(only("a: ".concat("{b: ".repeat(200))).problem()).contains("nested more than");
        assertThat(only("a: [" + "1,".repeat(100_000) + "1]").problem()).contains("more than 20000 values");
        StringBuilder laughs = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 60; i++) {
            laughs.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        assertThat(only(laughs.toString()).problem()).contains("aliases");
        assertThat(findings(new byte[MakeFile.LARGEST + 1]).get(0).problem()).contains("1 MB");
    }

    /** Any cut or change of a good file ends in a make or in findings, never in another exception. */
    @Tag("slow")
    @Test
    void spoiledFilesNeverBreakTheReader() {
        RandomStream random = RandomStream.of(7, "spoiled make files");
        byte[] good = SampleText.WHOLE.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 3000; i++) {
            byte[] spoiled = java.util.Arrays.copyOf(good, 1 + random.below(good.length));
            for (int k = random.below(4); k > 0; k--) {
                spoiled[random.below(spoiled.length)] = (byte) "{}[]:,#&*!%\"'\n\t -9xé".charAt(random.below(20));
            }
            try {
                SampleRooms.read("a.yaml", spoiled);
            } catch (BadInput expected) {
                assertThat(expected.findings()).isNotEmpty();
            } catch (RuntimeException e) {
                throw new AssertionError("case " + i + ":\n" + new String(spoiled, StandardCharsets.UTF_8), e);
            }
        }
    }

    @Test
    void readingsSidesSeatedAndHardAreRead() {
        Measured measured = read(SampleText.WHOLE
                        .replace("waist girth: 74.2", "waist girth: [74.2, 74.6]")
                        .replace(
                                "hip girth: 96.1",
                                "hip girth: 96.1\n    calf girth: {left: [35, 35.2], right: 33 cm}\n  seated: true\n"
                                        + "  hard: {right: [calf girth]}"))
                .measured();
        assertThat(measured.whole().get(Measure.WAIST_GIRTH)).isEqualTo(Readings.of(742, 746));
        assertThat(measured.side(Side.LEFT).get(Measure.CALF_GIRTH)).isEqualTo(Readings.of(350, 352));
        assertThat(measured.side(Side.RIGHT).get(Measure.CALF_GIRTH)).isEqualTo(Readings.of(330));
        assertThat(measured.means().get(Measure.CALF_GIRTH)).isCloseTo(340.5, within(1e-9));
        assertThat(measured.seated()).isTrue();
        assertThat(measured.isHard(Side.RIGHT, Measure.CALF_GIRTH)).isTrue();
        assertThat(measured.isHard(Side.LEFT, Measure.CALF_GIRTH)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "waist girth: {left: 37, right: 37}",
                "waist girth: []",
                "waist girth: [74.2, .nan]",
                "waist girth: [74.2, -3]",
                "waist girth: [74.2, {a: 1}]",
                "waist girth: [74, 74, 74, 74, 74, 74, 74, 74, 74, 74, 74]",
                "waist girth: 74.2\n    calf girth: {left: 35}",
                "waist girth: 74.2\n    calf girth: {left: 35, right: 36, middle: 35}",
                "waist girth: 74.2\n  seated: maybe",
                "waist girth: 74.2\n  hard: {left: [waist girth]}",
                "waist girth: 74.2\n  hard: {both: [calf girth]}"
            })
    void slipsInReadingsAndSidesAreFindings(String lines) {
        Finding finding =
                only(SampleText.with("waist girth: 74.2\n    hip girth: 96.1", "hip girth: 96.1\n    " + lines));
        assertThat(finding.key()).startsWith("wearer.");
    }
}
