package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Legs;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.body.Side;
import stretchwright.body.Value;
import stretchwright.boot.Boot;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Findings;
import stretchwright.ground.Voice;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.settle.SettleRange;

/** What is said of a band that slips and a hem that rises: by chances, in lengths and newtons, and nothing twice. */
class SettleJudgeTest {
    private static final Body BODY = SampleBody.smallAdult();
    private static final Set<Machine> MACHINES = Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH);
    private static final Style PLAIN = Style.usual(Style.Leg.ANKLE).with(TopEnd.band(65));

    private static FitReport check(Fabric cloth, Style style) {
        Pattern pattern = Draft.of(BODY, cloth, Optional.empty(), style, MACHINES, new Findings(""))
                .orElseThrow();
        return FitCheck.of(pattern, BODY, cloth, Optional.<Boot>empty(), style, MACHINES);
    }

    private static Style withElastic(double width) {
        return PLAIN.with(PLAIN.top().with(PLAIN.top().band().withElastic(width)));
    }

    private static List<Verdict> about(FitReport fit, Subject.Kind kind) {
        return fit.verdicts().stream().filter(v -> v.kind() == kind).toList();
    }

    @Test
    void aBandThatSlipsIsToldOnceInLengthsAndNewtons() {
        List<Verdict> said = about(check(SampleFabric.heavyKnit(), PLAIN), Subject.Kind.BAND_SLIPS);
        assertThat(said).singleElement().satisfies(v -> {
            assertThat(v.severity()).isEqualTo(Severity.CAUTION);
            assertThat(Voice.plain().say(v.message()))
                    .contains("back of the waistband slips down by", "in 10", "N standing", "After ten bends");
            assertThat(v.chance()).isNotEmpty();
            assertThat(v.chance().getAsDouble()).isBetween(0.3, 1.0);
        });
    }

    /** The wider the elastic the less likely; at last nothing is said. */
    @Test
    void anElasticTurnsIt() {
        double last = 1;
        for (double width : new double[] {10, 20, 30, 40}) {
            List<Verdict> said = about(check(SampleFabric.heavyKnit(), withElastic(width)), Subject.Kind.BAND_SLIPS);
            double chance = said.stream()
                    .mapToDouble(v -> v.chance().orElseThrow())
                    .max()
                    .orElse(0);
            assertThat(chance).as("elastic of %.0f mm", width).isLessThanOrEqualTo(last + 0.02);
            last = chance;
        }
        assertThat(last).isLessThan(0.3);
    }

    /** Cloth that is slack everywhere has nothing that holds it: no clean verdict. */
    @Test
    void aSlackGarmentIsStopped() {
        Style slack = PLAIN.with(new Hold.Fixed(0))
                .withEase(Map.of(
                        Level.Name.WAIST,
                        60.0,
                        Level.Name.HIP,
                        60.0,
                        Level.Name.CROTCH,
                        60.0,
                        Level.Name.MID_THIGH,
                        60.0,
                        Level.Name.KNEE,
                        60.0,
                        Level.Name.CALF,
                        60.0,
                        Level.Name.ANKLE,
                        60.0));
        FitReport fit = check(SampleFabric.heavyKnit(), slack);
        assertThat(fit.verdicts()).anyMatch(v -> v.severity() == Severity.STOP);
    }

    /** 28.5 and 28.6 % of stretch: the same verdicts, with chances as good as the same. */
    @Test
    void nothingFlipsOnATenthOfAPercent() {
        for (double stretch = 0.25; stretch < 0.62; stretch += 0.037) {
            FitReport one = check(SampleFabric.with(1470, stretch, 0.75 * stretch, true), PLAIN);
            FitReport other = check(SampleFabric.with(1470, stretch + 0.001, 0.75 * (stretch + 0.001), true), PLAIN);
            for (Subject.Kind kind : List.of(Subject.Kind.BAND_SLIPS, Subject.Kind.HEM_RISES)) {
                double before = chance(one, kind);
                double after = chance(other, kind);
                assertThat(Math.abs(after - before))
                        .as("%s at %.3f", kind, stretch)
                        .isLessThan(0.08);
            }
        }
        List<String> words = new ArrayList<>();
        for (double stretch : new double[] {0.285, 0.286}) {
            words.add(String.join(
                    "; ",
                    check(SampleFabric.with(1470, stretch, 0.2, true), PLAIN).verdicts().stream()
                            .filter(v -> v.severity() != Severity.NOTE)
                            .map(v -> v.severity() + " " + Voice.plain().say(v.place()))
                            .sorted()
                            .toList()));
        }
        assertThat(words.get(1)).isEqualTo(words.get(0));
    }

    /** Of what is not told the chance from which it is. */
    private static double chance(FitReport fit, Subject.Kind kind) {
        return about(fit, kind).stream()
                .map(Verdict::chance)
                .mapToDouble(OptionalDouble::orElseThrow)
                .max()
                .orElse(kind == Subject.Kind.HEM_RISES ? 0.3 : 0.1);
    }

    /** A strap under the foot holds the hem, whatever pulls. */
    @Test
    void aStrapHoldsTheHem() {
        FitReport fit = check(SampleFabric.with(1470, 0.6, 0.15, true), Style.usual(Style.Leg.STIRRUP));
        assertThat(about(fit, Subject.Kind.HEM_RISES)).isEmpty();
    }

    /** Of two legs the hem is told that rises more, whichever back slips further. */
    @Test
    void eachEndIsThatOfTheLegThatHasItHarder() {
        Map<Side, Map<Measure, Value>> own = new EnumMap<>(Side.class);
        own.put(
                Side.LEFT,
                Map.of(Measure.CALF_GIRTH, new Value(BODY.mm(Measure.CALF_GIRTH) + 20, Value.Origin.GIVEN, 2)));
        own.put(
                Side.RIGHT,
                Map.of(Measure.ANKLE_GIRTH, new Value(BODY.mm(Measure.ANKLE_GIRTH) + 15, Value.Origin.GIVEN, 2)));
        Body apart = new Body(BODY.figure(), BODY.age(), BODY.stance(), BODY.values(), new Legs(own, Map.of()));
        Pattern pattern = Draft.of(apart, SampleFabric.heavyKnit(), Optional.empty(), PLAIN, MACHINES, new Findings(""))
                .orElseThrow();
        Worn worn = new Worn(pattern, apart, SampleFabric.heavyKnit(), Optional.empty(), PLAIN, MACHINES);
        SettleRange told = SettleJudge.range(worn, false);
        List<SettleRange> legs = worn.legs().stream()
                .map(w -> SettleRange.quick(w.pattern(), w.body(), w.fabric(), w.boot(), w.style()))
                .toList();
        assertThat(legs).hasSize(2);
        assertThat(told.middle().hemUp())
                .isEqualTo(
                        legs.stream().mapToDouble(l -> l.middle().hemUp()).max().orElseThrow());
        assertThat(told.middle().back())
                .isEqualTo(
                        legs.stream().mapToDouble(l -> l.middle().back()).max().orElseThrow());
    }
}
