package stretchwright.draft;

import java.util.EnumMap;
import java.util.Map;
import stretchwright.body.Body;
import stretchwright.body.Legs;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.body.Value;
import stretchwright.pattern.Level;
import stretchwright.pattern.Parts;

/** The body with what it wears in the pockets: hip, thigh and knee as much larger as the pads bulge. */
final class Padded {
    private static final Map<Measure, Level.Name> GIRTHS = Map.of(
            Measure.HIP_GIRTH, Level.Name.HIP,
            Measure.THIGH_GIRTH, Level.Name.CROTCH,
            Measure.MID_THIGH_GIRTH, Level.Name.MID_THIGH,
            Measure.KNEE_GIRTH, Level.Name.KNEE);

    private Padded() {}

    static Body of(Body body, Parts parts) {
        if (parts.pockets().stream().allMatch(p -> p.thickness() == 0)) {
            return body;
        }
        Map<Side, Map<Measure, Value>> own = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            own.put(side, larger(body.legs().own(side), parts));
        }
        return new Body(
                body.figure(),
                body.age(),
                body.stance(),
                larger(body.values(), parts),
                new Legs(own, body.legs().hard()));
    }

    private static Map<Measure, Value> larger(Map<Measure, Value> values, Parts parts) {
        Map<Measure, Value> out = new EnumMap<>(Measure.class);
        values.forEach((m, v) -> {
            out.put(m, new Value(v.mm() + bulge(m, parts), v.origin(), v.spread()));
        });
        return out;
    }

    /** What the things in the pockets add to a measure, mm. */
    static double bulge(Measure measure, Parts parts) {
        Level.Name level = GIRTHS.get(measure);
        return level == null ? 0 : parts.bulge(level);
    }
}
