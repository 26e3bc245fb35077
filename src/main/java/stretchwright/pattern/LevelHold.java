package stretchwright.pattern;

import java.util.OptionalDouble;

/**
 * How the width at a level was found.
 *
 * @param leg "left" or "right" where the legs differ, else empty
 * @param reduction share planned to be taken off the girth there
 * @param wanted the pressure wanted there, kPa; empty where hold means a share of the stretch or a fixed reduction
 * @param bound what kept the width from giving it
 */
public record LevelHold(Level.Name level, String leg, double reduction, OptionalDouble wanted, Bound bound) {
    /** What decides a width. */
    public enum Bound {
        /** Nothing: the wanted hold is reached. */
        NONE("the wanted hold"),
        STANDING("stretch used standing"),
        POSE("stretch in the deepest pose"),
        SEAM("what the seam stands"),
        COMFORT("the comfort limit"),
        TOURNIQUET("no more pressure than below it"),
        PASSING("what must pass"),
        READINGS("the last reading of the load curve"),
        SHAPE("a smooth seam"),
        FRAME("the room the seat needs"),
        HARD("a hard socket or brace is cut without reduction");

        private final String words;

        Bound(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
