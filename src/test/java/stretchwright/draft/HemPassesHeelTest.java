package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Smoothing the inseam never narrows a hem below what must pass it: on a slim calf over a long heel it did. */
class HemPassesHeelTest {
    /** By hand: heel 320, and 85 % of a stretch of 30 % to pass it: 320 / 1.255 = 254.98; it came out at 243. */
    @Test
    void aSlimCalfOverALongHeelKeepsItsHem() {
        Body body = calfAndHeel(SampleBody.smallAdult(), 315, 320);
        assertThat(hem(body).orElseThrow()).isBetween(254.97, 254.99);
    }

    @Test
    void theHemPassesTheHeelOnAnyBody() {
        int drafted = 0;
        for (int seed = 1; seed <= 60; seed++) {
            Body any = SampleBody.random(seed);
            double heel = any.mm(Measure.HEEL_GIRTH) * 1.08;
            Optional<Double> hem = hem(calfAndHeel(any, any.mm(Measure.CALF_GIRTH) * 0.92, heel));
            drafted += hem.isPresent() ? 1 : 0;
            hem.ifPresent(mm -> assertThat(mm).isGreaterThan(heel / 1.255 - 0.01));
        }
        assertThat(drafted).isGreaterThan(40);
    }

    private static Body calfAndHeel(Body body, double calf, double heel) {
        return SampleBody.with(SampleBody.with(body, Measure.CALF_GIRTH, calf), Measure.HEEL_GIRTH, heel);
    }

    private static Optional<Double> hem(Body body) {
        Optional<Pattern> pattern = Draft.of(
                body,
                SampleFabric.with(1470, 0.30, 0.15, true),
                Optional.empty(),
                Style.usual(Style.Leg.ANKLE),
                new Findings("test"));
        return pattern.map(p -> p.level(Level.Name.HEM).orElseThrow().width());
    }
}
