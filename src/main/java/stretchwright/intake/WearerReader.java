package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.Measuring;
import stretchwright.body.PoseLength;
import stretchwright.body.Readings;
import stretchwright.body.Side;
import stretchwright.body.Stance;
import stretchwright.body.Variation;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;

/** The wearer from what was given; each measure for itself. Whether they fit each other is asked of the body room. */
final class WearerReader {
    /** Skin over a bent joint does not double: a slip of the tape (our own limit, no source). */
    private static final double LONGEST = 2;

    /** Two tapes over the same course differ by less than this share (our own limit, no source). */
    private static final double SAME = 0.15;

    /** The name is empty where none is given. */
    record Wearer(String name, Measured measured) {}

    private final Given given;
    private final Map<Measure, Readings> whole = new EnumMap<>(Measure.class);
    private final Map<Side, Map<Measure, Readings>> sides = new EnumMap<>(Side.class);

    private WearerReader(Given given) {
        this.given = given;
    }

    static Optional<Wearer> read(Given given) {
        Optional<Wearer> wearer = taken(given);
        // asked now, so that measures at odds are told together with everything else; the job asks again
        wearer.ifPresent(w -> {
            Findings about = given.findings().in(given.unit().orElse(Unit.MM));
            Measuring.body(w.measured(), about);
            given.findings().addAll(about.all());
        });
        return wearer;
    }

    /** What was measured, not yet asked whether it goes together. */
    static Optional<Wearer> taken(Given given) {
        return new WearerReader(given).taken();
    }

    private Optional<Wearer> taken() {
        for (Measure measure : Measure.values()) {
            if (given.isSection(WearerKeys.measure(measure))) {
                bothSides(measure);
            } else {
                given.get(WearerKeys.measure(measure)).ifPresent(mm -> whole.put(measure, new Readings(mm)));
            }
        }
        List<PoseLength> poses = poses();
        Optional<Figure> figure = given.get(WearerKeys.FIGURE);
        if (figure.isEmpty() || (whole.isEmpty() && sides.isEmpty())) {
            return Optional.empty();
        }
        Measured measured = new Measured(
                figure.get(), Row.unboxed(given.get(WearerKeys.AGE)), stance(), whole, sides, hard(), poses);
        return Optional.of(new Wearer(given.get(WearerKeys.NAME).orElse(""), measured));
    }

    private Stance stance() {
        Map<Variation, Double> named = new EnumMap<>(Variation.class);
        for (Variation variation : Variation.values()) {
            given.get(WearerKeys.named(variation)).ifPresent(mm -> named.put(variation, mm));
        }
        return new Stance(
                given.orUsual(WearerKeys.SEATED),
                waist(WearerKeys.FRONT_WAIST_HEIGHT),
                waist(WearerKeys.BACK_WAIST_HEIGHT),
                named);
    }

    private OptionalDouble waist(Key<List<Double>> key) {
        Optional<Readings> taken = given.get(key).map(Readings::new);
        taken.ifPresent(readings -> {
            Findings about = given.findings().in(given.unit().orElse(Unit.MM));
            readings.agree(key.path(), Measure.WAIST_HEIGHT, about);
            given.findings().addAll(about.all());
        });
        return taken.isPresent() ? OptionalDouble.of(taken.get().mean()) : OptionalDouble.empty();
    }

    private void bothSides(Measure measure) {
        if (!measure.ofLeg()) {
            return; // the reader of the table has refused the section
        }
        Map<Side, Readings> taken = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            given.get(WearerKeys.measure(measure, side)).ifPresent(mm -> taken.put(side, new Readings(mm)));
        }
        if (taken.size() == Side.values().length) {
            taken.forEach((side, readings) -> sides.computeIfAbsent(side, s -> new EnumMap<>(Measure.class))
                    .put(measure, readings));
        }
    }

    private Map<Side, Set<Measure>> hard() {
        Map<Side, Set<Measure>> hard = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            given.get(WearerKeys.hard(side)).ifPresent(girths -> hard.put(side, girths));
        }
        return hard;
    }

    /** Lengths over the body, standing and in the pose. */
    private List<PoseLength> poses() {
        List<PoseLength> out = new ArrayList<>();
        for (PoseLength.Course course : PoseLength.Course.values()) {
            given.get(WearerKeys.course(course))
                    .ifPresent(mm -> pose(course, mm.get(0), mm.get(1)).ifPresent(out::add));
        }
        return out;
    }

    private Optional<PoseLength> pose(PoseLength.Course course, double standing, double inPose) {
        Key<List<Double>> key = WearerKeys.course(course);
        if (inPose > LONGEST * standing) {
            given.add(
                    key,
                    Tell.said("pose.doubles", Part.written(inPose), Part.written(standing)),
                    Tell.said("pose.again"));
            return Optional.empty();
        }
        if (inPose < standing) {
            given.add(
                    key,
                    Tell.said("pose.shorter", Part.written(inPose), Part.written(standing)),
                    Tell.said("pose.order", Part.text(key.like(given.unit()))));
            return Optional.empty();
        }
        if (course == PoseLength.Course.BACK_TO_FRONT) {
            agree(key, standing);
        }
        return Optional.of(new PoseLength(course, standing, inPose));
    }

    /** Through the legs, standing, the tape runs as the total crotch length does. */
    private void agree(Key<List<Double>> key, double standing) {
        Readings crotch = whole.get(Measure.TOTAL_CROTCH_LENGTH);
        if (crotch != null && Math.abs(standing - crotch.mean()) > SAME * crotch.mean()) {
            given.add(
                    key,
                    Tell.said("pose.crotch", Part.written(standing), Part.written(crotch.mean())),
                    Tell.said("one-out.again"));
        }
    }
}
