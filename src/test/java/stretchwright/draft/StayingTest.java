package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.settle.Elastic;
import stretchwright.settle.Settles;

/** The draft draws top and hem so that they settle where they were asked for, within bounds, and nothing where they stay anyway. */
class StayingTest {
    private static final TopEnd BAND = TopEnd.band(65);
    private static final TopEnd MAY = BAND.with(BAND.band().elasticAsNeeded(true));

    private static Optional<Pattern> draft(Body body, Fabric cloth, Style style) {
        return Draft.of(body, cloth, Optional.empty(), style, new Findings(""));
    }

    private static Style ankle(TopEnd top) {
        return Style.usual(Style.Leg.ANKLE).with(top);
    }

    private static long elastics(Pattern pattern) {
        return pattern.notions().stream()
                .filter(n -> n.name() == NotionName.WAIST_ELASTIC)
                .count();
    }

    @Test
    void theEdgeSettlesWhereItWasAskedFor() {
        int[] drafted = new int[2];
        int[] settled = new int[2];
        for (long seed = 0; seed < 60; seed++) {
            Body body = SampleBody.random(seed);
            Style style = ankle(seed % 2 == 0 ? BAND : MAY);
            Optional<Pattern> pattern = draft(body, SampleFabric.heavyKnit(), style);
            if (pattern.isEmpty()) {
                continue;
            }
            int may = (int) (seed % 2);
            drafted[may]++;
            Pattern p = pattern.get();
            assertThat(p.above()).as("body %d", seed).isBetween(0.0, 33.1);
            assertThat(p.reductions().waistband()).as("body %d", seed).isBetween(0.019, 0.1001);
            assertThat(elastics(p)).as("body %d", seed).isLessThanOrEqualTo(seed % 2);
            Settles s = Settles.of(p, body, SampleFabric.heavyKnit(), Optional.empty(), style);
            assertThat(s.settled()).as("body %d", seed).isTrue();
            settled[may] += s.waist() <= 10 ? 1 : 0;
        }
        System.out.printf(
                "staying: tops within 10 mm of their place: %d of %d without an elastic, %d of %d that may have one%n",
                settled[0], drafted[0], settled[1], drafted[1]);
        assertThat(drafted[0]).isGreaterThan(20);
        assertThat(settled[0]).isGreaterThanOrEqualTo((int) Math.ceil(2 * drafted[0] / 3.0));
        assertThat(drafted[1]).isGreaterThan(20);
        assertThat(settled[1]).isEqualTo(drafted[1]);
    }

    /** What a maker left to the draft is as wide as is needed and no wider; none is put in where none was wanted. */
    @Test
    void anElasticIsPutInWhereItMayBe() {
        Body body = SampleBody.smallAdult();
        Pattern without = draft(body, SampleFabric.heavyKnit(), ankle(BAND)).orElseThrow();
        Pattern with = draft(body, SampleFabric.heavyKnit(), ankle(MAY)).orElseThrow();
        assertThat(elastics(without)).isZero();
        assertThat(elastics(with)).isOne();
        assertThat(Elastic.pull(with)).isBetween(1.0, 9.0);
        Settles plain = Settles.of(without, body, SampleFabric.heavyKnit(), Optional.empty(), ankle(BAND));
        Settles held = Settles.of(with, body, SampleFabric.heavyKnit(), Optional.empty(), ankle(MAY));
        assertThat(held.back()).isLessThan(0.7 * plain.back());
        TopEnd low = TopEnd.band(12);
        Pattern narrow = draft(
                        body,
                        SampleFabric.heavyKnit(),
                        ankle(low.with(low.band().elasticAsNeeded(true))))
                .orElseThrow();
        assertThat(elastics(narrow))
                .as("no room for one of 10 mm and its channel")
                .isZero();
    }

    /** What a maker moves by hand moves alone: what keeps the top at its place is found without it. */
    @Test
    void movesDoNotChangeWhatKeepsTheTop() {
        Body body = SampleBody.smallAdult();
        Pattern usual = draft(body, SampleFabric.heavyKnit(), ankle(MAY)).orElseThrow();
        Pattern moved = draft(body, SampleFabric.heavyKnit(), ankle(MAY).with(Shifts.of(Shift.SIDE_WAIST, 9)))
                .orElseThrow();
        Pattern raised =
                draft(body, SampleFabric.heavyKnit(), ankle(MAY.raised(0, 20))).orElseThrow();
        for (Pattern other : new Pattern[] {moved, raised}) {
            assertThat(other.notions()).isEqualTo(usual.notions());
            assertThat(other.above()).isCloseTo(usual.above(), within(0.05));
            assertThat(other.level(Level.Name.WAIST).orElseThrow().width())
                    .isCloseTo(usual.level(Level.Name.WAIST).orElseThrow().width(), within(0.05));
        }
    }

    /** An edge drawn above its place lets the crotch seam out no further than makers do. */
    @Test
    void theCrotchSeamKeepsItsLeastReduction() {
        for (long seed = 0; seed < 40; seed++) {
            Body body = SampleBody.random(seed);
            Optional<Pattern> pattern = draft(body, SampleFabric.heavyKnit(), ankle(BAND));
            double usual = Order.of(
                            body, SampleFabric.heavyKnit(), Optional.empty(), ankle(BAND), Set.of(Machine.OVERLOCKER))
                    .reductions()
                    .crotch();
            pattern.filter(p -> p.above() > 0 && p.above() < 33)
                    .ifPresent(p -> assertThat(p.reductions().crotch())
                            .isGreaterThanOrEqualTo(Math.min(usual / 2, Reducing.LEAST_CROTCH_REDUCTION) - 1e-9));
        }
    }
}
