package stretchwright.pattern;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** How firmly the garment is to hold. */
public sealed interface Hold {
    /** As written in the report: "medium". */
    String words();

    Said said();

    /** The named hold that elastic and strap follow: a hold in numbers takes those of medium. */
    default Named named() {
        return Named.MEDIUM;
    }

    /**
     * A word. With a measured load curve it stands for a pressure at the ankle that falls going up; with an assumed one
     * for a share of the stretch (docs/maths/draft.md, Hold).
     */
    enum Named implements Hold {
        LIGHT(Tell.said("hold.light")),
        MEDIUM(Tell.said("hold.medium")),
        FIRM(Tell.said("hold.firm"));

        private final Said said;

        Named(Said said) {
            this.said = said;
        }

        @Override
        public String words() {
            return name().toLowerCase(Locale.ROOT);
        }

        @Override
        public Said said() {
            return said;
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

        @Override
        public Said said() {
            return Tell.said("hold.profile");
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

        @Override
        public Said said() {
            return Tell.said("hold.fixed", Part.share(across, 1));
        }
    }
}
