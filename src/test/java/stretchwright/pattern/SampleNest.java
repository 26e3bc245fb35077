package stretchwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.SampleBoot;
import stretchwright.draft.Draft;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;

/** One style drafted for bodies drawn at random; all numbers invented. */
public final class SampleNest {
    private SampleNest() {}

    public static Pattern draft(long seed, Style.Leg leg) {
        Body body = SampleBody.random(seed);
        return Draft.of(
                        body,
                        SampleFabric.heavyKnit(),
                        Optional.of(SampleBoot.scaled(body.mm(Measure.HEEL_GIRTH) / 305)),
                        Style.usual(leg),
                        new Findings("seed " + seed))
                .orElseThrow();
    }

    public static List<Nest.Size> sizes(Style.Leg leg, int from, int many) {
        List<Nest.Size> sizes = new ArrayList<>();
        for (int seed = from; seed < from + many; seed++) {
            sizes.add(new Nest.Size("seed " + seed, draft(seed, leg)));
        }
        return sizes;
    }
}
