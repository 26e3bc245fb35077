package stretchwright.web.draft;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.intake.Key;
import stretchwright.intake.Table;
import stretchwright.web.form.Form;

/** What can be moved at the drawing itself, with what it is in the make. */
enum Handle {
    HEM("style.shifts.hem", 0, false),
    FRONT_WAIST("style.front waist", 0, true),
    BACK_WAIST("style.back waist", 0, true),
    BAND("style.waistband.height", 60, true);

    /** One press, mm; in inches a quarter of one. */
    private static final double STEP = 5;

    private static final double STEP_IN = 6.35;

    private final String key;
    private final double usual;
    private final boolean upwards;

    /** @param upwards whether more of it moves the line up the drawing */
    Handle(String key, double usual, boolean upwards) {
        this.key = key;
        this.usual = usual;
        this.upwards = upwards;
    }

    String key() {
        return key;
    }

    boolean upwards() {
        return upwards;
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

    Said label() {
        return switch (this) {
            case HEM -> Tell.said("handle.hem");
            case FRONT_WAIST -> Tell.said("handle.front-waist");
            case BACK_WAIST -> Tell.said("handle.back-waist");
            case BAND -> Tell.said("handle.band");
        };
    }

    /** What less of it does, in one word. */
    Said less() {
        return this == HEM ? Tell.said("handle.shorter") : Tell.said("handle.lower");
    }

    Said more() {
        return this == HEM ? Tell.said("handle.longer") : Tell.said("handle.higher");
    }

    /** In mm. */
    double value(Form form) {
        OptionalDouble mm =
                Quantities.length(form.value(key), Unit.of(form.value("unit")).orElse(Unit.CM));
        return mm.orElse(usual);
    }

    /** How it stands, beside what is usual. */
    Said now(double mm) {
        if (this == BAND) {
            return Tell.said("handle.high", Part.length(mm));
        }
        if (Math.abs(mm) < 0.05) {
            return Tell.said("handle.as-usual");
        }
        return moved(mm);
    }

    /** What became of it: "waist in front 0.5 cm lower". */
    Said changed(double before, double after) {
        Said by = this == BAND
                ? after > before
                        ? Tell.said("handle.by-higher", Part.length(after - before))
                        : Tell.said("handle.by-lower", Part.length(before - after))
                : moved(after - before);
        return this == HEM ? by : Tell.said("handle.changed", label(), by);
    }

    /** By so much: "1.5 cm longer". */
    Said moved(double mm) {
        Part by = Part.length(Math.abs(mm));
        if (this == HEM) {
            return mm > 0 ? Tell.said("handle.by-longer", by) : Tell.said("handle.by-shorter", by);
        }
        return mm > 0 ? Tell.said("handle.by-higher", by) : Tell.said("handle.by-lower", by);
    }

    static double step(Unit unit) {
        return unit == Unit.IN ? STEP_IN : STEP;
    }

    /** As the make is to say it. */
    static String written(double mm) {
        return Math.round(mm * 100) / 100.0 + " mm";
    }

    double within(double mm) {
        return Math.max(least(), Math.min(most(), mm));
    }
}
