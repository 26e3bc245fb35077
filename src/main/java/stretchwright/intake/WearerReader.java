package stretchwright.intake;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
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
import stretchwright.ground.Findings;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;

/** Reads the wearer; each measure for itself. Whether they fit each other is asked of the body room. */
final class WearerReader {
    static final List<String> KEYS = List.of("name", "figure", "age", "seated", "measurements", "hard", "pose lengths");
    private static final List<String> TERMS =
            Arrays.stream(Measure.values()).map(Measure::term).toList();
    private static final List<String> SIDES =
            Arrays.stream(Side.values()).map(Side::word).toList();

    /** More readings of one measure than anybody takes (common practice: two or three). */
    private static final int MOST_READINGS = 10;

    /** The name is empty where none is given. */
    record Wearer(String name, Measured measured) {}

    private final Section section;
    private final Map<Measure, Readings> whole = new EnumMap<>(Measure.class);
    private final Map<Side, Map<Measure, Readings>> sides = new EnumMap<>(Side.class);

    private WearerReader(Section section) {
        this.section = section;
        for (Side side : Side.values()) {
            sides.put(side, new EnumMap<>(Measure.class));
        }
    }

    static Optional<Wearer> read(Section section, Findings findings) {
        Optional<Wearer> wearer = taken(section);
        // asked now, so that measures at odds are told together with everything else; the job asks again
        wearer.ifPresent(w -> {
            Findings about = new Findings("");
            Measuring.body(w.measured(), about);
            OwnUnit.findings(about.all(), section.unit().orElse(Unit.MM))
                    .forEach(f -> findings.add(f.key(), f.problem(), f.remedy()));
        });
        return wearer;
    }

    /** What was measured, not yet asked whether it goes together. */
    static Optional<Wearer> taken(Section section) {
        return new WearerReader(section).taken();
    }

    private Optional<Wearer> taken() {
        section.require("figure", "woman");
        section.require("measurements", "{hip girth: 96.1, waist girth: 74.2}");
        String name = section.name("name").orElse("");
        Optional<Figure> figure = section.choice("figure", List.of(Figure.values()), Figure::word);
        OptionalDouble age =
                section.quantity("age", Quantities::number, "a number", "Write the years: 31.", Limits.AGE, "years");
        boolean seated = section.yes("seated").orElse(false);
        section.section("measurements", TERMS).ifPresent(this::measurements);
        Map<Side, Set<Measure>> hard =
                section.section("hard", SIDES).map(this::hard).orElse(Map.of());
        Optional<Readings> crotch = Optional.ofNullable(whole.get(Measure.TOTAL_CROTCH_LENGTH));
        List<PoseLength> poses = section.section("pose lengths", PoseReader.KEYS)
                .map(s -> PoseReader.read(s, crotch.map(Readings::mean)))
                .orElse(List.of());
        if (figure.isEmpty() || (whole.isEmpty() && sides(Side.LEFT).isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(new Wearer(name, new Measured(figure.get(), age, seated, whole, sides, hard, poses)));
    }

    private Map<Measure, Readings> sides(Side side) {
        return sides.getOrDefault(side, Map.of());
    }

    private void measurements(Section given) {
        for (Measure measure : Measure.values()) {
            if (given.isSection(measure.term())) {
                bothSides(measure, given);
            } else {
                List<Double> mm = given.lengths(measure.term(), Limits.MEASUREMENT, MOST_READINGS);
                if (!mm.isEmpty()) {
                    whole.put(measure, new Readings(mm));
                }
            }
        }
        if (given.names().isEmpty()) {
            given.add("", "holds no measurement.", "Give at least one, such as hip girth: 96.1");
        }
    }

    private void bothSides(Measure measure, Section given) {
        if (!measure.ofLeg()) {
            given.add(measure.term(), "has no left and right.", "Give one value, or a list of readings.");
            return;
        }
        Section apart = given.section(measure.term(), SIDES).orElseThrow();
        Map<Side, Readings> taken = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            apart.require(side.word(), "57.0 (or give one value for both legs)");
            List<Double> mm = apart.lengths(side.word(), Limits.MEASUREMENT, MOST_READINGS);
            if (!mm.isEmpty()) {
                taken.put(side, new Readings(mm));
            }
        }
        if (taken.size() == Side.values().length) {
            taken.forEach((side, readings) -> sides.computeIfAbsent(side, s -> new EnumMap<>(Measure.class))
                    .put(measure, readings));
        }
    }

    private Map<Side, Set<Measure>> hard(Section given) {
        Map<Side, Set<Measure>> hard = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Set<Measure> girths = EnumSet.noneOf(Measure.class);
            for (String word : given.has(side.word()) ? given.texts(side.word(), "[calf girth]") : List.<String>of()) {
                Measure.of(word)
                        .filter(Measure::roundLeg)
                        .ifPresentOrElse(
                                girths::add,
                                () -> given.add(
                                        side.word(),
                                        Echo.quoted(word) + " is no girth of a leg.",
                                        "Known are: " + String.join(", ", girths()) + "."));
            }
            hard.put(side, girths);
        }
        return hard;
    }

    private static List<String> girths() {
        return Arrays.stream(Measure.values())
                .filter(Measure::roundLeg)
                .map(Measure::term)
                .toList();
    }
}
