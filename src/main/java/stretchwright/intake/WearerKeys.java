package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.PoseLength;
import stretchwright.body.Readings;
import stretchwright.body.Side;
import stretchwright.body.Stance;
import stretchwright.body.Variation;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;

/** Rows of the wearer. Which survey fills in and checks, and what was measured. */
public final class WearerKeys {
    static final Key<Boolean> WEARER = Row.section("wearer", "{figure: woman, measurements: {hip girth: {961}}}")
            .needed();

    public static final Key<String> NAME = Row.name("wearer.name", "Rowan")
            .in(Lens.reading(m -> Optional.of(m.wearer()).filter(n -> !n.isEmpty())))
            .untold();

    private static final ChoiceKind<Figure> FIGURES = ChoiceKind.of(List.of(Figure.values()), Figure::word)
            .also(Figure.WOMAN, "female", "lady", "women")
            .also(Figure.MAN, "male", "gentleman", "men")
            .also(Figure.CHILD, "girl", "boy", "kid", "children");

    public static final Key<Figure> FIGURE = Row.choice("wearer.figure", FIGURES, "woman")
            .needed()
            .in(Lens.reading(m -> Optional.of(m.figure())))
            .untold();

    public static final Key<Double> AGE = Key.of(
                    "wearer.age",
                    new QuantityKind(
                            WearerKeys::years, new Range(1, 110, "why.age"), "years", "age.is-not", "age.write"),
                    "31")
            .in(Lens.reading(m -> Row.boxed(m.age())))
            .untold();

    public static final Key<Boolean> SEATED = Row.yes("wearer.seated")
            .usually(false)
            .in(Lens.reading(m -> Optional.of(m.measured().seated())))
            .untold();

    /** Children grow: a make from old measures is asked about. */
    public static final Key<String> MEASURED_ON =
            Key.of("wearer.measured on", WornKeys.DAY, "2026-01-31").untold();

    static final Key<Boolean> MEASUREMENTS = Key.of(
                    "wearer.measurements", new SectionKind(false, Optional.empty(), false), "{hip girth: {961}}")
            .needed()
            .also("measures")
            .untold();

    private static final String WAISTS = "wearer.measurements.";

    static final Key<List<Double>> FRONT_WAIST_HEIGHT = waist("front waist height", m -> m.frontWaist());
    static final Key<List<Double>> BACK_WAIST_HEIGHT = waist("back waist height", m -> m.backWaist());

    static final Key<Boolean> FIGURE_SHIFTS = Row.section("wearer.figure shifts", "{full seat: {10}}");

    private static final Map<Variation, Key<Double>> VARIATIONS = new EnumMap<>(Variation.class);

    static final Key<Boolean> HARD = Row.section("wearer.hard", "{left: [calf girth]}");

    static final Key<Boolean> POSES = Row.section("wearer.pose lengths", "{back waist to front waist: [{700}, {780}]}");

    private static final Map<Measure, Key<List<Double>>> TAKEN = new EnumMap<>(Measure.class);
    private static final Map<Side, Map<Measure, Key<List<Double>>>> APART = new EnumMap<>(Side.class);
    private static final Map<Side, Key<Set<Measure>>> SOCKETS = new EnumMap<>(Side.class);
    private static final Map<PoseLength.Course, Key<List<Double>>> COURSES = new EnumMap<>(PoseLength.Course.class);

    static {
        for (Side side : Side.values()) {
            APART.put(side, new EnumMap<>(Measure.class));
            SOCKETS.put(side, hardKey(side));
        }
        for (Measure measure : Measure.values()) {
            TAKEN.put(measure, taken(measure));
            if (measure.ofLeg()) {
                APART.forEach((side, keys) -> keys.put(measure, apart(measure, side)));
            }
        }
        for (Variation variation : Variation.values()) {
            VARIATIONS.put(variation, variation(variation));
        }
        for (PoseLength.Course course : PoseLength.Course.values()) {
            COURSES.put(course, pose(course));
        }
    }

    private WearerKeys() {}

    /** The figure that a word means, everyday words too; empty where it means none. */
    public static Optional<Figure> figure(String word) {
        return FIGURES.find(word);
    }

    /** What to write instead of a word that means no figure. */
    public static Said chooseFigure(String word) {
        return FIGURES.choose(word);
    }

    /** Of the body, or of both legs alike. */
    public static Key<List<Double>> measure(Measure measure) {
        return java.util.Objects.requireNonNull(TAKEN.get(measure));
    }

    static Key<List<Double>> measure(Measure measure, Side side) {
        return java.util.Objects.requireNonNull(
                java.util.Objects.requireNonNull(APART.get(side)).get(measure));
    }

    static Key<Set<Measure>> hard(Side side) {
        return java.util.Objects.requireNonNull(SOCKETS.get(side));
    }

    static Key<List<Double>> course(PoseLength.Course course) {
        return java.util.Objects.requireNonNull(COURSES.get(course));
    }

