package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;
import stretchwright.pattern.Style;

/** Parts of the leg that contradict a measure, the cloth or each other: both are named. */
class PartsAtOddsTest extends PartStyles {
    private static Finding finding(Body body, Style style, double stretchAlong) {
        Findings findings = new Findings("test");
        assertThat(Draft.of(
                        body,
                        SampleFabric.with(1470, 0.6, stretchAlong, true),
                        Optional.of(SampleBoot.figure()),
                        style,
                        findings))
                .isEmpty();
        return findings.all().get(0);
    }

    private static Finding finding(Parts parts) {
        return finding(ADULT, DraftTest.OVER_BOOT.with(parts), 0.45);
    }

    @Test
    void contradictionsNameBothThings() {
        assertThat(finding(Parts.PLAIN.with(new Parts.Gusset(260, 250))).problem())
                .contains("250 mm")
                .contains("too wide for the thigh");
        assertThat(finding(Parts.PLAIN.with(new Parts.Gusset(390, 60))).key()).isEqualTo("style.gusset.length");
        assertThat(finding(Parts.PLAIN.with(new Parts.Gusset(390, 60))).problem())
                .contains("front crotch curve");
        assertThat(finding(Parts.PLAIN.with(new Parts.Gusset(60, 90))).problem())
                .contains("more than the gusset's length");
        assertThat(finding(Parts.PLAIN.withPanel(280)).problem())
                .contains("280 mm")
                .contains("inseam");
        assertThat(finding(Parts.PLAIN.withKneeShaping()).problem()).contains("no seam at the side");
        assertThat(finding(ADULT, DraftTest.OVER_BOOT.with(SEAM.withKneeShaping()), 0.05)
                        .problem())
                .contains("slack");
        Style shorts = Style.usual(Style.Leg.SHORT).with(LowerEnd.PLAIN).with(SEAM.withKneeShaping());
        assertThat(finding(ADULT, shorts, 0.45).problem())
                .contains("length of the leg")
                .contains("mm above the middle of the knee");
    }

    @Test
    void aCuffTallerThanAShortLegNamesBoth() {
        Finding finding = finding(ADULT, Style.usual(Style.Leg.SHORT).with(LowerEnd.cuff(200)), 0.45);
        assertThat(finding.key()).isEqualTo("style.cuff.height");
        assertThat(finding.problem()).contains("200 mm").contains("between the crotch and the hem");
    }

    @Test
    void aPocketNeedsAPlace() {
        assertThat(finding(with(SEAM, Pocket.Kind.HIP_PAD, 100, 100, 5)).problem())
                .contains("side seam runs");
        assertThat(finding(with(Parts.PLAIN.withPanel(60), Pocket.Kind.PHONE, 90, 160, 0))
                        .problem())
                .contains("larger than its place on the side panel");
        assertThat(finding(with(Parts.PLAIN, Pocket.Kind.PHONE, 90, 300, 0)).problem())
                .contains("down to the knee");
        assertThat(finding(with(Parts.PLAIN, Pocket.Kind.KNEE_PAD, 250, 120, 5)).problem())
                .contains("cross a seam");
        Style shorts = Style.usual(Style.Leg.SHORT)
                .with(LowerEnd.PLAIN)
                .with(with(Parts.PLAIN, Pocket.Kind.KNEE_PAD, 100, 120, 5));
        assertThat(finding(ADULT, shorts, 0.45).line())
                .contains("length of the leg")
                .contains("longer leg");
        assertThat(finding(with(Parts.PLAIN, Pocket.Kind.TAILBONE_PAD, 100, 390, 5))
                        .problem())
                .contains("taller than its place");
        Parts over = Parts.PLAIN.with(
                List.of(new Pocket(Pocket.Kind.HIP_PAD, 100, 200, 5), new Pocket(Pocket.Kind.PHONE, 80, 150, 0)));
        assertThat(finding(over).problem()).contains("lies over the hip pad pocket");
    }
}
