package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;
import stretchwright.pattern.Style;

/** Hems, straps and boots that leave each other no room: the finding names both. Invented boots. */
class HemsAtOddsTest {
    private static String finding(Boot boot, LowerEnd lower) {
        Findings findings = new Findings("test");
        Style style = Style.usual(Style.Leg.OVER_BOOT).with(lower);
        assertThat(Draft.of(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(boot), style, findings))
                .isEmpty();
        assertThat(findings.all()).hasSize(1);
        return findings.all().get(0).key() + ": " + findings.all().get(0).problem();
    }

    private static Boot boot(double ankleToHem, double ankleToTop, double gap) {
        Boot.Sole s = SampleBoot.withSole(1, Boot.Dressing.LEG_FIRST).sole();
        Boot.Sole sole = new Boot.Sole(
                s.ankleToSole(), s.length(), s.width(), s.arch(), java.util.OptionalDouble.of(gap), s.plate());
        return new Boot(
                "skate",
                290,
                400,
                385,
                ankleToHem,
                ankleToTop,
                false,
                Boot.Dressing.LEG_FIRST,
                java.util.OptionalDouble.empty(),
                sole);
    }

    @Test
    void aStrapWithoutRoomBetweenTheMountsNamesStrapAndGap() {
        assertThat(finding(boot(105, 80, 20), LowerEnd.PLAIN.strap(22)))
                .startsWith("style.strap")
                .contains("22 mm", "20 mm", "blade");
    }

    @Test
    void aHemBelowTheSoleNamesHemAndSole() {
        assertThat(finding(boot(134, 80, 70), LowerEnd.PLAIN)).contains("134 mm", "135 mm");
        assertThat(finding(boot(115, 80, 70), LowerEnd.hem(Hem.OVER_HEEL, 60))).contains("145 mm", "135 mm");
    }

    /** The boot is measured well; what was moved is at fault, and named. */
    @Test
    void aHemMovedBelowTheSoleNamesTheShift() {
        Findings findings = new Findings("test");
        assertThat(Draft.of(
                        SampleBody.smallAdult(),
                        SampleFabric.heavyKnit(),
                        Optional.of(boot(105, 80, 70)),
                        HemStyles.style(Hem.OVER_LACES).with(Shifts.of(Shift.HEM, 30)),
                        findings))
                .isEmpty();
        assertThat(findings.all().get(0).key()).isEqualTo("style.shifts.hem");
        assertThat(findings.all().get(0).line()).contains("135 mm", "Move it less.");
    }

    @Test
    void aDropThatLiftsTheFrontOutOfTheBootNamesDropAndTop() {
        assertThat(finding(boot(20, 30, 70), LowerEnd.hem(Hem.OVER_HEEL, 60)))
                .startsWith("style.hem drop")
                .contains("60 mm", "20 mm");
    }

    @Test
    void aHemInsideABootThatEndsBelowTheAnkleIsAFinding() {
        assertThat(finding(boot(50, 10, 70), LowerEnd.hem(Hem.INSIDE_BOOT, 0))).contains("20 mm", "10 mm");
    }

    @Test
    void aDeepTurnOnACurvedHemNamesTurnAndDrop() {
        Findings findings = new Findings("test");
        Style style = HemStyles.style(Hem.OVER_HEEL).with(7, java.util.Map.of(Seam.Role.HEM, 30.0));
        assertThat(Draft.of(
                        SampleBody.smallAdult(),
                        SampleFabric.heavyKnit(),
                        Optional.of(SampleBoot.withSole(1, Boot.Dressing.LEG_FIRST)),
                        style,
                        findings))
                .isEmpty();
        assertThat(findings.all().get(0).problem()).contains("30 mm", "40 mm");
    }
}
