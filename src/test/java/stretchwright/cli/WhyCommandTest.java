package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

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
                .contains("knee girth = 36.50 cm, measured", "stretch across = 60.0 %, fabric", "docs/maths/draft.md");
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
}
