package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stretchwright.fabric.Learnt;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;

/** Rows of what a worn pair taught, apart for cloth, wearer and friction; who takes a section out has the usual values again. */
public final class LearntKeys {
    public static final Key<Boolean> LEARNT = Row.section("learnt", "{friction: {skin: 0.45}}");

    private static final Map<Learnt.Of, Key<Boolean>> SECTIONS = new EnumMap<>(Learnt.Of.class);
    private static final Map<Learnt.What, Key<Double>> ROWS = new EnumMap<>(Learnt.What.class);

    static {
        SECTIONS.put(Learnt.Of.CLOTH, Row.section("learnt.cloth", "{pull across: 115 %}"));
        SECTIONS.put(Learnt.Of.WEARER, Row.section("learnt.wearer", "{knee along: 28 %}"));
        SECTIONS.put(Learnt.Of.FRICTION, Row.section("learnt.friction", "{skin: 0.45}"));
        for (Learnt.What what : Learnt.What.values()) {
            ROWS.put(what, row(what));
        }
    }

    private LearntKeys() {}

    static List<Key<?>> rows() {
        List<Key<?>> rows = new ArrayList<>(List.of(LEARNT));
        SECTIONS.forEach((of, section) -> {
            rows.add(section);
            ROWS.forEach((what, row) -> {
                if (what.of() == of) {
                    rows.add(row);
                }
            });
        });
        return rows;
    }

    static Learnt read(Given given) {
        Map<Learnt.What, Double> values = new EnumMap<>(Learnt.What.class);
        ROWS.forEach((what, row) -> given.get(row).ifPresent(v -> values.put(what, v)));
        return new Learnt(values);
    }

    /** As it stands in a make file. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Key<Double> row(Learnt.What what) {
        String path = "learnt." + word(what.of()) + "." + word(what);
        Range range = new Range(what.least(), what.most(), "why.learnt");
        return switch (what.unit()) {
            case SHARE -> Key.of(path, new ShareKind(range), "25 %");
            case NUMBER ->
                Key.of(path, new QuantityKind(Quantities::number, range, "", "number.is-not", "number.write"), "1.2");
            case LENGTH -> Row.signed(path, range, 0, 200, "{5}");
        };
    }

    /** The section as it stands in a make file, line by line. */
    public static List<String> lines(Learnt learnt) {
        List<String> out = new ArrayList<>(List.of(LEARNT.name() + ":"));
        SECTIONS.forEach((of, section) -> {
            List<String> inside = new ArrayList<>();
            learnt.values().forEach((what, value) -> {
                if (what.of() == of) {
                    inside.add(word(what) + ": " + written(what, value));
                }
            });
            if (!inside.isEmpty()) {
                out.add("  " + section.name() + ": {" + String.join(", ", inside) + "}");
            }
        });
        return out;
    }

    private static String written(Learnt.What what, double value) {
        return switch (what.unit()) {
            case SHARE -> Numbers.plain(Math.round(1000 * value) / 10.0) + " %";
            case NUMBER -> Numbers.plain(value);
            case LENGTH -> Numbers.plain(Math.round(value)) + " mm";
        };
    }

    /** What it is called, and its value. */
    public static Part told(Learnt.What what, double value) {
        Key<Double> row = Optional.ofNullable(ROWS.get(what)).orElseThrow();
        return Tell.said("learnt.told", row.label(), Part.text(written(what, value)));
    }
}
