package stretchwright.web.draft;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.intake.Key;
import stretchwright.intake.Table;
import stretchwright.intake.TopKeys;
import stretchwright.pattern.Level;
import stretchwright.web.form.Form;

/** What can be moved at the drawing itself, with what it is in the make. */
enum Handle {
    HEM("style.shifts.hem", Way.DOWN),
    AT_HEM(Level.Name.HEM),
    FRONT_WAIST("style.front waist", Way.UP),
    BACK_WAIST("style.back waist", Way.UP),
    BAND("style.waistband.height", Way.UP),
    AT_WAIST(Level.Name.WAIST),
    AT_HIP(Level.Name.HIP),
    AT_CROTCH(Level.Name.CROTCH),
    AT_MID_THIGH(Level.Name.MID_THIGH),
    AT_KNEE(Level.Name.KNEE),
    AT_CALF(Level.Name.CALF),
    AT_ANKLE(Level.Name.ANKLE);

    /** Those of the widths between waist and hem, from the top down. */
    static final List<Handle> LEVELS = List.of(AT_WAIST, AT_HIP, AT_CROTCH, AT_MID_THIGH, AT_KNEE, AT_CALF, AT_ANKLE);

    /** Where more of it leads on the drawing. */
    enum Way {
        UP,
        DOWN,
        /** Away from the middle of the piece, on both sides. */
        OUT
    }

    /** One press, mm; in inches a quarter of one. */
    private static final double STEP = 5;

    private static final double STEP_IN = 6.35;

    /** Nearer than this, mm, two values are one. */
    private static final double SAME = 0.05;

    private final String key;
    private final Way way;
    private final Optional<Level.Name> level;

    Handle(String key, Way way) {
        this.key = key;
        this.way = way;
        this.level = Optional.empty();
    }

    Handle(Level.Name level) {
        this.key = "style.ease." + level.word();
        this.way = Way.OUT;
        this.level = Optional.of(level);
    }

    String key() {
        return key;
    }

    Way way() {
        return way;
    }

    /** Whose width it is; empty for heights and lengths. */
    Optional<Level.Name> level() {
        return level;
    }

    /** Its name within the page. */
    String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Handle> of(String key) {
        return Arrays.stream(values()).filter(h -> h.key.equals(key)).findFirst();
    }

    private Key<?> row() {
        return Table.keys().find(key).orElseThrow();
    }

    double least() {
        return row().range().least();
    }

    double most() {
        return row().range().most();
    }

    /** As it is where the make says nothing of it, mm. */
    double usual() {
        return this == BAND ? TopKeys.USUAL_BAND : 0;
    }

    Said label() {
        return switch (this) {
            case HEM -> Tell.said("handle.hem");
            case AT_HEM -> Tell.said("handle.hem-width");
            case FRONT_WAIST -> Tell.said("handle.front-waist");
            case BACK_WAIST -> Tell.said("handle.back-waist");
            case BAND -> Tell.said("handle.band");
            default -> level.orElseThrow().said();
        };
    }

    /** The same where it stands alone. */
    Said spoken() {
        return LEVELS.contains(this) ? Tell.said("handle.width-at", label()) : label();
    }

    /** What less of it does, in one word. */
    Said less() {
        return switch (this) {
            case HEM -> Tell.said("handle.shorter");
            case AT_HEM -> Tell.said("handle.narrower");
            case FRONT_WAIST, BACK_WAIST, BAND -> Tell.said("handle.lower");
            default -> Tell.said("handle.tighter");
        };
    }

    Said more() {
        return switch (this) {
            case HEM -> Tell.said("handle.longer");
            case AT_HEM -> Tell.said("handle.wider");
            case FRONT_WAIST, BACK_WAIST, BAND -> Tell.said("handle.higher");
            default -> Tell.said("handle.looser");
        };
    }

    /** In mm. */
    double value(Form form) {
        OptionalDouble mm =
                Quantities.length(form.value(key), Unit.of(form.value("unit")).orElse(Unit.CM));
        return mm.orElse(usual());
    }

    boolean isUsual(double mm) {
        return this != BAND && Math.abs(mm) < SAME;
    }

    /** How it stands, beside what is usual; at its limit, that it goes no further. */
    Said now(double mm) {
        if (isUsual(mm)) {
            return Tell.said("handle.as-usual");
        }
        Said told = this == BAND ? Tell.said("handle.high", Part.length(mm)) : moved(mm);
        return mm <= least() + SAME || mm >= most() - SAME ? Tell.said("handle.limit", told) : told;
    }

    /** What became of it: "waist in front 0.5 cm lower". */
    Said changed(double before, double after) {
        Said by = moved(after - before);
        return this == HEM ? by : Tell.said("handle.changed", label(), by);
    }

    /** By so much: "1.5 cm longer". */
    Said moved(double mm) {
        Part by = Part.length(Math.abs(mm));
        return Tell.said("handle.by", by, mm > 0 ? more() : less());
    }

    static double step(Unit unit) {
        return unit == Unit.IN ? STEP_IN : STEP;
    }

    /** As the make is to say it. */
    static String written(double mm) {
        return Math.round(mm * 100) / 100.0 + " mm";
    }
}
