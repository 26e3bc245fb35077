package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import stretchwright.fabric.Laplace;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Style;
import tools.jackson.databind.node.DecimalNode;
import tools.jackson.databind.node.StringNode;

/** Rows of the hold, and of what is added to the width at a level. */
public final class HoldKeys {
    /** Those at which an ease can be asked for, from the top down; at the waist it is the band's, at the hem the finished edge's. */
    static final List<Level.Name> EASED = List.of(
            Level.Name.WAIST,
            Level.Name.HIP,
            Level.Name.CROTCH,
            Level.Name.MID_THIGH,
            Level.Name.KNEE,
            Level.Name.CALF,
            Level.Name.ANKLE,
            Level.Name.HEM);

    /** Those at which a pressure can. */
    static final List<Level.Name> LEVELS = List.of(
            Level.Name.HIP,
            Level.Name.CROTCH,
            Level.Name.MID_THIGH,
            Level.Name.KNEE,
            Level.Name.CALF,
            Level.Name.ANKLE);

    /** Handbooks take up to 20 % off (trade values 2.1); a third off is half as wide again as anything worn. */
    public static final Key<Hold> HOLD = Key.of(
                    "style.hold",
                    new EitherKind<Hold, Double>(
                            ChoiceKind.<Hold>of(List.of(Hold.Named.values()), Hold::words)
                                    .also(Hold.Named.LIGHT, "soft", "gentle")
                                    .also(Hold.Named.MEDIUM, "normal")
                                    .also(Hold.Named.FIRM, "strong"),
                            new ShareKind(new Range(0, 0.35, "why.hold")),
                            Hold.Fixed::new,
                            hold -> hold instanceof Hold.Fixed fixed ? Optional.of(fixed.across()) : Optional.empty(),
                            Optional.of("hold.is-not"),
                            Optional.of("hold.write")),
                    "medium")
            .usually(Hold.Named.MEDIUM)
            .also("compression")
            .in(Row.ofStyle(s -> Optional.of(s.hold()).filter(h -> !(h instanceof Hold.Profile)), Style::with))
            .echoed(Echoed.as(
                    "hold", m -> Optional.of(StringNode.valueOf(m.style().hold().words()))));

    private static final Map<Level.Name, Key<Double>> PRESSURES = new EnumMap<>(Level.Name.class);
    private static final Map<Level.Name, Key<Double>> EASES = new EnumMap<>(Level.Name.class);

    /** Signed, mm on the flat width; makers let out 10 to 20 mm after wearing (makers' troubles 1.1). */
    public static final Range EASE_RANGE = new Range(-40, 60, "why.ease");

    static final Key<Boolean> EASE = Row.section("style.ease", "{mid-thigh: {10}}");

    static {
        for (Level.Name level : LEVELS) {
            PRESSURES.put(level, pressure(level));
        }
        for (Level.Name level : EASED) {
            EASES.put(level, easeKey(level));
        }
    }

    private HoldKeys() {}

    static Key<Double> hold(Level.Name level) {
        return Objects.requireNonNull(PRESSURES.get(level));
    }

    static Key<Double> ease(Level.Name level) {
        return Objects.requireNonNull(EASES.get(level));
    }

    static List<Key<?>> rows() {
        List<Key<?>> rows = new ArrayList<>();
        rows.add(HOLD);
        rows.addAll(PRESSURES.values());
        rows.add(EASE);
        rows.addAll(EASES.values());
        return rows;
    }

    /** mmHg; the comfort limits of the program are stricter (trade values 2.3). */
    private static Key<Double> pressure(Level.Name level) {
        QuantityKind kind = new QuantityKind(
                        Quantities::pressure,
                        new Range(0.5, 60, "why.pressure"),
                        "mmHg",
                        "pressure.is-not",
                        "pressure.write")
                .only("[0-9]\\s*([mM][mM][hH][gG]|[kK][pP][aA])\\s*$");
        return Key.of("style.hold." + level.word(), kind, "8 mmHg")
                .worded("style.hold.level", Part.text(level.word()))
                .in(Row.ofStyle(s -> kilopascals(s, level).map(Laplace::toMmHg), (s, mmHg) -> s))
                .echoed(Echoed.as(
                        "holds." + level.word(),
                        m -> kilopascals(m.style(), level).map(kPa -> DecimalNode.valueOf(Numbers.rounded(kPa, 3)))));
    }

    private static Optional<Double> kilopascals(Style style, Level.Name level) {
        return style.hold() instanceof Hold.Profile own
                ? Optional.ofNullable(own.kilopascals().get(level))
                : Optional.empty();
    }

    private static Key<Double> easeKey(Level.Name level) {
        Key<Double> key = Row.signed("style.ease." + level.word(), EASE_RANGE, 2, 50, "{10}")
                .worded("style.ease.level", Part.text(level.word()))
                .in(Row.ofStyle(s -> Optional.ofNullable(s.ease().get(level)), (s, mm) -> eased(s, level, mm)))
                .echoed("ease." + level.word());
        return worn(level).map(w -> Row.worn(key, w)).orElse(key);
    }

    private static Style eased(Style style, Level.Name level, double mm) {
        Map<Level.Name, Double> ease = new EnumMap<>(Level.Name.class);
        ease.putAll(style.ease());
        ease.put(level, mm);
        return style.withEase(ease);
    }

    private static Optional<WearingKey> worn(Level.Name level) {
        return switch (level) {
            case WAIST -> Optional.of(WearingKey.WAIST);
            case HIP -> Optional.of(WearingKey.HIP);
            case CROTCH -> Optional.of(WearingKey.CROTCH);
            case KNEE -> Optional.of(WearingKey.KNEE);
            case CALF -> Optional.of(WearingKey.CALF);
            case MID_THIGH, ANKLE, BOOT_TOP, HEM -> Optional.empty();
        };
    }
}
