package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.body.Value;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Style;

/** Section 9 of the drafting method over bodies drawn at random, in cloths from hardly stretchy to very. */
class DraftPropertyTest {
    private static final int BODIES = 400;

    /** Of a drawn body's own crotch length. */
    private static final double SHORT = 0.45;

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(doubles = {0.20, 0.60, 1.00})
    void everyBodyKeepsEveryInvariantOverABoot(double stretch) {
        for (int seed = 1; seed <= BODIES; seed++) {
            Body body = SampleBody.random(seed);
            Boot boot = SampleBoot.scaled(body.mm(Measure.HEEL_GIRTH) / 305);
            keeps(
                    "seed " + seed,
                    body,
                    SampleFabric.with(1470, stretch, stretch * 0.75, true),
                    Optional.of(boot),
                    DraftTest.OVER_BOOT);
        }
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(doubles = {0.20, 0.60, 1.00})
    void everyBodyKeepsEveryInvariantToTheAnkle(double stretch) {
        for (int seed = 1; seed <= BODIES; seed++) {
            keeps(
                    "seed " + seed,
                    SampleBody.random(seed),
                    SampleFabric.with(1470, stretch, stretch * 0.75, true),
                    Optional.empty(),
                    DraftTest.ANKLE);
        }
    }

    /** Legs that end above the ankle: calf, knee, short; a boot in the make file is left alone. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(
            value = Style.Leg.class,
            names = {"CALF", "KNEE", "SHORT"})
    void everyBodyKeepsEveryInvariantInShorterLegs(Style.Leg leg) {
        Style style = Style.usual(leg);
        for (int seed = 1; seed <= BODIES; seed++) {
            Body body = SampleBody.random(seed);
            keeps(leg + " seed " + seed, body, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), style);
        }
    }

    /** A body whose crotch seam is so short that no leg can be closed; that is told. */
    @Test
    void aCrotchSeamMuchTooShortIsToldAndNotBent() {
        Findings findings = new Findings("test");
        assertThat(Draft.of(
                        SampleBody.with(
                                SampleBody.random(1),
                                Measure.TOTAL_CROTCH_LENGTH,
                                SHORT * SampleBody.random(1).mm(Measure.TOTAL_CROTCH_LENGTH)),
                        SampleFabric.heavyKnit(),
                        Optional.empty(),
                        Style.usual(Style.Leg.KNEE),
                        findings))
                .isEmpty();
        assertThat(findings.all().get(0).key()).isEqualTo("wearer.measurements.total crotch length");
    }

    private static void keeps(String who, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        Findings findings = new Findings(who);
        Optional<Pattern> pattern = Draft.of(body, fabric, boot, style, findings);
        assertThat(findings.all()).as(who).isEmpty();
        Invariants.check(who, body, pattern.orElseThrow());
        assertThat(DraftCheck.broken(body, style, pattern.orElseThrow()))
                .as(who)
                .isEmpty();
    }

    /** 1 mm on one measure moves no point by more than 5 mm; points are compared at equal shares of each edge. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(
            value = Style.Leg.class,
            names = {"OVER_BOOT", "ANKLE", "CALF", "KNEE", "SHORT"})
    void aMillimetreOnOneMeasureMovesNoPointByMoreThanFive(Style.Leg leg) {
        Style style = leg == Style.Leg.OVER_BOOT ? DraftTest.OVER_BOOT : Style.usual(leg);
        Shift worst = IntStream.rangeClosed(1, 200)
                .parallel()
                .mapToObj(seed -> worstShift(seed, style))
                .reduce(new Shift(0, "", 0), Shift::with);
        System.out.printf("continuity, %s: worst %.2f mm (%s), %d over 5 mm%n", leg, worst.mm, worst.where, worst.over);
        assertThat(worst.mm).as(worst.where).isLessThanOrEqualTo(5);
    }

    /** How far a point moved at most, where, and how often one moved by more than 5 mm. */
    private record Shift(double mm, String where, int over) {
        Shift with(Shift other) {
            Shift larger = other.mm > mm ? other : this;
            return new Shift(larger.mm, larger.where, over + other.over);
        }
    }

    private static Shift worstShift(int seed, Style style) {
        Shift worst = new Shift(0, "", 0);
        Body body = SampleBody.random(seed);
        Boot boot = SampleBoot.scaled(body.mm(Measure.HEEL_GIRTH) / 305);
        Pattern before = DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.of(boot), style);
        for (Measure measure : Measure.values()) {
            Value value = body.value(measure);
            Pattern after = DraftTest.draft(
                    SampleBody.with(body, measure, value.mm() + 1), SampleFabric.heavyKnit(), Optional.of(boot), style);
            double moved = moved(before, after);
            worst = worst.with(new Shift(moved, "seed " + seed + ", " + measure.term(), moved > 5 ? 1 : 0));
        }
        return worst;
    }

    static double moved(Pattern before, Pattern after) {
        double worst = 0;
        for (Edge edge : before.piece(PieceName.of(PieceKind.LEG)).edges()) {
            Edge other = after.piece(PieceName.of(PieceKind.LEG)).edge(edge.name());
            for (int i = 0; i <= 20; i++) {
                Point a = edge.line().at(edge.length() * i / 20);
                Point b = other.line().at(other.length() * i / 20);
                worst = Math.max(worst, a.distance(b));
            }
        }
        return worst;
    }
}
