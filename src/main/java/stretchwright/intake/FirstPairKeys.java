package stretchwright.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of what is read of the first finished pair, worn, in a squat. */
public final class FirstPairKeys {
    public static final Key<Boolean> FIRST_PAIR = Row.section("first pair", "{centre back: {61}}");

    public static final Key<List<Double>> CENTRE_BACK = marks("centre back", "{61}");
    public static final Key<List<Double>> KNEE_ALONG = marks("knee along", "[{64}, {65}]");
    public static final Key<List<Double>> KNEE_ACROSS = marks("knee across", "{58}");
    public static final Key<List<Double>> THIGH_ALONG = marks("thigh along", "{55}");
    public static final Key<List<Double>> BACK_DROP = edge("back drop", "{40}");
    public static final Key<List<Double>> HEM_RISE = edge("hem rise", "{8}");

    static final Key<Boolean> BAND = Row.section("first pair.band over rods", "{length: {118}}");

    public static final Key<List<Double>> BAND_LENGTH = Key.of(
                    "first pair.band over rods.length", readings(80, 300, "why.band-marks", 100, 250), "{118}")
            .needed();

    /** mm; of the finished band. */
    public static final Key<Double> BAND_HEIGHT =
            Row.length("first pair.band over rods.height", 10, 250, "why.band-height", 20, 150, "{65}");

    private FirstPairKeys() {}

    static List<Key<?>> rows() {
        return List.of(
                FIRST_PAIR,
                CENTRE_BACK,
                KNEE_ALONG,
                KNEE_ACROSS,
                BACK_DROP,
                THIGH_ALONG,
                BAND,
                BAND_LENGTH,
                BAND_HEIGHT,
                HEM_RISE);
    }

    /** A file with the marks of another one: its section, or all of it where it is nothing but that section. */
    public static Tree.Keys with(Tree.Keys make, Tree.Keys marks) {
        Map<String, Tree> entries = new LinkedHashMap<>(make.entries());
        Tree own = marks.entries().get(FIRST_PAIR.name());
        entries.put(FIRST_PAIR.name(), own == null ? marks : own);
        return new Tree.Keys(entries, make.line());
    }

    private static LengthsKind readings(double least, double most, String why, double from, double to) {
        return new LengthsKind(Row.lengthKind(least, most, why, from, to), 1, LengthsKind.MOST_READINGS, "fold.three");
    }

    private static Key<List<Double>> marks(String name, String example) {
        return Key.of("first pair." + name, readings(30, 150, "why.marks", 40, 120), example);
    }

    private static Key<List<Double>> edge(String name, String example) {
        return Key.of("first pair." + name, readings(0, 300, "why.edge", 0, 200), example);
    }
}
