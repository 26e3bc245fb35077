package stretchwright.pattern;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/** How firmly the garment is to hold. */
public sealed interface Hold {
    /** As said to people: "medium". */
    String words();

    /** The named hold that elastic and strap follow: a hold in numbers takes those of medium. */
    default Named named() {
        return Named.MEDIUM;
    }

    /**
     * A word. With a measured load curve it stands for a pressure at the ankle that falls going up; with an assumed one
     * for a share of the stretch (docs/maths/draft.md, Hold).
     */
    enum Named implements Hold {
        LIGHT,
        MEDIUM,
        FIRM;

        @Override
        public String words() {
            return name().toLowerCase(Locale.ROOT);
        }

        @Override
        public Named named() {
            return this;
        }
    }

    /**
     * The wearer's own pressures; between the levels given the pressure goes over evenly.
     *
     * @param kilopascals at each level given, above 0
     */
    record Profile(Map<Level.Name, Double> kilopascals) implements Hold {
        public Profile {
            if (kilopascals.isEmpty() || kilopascals.values().stream().anyMatch(p -> !(p > 0))) {
                throw new IllegalArgumentException("a profile of hold needs pressures above 0: " + kilopascals);
            }
            kilopascals = Map.copyOf(new EnumMap<>(kilopascals));
        }

        @Override
        public String words() {
            return "own profile";
        }
    }

    /**
     * The handbook way: the same share off every girth, whatever the pressure.
     *
     * @param across share, 0 to below 1
     */
    record Fixed(double across) implements Hold {
        public Fixed {
            if (!(across >= 0 && across < 1)) {
                throw new IllegalArgumentException("a reduction is a share from 0 to below 1: " + across);
            }
        }

        @Override
        public String words() {
            return String.format(Locale.ROOT, "%.1f %% off every girth", 100 * across);
        }
    }
}
