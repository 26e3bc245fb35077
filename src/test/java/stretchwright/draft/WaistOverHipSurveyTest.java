package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SurveyBodies;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.TopEnd;

/** A waist larger than the hip is no fault: every such body of the shared surveys drafts, with a band that holds. */
@Tag("slow")
class WaistOverHipSurveyTest {
    private static final List<String> TOPS = List.of(
            "straight", "contoured", "casing", "darts", "shaped seam", "raised", "darts in a casing, raised behind");

    @Test
    void everyBodyWithAWaistOverTheHipDraftsInEveryTop() {
        Path data = Path.of(System.getProperty("stretchwright.shared", "../shared"), "data", "bodies");
        assumeTrue(Files.isDirectory(data), "skipped: the survey data are not at " + data);
        Map<String, Integer> found = new TreeMap<>();
        List<String> broken = new ArrayList<>();
        for (SurveyBodies.Named named : SurveyBodies.all(new ArrayList<>())) {
            Body body = named.body();
            if (body.mm(Measure.WAIST_GIRTH) > body.mm(Measure.HIP_GIRTH)) {
                found.merge(named.name().replaceAll(" row.*", ""), 1, Integer::sum);
                TOPS.forEach(top -> keeps(named.name() + ", " + top, body, TopStyles.named(top), broken));
            }
        }
        System.out.println("waist over hip: " + found + ", " + broken.size() + " broken");
        assertThat(found.values().stream().mapToInt(n -> n).sum()).isGreaterThan(290);
        assertThat(broken).as("first of " + broken.size()).isEmpty();
    }

    private static void keeps(String who, Body body, TopEnd top, List<String> broken) {
        Findings findings = new Findings(who);
        Optional<Pattern> pattern =
                Draft.of(body, SampleFabric.heavyKnit(), Optional.empty(), TopStyles.ankle(top), findings);
        findings.all().forEach(f -> broken.add(f.line()));
        try {
            pattern.ifPresent(p -> {
                Invariants.check(who, body, p, TopStyles.ankle(top));
                TopInvariants.check(who, body, p, TopStyles.ankle(top));
                holds(p, body, top);
            });
        } catch (AssertionError e) {
            broken.add(who + ": " + e.getMessage());
        }
    }

    private static void holds(Pattern pattern, Body body, TopEnd top) {
        double around = pattern.notions().stream()
                .filter(n -> n.name().equals("waist elastic"))
                .mapToDouble(n -> n.cut() - n.ends())
                .findFirst()
                .orElseGet(() -> pattern.levels().get(0).width());
        double girth = Frame.topGirth(body, TopStyles.ankle(top));
        assertThat(around).as("what holds is smaller than what it holds").isLessThan(0.97 * girth);
    }
}
