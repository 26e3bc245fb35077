package stretchwright.fabric;

import java.util.EnumMap;
import java.util.Map;

/** What a worn pair taught of its cloth, its wearer and the friction between them; what it did not teach is not in it. */
public record Learnt(Map<What, Double> values) {
    public static final Learnt NOTHING = new Learnt(Map.of());

    /** Of what it was learnt: it holds for the next pair in that cloth, for that wearer, for both. */
    public enum Of {
        CLOTH,
        WEARER,
        FRICTION
    }

    /** How it is written. */
    public enum Unit {
        SHARE,
        NUMBER,
        LENGTH
    }

    /** One thing that can be learnt. */
    public enum What {
        /** Pull across, by that of the load curve. */
        PULL_ACROSS(Of.CLOTH, Unit.SHARE, 0.05, 20),
        PULL_ALONG(Of.CLOTH, Unit.SHARE, 0.05, 20),
        NARROWING(Of.CLOTH, Unit.SHARE, 0, Hung.MOST_NARROWING),
        /** Pull of two layers, in pulls of one. */
        LAYERS(Of.CLOTH, Unit.NUMBER, 1, 3),
        /** Cloth that goes with the crotch seam, by what usually does. */
        CROTCH_SEAM(Of.CLOTH, Unit.SHARE, 0.05, 20),
        ELASTIC(Of.CLOTH, Unit.SHARE, 0.05, 20),
        /** Growth of a girth in a squat. */
        HIP_GROWTH(Of.WEARER, Unit.SHARE, 0, 0.5),
        KNEE_GROWTH(Of.WEARER, Unit.SHARE, 0, 0.5),
        /** Growth of the skin lengthwise in a squat. */
        KNEE_ALONG(Of.WEARER, Unit.SHARE, 0, 0.8),
        SEAT_ALONG(Of.WEARER, Unit.SHARE, 0, 0.8),
        BACK_RISE(Of.WEARER, Unit.SHARE, 0, 0.8),
        /** Longer over the crotch, and larger round the waist edge, than measured, mm. */
        OVER_CROTCH(Of.WEARER, Unit.LENGTH, -200, 200),
        ROUND_WAIST(Of.WEARER, Unit.LENGTH, -200, 200),
        SKIN(Of.FRICTION, Unit.NUMBER, 0, 2),
        BOOT(Of.FRICTION, Unit.NUMBER, 0, 2);

        private final Of of;
        private final Unit unit;
        private final double least;
        private final double most;

        What(Of of, Unit unit, double least, double most) {
            this.of = of;
            this.unit = unit;
            this.least = least;
            this.most = most;
        }

        public Of of() {
            return of;
        }

        public Unit unit() {
            return unit;
        }

        public double least() {
            return least;
        }

        public double most() {
            return most;
        }
    }

    public Learnt {
        Map<What, Double> all = new EnumMap<>(What.class);
        all.putAll(values);
        values = java.util.Collections.unmodifiableMap(all);
    }

    public double of(What what, double otherwise) {
        return values.getOrDefault(what, otherwise);
    }

    public boolean isNothing() {
        return values.isEmpty();
    }
}
