package stretchwright.draft;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import stretchwright.body.Body;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Reason.Origin;

/**
 * What hold is wanted at each level: a pressure where the load curve was measured, else a strain.
 *
 * <p>At the ankle the named holds lie in what is comfortable for daily wear, 0.4 to 1.3 kPa (trade-values section 2.3):
 * light at its lower end, medium in its middle, firm at its upper end. Going up the pressure falls in
 * proportion to the height, to 4.6 / 13.5 of that at the gluteal fold: so it fell under made-to-measure sports tights, from
 * 13.5 mmHg by 8.9 (Ashby and others, Sports Engineering 24:12, 2021, control garment, left leg). No published figure
 * says which pressure people call firm.
 */
final class Wanted {
    private static final double FIRM = 1.3;
    private static final double MEDIUM = (0.4 + 1.3) / 2;
    private static final double LIGHT = 0.4;
    private static final double FOLD_OF_ANKLE = (13.5 - 8.9) / 13.5;

    private final Body body;
    private final Fabric fabric;
    private final Hold hold;
    private final Map<Level.Name, Double> pressures;
    private final double strain;

    private Wanted(Body body, Fabric fabric, Hold hold, Map<Level.Name, Double> pressures, double strain) {
        this.body = body;
        this.fabric = fabric;
        this.hold = hold;
        this.pressures = pressures;
        this.strain = strain;
    }

    static Wanted of(Body body, Fabric fabric, Hold hold) {
        if (hold instanceof Hold.Fixed share) {
            return new Wanted(body, fabric, hold, Map.of(), share.across() / (1 - share.across()));
        }
        if (fabric.test().loadAcross().isAssumed()) {
            return new Wanted(body, fabric, hold, Map.of(), strain(fabric, hold.named()));
        }
        Map<Level.Name, Double> pressures =
                hold instanceof Hold.Profile own ? profile(body, own) : falling(body, ankle(hold.named()));
        return new Wanted(body, fabric, hold, pressures, 0);
    }

    /** A share of the stretch; or, after a wrap test, what was comfortable there for a medium hold. */
    private static double strain(Fabric fabric, Hold.Named hold) {
        if (fabric.test().wrapped().isPresent()) {
            double wrapped = fabric.test().wrapped().getAsDouble();
            return wrapped / (1 - wrapped) * Reducing.share(hold) / Reducing.share(Hold.Named.MEDIUM);
        }
        return Reducing.share(hold) * fabric.test().stretchAcross();
    }

    static double ankle(Hold.Named hold) {
        return switch (hold) {
            case LIGHT -> LIGHT;
            case MEDIUM -> MEDIUM;
            case FIRM -> FIRM;
        };
    }

    private static Map<Level.Name, Double> falling(Body body, double ankle) {
        Map<Level.Name, Double> ends = Map.of(Level.Name.CROTCH, ankle * FOLD_OF_ANKLE, Level.Name.ANKLE, ankle);
        return profile(body, new Hold.Profile(ends));
    }

    /** Between the levels given in proportion to the height, beyond them the nearest; the hip only where it is given. */
    private static Map<Level.Name, Double> profile(Body body, Hold.Profile hold) {
        TreeMap<Double, Double> given = new TreeMap<>();
        hold.kilopascals().forEach((level, kPa) -> {
            if (level != Level.Name.HIP || hold.kilopascals().size() == 1) {
                given.put(Holding.height(level, body), kPa);
            }
        });
        Map<Level.Name, Double> out = new EnumMap<>(Level.Name.class);
        for (Level.Name level : Holding.LEG) {
            out.put(level, between(given, Holding.height(level, body)));
        }
        Double hip = hold.kilopascals().get(Level.Name.HIP);
        if (hip != null) {
            out.put(Level.Name.HIP, hip);
        }
        return out;
    }

    private static double between(TreeMap<Double, Double> given, double height) {
        Map.Entry<Double, Double> below = given.floorEntry(height);
        Map.Entry<Double, Double> above = given.ceilingEntry(height);
        if (below == null) {
            return given.firstEntry().getValue();
        }
        if (above == null || above.getKey().equals(below.getKey())) {
            return below.getValue();
        }
        double share = (height - below.getKey()) / (above.getKey() - below.getKey());
        return below.getValue() + share * (above.getValue() - below.getValue());
    }

    boolean isPressure() {
        return !pressures.isEmpty();
    }

    boolean isFixed() {
        return hold instanceof Hold.Fixed;
    }

    /** Pressure wanted at the level, kPa; empty where hold is a strain, and at the hip where nothing was said of it. */
    OptionalDouble pressure(Level.Name level) {
        Double kPa = pressures.get(level);
        return kPa == null ? OptionalDouble.empty() : OptionalDouble.of(kPa);
    }

    /** Strain across wanted where no pressure is. */
    double strain() {
        return strain;
    }

    /** The strain planned at a level, with the rule that gave it. */
    Ruled ruled(Level.Name level, double planned) {
        if (hold instanceof Hold.Fixed share) {
            return rule(planned, Tell.said("rule.fixed"), percent(Tell.said("input.fixed"), share.across()));
        }
        Input stretch = Inputs.stretchAcross(fabric);
        if (pressure(level).isPresent()) {
            double mmHg = Laplace.toMmHg(pressure(level).getAsDouble());
            Input pressure = new Input(Tell.said("input.pressure-wanted", hold.said()), mmHg, "mmHg", Origin.STYLE);
            Input girth = Inputs.measure(body, Holding.girth(level));
            return rule(planned, Tell.said("rule.pressure"), pressure, girth, stretch);
        }
        if (isPressure()) {
            return rule(planned, Tell.said("rule.above-crotch"));
        }
        if (fabric.test().wrapped().isPresent()) {
            double share = 100 * fabric.test().wrapped().getAsDouble();
            Input test = new Input(Tell.said("input.wrap-test"), share, "%", Origin.FABRIC);
            return rule(planned, Tell.said("rule.wrapped"), stretch, test);
        }
        return rule(
                planned,
                Tell.said("rule.share", Part.share(Reducing.MOST_STRAIN)),
                stretch,
                percent(Tell.said("input.share", hold.said()), Reducing.share(hold.named())));
    }

    private static Ruled rule(double planned, Said rule, Input... inputs) {
        return Ruled.of(planned, rule, Holding.SOURCE, inputs);
    }

    private static Input percent(Said name, double share) {
        return new Input(name, 100 * share, "%", Origin.STYLE);
    }
}
