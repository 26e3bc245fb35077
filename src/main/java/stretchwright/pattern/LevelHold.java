package stretchwright.pattern;

import java.util.OptionalDouble;
import stretchwright.ground.Said;

/**
 * How the width at a level was found.
 *
 * @param leg of which it is
 * @param reduction share planned to be taken off the girth there
 * @param wanted the pressure wanted there, kPa; empty where hold means a share of the stretch or a fixed reduction
 * @param bound what kept the width from giving it
 */
public record LevelHold(Level.Name level, WhichLeg leg, double reduction, OptionalDouble wanted, Bound bound) {
    /** What decides a width. */
    public enum Bound {
        /** Nothing: the wanted hold is reached. */
        NONE(Tell.said("bound.none")),
        STANDING(Tell.said("bound.standing")),
        POSE(Tell.said("bound.pose")),
        SEAM(Tell.said("bound.seam")),
        COMFORT(Tell.said("bound.comfort")),
        TOURNIQUET(Tell.said("bound.tourniquet")),
        PASSING(Tell.said("bound.passing")),
        READINGS(Tell.said("bound.readings")),
        SHAPE(Tell.said("bound.shape")),
        FRAME(Tell.said("bound.frame")),
        HARD(Tell.said("bound.hard"));

        private final Said said;

        Bound(Said said) {
            this.said = said;
        }

        public Said said() {
            return said;
        }
    }
}
