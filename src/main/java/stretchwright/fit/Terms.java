package stretchwright.fit;

import stretchwright.body.Measure;
import stretchwright.ground.Part;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Stitch;
import stretchwright.pattern.WhichLeg;

/** Terms of other rooms, as parts of this room's sentences. */
final class Terms {
    private Terms() {}

    static Part of(Measure measure) {
        return measure.said();
    }

    static Part of(Level.Name level) {
        return level.said();
    }

    static Part of(LevelHold.Bound bound) {
        return bound.said();
    }

    static Part of(Stitch stitch) {
        return stitch.said();
    }

    /** "knee", or "left knee" where the legs differ. */
    static Part place(Level.Name level, WhichLeg leg) {
        return leg.of(level.said());
    }
}