    static Key<Double> named(Variation variation) {
        return java.util.Objects.requireNonNull(VARIATIONS.get(variation));
    }

    static List<Key<?>> rows() {
        List<Key<?>> rows = new ArrayList<>(List.of(WEARER, NAME, FIGURE, AGE, SEATED, MEASURED_ON, MEASUREMENTS));
        for (Measure measure : Measure.values()) {
            rows.add(measure(measure));
            if (measure.ofLeg()) {
                APART.values().forEach(keys -> rows.add(keys.get(measure)));
            }
        }
        rows.add(FRONT_WAIST_HEIGHT);
        rows.add(BACK_WAIST_HEIGHT);
        rows.add(FIGURE_SHIFTS);
        rows.addAll(VARIATIONS.values());
        rows.add(HARD);
        rows.addAll(SOCKETS.values());
        rows.add(POSES);
        rows.addAll(COURSES.values());
        return rows;
    }

    /** The waist as measured apart in front or behind: as high as at the side, or near. */
    private static Key<List<Double>> waist(String term, Function<Stance, OptionalDouble> height) {
        return Key.of(
                        WAISTS + term,
                        new LengthsKind(
                                Measures.kind(Measure.WAIST_HEIGHT), 1, LengthsKind.MOST_READINGS, "lengths.none"),
                        Measures.example(Measure.WAIST_HEIGHT))
                .in(Lens.reading(
                        m -> Row.boxed(height.apply(m.measured().stance())).map(List::of)))
                .untold();
    }

    private static Key<Double> variation(Variation variation) {
        return Row.length(
                        "wearer.figure shifts." + variation.word(),
                        variation.least(),
                        variation.most(),
                        "why.variation",
                        "{10}")
                .worded("wearer.figure-shifts.one", variation.said())
                .in(Lens.reading(m ->
                        Optional.ofNullable(m.measured().stance().variations().get(variation))))
                .untold();
    }

    private static Key<List<Double>> taken(Measure measure) {
        Key<List<Double>> key = takenKey(measure);
        return measure == Measure.CROTCH_HEIGHT ? key.worn(new Worn<>(WearingKey.LEG_LENGTH, WearerKeys::longer)) : key;
    }

    /** Longer legs are longer measures. */
    private static Worn.Outcome longer(MakeFile make, double by) {
        return LongerLegs.of(make.measured(), by)
                .map(longer -> Worn.Outcome.of(make.with(longer)))
                .orElseGet(() -> Worn.Outcome.hindered(Tell.said("worn.legs"), Tell.said("worn.legs-instead")));
    }

    private static Key<List<Double>> takenKey(Measure measure) {
        return Key.of("wearer.measurements." + measure.term(), readings(measure), Measures.example(measure))
                .also(Measures.everyday(measure))
                .in(Lens.reading(m ->
                        Optional.ofNullable(m.measured().whole().get(measure)).map(Readings::mm)))
                .untold();
    }

    private static Key<List<Double>> apart(Measure measure, Side side) {
        return Key.of(
                        "wearer.measurements." + measure.term() + "." + side.word(),
                        readings(measure),
                        Measures.example(measure))
                .worded("wearer.side", Part.text(measure.term()), Part.text(side.word()))
                .needed()
                .in(Lens.reading(
                        m -> Optional.ofNullable(m.measured().side(side).get(measure))
                                .map(Readings::mm)))
                .untold();
    }

    private static LengthsKind readings(Measure measure) {
        return new LengthsKind(Measures.kind(measure), 1, LengthsKind.MOST_READINGS, "lengths.none");
    }

    private static Key<Set<Measure>> hardKey(Side side) {
        List<Measure> girths = java.util.Arrays.stream(Measure.values())
                .filter(Measure::roundLeg)
                .toList();
        return Key.of(
                        "wearer.hard." + side.word(),
                        new WordsKind<>(ChoiceKind.of(girths, Measure::term)),
                        "[calf girth]")
                .worded("wearer.hard.side", Part.text(side.word()))
                .in(Lens.reading(
                        m -> Optional.ofNullable(m.measured().hard().get(side)).filter(s -> !s.isEmpty())))
                .untold();
    }

    /** From top of thigh to shin on a small child, to ankle and ankle of a tall adult (common practice). */
    private static Key<List<Double>> pose(PoseLength.Course course) {
        return Key.of(
                        "wearer.pose lengths." + course.word(),
                        new LengthsKind(Row.lengthKind(100, 3000, "why.pose", 320, 1800), 2, 2, "pose.two"),
                        "[{700}, {780}]")
                .in(Lens.reading(m -> m.measured().poseLengths().stream()
                        .filter(l -> l.course() == course)
                        .map(l -> List.of(l.standing(), l.inPose()))
                        .findFirst()))
                .untold();
    }

    private static java.util.OptionalDouble years(String text) {
        return Quantities.number(text.replaceFirst("\\s*(years?|years old)$", ""));
    }
}
