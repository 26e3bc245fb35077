package stretchwright.sewing;

import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;

/** A stitch and the machine (or hand) that sews it. */
record Tool(Machine machine, Stitch stitch) {
    boolean byHand() {
        return machine == Machine.HAND;
    }

    /** The overlock is the one stitch that cuts as it sews. */
    boolean hasKnife() {
        return stitch == Stitch.OVERLOCK_4 || stitch == Stitch.OVERLOCK_3;
    }
}
