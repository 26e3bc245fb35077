package stretchwright.body;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Which measure is always the smaller one of a pair. Estimates that would break the order of heights (far from the mean
 * body they can) are moved between their neighbours; given values never are.
 */
final class HeightOrder {
    /**
     * Smaller, then larger. The crotch may lie above the hip level (76 of 3288 men measured in 2012), the knee may be
     * smaller than the calf and the waist larger than the hip: none of these is here.
     */
    static final List<List<Measure>> PAIRS = List.of(
            List.of(Measure.ANKLE_BONE_HEIGHT, Measure.ANKLE_HEIGHT),
            List.of(Measure.ANKLE_HEIGHT, Measure.CALF_HEIGHT),
            List.of(Measure.CALF_HEIGHT, Measure.KNEE_HEIGHT),
            List.of(Measure.KNEE_HEIGHT, Measure.CROTCH_HEIGHT),
            List.of(Measure.KNEE_HEIGHT, Measure.HIP_HEIGHT),
            List.of(Measure.CROTCH_HEIGHT, Measure.WAIST_HEIGHT),
            List.of(Measure.HIP_HEIGHT, Measure.WAIST_HEIGHT),
            List.of(Measure.WAIST_HEIGHT, Measure.STATURE),
            List.of(Measure.ANKLE_BONE_HEIGHT, Measure.CALF_HEIGHT),
            List.of(Measure.ANKLE_HEIGHT, Measure.KNEE_HEIGHT),
            List.of(Measure.CALF_HEIGHT, Measure.CROTCH_HEIGHT),
            List.of(Measure.KNEE_HEIGHT, Measure.WAIST_HEIGHT),
            List.of(Measure.CROTCH_HEIGHT, Measure.STATURE),
            List.of(Measure.HIP_HEIGHT, Measure.STATURE),
            List.of(Measure.THIGH_GIRTH, Measure.HIP_GIRTH),
            List.of(Measure.ANKLE_GIRTH, Measure.CALF_GIRTH),
            List.of(Measure.CALF_GIRTH, Measure.THIGH_GIRTH),
            List.of(Measure.KNEE_GIRTH, Measure.THIGH_GIRTH),
            List.of(Measure.BACK_CROTCH_LENGTH, Measure.TOTAL_CROTCH_LENGTH));

    /** An estimate keeps at least this share of the larger height between itself and its neighbour. */
    private static final double GAP = 0.01;

    private HeightOrder() {}

    static Map<Measure, Value> kept(Map<Measure, Value> values) {
        Map<Measure, Value> all = new EnumMap<>(values);
        for (int round = 0; round < 4; round++) {
            for (List<Measure> pair : PAIRS) {
                separate(all, pair.get(0), pair.get(1));
            }
        }
        return all;
    }

    private static void separate(Map<Measure, Value> all, Measure smaller, Measure larger) {
        Value low = all.get(smaller);
        Value high = all.get(larger);
        if (low == null || high == null || low.mm() < high.mm()) {
            return;
        }
        if (low.origin() == Value.Origin.ESTIMATED) {
            all.put(smaller, moved(low, high.mm() * (1 - GAP)));
        } else if (high.origin() == Value.Origin.ESTIMATED) {
            all.put(larger, moved(high, low.mm() / (1 - GAP)));
        }
    }

    /** The spread grows by the move: a value that had to be moved is known no better than that. */
    private static Value moved(Value value, double mm) {
        return new Value(mm, Value.Origin.ESTIMATED, Math.hypot(value.spread(), mm - value.mm()));
    }
}
