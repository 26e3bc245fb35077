package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.ground.InWords.words;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.draft.Draft;
import stretchwright.draft.TopStyles;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.fabric.Strain;
import stretchwright.ground.Findings;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** What the fit check says about each way of ending above. Bodies invented where not said otherwise. */
class BandJudgeTest {
    private static FitReport check(Body body, Fabric fabric, Style style) {
        Findings findings = new Findings("test");
        Pattern pattern =
                Draft.of(body, fabric, Optional.empty(), style, findings).orElseThrow();
        return FitCheck.of(
                pattern, body, fabric, Optional.empty(), style, Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
    }

    private static FitReport check(Body body, String top) {
        return check(body, SampleFabric.heavyKnit(), TopStyles.ankle(TopStyles.named(top)));
    }

    private static String said(FitReport report, String about) {
        StringBuilder all = new StringBuilder();
        report.all().stream()
                .filter(v -> words(v.about()).equals(about))
                .forEach(v -> all.append(v.severity())
                        .append(' ')
                        .append(words(v.message()))
                        .append(' ')
                        .append(words(v.remedy())));
        return all.toString();
    }

    /** Measured 440 of 700: the back would stand higher than any back. It is drawn shorter, and that is told. */
    @Test
    void aBackCrotchLengthThatNoBackHasIsTold() {
        Body body = SampleBody.with(SampleBody.smallAdult(), Measure.BACK_CROTCH_LENGTH, 440);
        assertThat(said(check(body, "straight"), "back rise"))
                .startsWith(
                        "CAUTION Of a total crotch length of 700 mm a back of 440 mm would put the centre back higher");
        assertThat(said(check(SampleBody.smallAdult(), "straight"), "back rise"))
                .isEmpty();
    }

    /** W25: rib bands by an extension handbook (S24 of the trade values): 16 in takes 10 2/3 to 12 in. */
    @Test
    void w25RibForAnOpeningOfSixteenInches() {
        assertThat(16 * BandJudge.SHORTEST_RIB).isCloseTo(10 + 2.0 / 3, within(1e-9));
        assertThat(16 * BandJudge.LONGEST_RIB).isCloseTo(12, within(1e-9));
    }

    /** W23: waist 860.9, hip 1021.2, band 10 % less: needs 31.8 % (derived by hand); half of it here in the opening. */
    @Test
    void w23TheBandMustPassTheHips() {
        Body body = SampleBody.with(
                SampleBody.with(SampleBody.smallAdult(), Measure.WAIST_GIRTH, 860.9), Measure.HIP_GIRTH, 1021.2);
        Fabric stretchy = SampleFabric.with(1470, 1.2, 0.6, true);
        Style firm = Style.usual(Style.Leg.ANKLE).with(Hold.Named.FIRM);
        FitReport.Opening band = check(body, stretchy, firm).openings().get(0);
        assertThat(band.opening()).isEqualTo(OpeningName.WAISTBAND_OVER_HIPS);
        // at this hold the leg's own top edge is shorter than the band would be, and the band follows it
        assertThat(band.relaxed()).isLessThanOrEqualTo(774.9);
        assertThat(Strain.of(774.8, 1021.2)).isCloseTo(0.318, within(0.0005));
        assertThat(band.needed()).isCloseTo(Strain.of(band.relaxed(), 1021.2), within(1e-9));
    }

    @Test
    void aBandThatTakesInMuchOffersDartsAndSaysWhatRibMayDo() {
        Body body = SampleBody.with(
                SampleBody.with(SampleBody.smallAdult(), Measure.WAIST_GIRTH, 670), Measure.HIP_GIRTH, 1100);
        Fabric stretchy = SampleFabric.with(1470, 1.0, 0.6, true);
        assertThat(said(check(body, stretchy, TopStyles.ankle(TopStyles.named("straight"))), "waistband"))
                .contains("CAUTION")
                .contains("back: darts or back: shaped seam")
                .contains("rib");
        assertThat(said(check(body, stretchy, TopStyles.ankle(TopStyles.named("darts"))), "waistband"))
                .contains("Each dart takes in")
                .doesNotContain("back: darts or");
    }

    @Test
    void aContouredBandIsComparedAtItsUpperEdge() {
        FitReport report = check(SampleBody.smallAdult(), "contoured");
        FitReport.LevelFit waist = report.levels().get(0);
        assertThat(waist.level()).isEqualTo(Level.Name.WAIST);
        // joined 40 below the waist and 40 high: its upper edge is at the waist, 742
        assertThat(waist.girth()).isCloseTo(742, within(1e-9));
        assertThat(report.openings().get(0).relaxed()).isEqualTo(waist.width());
        assertThat(said(report, "waistband")).contains("a straight band would follow it too");
    }

    @Test
    void elasticCordAndMissingDartAreTold() {
        FitReport cased = check(SampleBody.smallAdult(), "casing with cord");
        assertThat(said(cased, "waistband")).contains("It pulls with about").doesNotContain("joined at the waist");
        assertThat(said(cased, "drawstring")).contains("CAUTION").contains("Local rules on cords come first");
        Body straight = SampleBody.with(SampleBody.smallAdult(), Measure.WAIST_GIRTH, 900);
        assertThat(said(check(straight, "darts"), "waistband")).contains("No dart is drawn");
    }

    /** No draft may end in a garment that cannot be put on where the plain one can: the pull of 85 % leaves reserve. */
    @Test
    void noTopIsHarderToPutOnThanItsClothAllows() {
        for (TopEnd top : TopStyles.all().values()) {
            FitReport report = check(SampleBody.smallAdult(), SampleFabric.heavyKnit(), TopStyles.ankle(top));
            assertThat(report.openings().get(0).passes()).isTrue();
        }
    }
}
