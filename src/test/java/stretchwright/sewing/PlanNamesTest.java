package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Voice;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;

/** No step speaks of a piece, edge, mark or notch that is not on the pattern. */
class PlanNamesTest {
    private static final Voice SAID = Voice.plain();

    /** Words that are the names of pieces or belong to one; a step may say them only where the piece is. */
    private static final List<String> PIECE_WORDS =
            List.of("cuff", "waistband", "gusset", "waistband facing", "key pocket");

    @Test
    void joinsNameOnlyEdgesThatExist() {
        forEveryStep((pattern, operation) -> {
            for (Joined join : operation.joins()) {
                assertThat(pattern.piece(join.piece()).edge(join.edge()).length())
                        .isPositive();
            }
        });
    }

    @Test
    void textsNameOnlyPiecesThatExist() {
        forEveryStep((pattern, operation) -> {
            Set<String> there =
                    pattern.pieces().stream().map(p -> p.name().word()).collect(Collectors.toSet());
            String said = texts(operation).replaceAll("this pattern has no [a-z ]+\\.", "");
            for (String word : PIECE_WORDS) {
                assertThat(said.contains(word) && !there.contains(word))
                        .as("\"%s\" in: %s", word, said)
                        .isFalse();
            }
        });
    }

    @Test
    void quotedMarksAndListedNotchesExist() {
        forEveryStep((pattern, operation) -> {
            Matcher quoted = java.util.regex.Pattern.compile("\"([^\"]+)\"").matcher(SAID.say(operation.instruction()));
            while (quoted.find()) {
                assertThat(marks(pattern)).contains(quoted.group(1));
            }
            Matcher listed = java.util.regex.Pattern.compile("Match the [^:.]*notches[^:.]*: ([^.]+)\\.")
                    .matcher(SAID.say(operation.instruction()));
            while (listed.find()) {
                assertThat(notches(pattern)).contains(listed.group(1).split(", "));
            }
        });
    }

    @Test
    void theSamplesKneeNotchAndFoldLineAreSaid() {
        SewingPlan plan = Planning.plan(SampleSewing.withCuff(), SampleFabric.heavyKnit(), Set.of(Machine.OVERLOCKER));
        String all = plan.operations().stream().map(PlanNamesTest::texts).collect(Collectors.joining("\n"));
        assertThat(all)
                .contains("notches (one cut on the front inseam meets two on the back inseam): knee.")
                .contains("\"fold along here\"");
    }

    @Test
    void textsAreWholeSentencesInOneLine() {
        forEveryStep((pattern, operation) -> {
            for (String text : List.of(SAID.say(operation.instruction()), SAID.say(operation.check()))) {
                assertThat(text).matches("[A-Z][^\\n]*\\.").doesNotContain("  ").doesNotContain("..");
            }
        });
    }

    private static String texts(SewingPlan.Operation operation) {
        return String.join(
                        "\n",
                        SAID.say(operation.name().said()),
                        SAID.say(operation.instruction()),
                        SAID.say(operation.check()))
                .toLowerCase(Locale.ROOT);
    }

    private static List<String> marks(Pattern pattern) {
        return pattern.pieces().stream()
                .flatMap(p -> p.marks().stream())
                .map(m -> m.name().word())
                .toList();
    }

    private static List<String> notches(Pattern pattern) {
        return pattern.pieces().stream()
                .flatMap(p -> p.notches().stream())
                .map(n -> n.name().word())
                .toList();
    }

    private interface Claim {
        void about(Pattern pattern, SewingPlan.Operation operation);
    }

    private static void forEveryStep(Claim claim) {
        for (Pattern pattern : SampleSewing.every().values()) {
            for (Set<Machine> machines : SampleSewing.machineSets()) {
                Stream<SewingPlan.Operation> steps =
                        Planning.plan(pattern, SampleFabric.heavyKnit(), machines).operations().stream();
                steps.forEach(operation -> claim.about(pattern, operation));
            }
        }
    }
}
