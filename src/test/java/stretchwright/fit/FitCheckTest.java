package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.ground.InWords.words;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.draft.Draft;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

class FitCheckTest {
    private static final Style STYLE = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32));
    private static final Set<Machine> OVERLOCK = Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH);

    private static FitReport check(Fabric fabric, Set<Machine> machines) {
        Pattern pattern = Draft.of(
                        SampleBody.smallAdult(), fabric, Optional.of(SampleBoot.figure()), STYLE, new Findings("test"))
                .orElseThrow();
        return FitCheck.of(pattern, SampleBody.smallAdult(), fabric, Optional.of(SampleBoot.figure()), STYLE, machines);
    }

    private static List<String> about(FitReport report, FitReport.Severity severity) {
        return report.verdicts().stream()
                .filter(v -> v.severity() == severity)
                .map(v -> words(v.about()))
                .toList();
    }

    @Test
    void aHeavyKnitOnASmallAdultHasNoStop() {
        FitReport report = check(SampleFabric.heavyKnit(), OVERLOCK);
        assertThat(about(report, FitReport.Severity.STOP)).isEmpty();
        assertThat(report.openings()).allMatch(FitReport.Opening::passes).hasSize(3);
    }

    @Test
    void everyPressureIsLaplaceOfItsTension() {
        for (FitReport.LevelFit l : check(SampleFabric.heavyKnit(), OVERLOCK).levels()) {
            assertThat(l.pressure()).isCloseTo(2 * Math.PI * l.tension() / l.girth(), within(1e-12));
            assertThat(l.across()).isCloseTo(l.girth() / l.width() - 1, within(1e-12));
        }
    }

    @Test
    void theLevelsAreTheOnesTheGarmentHas() {
        assertThat(check(SampleFabric.heavyKnit(), OVERLOCK).levels())
                .extracting(FitReport.LevelFit::level)
                .containsExactly(
                        Level.Name.WAIST,
                        Level.Name.HIP,
                        Level.Name.CROTCH,
                        Level.Name.MID_THIGH,
                        Level.Name.KNEE,
                        Level.Name.CALF,
                        Level.Name.BOOT_TOP,
                        Level.Name.HEM);
    }

    /** Not at the calf: the boot's top is planned for it, by hand 350 / (1 + 0.85 x 0.08) = 327.7, and is not narrowed. */
    @Test
    void clothThatHardlyStretchesStopsAtTheBandAndTheKnee() {
        FitReport report = check(SampleFabric.with(1470, 0.08, 0.05, true), OVERLOCK);
        assertThat(about(report, FitReport.Severity.STOP))
                .contains("waistband over hips", "sit spin, knee along")
                .doesNotContain("leg over calf");
        assertThat(report.verdicts())
                .filteredOn(v -> words(v.about()).equals("sit spin, knee along"))
                .singleElement()
                .satisfies(v -> assertThat(words(v.message())).contains("Sit spin, knee across"));
        assertThat(report.openings().get(2).relaxed()).isCloseTo(327.7, within(0.05));
        assertThat(report.stops()).isTrue();
        assertThat(report.verdicts())
                .allSatisfy(v -> assertThat(words(v.message())).isNotBlank());
    }

    /** A remedy that names a stretch is tried: with that cloth the opening passes. */
    @Test
    void theStretchAStopAsksForIsEnough() {
        FitReport.Verdict stop = check(SampleFabric.with(1470, 0.20, 0.15, true), OVERLOCK).verdicts().stream()
                .filter(v -> words(v.about()).equals("waistband over hips"))
                .findFirst()
                .orElseThrow();
        assertThat(stop.severity()).isEqualTo(FitReport.Severity.STOP);
        double asked = Double.parseDouble(words(stop.remedy()).replaceAll("^Use cloth of (\\d+) %.*", "$1")) / 100;
        FitReport after = check(SampleFabric.with(1470, asked, asked * 0.75, true), OVERLOCK);
        assertThat(after.openings().get(0).passes()).isTrue();
    }

    /** An ankle hem is pulled over the heel, never over the calf; only a leg rolled up for lacing lies round the calf. */
    @Test
    void anAnkleHemNeedNotPassTheCalf() {
        Style ankle = Style.usual(Style.Leg.ANKLE);
        Pattern pattern = Draft.of(
                        SampleBody.smallAdult(),
                        SampleFabric.heavyKnit(),
                        Optional.empty(),
                        ankle,
                        new Findings("test"))
                .orElseThrow();
        FitReport report = FitCheck.of(
                pattern, SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.empty(), ankle, OVERLOCK);
        double calf = pattern.level(Level.Name.CALF).orElseThrow().width();
        assertThat(report.openings().get(2).relaxed()).isCloseTo(calf, within(0.01));
        assertThat(report.stops()).isFalse();
    }

    /** A measured curve stops a make also beyond its last reading, and says that it is carried on straight. */
    @Test
    void aMeasuredCurveStopsBeyondItsLastReading() {
        Fabric stiff = new Fabric(
                new Fabric.Quality(OptionalDouble.empty(), 0, 0),
                new Fabric.Roll("stiff", 1470, OptionalDouble.empty(), true, 0, Optional.empty(), ClothShape.WHOLE),
                new Fabric.Test(
                        0.60,
                        0.45,
                        LoadCurve.through(List.of(new LoadCurve.Reading(0.10, 1200))),
                        LoadCurve.assumed(0.45),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
        Style fixed = STYLE.with(new Hold.Fixed(0.13));
        Pattern pattern = Draft.of(
                        SampleBody.smallAdult(), stiff, Optional.of(SampleBoot.figure()), fixed, new Findings("test"))
                .orElseThrow();
        FitReport report =
                FitCheck.of(pattern, SampleBody.smallAdult(), stiff, Optional.of(SampleBoot.figure()), fixed, OVERLOCK);
        assertThat(report.verdicts())
                .filteredOn(v -> v.kind() == Subject.Kind.PRESSURE)
                .singleElement()
                .satisfies(v -> {
                    assertThat(v.severity()).isEqualTo(FitReport.Severity.STOP);
                    assertThat(words(v.message())).contains("calf", "beyond the last reading");
                });
    }

    @Test
    void aHemInTheBladeStops() {
        Boot low = new Boot("figure skate", 290, 400, 385, 250, 80, false, Boot.Dressing.LEG_FIRST);
        Pattern pattern = Draft.of(
                        SampleBody.smallAdult(),
                        SampleFabric.heavyKnit(),
                        Optional.of(low),
                        STYLE,
                        new Findings("test"))
                .orElseThrow();
        FitReport report = FitCheck.of(
                pattern, SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(low), STYLE, OVERLOCK);
        assertThat(about(report, FitReport.Severity.STOP)).contains("hem");
    }

    /** The band is not pulled along; two layers hold 1.7 times as hard as one (Ann Vasc Dis 5:435, 2012: 1.65 and 1.70). */
    @Test
    void theBandHoldsWithBothLayersAtFullHeight() {
        FitReport.LevelFit waist =
                check(SampleFabric.heavyKnit(), OVERLOCK).levels().get(0);
        assertThat(waist.tension())
                .isCloseTo(1.7 * SampleFabric.heavyKnit().test().loadAcross().tension(waist.across()), within(1e-9));
    }

    @Test
    void aZigzagHemLimitsWhatTheClothCouldDo() {
        Fabric stretchy = SampleFabric.with(1470, 0.90, 0.70, true);
        FitReport.Opening zigzag =
                check(stretchy, Set.of(Machine.LOCKSTITCH)).openings().get(0);
        FitReport.Opening overlock = check(stretchy, OVERLOCK).openings().get(0);
        assertThat(zigzag.allowed()).isCloseTo(0.50, within(1e-12));
        assertThat(overlock.allowed()).isCloseTo(0.90, within(1e-12));
    }

    @Test
    void aStopOfTheStitchAsksForAStitchAndNotForCloth() {
        assertThat(check(SampleFabric.heavyKnit(), Set.of()).verdicts())
                .anyMatch(v -> words(v.about()).equals("waistband over hips")
                        && v.severity() == FitReport.Severity.STOP
                        && words(v.remedy()).startsWith("Use a stitch that stretches"));
    }

    /** The stuck bound is (1 + standing)(1 + skin) - 1, the sliding one never larger (mechanics method section 5). */
    @Test
    void slidingNeverAsksForMoreThanSticking() {
        assertThat(check(SampleFabric.heavyKnit(), OVERLOCK).poses())
                .allSatisfy(p -> assertThat(p.needed()).isLessThanOrEqualTo(p.neededIfStuck() + 1e-12));
    }
}
