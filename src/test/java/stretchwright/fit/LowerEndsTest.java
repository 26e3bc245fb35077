package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.ground.InWords.words;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Levels, openings and verdicts for each hem and way of dressing. Invented boots. */
class LowerEndsTest {
    private static final Set<Machine> OVERLOCK = Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH);
    private static final Body BODY = SampleBody.smallAdult();
    private static final Fabric CLOTH = SampleFabric.heavyKnit();

    private static FitReport check(Boot boot, Style.Leg leg, LowerEnd lower, Fabric fabric) {
        Style style = Style.usual(leg).with(lower);
        Optional<Boot> laced = Optional.of(boot);
        Pattern pattern =
                Draft.of(BODY, fabric, laced, style, new Findings("test")).orElseThrow();
        return FitCheck.of(pattern, BODY, fabric, laced, style, OVERLOCK);
    }

    private static FitReport over(Hem hem, Boot.Dressing dressing) {
        return check(
                SampleBoot.withSole(1, dressing),
                Style.Leg.OVER_BOOT,
                LowerEnd.hem(hem, hem == Hem.OVER_HEEL ? 40 : 0),
                CLOTH);
    }

    private static FitReport.LevelFit level(FitReport report, Level.Name name) {
        return report.levels().stream()
                .filter(l -> l.level() == name)
                .findFirst()
                .orElseThrow();
    }

    private static FitReport.Opening hem(FitReport report) {
        return report.openings().stream()
                .filter(o -> o.opening() == OpeningName.HEM_OVER_HEEL)
                .findFirst()
                .orElseThrow();
    }

    private static String said(FitReport report) {
        StringBuilder all = new StringBuilder();
        report.all()
                .forEach(v -> all.append(v.severity().word() + " " + words(v.about()) + ": "
                        + words(v.message().and(v.remedy())) + "\n"));
        return all.toString();
    }

    /** By hand: top 290, hem girth 385 at 80 + 105 mm below: 25 mm below 302.8. Sole 2 (270 - 95) + pi 95 = 648.5. */
    @Test
    void eachHemIsComparedWithWhatItLiesOn() {
        Map<Hem, Double> girths = Map.of(
                Hem.INSIDE_BOOT, 215.0,
                Hem.TO_COLLAR, 302.84,
                Hem.OVER_LACES, 385.0,
                Hem.OVER_HEEL, 385.0,
                Hem.WHOLE_BOOT, 648.45);
        girths.forEach((hem, girth) -> {
            FitReport report = over(hem, Boot.Dressing.LEG_FIRST);
            assertThat(level(report, Level.Name.HEM).girth()).as(hem.word()).isCloseTo(girth, within(0.01));
            boolean outside = hem != Hem.INSIDE_BOOT;
            assertThat(report.levels().stream().anyMatch(l -> l.level() == Level.Name.BOOT_TOP))
                    .as(hem.word())
                    .isEqualTo(outside);
            assertThat(report.stops()).as(hem.word() + said(report)).isFalse();
        });
    }

    @Test
    void whatMustPassDependsOnHemAndDressing() {
        assertThat(hem(over(Hem.INSIDE_BOOT, Boot.Dressing.LEG_FIRST)).mustPass())
                .isEqualTo(305);
        assertThat(hem(over(Hem.INSIDE_BOOT, Boot.Dressing.OVER_LACED_BOOT)).mustPass())
                .isEqualTo(305);
        assertThat(hem(over(Hem.TO_COLLAR, Boot.Dressing.LEG_FIRST)).mustPass()).isEqualTo(305);
        assertThat(hem(over(Hem.OVER_LACES, Boot.Dressing.LEG_FIRST)).mustPass())
                .isEqualTo(400);
        assertThat(hem(over(Hem.OVER_LACES, Boot.Dressing.OVER_LACED_BOOT)).mustPass())
                .isEqualTo(520);
        assertThat(hem(over(Hem.WHOLE_BOOT, Boot.Dressing.OVER_LACED_BOOT)).mustPass())
                .isEqualTo(560);
    }

    /** By hand: a boot top of 290 at most, cut to 0.01 mm, must pass 520: 79 %, and the cloth has 60. */
    @Test
    void whatCannotPassGuardAndBladeByStretchIsStoppedAndTheWaysOutNamed() {
        FitReport report = over(Hem.OVER_LACES, Boot.Dressing.OVER_LACED_BOOT);
        assertThat(hem(report).passes()).isFalse();
        assertThat(hem(report).needed()).isGreaterThanOrEqualTo(520.0 / 290 - 1 - 1e-4);
        assertThat(report.stops()).isTrue();
        assertThat(said(report)).contains("stop hem over heel", "zip", "hook tape", "wrap", "leg first");
    }

    @Test
    void aGuardThatNobodyMeasuredIsAskedFor() {
        Boot b = SampleBoot.figure();
        Boot laced = new Boot(b.kind(), 290, 400, 385, 140, 80, false, Boot.Dressing.OVER_LACED_BOOT);
        FitReport report = check(laced, Style.Leg.OVER_BOOT, LowerEnd.PLAIN, CLOTH);
        assertThat(said(report)).contains("caution hem over heel").contains("boot.guard girth");
        assertThat(said(over(Hem.OVER_LACES, Boot.Dressing.OVER_LACED_BOOT))).doesNotContain("write it as boot.guard");
    }

    /** The back hangs half the drop below the sides: it may end in the blade where a level hem would not. */
    @Test
    void theLowestPointOfASlopingHemCountsAgainstTheBlade() {
        Boot b = SampleBoot.figure();
        Boot deep = new Boot(b.kind(), 290, 400, 385, 170, 80, false, Boot.Dressing.LEG_FIRST);
        assertThat(said(check(deep, Style.Leg.OVER_BOOT, LowerEnd.PLAIN, CLOTH)))
                .doesNotContain("in the blade");
        assertThat(said(check(deep, Style.Leg.OVER_BOOT, LowerEnd.hem(Hem.OVER_HEEL, 40), CLOTH)))
                .contains("A hem in the blade");
    }

    @Test
    void coversAndStrapsCarryTheirCautions() {
        assertThat(said(over(Hem.WHOLE_BOOT, Boot.Dressing.LEG_FIRST)))
                .contains("caution hem", "cut by the blade", "before every session");
        FitReport strap = check(
                SampleBoot.withSole(1, Boot.Dressing.LEG_FIRST), Style.Leg.OVER_BOOT, LowerEnd.PLAIN.strap(22), CLOTH);
        assertThat(said(strap)).contains("caution strap", "Never under the heel block", "228 mm");
        assertThat(said(check(SampleBoot.figure(), Style.Leg.STIRRUP, LowerEnd.PLAIN.strap(40), CLOTH)))
                .contains("note strap", "Pin it under the arch");
    }

    /** By hand: crotch 772, hem 105 below a bone at 65: 812 standing, 5 % less as cut; knee 365: 80 more when bent. */
    @Test
    void theLengthOfTheLegIsToldStandingAndBent() {
        assertThat(said(over(Hem.OVER_LACES, Boot.Dressing.LEG_FIRST)))
                .contains("note leg length", "812 mm standing", "185 mm of it over the boot", "892 mm (estimated)")
                .contains("Measure from the top of the thigh");
        assertThat(said(check(SampleBoot.figure(), Style.Leg.ANKLE, LowerEnd.PLAIN.growing(20), CLOTH)))
                .contains("20 mm more to let down");
    }
}
