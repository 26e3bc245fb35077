package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.BadInput;
import stretchwright.ground.Voice;
import stretchwright.intake.SampleText;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.sewing.Joined;
import stretchwright.sewing.Planning;
import stretchwright.sewing.SewingPlan;

/** Each lower end through the whole program: read, drafted, judged, laid, planned and printed; or refused with both names. */
class HemStylesTest {
    private static final String SOLE = """
              ankle to sole: 13.5
              sole length: 27
              sole width: 9.5
              arch width: 6
              gap between mounts: 7
              plate length: 28
            """.indent(2);

    private static String file(String style, String machines) {
        return SampleText.WHOLE
                .replace("  ankle to hem: 14.0\n", "  ankle to hem: 10.5\n" + SOLE.replaceAll("(?m)^ +", "  "))
                .replace("  cuff: {height: 3.2}\n", "")
                .replace("  leg: over boot\n", "  " + style.replace("; ", "\n  ") + "\n")
                .replace("[overlocker, coverstitch]", machines);
    }

    private static Made run(String text) {
        return Make.run(Make.read("hem.yaml", text.getBytes(StandardCharsets.UTF_8)), line -> {});
    }

    @Tag("slow")
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "leg: over boot; hem: inside the boot",
                "leg: over boot; hem: to the collar; growth: 2",
                "leg: over boot; hem: over the laces; cuff: {height: 3}; strap: {width: 2.2}",
                "leg: over boot; hem: over the heel; hem drop: 3; strap: {}",
                "leg: over boot; hem: whole boot",
                "leg: stirrup",
                "leg: ankle; growth: 3"
            })
    void everyLowerEndGoesThroughTheWholeProgram(String style) {
        Made made = run(file(style, "[overlocker, coverstitch]"));
        assertThat(made.fit().stops()).isFalse();
        assertThat(made.pattern().notions())
                .allSatisfy(n -> assertThat(
                                made.pattern().piece(n.piece()).edge(n.edge()).length())
                        .isPositive());
        for (Set<Machine> machines : List.of(
                Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH),
                Set.of(Machine.COMBINED),
                Set.of(Machine.LOCKSTITCH),
                Set.of(Machine.HAND))) {
            SewingPlan plan = Planning.plan(made.pattern(), made.make().fabric(), machines);
            plan.operations().forEach(op -> namesOnlyWhatIsThere(made.pattern(), op));
            everySeamIsSewn(made.pattern(), plan);
        }
    }

    private static void namesOnlyWhatIsThere(Pattern pattern, SewingPlan.Operation op) {
        for (Joined join : op.joins()) {
            assertThat(pattern.piece(join.piece()).edge(join.edge()).length()).isPositive();
        }
        Set<String> marks = pattern.pieces().stream()
                .flatMap(p -> Stream.concat(
                        p.marks().stream().map(m -> m.name().word()),
                        p.notches().stream().map(n -> n.name().word())))
                .collect(Collectors.toSet());
        String instruction = Voice.plain().say(op.instruction());
        Matcher quoted = java.util.regex.Pattern.compile("\"([^\"]+)\"").matcher(instruction);
        while (quoted.find()) {
            assertThat(marks).as(instruction).contains(quoted.group(1));
        }
        for (String text : List.of(instruction, Voice.plain().say(op.check()))) {
            assertThat(text).matches("[A-Z][^\\n]*\\.").doesNotContain("  ").doesNotContain("..");
        }
    }

    private static void everySeamIsSewn(Pattern pattern, SewingPlan plan) {
        Set<Joined> sewn =
                plan.operations().stream().flatMap(op -> op.joins().stream()).collect(Collectors.toSet());
        for (Seam seam : pattern.seams()) {
            for (Seam.Side side : seam.sides()) {
                assertThat(sewn).contains(new Joined(side.piece(), side.edge()));
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "leg: over boot; hem: over the heel; cuff: {height: 3} | style.cuff | over the heel",
                "leg: over boot; hem: whole boot; cuff: {height: 3} | style.cuff | stays open for blade or plate",
                "leg: over boot; hem: inside the boot; cuff: {height: 3} | style.cuff | inside the boot",
                "leg: stirrup; cuff: {height: 3} | style.cuff | stirrup",
                "leg: ankle; hem: whole boot | style.hem | leg is \"ankle\"",
                "leg: over boot; hem: to the collar; strap: {width: 2} | style.strap | to the collar",
                "leg: knee; strap: {width: 3} | style.strap | leg \"knee\"",
                "leg: over boot; hem drop: 4 | style.hem drop | over the laces",
                "leg: over boot; cuff: {height: 3}; growth: 2 | style.growth | cuff",
                "leg: over boot; hem: whole boot; growth: 2 | style.growth | whole boot",
                "leg: stirrup; growth: 2 | style.growth | stirrup",
                "leg: over boot; hem: over the sole | style.hem | not one of the words",
                "leg: over boot; strap: {width: 5} | style.strap.width | 2 cm to 2.5 cm",
                "leg: over boot; hem: over the heel; hem drop: 9 | style.hem drop | 2 cm to 7 cm"
            })
    void endsThatContradictThemselvesAreRefusedWithBothNames(String style, String key, String words) {
        assertThat(refused(file(style, "[hand]")))
                .anySatisfy(line -> assertThat(line).contains(key + ": ").contains(words));
    }

    @Test
    void whatAStrapOrACoverNeedsIsAskedForAndNotGuessed() {
        String bare = SampleText.with("  cuff: {height: 3.2}\n", "  strap: {width: 2.2}\n");
        assertThat(refused(bare))
                .anySatisfy(line -> assertThat(line)
                        .contains("style.strap", "boot.ankle to sole", "boot.arch width", "boot.gap between mounts"));
        String cover = SampleText.with("  cuff: {height: 3.2}\n", "  hem: whole boot\n");
        assertThat(refused(cover))
                .anySatisfy(line -> assertThat(line)
                        .contains("style.hem", "boot.ankle to sole", "boot.sole length", "boot.sole width"));
    }

    @Test
    void bootMeasuresThatDisagreeNameBoth() {
        assertThat(refused(SampleText.with("  dressing: leg first\n", "  guard girth: 30\n")))
                .anySatisfy(line -> assertThat(line).contains("boot.guard girth", "30 cm", "40 cm"));
        assertThat(refused(SampleText.with("  dressing: leg first\n", "  sole length: 20\n  sole width: 12\n")))
                .anySatisfy(line -> assertThat(line).contains("boot.sole width", "12 cm", "20 cm"));
    }

    private static List<String> refused(String text) {
        try {
            run(text);
        } catch (BadInput e) {
            return e.findings().stream().map(f -> f.line()).toList();
        }
        throw new AssertionError("was accepted:\n" + text);
    }
}
