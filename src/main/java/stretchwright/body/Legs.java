package stretchwright.body;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * How the two legs differ: the measures each has for itself, and where a hard socket or brace is worn.
 *
 * @param own per side the measures that stand for that leg alone; a measure that is not there is the body's
 * @param hard per side the girths taken over a hard socket or brace: they get no reduction
 */
public record Legs(Map<Side, Map<Measure, Value>> own, Map<Side, Set<Measure>> hard) {
    /** Both legs are the body's. */
    public static final Legs ALIKE = new Legs(Map.of(), Map.of());

    public Legs {
        Map<Side, Map<Measure, Value>> values = new EnumMap<>(Side.class);
        Map<Side, Set<Measure>> sockets = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Map<Measure, Value> map = new EnumMap<>(Measure.class);
            map.putAll(own.getOrDefault(side, Map.of()));
            values.put(side, Collections.unmodifiableMap(map));
            Set<Measure> set = EnumSet.noneOf(Measure.class);
            set.addAll(hard.getOrDefault(side, Set.of()));
            sockets.put(side, Collections.unmodifiableSet(set));
        }
        own = Collections.unmodifiableMap(values);
        hard = Collections.unmodifiableMap(sockets);
    }

    public Map<Measure, Value> own(Side side) {
        return own.getOrDefault(side, Map.of());
    }

    public Set<Measure> hard(Side side) {
        return hard.getOrDefault(side, Set.of());
    }

    /** Whether one leg piece, mirrored, serves both. */
    public boolean alike() {
        return own(Side.LEFT).equals(own(Side.RIGHT)) && hard(Side.LEFT).equals(hard(Side.RIGHT));
    }
}
