package stretchwright.workroom.jobs;

import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import stretchwright.lay.Relaying;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.make.Laid;
import stretchwright.make.Make;
import stretchwright.make.Session;

/**
 * A make's lay searched on in spells, each from the shortest lay so far: never longer, and every lay that is kept holds by the
 * check of all lays. What a spell needs is that lay and its own number, as with {@link LaySpells}.
 */
final class PieceSpells {
    /** Rounds of one, some seconds of work: so often somebody who looks on sees another picture. */
    static final int LONG = 60;

    /** The share of them that explores. */
    private static final double EXPLORED = 0.75;

    private final Asked.Pieces asked;
    private final Laid laid;
    private final LayClock clock;

    PieceSpells(Asked.Pieces asked, LayClock clock) {
        this.asked = asked;
        this.clock = clock;
        Session session = Session.of(Make.read(asked.make().name(), asked.make().bytes()));
        this.laid = session.laid(asked.cloth());
    }

    /** Where it begins: as asked, or as it was last kept. The usual lay where that one is none of these pieces. */
    Lay from(Placed placed) {
        return laid.tried(placed)
                .filter(Relaying.Tried::holds)
                .map(Relaying.Tried::lay)
                .orElseGet(() -> laid.usual().lay());
    }

    Lay first() {
        return from(asked.from());
    }

    /** After the next spell, or before it where the clock stopped. */
    Lay next(Lay before, long reached) {
        int rounds = (int) Math.min(LONG, asked.size() - reached);
        int explore = (int) Math.ceil(EXPLORED * rounds);
        long seed = asked.seed() + LaySpells.APART * (reached / LONG);
        return laid.shorter(before, asked.pinned(), seed, new Effort(explore, rounds - explore), clock);
    }

    /** Where nothing can be shorter there is nothing more to look for. */
    long reached(Lay lay, long before) {
        return lay.shortest() ? asked.size() : Math.min(asked.size(), before + LONG);
    }
}
