package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.body.Body;
import stretchwright.body.Legs;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.body.Stance;
import stretchwright.body.Value;
import stretchwright.body.Variation;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** The waist in front and behind where it was measured there, and figures that a maker names. */
class FiguresTest {
    private static final Style ANKLE = TopStyles.ankle(TopEnd.band(45));
    private static final Body BODY = SampleBody.smallAdult();
    private static final double WAIST = BODY.mm(Measure.WAIST_HEIGHT);

    private static Body with(Body body, Stance stance) {
        return new Body(body.figure(), body.age(), stance, body.values(), Legs.ALIKE);
    }

    /** The back crotch length is estimated: then words for the figure say something. */
    private static Body unmeasured() {
        Map<Measure, Value> values = new EnumMap<>(BODY.values());
        Value back = BODY.value(Measure.BACK_CROTCH_LENGTH);
        values.put(Measure.BACK_CROTCH_LENGTH, new Value(back.mm(), Value.Origin.ESTIMATED, 12));
        return new Body(BODY.figure(), BODY.age(), values);
    }

    private static Pattern draft(Body body) {
        return DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.empty(), ANKLE);
    }

    private static double front(Pattern p) {
        return p.legs().get(0).edge(EdgeName.FRONT_CROTCH).line().start().y();
    }

    private static double back(Pattern p) {
        return p.legs().get(0).edge(EdgeName.BACK_CROTCH).line().end().y();
    }

    private static double ends(Pattern p) {
        return front(p) + back(p) - 2 * p.level(Level.Name.WAIST).orElseThrow().height();
    }

    private static double seam(Pattern p) {
        return p.legs().get(0).edge(EdgeName.FRONT_CROTCH).length()
                + p.legs().get(0).edge(EdgeName.BACK_CROTCH).length();
    }

    @Test
    void aLevelWaistMeasuredThreeTimesChangesNothing() {
        Pattern level = draft(with(BODY, Stance.STANDING.waists(WAIST, WAIST)));
        assertThat(level.pieces()).isEqualTo(draft(BODY).pieces());
    }

    /** Ends that stand higher on the body stand higher on the cloth; the crotch length is taken to them, as it was. */
    @Test
    void aWaistThatRisesInFrontAndBehindIsDrawnSo() {
        Pattern plain = draft(BODY);
        Pattern up = draft(with(BODY, Stance.STANDING.waists(WAIST + 15, WAIST + 15)));
        double higher = ends(up) - ends(plain);
        // the cloth gives less for it: so the ends rise by less than the body, and the seam is longer
        double taken = up.reductions().crotch();
        double before = plain.reductions().crotch();
        assertThat(higher).as("both ends over the side").isBetween(12.0, 26.0);
        assertThat(taken).as("less is taken off the seam").isLessThan(before);
        assertThat(seam(up)).isCloseTo(BODY.mm(Measure.TOTAL_CROTCH_LENGTH) * (1 - taken), within(0.2));
    }

    @Test
    void aWaistThatFallsBehindAllowsALowerBack() {
        Body fallen = with(BODY, Stance.STANDING.waists(WAIST + 10, WAIST - 25));
        Map<Measure, Value> values = new EnumMap<>(BODY.values());
        values.put(
                Measure.BACK_CROTCH_LENGTH,
                new Value(BODY.mm(Measure.BACK_CROTCH_LENGTH) - 30, Value.Origin.GIVEN, 12));
        Body shorter = new Body(BODY.figure(), BODY.age(), values);
        Pattern level = draft(shorter);
        Pattern slanting = draft(with(shorter, fallen.stance()));
        assertThat(back(slanting) - front(slanting))
                .as("the tilt may go where the measures say")
                .isLessThanOrEqualTo(back(level) - front(level));
    }

    @ParameterizedTest
    @EnumSource(Variation.class)
    void aNamedFigureMovesItsPointsAndNothingGoesWrong(Variation named) {
        Pattern plain = draft(unmeasured());
        Body body = with(unmeasured(), Stance.STANDING.named(named, 8));
        Pattern moved = draft(body);
        assertThat(moved.moved()).hasSize(1);
        assertThat(moved.moved().get(0).shifts().isEmpty()).isFalse();
        assertThat(moved.pieces()).isNotEqualTo(plain.pieces());
        for (Shift shift : moved.moved().get(0).shifts().by().keySet()) {
            assertThat(moved.reasons())
                    .as("why " + shift.word())
                    .anyMatch(r -> r.inputs().stream()
                            .anyMatch(i -> Math.abs(i.value() - moved.shift(shift)) < 1e-9
                                    && i.name().toString().contains("moved")));
        }
        assertThat(DraftCheck.broken(body, ANKLE, moved)).as(named.word()).isEmpty();
    }

    @Test
    void figuresGoTheWayTheyAreNamed() {
        Pattern plain = draft(unmeasured());
        assertThat(back(figure(Variation.SWAYED_BACK))).isLessThan(back(plain) - 3);
        assertThat(back(figure(Variation.STRAIGHT_BACK))).isGreaterThan(back(plain) + 3);
        assertThat(front(figure(Variation.FULL_FRONT))).isGreaterThan(front(plain) + 3);
        assertThat(crotchPoint(figure(Variation.FULL_SEAT))).isGreaterThan(crotchPoint(plain) + 5);
        assertThat(crotchPoint(figure(Variation.FLAT_SEAT))).isLessThan(crotchPoint(plain) - 5);
    }

    private static Pattern figure(Variation named) {
        return draft(with(unmeasured(), Stance.STANDING.named(named, 8)));
    }

    private static double crotchPoint(Pattern p) {
        return p.legs().get(0).edge(EdgeName.BACK_CROTCH).line().start().x();
    }

    /** Who gave both crotch lengths has told it already: counting it twice would spoil the seat. */
    @Test
    void whatTheMeasuresHoldAlreadyMovesNothingAndIsToldSo() {
        assertThat(BODY.isGiven(Measure.BACK_CROTCH_LENGTH)).isTrue();
        Pattern told = draft(with(BODY, Stance.STANDING.named(Variation.FULL_SEAT, 10)));
        assertThat(told.pieces()).isEqualTo(draft(BODY).pieces());
        assertThat(told.moved()).hasSize(1);
        assertThat(told.moved().get(0).shifts().isEmpty()).isTrue();
    }

    @Tag("slow")
    @Test
    void everyFigureAtItsBoundsOnManyBodies() {
        int drawn = 0;
        int told = 0;
        for (int seed = 1; seed <= 25; seed++) {
            Body one = SampleBody.random(seed);
            Map<Measure, Value> values = new EnumMap<>(one.values());
            Value back = one.value(Measure.BACK_CROTCH_LENGTH);
            values.put(Measure.BACK_CROTCH_LENGTH, new Value(back.mm(), Value.Origin.ESTIMATED, 12));
            for (Variation named : Variation.values()) {
                for (double mm : new double[] {named.least(), named.most()}) {
                    Body body = new Body(one.figure(), one.age(), Stance.STANDING.named(named, mm), values, Legs.ALIKE);
                    String who = "seed " + seed + " " + named.word() + " " + mm;
                    Findings findings = new Findings(who);
                    Optional<Pattern> pattern =
                            Draft.of(body, SampleFabric.heavyKnit(), Optional.empty(), ANKLE, findings);
                    pattern.ifPresent(p -> assertThat(DraftCheck.broken(body, ANKLE, p))
                            .as(who)
                            .isEmpty());
                    assertThat(findings.all())
                            .as(who)
                            .allMatch(f -> f.key().equals("wearer.figure shifts." + named.word()));
                    drawn += pattern.isPresent() ? 1 : 0;
                    told += pattern.isPresent() ? 0 : 1;
                }
            }
        }
        System.out.printf("figures at their bounds: %d drawn, %d told%n", drawn, told);
        assertThat(drawn).isGreaterThan(20 * told);
    }

    /** Then the mid-thigh, halfway between, would lie above the seat fold. */
    @Test
    void aKneeThatReachesTheCrotchIsNamed() {
        Body body = SampleBody.with(BODY, Measure.KNEE_HEIGHT, BODY.mm(Measure.CROTCH_HEIGHT) - 20);
        Findings findings = new Findings("knee");
        assertThat(Draft.of(body, SampleFabric.heavyKnit(), Optional.empty(), ANKLE, findings))
                .isEmpty();
        assertThat(findings.all()).allMatch(f -> f.key().startsWith("wearer.measurements."));
    }

    @Test
    void withoutAWordNothingIsMoved() {
        assertThat(Stance.STANDING.frontWaist()).isEqualTo(OptionalDouble.empty());
        assertThat(draft(BODY).moved()).isEmpty();
    }
}
