package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The why command on an example. */
class WhyCommandTest {
    private static final String EXAMPLE = "examples/evening-practice.yaml";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Commands.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    @Test
    void aWidthIsToldFromTheTapeToTheCloth() {
        assertThat(run("why", EXAMPLE, "leg:", "knee", "width")).isZero();
        assertThat(out.toString())
                .contains("knee girth = 36.5 cm, measured", "stretch across = 60.0 %, fabric", "docs/maths/draft.md");
    }

    @Test
    void wordsOfADimensionAreEnough() {
        assertThat(run("why", EXAMPLE, "knee width")).isZero();
        assertThat(out.toString()).startsWith("leg: knee width = ");
    }

    @Test
    void withoutADimensionAllAreListed() {
        assertThat(run("why", EXAMPLE)).isZero();
        assertThat(out.toString()).contains("leg: crotch seam length", "reduction across");
    }

    @Test
    void anUnknownDimensionIsAFindingWithTheNearestKnownOne() {
        assertThat(run("why", EXAMPLE, "leg: kne widht")).isEqualTo(Exit.INPUT);
        assertThat(err.toString()).contains("leg: knee width");
        assertThat(out.toString()).isEmpty();
    }

    /** What was changed after wearing is a reason like any other: when, why, and by how much. */
    @Test
    void theWearingHistoryIsTold() {
        assertThat(run("why", "examples/after-wearing.yaml")).isZero();
        assertThat(out.toString())
                .contains(
                        "after wearing",
                        "2026-01-31  too tight at the calf: ease at calf: +1.0 cm",
                        "2026-02-14  folds below the back band (no): back waist: -0.6 cm");
        assertThat(run("why", "examples/after-wearing.yaml", "calf width")).isZero();
        assertThat(out.toString().lines().skip(out.toString().lines().count() - 3))
                .anyMatch(l -> l.contains("2026-01-31"));
    }

    @Test
    void withoutAHistoryNothingIsSaidOfWearing() {
        assertThat(run("why", EXAMPLE)).isZero();
        assertThat(out.toString()).doesNotContain("after wearing");
    }

    @Test
    void jsonTellsReasonsAndHistory() {
        assertThat(run("--json", "why", "examples/after-wearing.yaml", "calf width"))
                .isZero();
        JsonNode why = JsonMapper.builder().build().readTree(out.toString()).get("why");
        assertThat(why.at("/reasons/0/dimension").asString()).isEqualTo("leg: calf width");
        assertThat(why.at("/reasons/0/value").asDouble()).isBetween(200.0, 400.0);
        assertThat(why.at("/afterWearing/0/change/ease at calf").asDouble()).isEqualTo(10);
    }

    /** Words of a dimension are enough, also mistyped. */
    @Test
    void mistypedWordsOfADimensionFindTheNearestOne() {
        assertThat(run("why", EXAMPLE, "knee widht")).isEqualTo(Exit.INPUT);
        assertThat(err.toString())
                .contains("\"knee widht\" is no dimension of this pattern. Is \"leg: knee width\" meant?");
        assertThat(run("why", EXAMPLE, "something else altogether")).isEqualTo(Exit.INPUT);
        assertThat(err.toString().lines().skip(1)).noneMatch(l -> l.contains("meant?"));
    }
}
