package stretchwright.settle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Side;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** One pattern on its wearer, to be tried with other tops; of two legs the one counts that has it harder. */
public final class TopTrials {
    private final List<HalfGarment> legs = new ArrayList<>();

    public TopTrials(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        if (!pattern.legsDiffer()) {
            legs.add(new HalfGarment(pattern, body, fabric, boot, style, HalfGarment.COARSE));
            return;
        }
        for (Side side : Side.values()) {
            Pattern leg = pattern.onlyLeg(side == Side.LEFT ? WhichLeg.LEFT : WhichLeg.RIGHT);
            legs.add(new HalfGarment(leg, body.leg(side), fabric, boot, style, HalfGarment.COARSE));
        }
    }

    /** As it is drawn. */
    public TopTrial asDrawn() {
        return legs.get(0).top();
    }

    public Settles of(TopTrial top) {
        return legs.stream()
                .map(half -> Settles.slides(half, half.guess(), top))
                .max(Comparator.comparingDouble(Settles::back))
                .orElseThrow();
    }
}
