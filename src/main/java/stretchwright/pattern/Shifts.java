package stretchwright.pattern;

import java.util.EnumMap;
import java.util.Map;

/** Points and edges moved by hand, mm; those not named stay where the draft puts them. */
public record Shifts(Map<Shift, Double> by) {
    public static final Shifts NONE = new Shifts(Map.of());

    public Shifts {
        Map<Shift, Double> moved = new EnumMap<>(Shift.class);
        by.forEach((shift, mm) -> {
            if (mm != 0) {
                moved.put(shift, mm);
            }
        });
        by = java.util.Collections.unmodifiableMap(moved);
    }

    public static Shifts of(Shift shift, double mm) {
        return new Shifts(Map.of(shift, mm));
    }

    /** mm; 0 where it stays. */
    public double at(Shift shift) {
        return by.getOrDefault(shift, 0.0);
    }

    public boolean isEmpty() {
        return by.isEmpty();
    }

    /** With this one so, and not as it was. */
    public Shifts with(Shift shift, double mm) {
        Map<Shift, Double> all = new EnumMap<>(Shift.class);
        all.putAll(by);
        all.put(shift, mm);
        return new Shifts(all);
    }

    /** Both together. */
    public Shifts and(Shifts other) {
        Map<Shift, Double> all = new EnumMap<>(Shift.class);
        all.putAll(by);
        other.by.forEach((shift, mm) -> all.merge(shift, mm, Double::sum));
        return new Shifts(all);
    }
}
