package stretchwright.wearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.fabric.Learnt;
import stretchwright.fabric.Learnt.What;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.settle.Mark;

/** Marks on the first pair of an example make: what they teach, what of it is kept, and marks that cannot be. */
class FirstWornTest {
    private static final String GOOD =
            "{knee along: [62 mm, 62.5 mm], knee across: 59 mm, back drop: 45 mm, band over rods: {length: 132 mm}}";

    private static byte[] make() {
        try {
            return Files.readAllBytes(Path.of("examples/evening-practice.yaml"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static MakeFile marked(String marks) {
        return Make.read("a.yaml", make(), "marks.yaml", ("first pair: " + marks).getBytes(StandardCharsets.UTF_8));
    }

    private static String finding(String marks) {
        Findings findings = new Findings("marks.yaml");
        try {
            assertThat(FirstWorn.of(marked(marks), findings)).isEmpty();
        } catch (BadInput bad) {
            findings.addAll(bad.findings());
        }
        assertThat(findings.all()).isNotEmpty();
        return findings.all().get(0).line();
    }

    @Test
    void whatWasLearntIsWrittenReadAndReversible() {
        Findings findings = new Findings("marks.yaml");
        FirstWorn worn = FirstWorn.of(marked(GOOD), findings).orElseThrow();
        assertThat(worn.learnt().values()).hasSize(What.values().length);
        String text = new String(make(), StandardCharsets.UTF_8);
        String now = worn.written(text, findings).orElseThrow();
        assertThat(now).startsWith(text).contains("learnt:\n  cloth: {pull across: ");
        MakeFile next = Make.read("a.yaml", now.getBytes(StandardCharsets.UTF_8));
        Learnt kept = next.fabric().learnt();
        for (What what : What.values()) {
            assertThat(kept.of(what, -9))
                    .as(what.name())
                    .isCloseTo(
                            worn.learnt().of(what, 9),
                            org.assertj.core.api.Assertions.within(what.unit() == Learnt.Unit.LENGTH ? 0.51 : 0.0051));
        }
        double before = Make.read("a.yaml", make()).fabric().test().loadAcross().tension(0.2);
        assertThat(next.fabric().test().loadAcross().tension(0.2))
                .isCloseTo(kept.of(What.PULL_ACROSS, 0) * before, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(worn.written(now, findings)).contains(now);
        assertThat(now.substring(0, now.indexOf("learnt:"))).isEqualTo(text);
    }

    /** The next make of the file, drafted with what was learnt, expects such marks. */
    @Test
    void theNextMakeUsesIt() {
        Findings findings = new Findings("marks.yaml");
        String marks = "{knee along: 58 mm, back drop: 25 mm}";
        FirstWorn worn = FirstWorn.of(marked(marks), findings).orElseThrow();
        String now = worn.written(new String(make(), StandardCharsets.UTF_8), findings)
                .orElseThrow();
        MakeFile next = Make.read(
                "a.yaml",
                now.getBytes(StandardCharsets.UTF_8),
                "marks.yaml",
                ("first pair: " + marks).getBytes(StandardCharsets.UTF_8));
        FirstWorn again = FirstWorn.of(next, findings).orElseThrow();
        assertThat(off(again, Mark.KNEE_ALONG, 0.16)).isLessThan(off(worn, Mark.KNEE_ALONG, 0.16) / 2);
        assertThat(off(again, Mark.BACK_EDGE, 25)).isLessThan(off(worn, Mark.BACK_EDGE, 25) / 2);
    }

    private static double off(FirstWorn worn, Mark mark, double read) {
        return Math.abs(worn.pair().before().getOrDefault(mark, 0.0) - read);
    }

    /** A knee that stretches the cloth more than expected teaches a knee that bends further. */
    @Test
    void aLongerMarkTeachesMoreGrowth() {
        double little = knee("{knee along: 57 mm}");
        double much = knee("{knee along: 65 mm}");
        assertThat(much).isGreaterThan(little + 0.04);
    }

    private static double knee(String marks) {
        return FirstWorn.of(marked(marks), new Findings("marks.yaml"))
                .orElseThrow()
                .learnt()
                .of(What.KNEE_ALONG, 0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{} | first pair | no reading",
                "{knee along: [55 mm, 64 mm]} | first pair.knee along | contradict each other",
                "{knee along: 110 mm} | first pair.knee along | too far off for this cloth",
                "{band over rods: {length: 240 mm}} | first pair.band over rods.length | too far off for this cloth",
                "{knee along: 20 mm} | first pair.knee along | out of range",
                "{back drop: -5 mm} | first pair.back drop | negative",
                "{band over rods: {height: 65 mm}} | first pair.band over rods.length | is missing",
                "{band over rods: {length: 118 mm, height: 0 mm}} | first pair.band over rods.height | is zero",
                "{knee along: 70 mm, thigh along: 44 mm} | first pair. | at odds with the other marks",
                "{shoe: 3} | first pair.shoe | not a key"
            })
    void marksThatCannotBeAreFindings(String marks, String key, String wrong) {
        assertThat(finding(marks)).contains("marks.yaml: " + key, wrong);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "friction: {skin: 2.5} | learnt.friction.skin | out of range",
                "friction: {boot: -0.1} | learnt.friction.boot | negative",
                "friction: {skin: sticky} | learnt.friction.skin | is no number",
                "cloth: {narrowing: 300 %} | learnt.cloth.narrowing | out of range",
                "wearer: {nose: 1} | learnt.wearer.nose | not a key"
            })
    void whatCannotBeLearntIsAFinding(String learnt, String key, String wrong) {
        byte[] text = (new String(make(), StandardCharsets.UTF_8) + "\nlearnt:\n  " + learnt + "\n")
                .getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> Make.read("a.yaml", text))
                .isInstanceOfSatisfying(
                        BadInput.class,
                        bad -> assertThat(bad.findings().get(0).line()).contains(key, wrong));
    }

    @Test
    void nothingLearntIsNothing() {
        assertThat(Optional.of(Make.read("a.yaml", make()).fabric().learnt())).contains(Learnt.NOTHING);
    }
}
