package stretchwright.make;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Findings;
import stretchwright.ground.Quantities;

/** Reads the wearer; each measure for itself. Whether they fit each other is asked of the body room. */
final class WearerReader {
    static final List<String> KEYS = List.of("name", "figure", "age", "measurements");
    private static final List<String> TERMS =
            Arrays.stream(Measure.values()).map(Measure::term).toList();

    /** The name is empty where none is given. */
    record Wearer(String name, Figure figure, OptionalDouble age, Map<Measure, Double> given) {}

    private WearerReader() {}

    static Optional<Wearer> read(Section section, Findings findings, Stages stages) {
        section.require("figure", "woman");
        section.require("measurements", "{hip girth: 96.1, waist girth: 74.2}");
        String name = section.name("name").orElse("");
        Optional<Figure> figure = section.choice("figure", List.of(Figure.values()), Figure::word);
        OptionalDouble age =
                section.quantity("age", Quantities::number, "a number", "Write the years: 31.", Limits.AGE, "years");
        Map<Measure, Double> given = section.section("measurements", TERMS)
                .map(WearerReader::measurements)
                .orElse(Map.of());
        if (figure.isEmpty() || given.isEmpty()) {
            return Optional.empty();
        }
        // asked now, so that measures at odds are told together with everything else; the job asks again
        stages.body(figure.get(), age, given, findings);
        return Optional.of(new Wearer(name, figure.get(), age, given));
    }

    private static Map<Measure, Double> measurements(Section section) {
        Map<Measure, Double> given = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            OptionalDouble mm = section.length(measure.term(), Limits.MEASUREMENT);
            if (mm.isPresent()) {
                given.put(measure, mm.getAsDouble());
            }
        }
        if (section.names().isEmpty()) {
            section.add("", "holds no measurement.", "Give at least one, such as hip girth: 96.1");
        }
        return given;
    }
}
