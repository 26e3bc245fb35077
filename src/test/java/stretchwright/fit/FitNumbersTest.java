package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.ground.InWords.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.body.Value;
import stretchwright.draft.Draft;
import stretchwright.draft.TopStyles;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Findings;
import stretchwright.ground.InWords;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** Seams, show-through, washing, recovery, band and slips on one small adult; by hand where a number stands. */
class FitNumbersTest {
    private static final Style ANKLE = Style.usual(Style.Leg.ANKLE);
    private static final Set<Machine> OVERLOCK = Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH);
    private static final Body BODY = SampleBody.smallAdult();

    private static Pattern draft(Body body, Fabric fabric, Style style) {
        return Draft.of(body, fabric, Optional.empty(), style, new Findings("test"))
                .orElseThrow();
    }

    private static FitReport check(Body body, Fabric fabric, Style style, Set<Machine> machines) {
        return FitCheck.of(draft(body, fabric, style), body, fabric, Optional.empty(), style, machines);
    }

    private static FitReport check(Fabric fabric) {
        return check(BODY, fabric, ANKLE, OVERLOCK);
    }

    private static Fabric cloth(double across, double along, double recovery, double shrinks, double showsAt) {
        return new Fabric(
                new Fabric.Quality(OptionalDouble.of(250), 0, shrinks),
                new Fabric.Roll(
                        "sample knit", 1470, OptionalDouble.empty(), true, 0, Optional.empty(), ClothShape.WHOLE),
                new Fabric.Test(
                        across,
                        along,
                        LoadCurve.assumed(across),
                        LoadCurve.assumed(along),
                        OptionalDouble.of(recovery),
                        showsAt > 0 ? OptionalDouble.of(showsAt) : OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
    }

    private static List<Verdict> about(FitReport report, String about) {
        return report.all().stream().filter(v -> words(v.about()).equals(about)).toList();
    }

    /** The crotch seam is cut 14.2 % short: 1 / 0.858 - 1 = 16.5 % standing; the seat then grows by 0.52 x 39.5 %: 40.4 %. */
    @Test
    void theRisesAreDrawnByTheirOwnReductionAndTheSeat() {
        FitReport report = check(SampleFabric.heavyKnit());
        FitReport.SeamFit back = report.seams().stream()
                .filter(s -> s.seam().word().equals("back rise"))
                .findFirst()
                .orElseThrow();
        assertThat(draft(BODY, SampleFabric.heavyKnit(), ANKLE).reductions().crotch())
                .isCloseTo(0.142, within(0.001));
        assertThat(back.standing()).isCloseTo(0.165, within(0.002));
        assertThat(back.needed()).isCloseTo(1.165 * (1 + Poses.SLIDING * 0.395) - 1, within(0.003));
        assertThat(back.pose()).isEqualTo(PoseName.SIT_SPIN);
        assertThat(back.stitch().number()).isEqualTo(514);
        assertThat(back.holds()).isTrue();
        assertThat(back.reinforcement()).contains(Reinforcement.SECOND_ROW);
        assertThat(report.seams())
                .hasSameSizeAs(draft(BODY, SampleFabric.heavyKnit(), ANKLE).seams());
    }

    /** By hand a back stitch stands 30 %: the rises need 40 %, the leg's own seams 33 %. */
    @Test
    void seamsByHandBreakInTheSquatAndTheVerdictSaysSo() {
        FitReport report = check(BODY, SampleFabric.heavyKnit(), ANKLE, Set.of());
        assertThat(about(report, "back rise seam")).singleElement().satisfies(v -> {
            assertThat(v.severity()).isEqualTo(Severity.CAUTION);
            assertThat(words(v.message())).contains("sit spin", "backstitch by hand stands about 30 %");
        });
        assertThat(about(check(SampleFabric.heavyKnit()), "back rise seam")).isEmpty();
    }

    @Test
    void showThroughNamesRegionPoseAndByHowMuch() {
        FitReport report = check(cloth(0.6, 0.45, 0.95, 0, 0.50));
        Verdict v = about(report, "show-through").get(0);
        Cover knee = report.covers().stream()
                .filter(c -> c.region() == Region.KNEE && c.pose() == PoseName.SIT_SPIN)
                .findFirst()
                .orElseThrow();
        assertThat(about(report, "show-through")).hasSize(1);
        assertThat(words(v.message()))
                .contains("Knee, sit spin", "Seat, sit spin", "g/m2")
                .contains(String.format(Locale.ROOT, "%.0f points past", 100 * (knee.areal() - 0.50)));
        assertThat(knee.weight().orElseThrow()).isCloseTo(250 / (1 + knee.areal()), within(1e-9));
        assertThat(about(check(cloth(0.6, 0.45, 0.95, 0, 3)), "show-through")).isEmpty();
    }

    /** 33 % of 200 mm, a fifth of it stays: 13 mm. */
    @Test
    void kneesThatBagAreToldInMillimetres() {
        assertThat(RecoveryJudge.growth(0.33, 0.80, 200)).isCloseTo(13.2, within(1e-9));
        assertThat(words(about(check(cloth(0.6, 0.45, 0.80, 0, 0)), "recovery")
                        .get(0)
                        .message()))
                .contains("200 mm", "stays about 13 mm longer");
    }

    @Test
    void washingIsToldWhereItIsSeen() {
        FitReport report = check(cloth(0.6, 0.45, 0.95, 0.03, 0));
        LengthFit inseam = report.lengths().stream()
                .filter(l -> words(l.what()).equals("inseam"))
                .findFirst()
                .orElseThrow();
        assertThat(inseam.washed()).isCloseTo(0.97 * inseam.cut(), within(1e-9));
        assertThat(about(report, "shrinkage").get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(about(check(cloth(0.6, 0.45, 0.95, 0, 0)), "shrinkage")).isEmpty();
    }
    /** Hips far over a waist, the rise 90 mm down: the body grows by more than 15 % over the band. */
    @Test
    void aStraightBandOnASteepWaistRollsOrGapes() {
        Body steep = SampleBody.with(SampleBody.with(BODY, Measure.WAIST_GIRTH, 670), Measure.HIP_GIRTH, 1090);
        Fabric stretchy = SampleFabric.with(1470, 1.0, 0.6, true);
        Style low = TopStyles.ankle(TopEnd.band(90).dropped(90));
        assertThat(about(check(steep, stretchy, low, OVERLOCK), "waistband"))
                .anyMatch(v -> words(v.message()).contains("roll over"))
                .anyMatch(v -> words(v.message()).contains("gapes by"));
        assertThat(about(check(BODY, stretchy, ANKLE, OVERLOCK), "waistband"))
                .noneMatch(v -> words(v.message()).contains("roll over")
                        || words(v.message()).contains("gapes by"));
    }

    /** A hip that only just passes hangs on the tape: 12 mm more and it does not. The other way round nothing worsens. */
    @Test
    void aVerdictThatHangsOnATapeIsTold() {
        Fabric fabric = SampleFabric.heavyKnit();
        Pattern pattern = draft(BODY, fabric, ANKLE);
        double band = FitCheck.withoutSlips(pattern, BODY, fabric, Optional.empty(), ANKLE, OVERLOCK)
                .openings()
                .get(0)
                .relaxed();
        Body wide = SampleBody.with(BODY, Measure.HIP_GIRTH, band * 1.6 - 5);
        FitReport report = FitCheck.of(pattern, wide, fabric, Optional.empty(), ANKLE, OVERLOCK);
        assertThat(report.slips())
                .anyMatch(s -> s.measure() == Measure.HIP_GIRTH
                        && s.by() == 12
                        && s.changes().stream().anyMatch(c -> words(c).equals("waistband over hips becomes a stop")))
                .hasSize(2 * Slips.DECIDING.size());
        assertThat(about(report, words(Slips.ABOUT))).singleElement().satisfies(v -> {
            assertThat(v.severity()).isEqualTo(Severity.CAUTION);
            assertThat(words(v.message())).contains("hip girth, measured (12 mm more");
        });
        assertThat(FitCheck.withoutSlips(pattern, wide, fabric, Optional.empty(), ANKLE, OVERLOCK)
                        .slips())
                .isEmpty();
    }

    /** Drafts use an opening's reserve up: a heel of 5 mm more shows in the row, and is no verdict. */
    @Test
    void theReserveOfAnOpeningIsKeptForSlips() {
        FitReport report = check(SampleFabric.heavyKnit());
        assertThat(report.slips())
                .filteredOn(s -> s.measure() == Measure.HEEL_GIRTH)
                .flatExtracting(FitReport.Slip::changes)
                .extracting(InWords::words)
                .contains("hem over heel becomes a caution");
        assertThat(about(report, words(Slips.ABOUT)))
                .noneMatch(v -> words(v.message()).contains("heel girth"));
    }

    @Test
    void verdictsSayWhatWasEstimated() {
        Body guessed = estimated(BODY, Measure.HIP_GIRTH);
        FitReport report = check(guessed, SampleFabric.with(1470, 0.2, 0.15, true), ANKLE, OVERLOCK);
        assertThat(words(about(report, "waistband over hips").get(0).message()))
                .contains("hip girth, estimated, give or take");
        assertThat(words(about(check(SampleFabric.with(1470, 0.2, 0.15, true)), "waistband over hips")
                        .get(0)
                        .message()))
                .contains("hip girth, measured");
    }

    private static Body estimated(Body body, Measure measure) {
        java.util.Map<Measure, Value> values = new java.util.EnumMap<>(body.values());
        values.put(measure, new Value(body.mm(measure), Value.Origin.ESTIMATED, 20));
        return new Body(body.figure(), body.age(), values);
    }

    /** However many places are tight, circulation is said once; blades and children once as well. */
    @Test
    void cautionsAreSaidOnce() {
        Fabric stiff = SampleFabric.stiff();
        Style firm = ANKLE.with(new Hold.Fixed(0.20));
        FitReport report = check(BODY, stiff, firm, OVERLOCK);
        assertThat(report.verdicts().stream().filter(v -> v.kind() == Subject.Kind.PRESSURE))
                .singleElement()
                .satisfies(v -> assertThat(words(v.message())).contains("calf", "Likewise", "knee", "crotch"));
        assertThat(about(report, "circulation")).hasSize(1);
        assertThat(report.verdicts().stream()
                        .filter(v -> words(v.message().and(v.remedy())).contains("numb")))
                .hasSize(1);
        assertThat(report.verdicts().stream().filter(v -> words(v.message()).contains("medical device")))
                .hasSize(1);
    }
}
