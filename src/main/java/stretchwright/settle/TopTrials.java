package stretchwright.settle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.balance.Settled;
import stretchwright.body.Body;
import stretchwright.body.Side;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** One pattern on its wearer, to be tried with other tops; of two legs the one counts that has it harder. */
public final class TopTrials {
    /** One leg, and where it settles as it is drawn: where all others are sought from. */
    private record Leg(HalfGarment half, List<Settled> drawn) {
        static Leg of(HalfGarment half) {
            return new Leg(half, Settles.states(half, half.guess(), half.top(), List.of()));
        }

        Settles with(TopTrial top) {
            return Settles.of(Settles.states(half, half.guess(), top, drawn));
        }
    }

    private final List<Leg> legs = new ArrayList<>();

    public TopTrials(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        if (!pattern.legsDiffer()) {
            legs.add(Leg.of(new HalfGarment(pattern, body, fabric, boot, style, HalfGarment.COARSE)));
            return;
        }
        for (Side side : Side.values()) {
            Pattern leg = pattern.onlyLeg(side == Side.LEFT ? WhichLeg.LEFT : WhichLeg.RIGHT);
            legs.add(Leg.of(new HalfGarment(leg, body.leg(side), fabric, boot, style, HalfGarment.COARSE)));
        }
    }

    /** As it is drawn. */
    public TopTrial asDrawn() {
        return legs.get(0).half.top();
    }

    public Settles of(TopTrial top) {
        return legs.stream()
                .map(leg -> leg.with(top))
                .max(Comparator.comparingDouble(Settles::back))
                .orElseThrow();
    }

    /** As it is drawn, without another search. */
    public Settles drawn() {
        return legs.stream()
                .map(leg -> Settles.of(leg.drawn))
                .max(Comparator.comparingDouble(Settles::back))
                .orElseThrow();
    }
}
