package stretchwright.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.ground.Findings;

/** Leaves each given measure out and asks the others. What was found to be wrong is asked about, but asks no more. */
final class Companions {
    private Companions() {}

    static List<Companion> of(Measured measured) {
        Map<Measure, Double> given = measured.means();
        Map<Measure, Double> soft = measured.soft();
        Map<Measure, Double> sound = new EnumMap<>(Measure.class);
        sound.putAll(soft);
        sound.values().removeIf(mm -> !(mm > 0 && Double.isFinite(mm)));
        sound.keySet().removeAll(wrong(measured));
        Known known = Known.of(measured.figure(), measured.age(), sound);
        JointNormal.Expected all = known.people().expect(known.logs());
        List<Companion> companions = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            Double mm = given.get(measure);
            Known others = known.without(measure);
            if (mm == null) {
                double middle = Math.exp(all.logs()[measure.ordinal()]);
                double spread = middle * all.spreads()[measure.ordinal()];
                companions.add(new Companion(
                        measure,
                        Value.Origin.ESTIMATED,
                        middle,
                        spread,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
            } else if (others.isEmpty() || !soft.containsKey(measure)) {
                companions.add(new Companion(
                        measure,
                        Value.Origin.GIVEN,
                        mm,
                        measured.spread(measure),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
            } else {
                companions.add(beside(measure, mm, measured.spread(measure), others));
            }
        }
        return companions;
    }

    private static Companion beside(Measure measure, double mm, double spread, Known others) {
        JointNormal.Expected expected = others.agreeing().expect(others.logs());
        double middle = Math.exp(expected.logs()[measure.ordinal()]);
        return new Companion(
                measure,
                Value.Origin.GIVEN,
                mm,
                spread,
                OptionalDouble.of(middle),
                OptionalDouble.of(middle * expected.spreads()[measure.ordinal()]));
    }

    /** Measures named by a finding. */
    private static Set<Measure> wrong(Measured measured) {
        Findings findings = new Findings("");
        Map<Measure, Double> judged = LegCheck.judged(measured, findings);
        Plausibility.check(measured.figure(), measured.age(), judged, findings);
        Set<Measure> wrong = EnumSet.noneOf(Measure.class);
        findings.all()
                .forEach(f -> Measure.of(
                                f.key().replaceFirst("\\.(left|right)$", "").replaceFirst("^.*\\.", ""))
                        .ifPresent(wrong::add));
        return wrong;
    }

    /** What was measured of a body: the body's own values, and each leg's where they differ. */
    static Measured taken(Body body) {
        Map<Measure, Readings> whole = new EnumMap<>(Measure.class);
        Map<Side, Map<Measure, Readings>> sides = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Map<Measure, Readings> own = new EnumMap<>(Measure.class);
            body.legs().own(side).forEach((measure, value) -> {
                if (value.origin() == Value.Origin.GIVEN) {
                    own.put(measure, Readings.of(value.mm()));
                }
            });
            sides.put(side, own);
        }
        body.values().forEach((measure, value) -> {
            if (body.isGiven(measure) && sides.values().stream().noneMatch(own -> own.containsKey(measure))) {
                whole.put(measure, Readings.of(value.mm()));
            }
        });
        return new Measured(
                body.figure(),
                body.age(),
                body.stance(),
                whole,
                sides,
                body.legs().hard());
    }

    /** The given values of a body without what lies over a hard socket or brace. */
    static Map<Measure, Double> soft(Body body) {
        Map<Measure, Double> soft = new EnumMap<>(Measure.class);
        body.values().forEach((measure, value) -> {
            if (value.origin() != Value.Origin.GIVEN) {
                return;
            }
            boolean left = body.legs().hard(Side.LEFT).contains(measure);
            boolean right = body.legs().hard(Side.RIGHT).contains(measure);
            if (!left && !right) {
                soft.put(measure, value.mm());
            } else if (!left || !right) {
                Value own = body.legs().own(left ? Side.RIGHT : Side.LEFT).getOrDefault(measure, value);
                soft.put(measure, own.mm());
            }
        });
        return soft;
    }
}
