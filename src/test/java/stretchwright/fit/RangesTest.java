package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.ground.InWords.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.SampleBody;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Likely;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.PressureSpread;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** Pressures are told as ranges and judged by chances. */
class RangesTest {
    private static final Set<Machine> OVERLOCK = Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH);

    /** More than comfort allows. */
    private static final Hold ASKED =
            new Hold.Profile(Map.of(Level.Name.CALF, Laplace.fromMmHg(30), Level.Name.ANKLE, Laplace.fromMmHg(40)));

    private static LevelFit calf(double low, double middle, double high, double tensionSpread) {
        return new LevelFit(
                Level.Name.CALF,
                WhichLeg.BOTH,
                360,
                310,
                0.16,
                0,
                40,
                Laplace.fromMmHg(middle),
                false,
                false,
                new Likely(0.14, 0.18, Laplace.fromMmHg(low), Laplace.fromMmHg(high), 0.3, tensionSpread));
    }

    /** Ends outward to 1, above 10 to 2; a range of more than four times tells its upper end alone. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3.3 | 4.94 | 6.9 | 0.1 | about 3 to 7 mmHg, most likely 5",
                "9.4 | 13.2 | 18.1 | 0.1 | about 9 to 20 mmHg, most likely 13",
                "11.1 | 14 | 19.9 | 0.1 | about 10 to 20 mmHg, most likely 14",
                "1.2 | 3 | 5.4 | 0.65 | up to 6 mmHg (weigh a strip to know)",
                "1.2 | 3 | 5.4 | 0.2 | up to 6 mmHg",
                "0 | 0.1 | 0.8 | 0.2 | hardly at all"
            })
    void inFewDigits(double low, double middle, double high, double tension, String told) {
        assertThat(words(Told.of(calf(low, middle, high, tension)).said())).isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({
        "0.11, about 1 in 10",
        "0.22, about 1 in 5",
        "0.31, about 1 in 3",
        "0.49, about 1 in 2",
        "0.51, about 1 in 2"
    })
    void chancesInWords(double chance, String told) {
        assertThat(words(Told.chance(chance))).isEqualTo(told);
    }

    /** By hand: all parts but the tape's at 10 % strain, three weights: 0.138, 0.05, 0.04, 0.12, 0.05, 0.10, body 0.20. */
    @Test
    void theSpreadIsTheRootOfTheSquares() {
        LoadCurve straight = LoadCurve.through(List.of(
                new LoadCurve.Reading(0.1, 40), new LoadCurve.Reading(0.2, 80), new LoadCurve.Reading(0.4, 160)));
        double all = new PressureSpread(straight).total(0.1, 0);
        double hand = Math.sqrt(0.138 * 0.138 + 0.0025 + 0.0016 + 0.0144 + 0.0025 + 0.01 + 0.04);
        assertThat(all).isCloseTo(hand, within(0.001));
        // the tape: a strain of 0.1 off by 0.0065 on a straight curve is 0.065
        assertThat(new PressureSpread(straight).total(0.1, 0.0065)).isCloseTo(Math.hypot(hand, 0.065), within(0.002));
    }

    /** Girth 360 with a tape of 1.8, cut 327.3 for 10 %: 1.1 x hypot(1.8 / 360, 2 / 327.3). */
    @Test
    void theStrainsSpreadIsTapeAndScissors() {
        assertThat(PressureSpread.strain(0.1, 360, 1.8))
                .isCloseTo(1.1 * Math.hypot(1.8 / 360, 2 / (360 / 1.1)), within(1e-12));
    }

    /** Nothing jumps where the cloth turns slack. */
    @Test
    void smoothThroughSlack() {
        PressureSpread spread = new PressureSpread(LoadCurve.assumed(0.6));
        Likely before = spread.of(-0.03, 0.01, 0.1);
        for (double e = -0.03; e < 0.3; e += 0.0005) {
            Likely now = spread.of(e, 0.01, 0.1);
            assertThat(now.pressureHigh()).isCloseTo(before.pressureHigh(), within(0.05));
            assertThat(now.pressureLow()).isCloseTo(before.pressureLow(), within(0.05));
            assertThat(now.pressureLow()).isNotNegative().isLessThanOrEqualTo(now.pressureHigh());
            before = now;
        }
    }

    static Fabric pulling(double newtonsPerMetre) {
        Fabric soft = SampleFabric.heavyKnit();
        Fabric.Test t = soft.test();
        return soft.with(new Fabric.Test(
                t.stretchAcross(),
                t.stretchAlong(),
                LoadCurve.through(List.of(
                        new LoadCurve.Reading(0.08, 0.3 * newtonsPerMetre),
                        new LoadCurve.Reading(0.2, newtonsPerMetre),
                        new LoadCurve.Reading(0.5, 3.5 * newtonsPerMetre))),
                t.loadAlong(),
                t.recovery(),
                t.showsThroughAt(),
                t.wrapped(),
                t.assumed()));
    }

    private static Optional<FitReport> fit(Body body, Fabric cloth, Style style) {
        return Draft.of(body, cloth, Optional.empty(), style, new Findings("test"))
                .map(p -> FitCheck.withoutSlips(p, body, cloth, Optional.empty(), style, OVERLOCK));
    }

    /**
     * Where the draft itself kept a level at the comfort cap, the fit check has no caution of pressure for that level; and
     * none at the waist, whatever the cloth.
     */
    @Test
    @Tag("slow")
    void theDraftsOwnCapsAreNoCautions() {
        int capped = 0;
        for (long seed = 1; seed <= 120; seed++) {
            RandomStream random = RandomStream.of(seed, "caps");
            Body body = SampleBody.random(seed);
            Fabric cloth = pulling(random.between(20, 900));
            Style style = Style.usual(Style.Leg.ANKLE).with(ASKED);
            Optional<Pattern> pattern = Draft.of(body, cloth, Optional.empty(), style, new Findings("test"));
            if (pattern.isEmpty()) {
                continue;
            }
            FitReport report = FitCheck.withoutSlips(pattern.get(), body, cloth, Optional.empty(), style, OVERLOCK);
            List<LevelHold> atCap = pattern.get().holds().stream()
                    .filter(h -> h.bound() == LevelHold.Bound.COMFORT)
                    .toList();
            for (LevelHold h : atCap) {
                capped++;
                String where = "seed " + seed + ", " + h.level();
                report.levels().stream()
                        .filter(l -> l.level() == h.level())
                        .forEach(l ->
                                assertThat(over(Comfort.CAUTION, l)).as(where).isLessThan(Comfort.CAUTION_CHANCE));
            }
        }
        assertThat(capped).isGreaterThan(20);
    }

    private static double over(double mmHg, LevelFit l) {
        return stretchwright.ground.Chance.above(
                mmHg, Laplace.toMmHg(l.pressure()), l.likely().spread());
    }

    /** An assumed curve never stops; a pressure verdict is told once, with its chance. */
    @Test
    void onceAndWithItsChance() {
        IntStream.rangeClosed(1, 24).forEach(seed -> {
            RandomStream random = RandomStream.of(seed, "once");
            Fabric cloth = seed % 2 == 0 ? SampleFabric.heavyKnit() : pulling(random.between(20, 900));
            Style style = Style.usual(Style.Leg.ANKLE).with(new Hold.Fixed(0.2));
            fit(SampleBody.random(seed), cloth, style).ifPresent(report -> {
                List<Verdict> told = report.verdicts().stream()
                        .filter(v -> v.kind() == Subject.Kind.PRESSURE)
                        .toList();
                assertThat(told).hasSizeLessThanOrEqualTo(1).allSatisfy(v -> {
                    assertThat(v.chance()).isPresent();
                    assertThat(v.chance().getAsDouble()).isBetween(Comfort.NOTE_CHANCE, 1.0);
                });
                if (cloth.test().loadAcross().isAssumed()) {
                    assertThat(told).noneMatch(v -> v.severity() == Severity.STOP);
                }
            });
        });
    }

    /** A tenth of a percent of stretch or reduction moves a chance by less than 2 in 100. */
    @Tag("slow")
    @Test
    void noVerdictHangsOnATenthOfAPercent() {
        Body body = SampleBody.smallAdult();
        double before = Double.NaN;
        for (double share = 0.05; share < 0.25; share += 0.001) {
            Style style = Style.usual(Style.Leg.ANKLE).with(new Hold.Fixed(share));
            double now = fit(body, SampleFabric.stiff(), style).orElseThrow().levels().stream()
                    .filter(l -> l.level() == Level.Name.CALF)
                    .mapToDouble(l -> over(Comfort.CAUTION, l))
                    .findFirst()
                    .orElseThrow();
            if (!Double.isNaN(before)) {
                assertThat(now).as("at " + share).isCloseTo(before, within(0.02));
            }
            before = now;
        }
    }
}
