package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measuring;
import stretchwright.body.SampleBody;
import stretchwright.body.SkinExtension;
import stretchwright.boot.Boot;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.LevelHold.Bound;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Hold sets the reduction: pressures reached, bounds kept, the handbook way as it was. */
class HoldingTest {
    private static final int BODIES = 120;

    /** An invented cloth whose pull was measured: tension in N/m at a fifth, two fifths and three fifths of stretch. */
    private static Fabric measured(double across, double... tensions) {
        List<LoadCurve.Reading> readings = new ArrayList<>();
        for (int i = 0; i < tensions.length; i++) {
            readings.add(new LoadCurve.Reading(across * (i + 1) / tensions.length, tensions[i]));
        }
        return new Fabric(
                new Fabric.Quality(OptionalDouble.empty(), 0, 0),
                new Fabric.Roll("measured", 1470, OptionalDouble.empty(), true, 0, Optional.empty(), ClothShape.WHOLE),
                new Fabric.Test(
                        across,
                        0.45,
                        LoadCurve.through(readings),
                        LoadCurve.assumed(0.45),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
    }

    private static Optional<Pattern> ankle(Body body, Fabric fabric, Hold hold) {
        return Draft.of(
                body, fabric, Optional.empty(), Style.usual(Style.Leg.ANKLE).with(hold), new Findings("test"));
    }

    /** Pressure of one layer round the girth by p = 2 pi T / C, worked here from the drawn width alone. */
    private static double pressure(Pattern pattern, Body body, Fabric fabric, Level.Name level) {
        double girth = body.mm(level == Level.Name.HIP ? Measure.HIP_GIRTH : Holding.girth(level));
        double strain = girth / pattern.level(level).orElseThrow().width() - 1;
        double along = 1 / (1 - pattern.reductions().along());
        return 2 * Math.PI * fabric.test().loadAcross().tension(strain) / along / girth;
    }

    @Test
    void whereNothingBindsTheWantedPressureIsReached() {
        Fabric firm = measured(0.60, 62, 138, 260);
        int reached = 0;
        for (int seed = 0; seed < BODIES; seed++) {
            Body body = SampleBody.random(seed);
            Optional<Pattern> pattern = ankle(body, firm, Hold.Named.MEDIUM);
            if (pattern.isEmpty() || pattern.get().legsDiffer()) {
                continue;
            }
            for (LevelHold hold : pattern.get().holds()) {
                if (hold.bound() == Bound.NONE && hold.wanted().isPresent()) {
                    assertThat(pressure(pattern.get(), body, firm, hold.level()))
                            .as("seed %d, %s", seed, hold.level().word())
                            .isCloseTo(
                                    hold.wanted().getAsDouble(),
                                    within(0.02 * hold.wanted().getAsDouble()));
                    reached++;
                }
            }
        }
        assertThat(reached).isGreaterThan(BODIES / 2);
    }

    /** The tourniquet shape of trade-values section 2.3: the thigh never presses more than the calf. */
    @Tag("slow")
    @Test
    void theThighNeverPressesMoreThanTheCalf() {
        for (Fabric cloth :
                List.of(measured(0.60, 35, 80, 160), measured(0.60, 62, 138, 260), measured(1.0, 20, 60, 150))) {
            for (int seed = 0; seed < BODIES; seed++) {
                Body body = SampleBody.random(seed);
                for (Hold hold : List.of(
                        Hold.Named.FIRM, new Hold.Profile(Map.of(Level.Name.CROTCH, 2.0, Level.Name.CALF, 0.5)))) {
                    Optional<Pattern> pattern = ankle(body, cloth, hold);
                    if (pattern.isEmpty() || pattern.get().legsDiffer()) {
                        continue;
                    }
                    double calf = pressure(pattern.get(), body, cloth, Level.Name.CALF);
                    for (Level.Name thigh : List.of(Level.Name.CROTCH, Level.Name.MID_THIGH)) {
                        assertThat(pressure(pattern.get(), body, cloth, thigh))
                                .as("seed %d, %s", seed, thigh.word())
                                .isLessThanOrEqualTo(calf * 1.01);
                    }
                }
            }
        }
    }

    @Test
    void boundsAreKeptWhateverIsWanted() {
        Hold hard = new Hold.Profile(Map.of(Level.Name.CROTCH, 6.0, Level.Name.ANKLE, 8.0));
        for (double across : new double[] {0.32, 0.45, 0.6, 1.0}) {
            Fabric cloth = measured(across, 40, 100, 220);
            for (int seed = 0; seed < BODIES; seed++) {
                Body body = SampleBody.random(seed);
                Holding holding =
                        Holding.of(body, cloth, Style.usual(Style.Leg.ANKLE).with(hard), 0.05, "leg");
                for (Level.Name level : Holding.LEG) {
                    Held at = holding.at(level);
                    double strain = at.reduction() / (1 - at.reduction());
                    assertThat(strain).isBetween(0.0, Math.min(0.25, across / 3) + 1e-9);
                    assertThat(holding.pressure(at, at.width()))
                            .isLessThanOrEqualTo(Laplace.fromMmHg(Comfort.CAUTION) * (1 + 1e-9));
                }
                double knee = holding.at(Level.Name.KNEE).reduction();
                double bent = (1 + SkinExtension.mostAcross(SkinExtension.Region.KNEE)) / (1 - knee) - 1;
                assertThat(bent).isLessThanOrEqualTo(across + 1e-9);
            }
        }
    }

    /** W4 of the trade values: body 960, reduction 10 %: cut 864, strain 11.11 %. The handbook way knows no bounds. */
    @Test
    void w4AFixedReductionIsTakenAsItIs() {
        Body body = SampleBody.with(SampleBody.smallAdult(), Measure.HIP_GIRTH, 960);
        for (Fabric cloth : List.of(SampleFabric.heavyKnit(), measured(0.60, 35, 80, 160))) {
            Pattern pattern = ankle(body, cloth, new Hold.Fixed(0.10)).orElseThrow();
            double hip = pattern.level(Level.Name.HIP).orElseThrow().width();
            assertThat(hip).isCloseTo(864, within(0.05));
            assertThat(960 / hip - 1).isCloseTo(0.1111, within(0.0001));
        }
    }

    @Test
    void anAssumedCurveDecidesNothing() {
        Findings findings = new Findings("test");
        Style own = Style.usual(Style.Leg.ANKLE).with(new Hold.Profile(Map.of(Level.Name.CALF, 1.0)));
        assertThat(Draft.of(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.empty(), own, findings))
                .isEmpty();
        assertThat(findings.all())
                .singleElement()
                .satisfies(f -> assertThat(f.key()).isEqualTo("style.hold"));
        Pattern medium = ankle(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Hold.Named.MEDIUM)
                .orElseThrow();
        assertThat(medium.holds()).allSatisfy(h -> assertThat(h.wanted()).isEmpty());
        assertThat(medium.reductions().across()).isCloseTo(0.15 / 1.15, within(1e-9));
    }

    /** A low boot leaves the ankle bare; its girth is cut for the heel to pass, and zigzag stands 50 % only. */
    @Test
    void whatBindsTheAnkleIsTheHeelOrTheStitchRoundIt() {
        Boot low = new Boot("roller skate", 260, 380, 370, 120, 10, false, Boot.Dressing.LEG_FIRST);
        for (Machine machine : List.of(Machine.OVERLOCKER, Machine.LOCKSTITCH)) {
            Pattern pattern = Draft.of(
                            SampleBody.smallAdult(),
                            SampleFabric.heavyKnit(),
                            Optional.of(low),
                            Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32)),
                            Set.of(machine),
                            new Findings("test"))
                    .orElseThrow();
            LevelHold ankle = pattern.holds().stream()
                    .filter(h -> h.level() == Level.Name.ANKLE)
                    .findFirst()
                    .orElseThrow();
            assertThat(ankle.bound()).isEqualTo(machine == Machine.OVERLOCKER ? Bound.PASSING : Bound.SEAM);
        }
    }

