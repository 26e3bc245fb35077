package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.TopEnd;

/** Every way of ending above, over bodies drawn at random, in cloths from hardly stretchy to very. */
class TopStylesTest {
    private static final int BODIES = 100;

    @Tag("slow")
    @Test
    void someBodiesKeepEveryInvariantInEveryTop() {
        keep(0.60, 8);
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(doubles = {0.20, 0.60, 1.00})
    void everyBodyKeepsEveryInvariantInEveryTop(double stretch) {
        keep(stretch, BODIES);
    }

    private static void keep(double stretch, int bodies) {
        List<String> broken = new ArrayList<>();
        TopStyles.all().forEach((name, top) -> {
            int refused = 0;
            for (int seed = 1; seed <= bodies; seed++) {
                String who = name + ", stretch " + stretch + ", seed " + seed;
                Findings findings = new Findings(who);
                Body body = SampleBody.random(seed);
                Optional<Pattern> pattern = Draft.of(
                        body,
                        SampleFabric.with(1470, stretch, stretch * 0.75, true),
                        Optional.empty(),
                        TopStyles.ankle(top),
                        findings);
                refused += pattern.isEmpty() ? 1 : 0;
                pattern.ifPresent(p -> keeps(who, body, p, top, broken));
                findings.all().stream().limit(3).forEach(f -> System.out.println(f.line()));
            }
            assertThat(refused).as(name + " refused").isLessThanOrEqualTo(bodies / 50);
        });
        assertThat(broken).as(broken.size() + " broken").isEmpty();
    }

    private static void keeps(String who, Body body, Pattern pattern, TopEnd top, List<String> broken) {
        try {
            Invariants.check(who, body, pattern, TopStyles.ankle(top));
            TopInvariants.check(who, body, pattern, TopStyles.ankle(top));
        } catch (AssertionError e) {
            broken.add(e.getMessage());
        }
    }
}
