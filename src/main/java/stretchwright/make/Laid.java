package stretchwright.make;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothLay;
import stretchwright.lay.ClothUse;
import stretchwright.lay.Lay;
import stretchwright.lay.OnHand;
import stretchwright.lay.Onward;
import stretchwright.lay.Placed;
import stretchwright.lay.Relaying;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.LayTerms;

/**
 * The pieces of a make on one of its cloths, to be put by hand or searched on.
 *
 * @param usual the lay that the program found at once, of which the floor is known
 */
public record Laid(ClothLay usual, Fabric fabric, LayTerms terms) {
    private Relaying relaying() {
        return new Relaying(usual.pieces(), fabric, terms);
    }

    /** That lay, with what is wrong with it; empty where it is one of other pieces. */
    public Optional<Relaying.Tried> tried(Placed placed) {
        return relaying().tried(usual.lay(), placed);
    }

    /** That lay where it can stand instead of the usual one. */
    public Optional<Lay> instead(Placed placed) {
        return relaying().instead(usual.lay(), placed);
    }

    /** With what follows from a lay alone: nothing is tried for the cloth at hand. */
    public ClothLay with(Lay lay, Buying.Counter counter) {
        return new ClothLay(
                usual.fabric(),
                usual.pieces(),
                lay,
                ClothUse.of(lay, usual.pieces(), fabric, terms.matchAt(), counter, Optional.empty()));
    }

    /** What is left of the cloth at hand by that lay, mm, negative where it is short; empty where none is at hand. */
    public OptionalDouble spare(Lay lay) {
        Buying buying = Buying.of(lay.length(), fabric, Buying.Counter.METRIC);
        OptionalDouble have = fabric.roll().onHand();
        return have.isEmpty()
                ? have
                : OptionalDouble.of(have.getAsDouble() - OnHand.needed(lay.length(), fabric, buying));
    }

    /** Whether the cloth lets a piece be turned by half a turn. */
    public boolean turns() {
        return !fabric.roll().oneWay();
    }

    /** No longer than the one from which it is searched, and checked as every lay is. */
    public Lay shorter(Lay from, Set<String> pinned, long seed, Effort effort, LayClock clock) {
        return new Onward(usual.pieces(), fabric, terms).shorter(from, pinned, seed, effort, clock);
    }
}