    /** Round bodies told by three measures: the curve widens the calf, and that must not widen the thigh again. */
    @Tag("slow")
    @Test
    void largeHipsKeepASmoothInseam() {
        Style style = Style.usual(Style.Leg.ANKLE);
        Fabric cloth = measured(0.60, 35, 80, 160);
        int drafted = 0;
        for (Hold hold : List.of(Hold.Named.LIGHT, Hold.Named.FIRM)) {
            for (double hip = 1300; hip <= 1600; hip += 12.5) {
                for (double stature = 1520; stature <= 1720; stature += 20) {
                    Body body = Measuring.body(
                                    Figure.WOMAN,
                                    OptionalDouble.empty(),
                                    Map.of(
                                            Measure.STATURE, stature,
                                            Measure.WAIST_GIRTH, 0.9 * hip,
                                            Measure.HIP_GIRTH, hip),
                                    new Findings("test"))
                            .orElseThrow();
                    Optional<Pattern> pattern = ankle(body, cloth, hold);
                    if (pattern.isPresent()) {
                        drafted++;
                        assertThat(DraftCheck.broken(body, style.with(hold), pattern.get()))
                                .as("hip %.1f, stature %.0f", hip, stature)
                                .isEmpty();
                    }
                }
            }
        }
        assertThat(drafted).isGreaterThan(400);
    }

    @Test
    void easeIsAddedToTheWidth() {
        Style plain = Style.usual(Style.Leg.ANKLE);
        Body body = SampleBody.smallAdult();
        Pattern before = Draft.of(body, SampleFabric.heavyKnit(), Optional.empty(), plain, new Findings("test"))
                .orElseThrow();
        Pattern after = Draft.of(
                        body,
                        SampleFabric.heavyKnit(),
                        Optional.empty(),
                        plain.withEase(Map.of(Level.Name.CALF, 12.0)),
                        new Findings("test"))
                .orElseThrow();
        double calf = after.level(Level.Name.CALF).orElseThrow().width()
                - before.level(Level.Name.CALF).orElseThrow().width();
        assertThat(calf).isBetween(10.0, 14.0);
    }
}
