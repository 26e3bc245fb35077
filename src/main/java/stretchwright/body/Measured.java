package stretchwright.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What was measured of one wearer, nothing estimated yet.
 *
 * @param stance how the wearer holds the body
 * @param whole measures of the body, or of both legs alike
 * @param sides per side the measures that were taken on each leg; the same ones on both sides
 * @param hard per side the girths taken over a hard socket or brace
 * @param poseLengths lengths over the body standing and in the pose, in the order given
 */
public record Measured(
        Figure figure,
        OptionalDouble age,
        Stance stance,
        Map<Measure, Readings> whole,
        Map<Side, Map<Measure, Readings>> sides,
        Map<Side, Set<Measure>> hard,
        List<PoseLength> poseLengths) {
    public Measured {
        poseLengths = List.copyOf(poseLengths);
        whole = Collections.unmodifiableMap(sorted(whole));
        Map<Side, Map<Measure, Readings>> bySide = new EnumMap<>(Side.class);
        Map<Side, Set<Measure>> sockets = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            bySide.put(side, Collections.unmodifiableMap(sorted(sides.getOrDefault(side, Map.of()))));
            Set<Measure> girths = EnumSet.noneOf(Measure.class);
            girths.addAll(hard.getOrDefault(side, Set.of()));
            sockets.put(side, Collections.unmodifiableSet(girths));
        }
        sides = Collections.unmodifiableMap(bySide);
        hard = Collections.unmodifiableMap(sockets);
        if (!side(Side.LEFT, sides).keySet().equals(side(Side.RIGHT, sides).keySet())
                || !side(Side.LEFT, sides).keySet().stream().allMatch(Measure::ofLeg)) {
            throw new IllegalArgumentException("only measures of the leg have sides, and then both");
        }
    }

    /** Nothing measured in a pose. */
    public Measured(
            Figure figure,
            OptionalDouble age,
            Stance stance,
            Map<Measure, Readings> whole,
            Map<Side, Map<Measure, Readings>> sides,
            Map<Side, Set<Measure>> hard) {
        this(figure, age, stance, whole, sides, hard, List.of());
    }

    /** Single values, both legs alike. */
    public static Measured of(Figure figure, OptionalDouble age, Map<Measure, Double> mm) {
        Map<Measure, Readings> whole = new EnumMap<>(Measure.class);
        mm.forEach((measure, value) -> whole.put(measure, Readings.of(value)));
        return new Measured(figure, age, Stance.STANDING, whole, Map.of(), Map.of());
    }

    private static Map<Measure, Readings> sorted(Map<Measure, Readings> map) {
        Map<Measure, Readings> all = new EnumMap<>(Measure.class);
        all.putAll(map);
        return all;
    }

    private static Map<Measure, Readings> side(Side side, Map<Side, Map<Measure, Readings>> sides) {
        return sides.getOrDefault(side, Map.of());
    }

    public boolean seated() {
        return stance.seated();
    }

    /** What was taken on one leg, where the legs were measured apart. */
    public Map<Measure, Readings> side(Side side) {
        return side(side, sides);
    }

    public boolean isHard(Side side, Measure measure) {
        return hard.getOrDefault(side, Set.of()).contains(measure);
    }

    /** Of each measure taken its value, mm: the mean of the readings, then of both sides. */
    public Map<Measure, Double> means() {
        Map<Measure, Double> means = new EnumMap<>(Measure.class);
        whole.forEach((measure, readings) -> means.put(measure, readings.mean()));
        side(Side.LEFT).forEach((measure, left) -> {
            Readings right = side(Side.RIGHT).get(measure);
            means.put(measure, right == null ? left.mean() : (left.mean() + right.mean()) / 2);
        });
        return means;
    }

    /** The same without what lies over a hard socket or brace: what surveys of bodies can judge. */
    Map<Measure, Double> soft() {
        Map<Measure, Double> soft = new EnumMap<>(Measure.class);
        for (Measure measure : means().keySet()) {
            List<Double> sound = new ArrayList<>();
            for (Side side : Side.values()) {
                Readings readings = side(side).getOrDefault(measure, whole.get(measure));
                if (readings != null && !isHard(side, measure)) {
                    sound.add(readings.mean());
                }
            }
            sound.stream().mapToDouble(d -> d).average().ifPresent(mm -> soft.put(measure, mm));
        }
        return soft;
    }

    /** Soft values of one leg and of the trunk; where the leg has none of its own, the body's. */
    Map<Measure, Double> soft(Side side) {
        Map<Measure, Double> soft = soft();
        side(side).forEach((measure, readings) -> {
            if (!isHard(side, measure)) {
                soft.put(measure, readings.mean());
            }
        });
        return soft;
    }

    /** Spread of a measure that was taken, mm. */
    double spread(Measure measure) {
        Readings readings = whole.get(measure);
        if (readings != null) {
            return readings.spread(measure);
        }
        double left = spread(Side.LEFT, measure);
        double right = spread(Side.RIGHT, measure);
        return Math.hypot(left, right) / 2;
    }

    double spread(Side side, Measure measure) {
        Readings readings = side(side).get(measure);
        return readings == null ? HandMeasuring.spread(measure) : readings.spread(measure);
    }
}
