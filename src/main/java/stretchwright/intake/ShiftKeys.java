package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;

/**
 * Rows of what the maker moves by hand. Centre front and centre back have rows of their own: style.front waist and style.back
 * waist.
 */
public final class ShiftKeys {
    static final Key<Boolean> SHIFTS = Row.section("style.shifts", "{back crotch point: {5}}");

    private static final Map<Shift, Key<Double>> ROWS = new EnumMap<>(Shift.class);

    static {
        for (Shift shift : Shift.values()) {
            if (shift != Shift.FRONT_WAIST && shift != Shift.BACK_WAIST) {
                ROWS.put(shift, row(shift));
            }
        }
    }

    private ShiftKeys() {}

    static List<Key<?>> rows() {
        List<Key<?>> rows = new ArrayList<>();
        rows.add(SHIFTS);
        rows.addAll(ROWS.values());
        return rows;
    }

    public static Key<Double> of(Shift shift) {
        return Objects.requireNonNull(ROWS.get(shift), shift.word());
    }

    static Shifts read(Given given) {
        Shifts out = Shifts.NONE;
        for (Map.Entry<Shift, Key<Double>> row : ROWS.entrySet()) {
            Optional<Double> mm = given.get(row.getValue());
            out = mm.isPresent() ? out.with(row.getKey(), mm.get()) : out;
        }
        return out;
    }

    private static String words(Shift shift) {
        return switch (shift.way()) {
            case UP -> "style.shifts.up";
            case DOWN -> "style.shifts.down";
            case OUT -> "style.shifts.out";
        };
    }

    private static Key<Double> row(Shift shift) {
        Range range = new Range(shift.least(), shift.most(), "why.shift");
        Key<Double> key = Row.signed("style.shifts." + shift.word(), range, 2, 50, "{5}")
                .worded(words(shift), shift.said())
                .in(Row.ofStyle(
                        s -> Optional.ofNullable(s.shifts().by().get(shift)),
                        (s, mm) -> s.with(s.shifts().with(shift, mm))))
                .echoed("shifts." + shift.word());
        return switch (shift) {
            case FRONT_CROTCH_POINT -> Row.worn(key, WearingKey.FRONT_CROTCH_POINT);
            case BACK_CROTCH_POINT -> Row.worn(key, WearingKey.BACK_CROTCH_POINT);
            default -> key;
        };
    }
}
