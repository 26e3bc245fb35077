package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.ground.InWords.words;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.draft.Draft;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** What holds of the fit report for any body and cloth. */
@Tag("slow")
class FitPropertiesTest {
    private static final Set<Machine> OVERLOCK = EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH);
    private static final int BODIES = 60;

    private record Case(Pattern pattern, Body body, Fabric fabric, Style style) {
        FitReport judged(Fabric other) {
            return FitCheck.withoutSlips(pattern, body, other, Optional.empty(), style, OVERLOCK);
        }
    }

    private static Optional<Case> drafted(long seed) {
        RandomStream random = RandomStream.of(seed, "fit numbers");
        Fabric fabric = cloth(random.between(0.30, 1.0), random.between(0.15, 0.8), 0.93);
        Style style = Style.usual(seed % 3 == 0 ? Style.Leg.CALF : seed % 3 == 1 ? Style.Leg.ANKLE : Style.Leg.SHORT);
        Body body = SampleBody.random(seed);
        return Draft.of(body, fabric, Optional.empty(), style, new Findings("test"))
                .map(p -> new Case(p, body, fabric, style));
    }

    /** The load curve does not change with the stretch: only how far the cloth goes does. */
    private static Fabric cloth(double across, double along, double recovery) {
        return new Fabric(
                new Fabric.Quality(OptionalDouble.of(240), 0.02, 0.03),
                new Fabric.Roll(
                        "sample knit", 1470, OptionalDouble.empty(), true, 0, Optional.empty(), ClothShape.WHOLE),
                new Fabric.Test(
                        across,
                        along,
                        LoadCurve.assumed(0.6),
                        LoadCurve.assumed(0.45),
                        OptionalDouble.of(recovery),
                        OptionalDouble.of(0.9),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
    }

    @Test
    void everyNumberIsFiniteAndNoPoseAsksLessThanStanding() {
        int drafted = 0;
        for (long seed = 1; seed <= BODIES; seed++) {
            Optional<Case> one = drafted(seed);
            if (one.isEmpty()) {
                continue;
            }
            drafted++;
            FitReport fit = one.get().judged(one.get().fabric());
            assertThat(numbers(fit).filter(v -> !Double.isFinite(v)))
                    .as("body " + seed)
                    .isEmpty();
            assertThat(fit.seams())
                    .as("body " + seed)
                    .hasSameSizeAs(one.get().pattern().seams())
                    .allMatch(s -> s.needed() >= s.standing());
            assertThat(fit.lengths()).allMatch(l -> l.washed() < l.cut());
            assertThat(fit.verdicts().toString()).doesNotContain("NaN", "Infinity");
        }
        assertThat(drafted).isGreaterThan(BODIES / 2);
    }

    private static DoubleStream numbers(FitReport fit) {
        return DoubleStream.concat(
                fit.seams().stream().flatMapToDouble(s -> DoubleStream.of(s.standing(), s.needed(), s.stands())),
                DoubleStream.concat(
                        fit.covers().stream()
                                .flatMapToDouble(c ->
                                        DoubleStream.of(c.areal(), c.weight().orElseThrow())),
                        fit.lengths().stream().flatMapToDouble(l -> DoubleStream.of(l.cut(), l.washed()))));
    }

    /** The same garment in cloth that stretches less, in either or both directions: nothing that was said becomes milder. */
    @Test
    void lessStretchNeverMakesAVerdictMilder() {
        int compared = 0;
        for (long seed = 1; seed <= BODIES; seed++) {
            Optional<Case> one = drafted(seed);
            if (one.isEmpty()) {
                continue;
            }
            Fabric f = one.get().fabric();
            Map<String, FitReport.Severity> before = worst(one.get().judged(f));
            for (double[] less : new double[][] {{0.8, 1}, {1, 0.8}, {0.6, 0.6}}) {
                Fabric stiffer = cloth(
                        less[0] * f.test().stretchAcross(), less[1] * f.test().stretchAlong(), 0.93);
                Map<String, FitReport.Severity> after = worst(one.get().judged(stiffer));
                for (Map.Entry<String, FitReport.Severity> said : before.entrySet()) {
                    assertThat(after.get(said.getKey()))
                            .as("body " + seed + ", " + said.getKey())
                            .isNotNull()
                            .isLessThanOrEqualTo(said.getValue());
                }
                compared += before.size();
            }
        }
        assertThat(compared).isGreaterThan(BODIES);
    }

    private static Map<String, FitReport.Severity> worst(FitReport fit) {
        Map<String, FitReport.Severity> out = new TreeMap<>();
        // that the cloth has more stretch along is about its direction: with less along it is not so any more
        fit.verdicts().stream()
                .filter(v -> v.kind() != Subject.Kind.CLOTH_DIRECTION)
                .forEach(v -> out.merge(words(v.about()), v.severity(), (a, b) -> a.compareTo(b) <= 0 ? a : b));
        return out;
    }

    /** Where the legs differ, the numbers are of the leg that has it hardest, and the slips move both. */
    @Test
    void slipsOfAnyBodyAreJudgedOrLeftAsTheyWere() {
        for (long seed = 1; seed <= 12; seed++) {
            drafted(seed).ifPresent(c -> {
                FitReport fit = FitCheck.of(c.pattern(), c.body(), c.fabric(), Optional.empty(), c.style(), OVERLOCK);
                assertThat(fit.slips()).hasSize(2 * Slips.DECIDING.size());
                assertThat(fit.verdicts().stream().filter(v -> v.about().equals(Slips.ABOUT)))
                        .hasSizeLessThanOrEqualTo(1);
            });
        }
    }
}
