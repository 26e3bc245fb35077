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
        NONE("the wanted hold", Tell.said("bound.none")),
        STANDING("stretch used standing", Tell.said("bound.standing")),
        POSE("stretch in the deepest pose", Tell.said("bound.pose")),
        SEAM("what the seam stands", Tell.said("bound.seam")),
        COMFORT("the comfort limit", Tell.said("bound.comfort")),
        TOURNIQUET("no more pressure than below it", Tell.said("bound.tourniquet")),
        PASSING("what must pass", Tell.said("bound.passing")),
        READINGS("the last reading of the load curve", Tell.said("bound.readings")),
        SHAPE("a smooth seam", Tell.said("bound.shape")),
        FRAME("the room the seat needs", Tell.said("bound.frame")),
        HARD("a hard socket or brace is cut without reduction", Tell.said("bound.hard"));

        private final String words;
        private final Said said;

        Bound(String words, Said said) {
            this.words = words;
            this.said = said;
        }

        /** As written in the report. */
        public String words() {
            return words;
        }

        public Said said() {
            return said;
        }
    }
}
