package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Style;

/** Both inseams from the knee down bend without a kink, of slim legs in wide boots too. */
class LegFlareTest {
    private static final int BODIES = 1000;
    private static final List<EdgeName> INSEAMS = List.of(EdgeName.FRONT_INSEAM, EdgeName.BACK_INSEAM);

    /** A boot that fits its wearer: from calf to hem 60 mm hold for nearly all, and nothing is a kink. */
    @Tag("slow")
    @Test
    void aLegOverAUsualBootBendsGently() {
        List<Double> above = new ArrayList<>();
        List<Double> flare = new ArrayList<>();
        for (int seed = 1; seed <= BODIES; seed++) {
            Body body = slim(SampleBody.random(seed), seed);
            Boot boot = SampleBoot.scaled(body.mm(Measure.HEEL_GIRTH) / 305);
            Draft.of(body, fabric(seed), Optional.of(boot), HemStyles.style(Hem.OVER_LACES), new Findings("usual"))
                    .ifPresent(pattern -> {
                        double top =
                                pattern.level(Level.Name.BOOT_TOP).orElseThrow().height();
                        above.add(radius(pattern, top, knee(body, pattern)));
                        flare.add(radius(pattern, Double.NEGATIVE_INFINITY, top));
                    });
        }
        Collections.sort(above);
        Collections.sort(flare);
        System.out.printf(
                "radius, knee to boot's top: %.0f, 5 of 100 under %.0f, half under %.0f; flare: %.0f, %.0f, %.0f%n",
                above.get(0),
                above.get(above.size() / 20),
                above.get(above.size() / 2),
                flare.get(0),
                flare.get(flare.size() / 20),
                flare.get(flare.size() / 2));
        assertThat(above.get(0)).isGreaterThan(38);
        assertThat(above.get(above.size() / 20)).isGreaterThan(60);
        assertThat(flare.get(0)).isGreaterThan(70);
    }

    /** Boots of any proportion: as gently as two arcs of a circle can that stand upright at the boot's top and at the hem. */
    @Tag("slow")
    @Test
    void aFlareBendsAsGentlyAsItsHeightLetsIt() {
        for (int seed = 1; seed <= BODIES; seed++) {
            Body body = slim(SampleBody.random(seed), seed);
            Boot boot = boot(body, seed);
            Style style = HemStyles.style(Hem.OVER_LACES);
            String who = "seed " + seed;
            Pattern pattern = Draft.of(body, fabric(seed), Optional.of(boot), style, new Findings(who))
                    .orElse(null);
            if (pattern == null || pattern.level(Level.Name.BOOT_TOP).isEmpty()) {
                continue;
            }
            Level top = pattern.level(Level.Name.BOOT_TOP).get();
            Level hem = pattern.level(Level.Name.HEM).orElseThrow();
            double height = top.height() - hem.height() - 2;
            double out = Math.abs(hem.width() - top.width()) / 2;
            if (height < LegLine.SHORTEST_FLARE || out > 0.7 * height) {
                continue;
            }
            double most = height * height / (4 * out) + out / 4;
            assertThat(radius(pattern, Double.NEGATIVE_INFINITY, top.height() - 12))
                    .as(who)
                    .isGreaterThan(0.9 * Math.min(60, most));
        }
    }

    /** What is planned at the boot's top is drawn there. */
    @Test
    void theBootsTopIsAsWideAsPlanned() {
        for (int seed = 1; seed <= 100; seed++) {
            Body body = slim(SampleBody.random(seed), seed);
            Pattern pattern = Draft.of(
                            body,
                            fabric(seed),
                            Optional.of(SampleBoot.scaled(body.mm(Measure.HEEL_GIRTH) / 305)),
                            HemStyles.style(Hem.OVER_LACES),
                            new Findings("planned"))
                    .orElseThrow();
            Level top = pattern.level(Level.Name.BOOT_TOP).orElseThrow();
            Piece leg = leg(pattern);
            double drawn = 0;
            for (EdgeName edge : INSEAMS) {
                Path line = leg.edge(edge).line();
                drawn += Math.abs(line.at(line.alongAtHeight(top.height())).x());
            }
            assertThat(drawn).as("seed " + seed).isCloseTo(top.width(), within(0.05));
        }
    }

    private static Fabric fabric(int seed) {
        double stretch = new double[] {0.3, 0.6, 1.0}[seed % 3];
        return SampleFabric.with(1470, stretch, stretch * 0.75, true);
    }

    private static double knee(Body body, Pattern pattern) {
        return body.mm(Measure.KNEE_HEIGHT) * (1 - pattern.reductions().along());
    }

    private static Piece leg(Pattern pattern) {
        return pattern.piece(PieceName.of(PieceKind.LEG));
    }

    private static double radius(Pattern pattern, double low, double high) {
        return INSEAMS.stream()
                .mapToDouble(e -> Smoothness.radius(leg(pattern).edge(e).line(), low, high))
                .min()
                .orElseThrow();
    }

    /** Every other leg is up to 18 % slimmer from the knee down. */
    private static Body slim(Body body, int seed) {
        Body slim = body;
        double share = seed % 2 == 0 ? 1 : new SplittableRandom(seed * 31L).nextDouble(0.82, 1);
        for (Measure m : List.of(Measure.CALF_GIRTH, Measure.ANKLE_GIRTH, Measure.KNEE_GIRTH)) {
            slim = SampleBody.with(slim, m, slim.mm(m) * share);
        }
        return slim;
    }

    private static Boot boot(Body body, int seed) {
        SplittableRandom r = new SplittableRandom(seed * 104729L);
        double foot = body.mm(Measure.HEEL_GIRTH) / 305;
        return new Boot(
                "any boot",
                290 * foot * r.nextDouble(0.85, 1.25),
                400 * foot * r.nextDouble(0.95, 1.15),
                385 * foot * r.nextDouble(0.9, 1.25),
                foot * r.nextDouble(10, 140),
                foot * r.nextDouble(25, 150),
                false,
                Boot.Dressing.LEG_FIRST,
                OptionalDouble.empty(),
                Boot.Sole.UNKNOWN);
    }
}
