package stretchwright.intake;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import stretchwright.ground.Quantities;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Style;

/** How the pieces are to be laid: one word, or a section with the word and more. */
public final class LayReader {
    private static final String KEY = "lay";
    private static final List<String> KEYS = List.of("way", "scissor gap", "grain tolerance", "match print at");

    private LayReader() {}

    static LayTerms read(Section style) {
        if (!style.isSection(KEY)) {
            return LayTerms.of(way(style, KEY));
        }
        Section s = style.section(KEY, KEYS).orElseThrow();
        return new LayTerms(
                way(s, "way"),
                s.length("scissor gap", Limits.SCISSOR_GAP).orElse(0),
                s.quantity(
                                "grain tolerance",
                                LayReader::degrees,
                                "an angle",
                                "Write it in degrees, for example 1.",
                                Limits.GRAIN_TOLERANCE,
                                "degrees")
                        .orElse(0),
                s.name("match print at").filter(n -> !n.isEmpty()));
    }

    private static Style.LayWay way(Section s, String key) {
        return s.choice(key, List.of(Style.LayWay.values()), LayReader::word).orElse(Style.LayWay.ANY);
    }

    /** As written in the make file: "part folded". */
    public static String word(Style.LayWay way) {
        return way.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static OptionalDouble degrees(String text) {
        return Quantities.number(text.replaceFirst("\\s*(degrees?|°)$", ""));
    }
}
