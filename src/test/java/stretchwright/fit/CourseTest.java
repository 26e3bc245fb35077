package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.settle.LegShape;

class CourseTest {
    private static final Fabric FABRIC = SampleFabric.heavyKnit();
    private static final Optional<Boot> BOOT = Optional.of(SampleBoot.figure());
    private static final List<Style> STYLES = List.of(
            Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32)),
            Style.usual(Style.Leg.ANKLE),
            Style.usual(Style.Leg.CALF),
            Style.usual(Style.Leg.ANKLE).with(Parts.PLAIN.with(Parts.SideSeam.SHAPED)),
            Style.usual(Style.Leg.ANKLE).with(Parts.PLAIN.withPanel(60)),
            Style.usual(Style.Leg.ANKLE)
                    .with(Parts.PLAIN.with(Parts.SideSeam.SHAPED).withKneeShaping()),
            Style.usual(Style.Leg.CALF).with(Parts.PLAIN.with(new Parts.Gusset(120, 60))),
            Style.usual(Style.Leg.STIRRUP),
            Style.usual(Style.Leg.SHORT));

    /** At the levels the course says what the levels say, and it is finite all the way between them. */
    @Tag("slow")
    @Test
    void itAgreesWithTheLevels() {
        int drafted = 0;
        for (long seed = 1; seed <= 40; seed++) {
            Body body = SampleBody.random(seed);
            for (Style style : STYLES) {
                Optional<Boot> boot = BOOT.filter(b -> style.leg() == Style.Leg.OVER_BOOT);
                Optional<Pattern> pattern = Draft.of(body, FABRIC, boot, style, new Findings("test"));
                if (pattern.isEmpty()) {
                    continue;
                }
                drafted++;
                check(seed + " " + style.leg() + " " + style.parts() + " ", pattern.get(), body, boot, style);
            }
        }
        assertThat(drafted).isGreaterThan(60);
    }

    private static void check(String as, Pattern pattern, Body body, Optional<Boot> boot, Style style) {
        List<FitReport.LevelFit> levels = Levels.of(pattern, body, FABRIC, boot, style);
        Course course = new Course(levels, pattern, FABRIC, new LegShape(pattern, body, boot, style));
        for (int i = 0; i < levels.size(); i++) {
            Level level = pattern.levels().get(i);
            FitReport.LevelFit fit = levels.get(i);
            if (level.name().wholeBody() || level.name() == Level.Name.HEM || level.name() == Level.Name.CROTCH) {
                continue;
            }
            FitReport.CoursePoint here = course.at(level.height() - 0.02);
            assertThat(1 + here.across()).as(as + level).isCloseTo(1 + fit.across(), within(0.005));
            assertThat(here.pressure()).as(as + level).isCloseTo(fit.pressure(), within(0.005 + 0.05 * fit.pressure()));
        }
        List<FitReport.CoursePoint> points = Course.of(levels, pattern, body, FABRIC, boot, style);
        FitReport.LevelFit hem = levels.get(levels.size() - 1);
        FitReport.CoursePoint last = points.get(points.size() - 1);
        assertThat(last.across()).isCloseTo(hem.across(), within(1e-9));
        assertThat(points.get(0).girth()).isCloseTo(levels.get(1).girth(), within(1e-9));
        for (int i = 1; i < points.size(); i++) {
            FitReport.CoursePoint p = points.get(i);
            assertThat(p.height()).as(as).isLessThan(points.get(i - 1).height());
            assertThat(Double.isFinite(p.across()) && Double.isFinite(p.pressure()))
                    .as(as + p)
                    .isTrue();
            assertThat(p.across()).as(as + p).isBetween(-0.6, 1.0);
            assertThat(p.pressure()).isNotNegative();
        }
    }

    /** A few hundred points a leg must not be felt when a thousand bodies are drafted. */
    @Tag("slow")
    @Test
    void itIsCheap() {
        Body body = SampleBody.smallAdult();
        Style style = STYLES.get(0);
        Pattern pattern =
                Draft.of(body, FABRIC, BOOT, style, new Findings("test")).orElseThrow();
        List<FitReport.LevelFit> levels = Levels.of(pattern, body, FABRIC, BOOT, style);
        long best = Long.MAX_VALUE;
        for (int i = 0; i < 300; i++) {
            long before = System.nanoTime();
            Course.of(levels, pattern, body, FABRIC, BOOT, style);
            best = Math.min(best, System.nanoTime() - before);
        }
        System.out.println("course: " + best / 1000 + " us");
        assertThat(best).as("nanoseconds").isLessThan(5_000_000);
        assertThat(FitCheck.of(pattern, body, FABRIC, BOOT, style, Set.of(Machine.OVERLOCKER))
                        .course())
                .hasSizeGreaterThan(50);
    }
}
