package stretchwright.intake;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stretchwright.fabric.Laplace;
import stretchwright.ground.Quantities;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;

/** Reads {@code style.hold}: a word, a share off every girth, or a section of pressures by level. */
final class HoldReader {
    private static final String KEY = "hold";
    private static final List<Level.Name> LEVELS = List.of(
            Level.Name.HIP,
            Level.Name.CROTCH,
            Level.Name.MID_THIGH,
            Level.Name.KNEE,
            Level.Name.CALF,
            Level.Name.ANKLE);
    private static final List<String> WORDS =
            LEVELS.stream().map(Level.Name::word).toList();

    private HoldReader() {}

    static Hold read(Section style) {
        if (style.isSection(KEY)) {
            return style.section(KEY, WORDS).flatMap(HoldReader::profile).orElse(Hold.Named.MEDIUM);
        }
        Optional<String> text = style.text(KEY);
        if (text.isEmpty()) {
            return Hold.Named.MEDIUM;
        }
        if (Quantities.share(text.get()).isPresent()) {
            OptionalDouble share = style.share(KEY, text.get(), Limits.FIXED_REDUCTION);
            return share.isPresent() ? new Hold.Fixed(share.getAsDouble()) : Hold.Named.MEDIUM;
        }
        Optional<Hold.Named> named = Arrays.stream(Hold.Named.values())
                .filter(h -> h.words().equals(text.get()))
                .findFirst();
        if (named.isEmpty()) {
            style.add(
                    KEY,
                    Echo.quoted(text.get()) + " is not a hold.",
                    "Choose light, medium or firm; or a share off every girth such as 10 %; or pressures by level, such as"
                            + " {calf: 8 mmHg, ankle: 10 mmHg}.");
        }
        return named.<Hold>map(h -> h).orElse(Hold.Named.MEDIUM);
    }

    /** What is to be added to or taken off the flat width, by level. */
    static Map<Level.Name, Double> ease(Section style) {
        Map<Level.Name, Double> out = new EnumMap<>(Level.Name.class);
        List<Level.Name> all =
                Stream.concat(Stream.of(Level.Name.WAIST), LEVELS.stream()).toList();
        Optional<Section> levels =
                style.section("ease", all.stream().map(Level.Name::word).toList());
        levels.ifPresent(s ->
                all.forEach(level -> s.signedLength(level.word(), Limits.EASE).ifPresent(mm -> out.put(level, mm))));
        return out;
    }

    private static Optional<Hold> profile(Section levels) {
        Map<Level.Name, Double> out = new EnumMap<>(Level.Name.class);
        for (Level.Name level : LEVELS) {
            OptionalDouble mmHg = levels.quantity(
                    level.word(),
                    Quantities::pressure,
                    "a pressure",
                    "Write it with its unit: 8 mmHg, or 1.1 kPa.",
                    Limits.PRESSURE,
                    "mmHg");
            mmHg.ifPresent(p -> out.put(level, Laplace.fromMmHg(p)));
        }
        if (out.isEmpty() && WORDS.stream().noneMatch(levels::has)) {
            levels.add(
                    "", "names no level.", "Give a pressure at one level or more: " + String.join(", ", WORDS) + ".");
        }
        return out.isEmpty() ? Optional.empty() : Optional.of(new Hold.Profile(out));
    }
}
