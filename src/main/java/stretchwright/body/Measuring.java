package stretchwright.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * The entry of the room: from what was measured to a checked body.
 *
 * <p>In: figure, age if known, some measures in mm. Out: a body in which given values stand as given and every other
 * measure is the conditional median of the figure's joint normal, each with its spread (one standard deviation); or
 * findings, all at once, where a value is not what people measure or does not go with the others. Promise: any one
 * measure is enough to start; the same input gives the same body. Maths and sources: docs/maths/body.md.
 */
public final class Measuring {
    private Measuring() {}

    /** Empty only if this call added findings. */
    public static Optional<Body> body(
            Figure figure, OptionalDouble age, Map<Measure, Double> givenMm, Findings findings) {
        return body(Measured.of(figure, age, givenMm), findings);
    }

    /**
     * The same from readings, legs measured apart, hard sockets: the mean of the readings and of both sides is the
     * body's; each leg keeps its own. Digits are taken for swapped in the unit of the findings, in which the measures were
     * written. Empty only if this call added findings.
     */
    public static Optional<Body> body(Measured measured, Findings findings) {
        boolean taken = TakenCheck.pass(measured, findings);
        Findings aboutLegs = findings.in(findings.unit());
        Map<Measure, Double> judged = LegCheck.judged(measured, aboutLegs);
        aboutLegs.all().forEach(f -> findings.add(f.key(), f.wrong(), f.right()));
        boolean plausible = Plausibility.check(measured.figure(), measured.age(), judged, findings);
        if (!taken || !plausible || !aboutLegs.isEmpty() || !TakenCheck.legsInOrder(measured, findings)) {
            return Optional.empty();
        }
        Map<Measure, Value> values = values(known(measured, measured.soft()), measured.means(), measured::spread);
        Body body = new Body(measured.figure(), measured.age(), measured.stance(), values, legs(measured));
        return Optional.of(body).filter(b -> StanceCheck.pass(b, findings));
    }

    private static Known known(Measured measured, Map<Measure, Double> soft) {
        return Known.of(measured.figure(), measured.age(), soft);
    }

    /** Each leg from its own values; what was not measured on it is estimated from them and the trunk. */
    private static Legs legs(Measured measured) {
        Map<Side, Map<Measure, Value>> own = new EnumMap<>(Side.class);
        if (!measured.side(Side.LEFT).equals(measured.side(Side.RIGHT))) {
            for (Side side : Side.values()) {
                own.put(side, leg(measured, side));
            }
        }
        return new Legs(own, measured.hard());
    }

    private static Map<Measure, Value> leg(Measured measured, Side side) {
        Map<Measure, Double> given = measured.means();
        measured.side(side).forEach((measure, readings) -> given.put(measure, readings.mean()));
        Map<Measure, Value> leg = values(
                known(measured, measured.soft(side)),
                given,
                m -> measured.side(side).containsKey(m) ? measured.spread(side, m) : measured.spread(m));
        leg.keySet()
                .removeIf(m -> !m.ofLeg()
                        || given.containsKey(m) && !measured.side(side).containsKey(m));
        return leg;
    }

    /** Given values that are possible but unusual beside the others; the most unusual first. */
    public static List<Doubt> doubts(Body body) {
        Measured taken = Companions.taken(body);
        Map<Measure, Double> given = LegCheck.judged(taken, new Findings(""));
        Known known = Known.of(body.figure(), body.age(), given);
        List<Doubt> doubts = new ArrayList<>();
        for (AtOdds.Odd odd : AtOdds.find(known, o -> Plausibility.UNUSUAL)) {
            doubts.add(doubt(odd));
        }
        boolean waistDoubted = doubts.stream().anyMatch(d -> d.measure() == Measure.WAIST_GIRTH);
        if (!waistDoubted && given.containsKey(Measure.WAIST_GIRTH) && given.containsKey(Measure.HIP_GIRTH)) {
            trouserTop(body, known).ifPresent(doubts::add);
        }
        LegCheck.doubts(taken).stream()
                .filter(leg -> doubts.stream().noneMatch(d -> d.measure() == leg.measure()))
                .forEach(doubts::add);
        return doubts;
    }

    /** The one missing measure that would narrow the fit most; empty when nothing that decides it is estimated. */
    public static Optional<NextMeasure> next(Body body) {
        return NextMeasure.of(body);
    }

    /** Every measure beside what the others let expect; also of a body that was refused. */
    public static List<Companion> companions(Measured measured) {
        return Companions.of(measured);
    }

    /**
     * Of these, as far as they were measured, the one that lies furthest from what all the others let expect, in spreads of
     * the two; empty where none was.
     */
    public static Optional<Companion> furthest(Body body, Measure... among) {
        List<Measure> asked = List.of(among);
        return Companions.of(Companions.taken(body)).stream()
                .filter(c -> asked.contains(c.measure()) && c.expected().isPresent())
                .max(Comparator.comparingDouble(Measuring::off));
    }

    private static double off(Companion c) {
        double spread = Math.hypot(c.spread(), c.expectedSpread().orElse(0));
        return Math.abs(c.mm() - c.expected().orElse(c.mm())) / spread;
    }

    /**
     * A waist taken where trousers sit is the commonest wrong level. Asked where hip over waist is below what 95 of 100
     * have at the navel: 1.057 women, 0.980 men (1986 women and 4082 men, US Army 2012).
     */
    private static Optional<Doubt> trouserTop(Body body, Known known) {
        double limit = switch (body.figure()) {
            case WOMAN -> 1.057;
            case MAN -> 0.980;
            case CHILD -> 0;
        };
        double waist = body.mm(Measure.WAIST_GIRTH);
        double hip = body.mm(Measure.HIP_GIRTH);
        if (hip / waist >= limit) {
            return Optional.empty();
        }
        Known others = known.without(Measure.WAIST_GIRTH);
        JointNormal.Expected expected = others.people().expect(others.logs());
        double mm = Math.exp(expected.logs()[Measure.WAIST_GIRTH.ordinal()]);
        double spread = mm * expected.spreads()[Measure.WAIST_GIRTH.ordinal()];
        Said message =
                Tell.said("doubt.trouser-top", Part.length(hip), Part.number(hip / waist, 2), Part.length(waist));
        return Optional.of(new Doubt(Measure.WAIST_GIRTH, mm, spread, message));
    }

    private static Doubt doubt(AtOdds.Odd odd) {
        Said message = Tell.said(
                "doubt.unusual", odd.measure().said(), Part.length(odd.mm()), Tell.range(odd.expected(), odd.spread()));
        return new Doubt(odd.measure(), odd.expected(), odd.spread(), message);
    }

    static Map<Measure, Value> values(Known known, Map<Measure, Double> givenMm, ToDoubleFunction<Measure> spread) {
        JointNormal.Expected expected = known.people().expect(known.logs());
        Map<Measure, Value> values = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            Double given = givenMm.get(measure);
            if (given != null) {
                values.put(measure, new Value(given, Value.Origin.GIVEN, spread.applyAsDouble(measure)));
            } else {
                double mm = Math.exp(expected.logs()[measure.ordinal()]);
                values.put(measure, new Value(mm, Value.Origin.ESTIMATED, mm * expected.spreads()[measure.ordinal()]));
            }
        }
        return HeightOrder.kept(values);
    }
}
