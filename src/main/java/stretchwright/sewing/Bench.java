package stretchwright.sewing;

import java.util.Optional;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;

/**
 * The state of the sewing table: the machine last sat at, and how the combined machine is set up. Both are open at the
 * beginning: the first machine is set up before the work starts.
 */
record Bench(Optional<Machine> at, Optional<Setup> combined) {
    /** Common practice, no source: get up, sit down, switch on, lay the work out again. */
    static final int MOVE_TENTHS = 5;

    static final Bench BEGIN = new Bench(Optional.empty(), Optional.empty());

    enum Setup {
        OVERLOCK,
        COVER;

        static Setup of(Stitch stitch) {
            return stitch == Stitch.COVERSTITCH || stitch == Stitch.CHAINSTITCH ? COVER : OVERLOCK;
        }
    }

    /** What it takes to get to the next tool. */
    record Change(Bench then, int moves, int conversions) {
        int count() {
            return moves + conversions;
        }
    }

    /** How the combined machine must be set up for this; empty for any other machine. */
    static Optional<Setup> setup(Tool tool) {
        return tool.machine() == Machine.COMBINED ? Optional.of(Setup.of(tool.stitch())) : Optional.empty();
    }

    /** Hand, table and iron are within reach: they change nothing. */
    Change to(Optional<Tool> next) {
        if (next.isEmpty() || next.get().byHand()) {
            return new Change(this, 0, 0);
        }
        Machine machine = next.get().machine();
        Optional<Setup> setup = setup(next.get()).or(() -> combined);
        int moves = at.isPresent() && at.get() != machine ? 1 : 0;
        int conversions = combined.isPresent() && !combined.equals(setup) ? 1 : 0;
        return new Change(new Bench(Optional.of(machine), setup), moves, conversions);
    }
}
