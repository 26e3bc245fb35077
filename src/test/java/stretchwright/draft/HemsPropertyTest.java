package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** Every hem and a stirrup over bodies and boots drawn at random. */
class HemsPropertyTest extends HemStyles {
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Hem.class)
    void everyBodyKeepsEveryInvariantWithEveryHem(Hem hem) {
        for (double stretch : new double[] {0.20, 0.60, 1.00}) {
            for (int seed = 1; seed <= 150; seed++) {
                String who = hem + " seed " + seed + " stretch " + stretch;
                Body body = SampleBody.random(seed);
                Boot boot = boot(body, Boot.Dressing.values()[seed % 2]);
                // a child's small boot has no room for an adult's slope
                double scale = body.mm(Measure.HEEL_GIRTH) / 305;
                Style style = Style.usual(Style.Leg.OVER_BOOT)
                        .with(LowerEnd.hem(hem, hem == Hem.OVER_HEEL ? 0.75 * DROP * Math.min(1, scale) : 0));
                Findings findings = new Findings(who);
                Optional<Pattern> pattern = Draft.of(
                        body,
                        SampleFabric.with(1470, stretch, stretch * 0.75, true),
                        Optional.of(boot),
                        style,
                        findings);
                assertThat(findings.all()).as(who).isEmpty();
                Invariants.check(who, body, pattern.orElseThrow());
                reasonsAreDrawn(who, pattern.orElseThrow());
            }
        }
    }

    @Tag("slow")
    @Test
    void everyBodyKeepsEveryInvariantWithAStirrup() {
        Style style = Style.usual(Style.Leg.STIRRUP).with(LowerEnd.PLAIN.strap(40));
        for (int seed = 1; seed <= 200; seed++) {
            Body body = SampleBody.random(seed);
            Pattern pattern = DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.empty(), style);
            Invariants.check("stirrup seed " + seed, body, pattern);
            reasonsAreDrawn("seed " + seed, pattern);
        }
    }

    /** Each reason of a dimension that is drawn gives the drawn number. */
    private static void reasonsAreDrawn(String who, Pattern pattern) {
        double flat = 1 - pattern.reductions().along();
        assertThat(why(pattern, "leg: hem height"))
                .as(who)
                .isCloseTo(
                        pattern.level(Level.Name.HEM)
                                .filter(l -> pattern.seam(Seam.Role.COVER_JOIN).isEmpty())
                                .map(Level::height)
                                .orElse(pattern.piece(PieceName.of(PieceKind.LEG))
                                        .edge(EdgeName.HEM)
                                        .line()
                                        .start()
                                        .y()),
                        within(0.02));
        double crotch = pattern.piece(PieceName.of(PieceKind.LEG))
                .edge(EdgeName.FRONT_INSEAM)
                .line()
                .start()
                .y();
        double hem = pattern.level(Level.Name.HEM).orElseThrow().height();
        assertThat(why(pattern, "leg: length as cut")).as(who).isCloseTo(crotch - hem, within(0.03));
        assertThat(why(pattern, "leg: length standing")).as(who).isCloseTo((crotch - hem) / flat, within(0.03));
        if (pattern.reasons().stream().anyMatch(r -> r.dimension().word().equals("leg: hem drop"))) {
            List<Double> y = pattern.piece(PieceName.of(PieceKind.LEG)).edge(EdgeName.HEM).line().points().stream()
                    .map(Point::y)
                    .toList();
            assertThat(why(pattern, "leg: hem drop"))
                    .isCloseTo(java.util.Collections.max(y) - java.util.Collections.min(y), within(0.05));
        }
    }

    @Tag("slow")
    @Test
    void aMillimetreOnOneMeasureMovesNoPointByMoreThanFiveOnAnyHem() {
        double worst = 0;
        for (Hem hem : Hem.values()) {
            for (int seed = 1; seed <= 25; seed++) {
                Body body = SampleBody.random(seed);
                Boot boot = boot(body, Boot.Dressing.LEG_FIRST);
                Style style = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.hem(hem, hem == Hem.OVER_HEEL ? 25 : 0));
                Pattern before = DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.of(boot), style);
                for (Measure measure : Measure.values()) {
                    Body other = SampleBody.with(body, measure, body.mm(measure) + 1);
                    Pattern after = DraftTest.draft(other, SampleFabric.heavyKnit(), Optional.of(boot), style);
                    worst = Math.max(worst, DraftPropertyTest.moved(before, after));
                    assertThat(worst)
                            .as(hem + " seed " + seed + ", " + measure.term())
                            .isLessThanOrEqualTo(5);
                }
            }
        }
        System.out.printf("continuity over all hems: worst %.2f mm%n", worst);
    }
}
