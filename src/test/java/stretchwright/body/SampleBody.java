package stretchwright.body;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.ground.RandomStream;

/** Invented bodies for tests of the rooms after this one. */
public final class SampleBody {
    private SampleBody() {}

    /** A small adult; invented, near the middle of trade-values section 9.2. */
    public static Body smallAdult() {
        return of(
                Figure.WOMAN,
                1627,
                742,
                961,
                570,
                480,
                365,
                350,
                215,
                1030,
                830,
                772,
                460,
                330,
                100,
                65,
                700,
                360,
                305,
                243);
    }

    /** Values in the order of {@link Measure}, all given, mm. */
    public static Body of(Figure figure, double... mm) {
        Map<Measure, Value> values = new EnumMap<>(Measure.class);
        Measure[] measures = Measure.values();
        for (int i = 0; i < measures.length; i++) {
            values.put(measures[i], new Value(mm[i], Value.Origin.GIVEN, 5));
        }
        return new Body(figure, OptionalDouble.empty(), values);
    }

    /** One measure changed. */
    public static Body with(Body body, Measure measure, double mm) {
        Map<Measure, Value> values = new EnumMap<>(body.values());
        values.put(measure, new Value(mm, Value.Origin.GIVEN, 5));
        return new Body(body.figure(), body.age(), values);
    }

    /**
     * A body drawn at random: scale from a child of four to a tall adult, girths and heights each with spreads of their
     * own, wide enough to hold the survey's extremes, in an order that bodies have.
     */
    public static Body random(long seed) {
        RandomStream random = RandomStream.of(seed, "body");
        double stature = random.between(1000, 1980);
        double stout = random.between(0.85, 1.35);
        double crotch = stature * random.between(0.44, 0.51);
        double waistHeight = crotch + stature * random.between(0.125, 0.185);
        double hipHeight = crotch + (waistHeight - crotch) * random.between(0.05, 0.40);
        double knee = crotch * random.between(0.56, 0.63);
        double calfHeight = knee * random.between(0.64, 0.75);
        double bone = crotch * random.between(0.067, 0.095);
        double hip = stature * 0.585 * stout * random.between(0.92, 1.08);
        double waist = hip * random.between(0.66, 1.10);
        double thigh = hip * random.between(0.54, 0.66);
        double kneeGirth = thigh * random.between(0.58, 0.70);
        double calf = kneeGirth * random.between(0.88, 1.08);
        double ankle = calf / random.between(1.55, 1.90);
        double rise = waistHeight - crotch;
        double crotchLength = 2 * rise + hip * random.between(0.13, 0.25);
        return of(
                stature < 1400 ? Figure.CHILD : seed % 2 == 0 ? Figure.WOMAN : Figure.MAN,
                stature,
                waist,
                hip,
                thigh,
                thigh + (kneeGirth - thigh) * random.between(0.30, 0.50),
                kneeGirth,
                calf,
                ankle,
                waistHeight,
                hipHeight,
                crotch,
                knee,
                calfHeight,
                bone + 35 * stature / 1650,
                bone,
                crotchLength,
                crotchLength * random.between(0.46, 0.54),
                ankle * random.between(1.32, 1.62),
                stature * 0.15);
    }
}
