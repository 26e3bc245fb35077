package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Random bodies with random mixes of side seam, panel, gusset, knee shaping and pockets; sizes go with the body. */
class PartsPropertyTest {
    private static final int MANY = 400;
    private static final int SOME = 120;

    /** Every option for itself and all together come up; sizes are those a maker would choose for that body. */
    static Parts parts(long seed, Body body, boolean pockets) {
        RandomStream random = RandomStream.of(seed, "parts");
        double size = body.mm(Measure.HIP_GIRTH) / 960;
        Parts parts = Parts.PLAIN;
        if (random.between(0, 1) < 0.5) {
            parts = parts.with(Parts.SideSeam.SHAPED);
        }
        if (random.between(0, 1) < 0.4) {
            parts = parts.withPanel(random.between(25, 90) * size);
        }
        if (random.between(0, 1) < 0.5) {
            double length = random.between(110, 190) * size;
            parts = parts.with(new Parts.Gusset(length, length * random.between(0.3, 0.6)));
        }
        if (parts.cutAtSide() && random.between(0, 1) < 0.5) {
            parts = parts.withKneeShaping();
        }
        return pockets ? parts.with(pockets(random, size, parts)) : parts;
    }

    /** Those that the parts leave room for: a hip pad not over a side seam, on a panel nothing wider than it. */
    private static List<Pocket> pockets(RandomStream random, double size, Parts parts) {
        double room = Math.min(parts.panelWidth().orElse(1000) - 25, 80 * size);
        List<Pocket> out = new ArrayList<>();
        if (room > 20) {
            out.add(new Pocket(Pocket.Kind.PHONE, Math.min(room, 60 * size), 80 * size, 0));
        }
        out.add(new Pocket(Pocket.Kind.TAILBONE_PAD, 90 * size, 40 * size, 10));
        out.add(new Pocket(Pocket.Kind.KNEE_PAD, (parts.panelWidth().isPresent() ? 25 : 50) * size, 80 * size, 8));
        if (room > 20 && (!parts.cutAtSide() || parts.panelWidth().isPresent())) {
            out.add(new Pocket(Pocket.Kind.HIP_PAD, room, 40 * size, random.between(5, 13)));
        }
        return out;
    }

    private static Map<String, Integer> run(double stretch, Style base, boolean pockets, int bodies) {
        Map<String, Integer> refused = new java.util.TreeMap<>();
        int drafted = 0;
        for (int seed = 1; seed <= bodies; seed++) {
            Body body = SampleBody.random(seed);
            Optional<Boot> boot = Optional.of(SampleBoot.scaled(body.mm(Measure.HEEL_GIRTH) / 305));
            Style style = base.with(parts(seed, body, pockets));
            Findings findings = new Findings("seed " + seed);
            var fabric = SampleFabric.with(1470, stretch, stretch * 0.75, true);
            Optional<Pattern> pattern = Draft.of(body, fabric, boot, style, findings);
            for (Finding f : findings.all()) {
                refused.merge(f.key(), 1, Integer::sum);
                assertThat(f.remedy()).isNotEmpty();
            }
            assertThat(pattern.isPresent()).isEqualTo(findings.isEmpty());
            if (pattern.isPresent()) {
                drafted++;
                Body padded = Padded.of(body, style.parts());
                Pattern plain = DraftTest.draft(longer(padded, style, pattern.get()), fabric, boot, base);
                PartsInvariants.check("seed " + seed + " " + style.parts(), padded, style, pattern.get(), plain);
            }
        }
        System.out.println("parts at " + stretch + ": " + drafted + " drafted, refused " + refused);
        assertThat(drafted).isGreaterThan(bodies / 2);
        return refused;
    }

    /** The body whose crotch length makes the one-piece leg's curves as long as those that the gusset was cut from. */
    private static Body longer(Body body, Style style, Pattern pattern) {
        return SampleBody.with(
                body,
                Measure.TOTAL_CROTCH_LENGTH,
                body.mm(Measure.TOTAL_CROTCH_LENGTH)
                        + GussetCut.shortening(style)
                                / (1 - pattern.reductions().crotch()));
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(doubles = {0.20, 0.60, 1.00})
    void everyBodyKeepsEveryInvariantInPartsOverABoot(double stretch) {
        run(stretch, DraftTest.OVER_BOOT, false, MANY);
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(doubles = {0.30, 0.60})
    void everyBodyKeepsEveryInvariantWithPockets(double stretch) {
        run(stretch, DraftTest.OVER_BOOT, true, SOME);
        run(stretch, DraftTest.ANKLE, true, SOME);
    }

    @Tag("slow")
    @Test
    void shorterLegsKeepThemToo() {
        run(0.6, Style.usual(Style.Leg.KNEE), false, SOME);
        run(0.6, Style.usual(Style.Leg.SHORT), false, SOME);
    }
}
