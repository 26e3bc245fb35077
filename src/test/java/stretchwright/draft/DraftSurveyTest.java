package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SurveyBodies;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Voice;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Section 9 of the drafting method over the shared survey: the US Army's of 1988 and 2012, the children of 1977. */
@Tag("long")
class DraftSurveyTest {
    @Test
    void everySurveyBodyKeepsEveryInvariant() {
        Path data = Path.of(System.getProperty("stretchwright.shared", "../shared"), "data", "bodies");
        assumeTrue(Files.isDirectory(data), "skipped: the survey data are not at " + data);
        List<String> refused = new ArrayList<>();
        List<SurveyBodies.Named> bodies = SurveyBodies.all(refused);
        List<String> broken = Collections.synchronizedList(new ArrayList<>());
        List<String> atOdds = Collections.synchronizedList(new ArrayList<>());
        IntStream.range(0, bodies.size()).parallel().forEach(i -> {
            SurveyBodies.Named named = bodies.get(i);
            Boot boot = SampleBoot.scaled(named.body().mm(Measure.HEEL_GIRTH) / 305);
            keeps(named, Optional.of(boot), DraftTest.OVER_BOOT, broken, atOdds);
            keeps(named, Optional.empty(), DraftTest.ANKLE, broken, atOdds);
            LowerEnd.Hem hem = LowerEnd.Hem.values()[i % LowerEnd.Hem.values().length];
            double scale = named.body().mm(Measure.HEEL_GIRTH) / 305;
            Boot soled = SampleBoot.withSole(scale, Boot.Dressing.LEG_FIRST);
            Style style = Style.usual(Style.Leg.OVER_BOOT)
                    .with(LowerEnd.hem(hem, hem == LowerEnd.Hem.OVER_HEEL ? 30 * scale : 0));
            keeps(named, Optional.of(soled), style, broken, atOdds);
        });
        int drafts = 3 * bodies.size();
        System.out.printf(
                "survey: %d bodies, %d refused as slips, %d drafts, %d at odds, %d broken%n",
                bodies.size(), refused.size(), drafts, atOdds.size(), broken.size());
        atOdds.stream().limit(10).forEach(System.out::println);
        assertThat(broken).as("first of " + broken.size()).isEmpty();
        assertThat(atOdds).as("drafts whose measures are at odds").hasSizeLessThan(drafts / 200);
    }

    private static void keeps(
            SurveyBodies.Named named, Optional<Boot> boot, Style style, List<String> broken, List<String> atOdds) {
        Body body = named.body();
        Findings findings = new Findings(named.name());
        try {
            Optional<Pattern> pattern = Draft.of(body, SampleFabric.heavyKnit(), boot, style, findings);
            pattern.ifPresent(p -> Invariants.check(named.name(), body, p));
            pattern.ifPresent(p -> DraftCheck.broken(body, style, p)
                    .forEach(b -> broken.add(named.name() + ": " + Voice.plain().say(b.said()))));
            findings.all().forEach(f -> atOdds.add(f.line()));
        } catch (AssertionError | RuntimeException e) {
            broken.add(named.name() + ": " + e.getMessage());
        }
    }
}
