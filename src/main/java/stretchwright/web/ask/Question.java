package stretchwright.web.ask;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.ground.Said;
import stretchwright.web.form.Form;

/** The first questions, in their order; those on the boot are asked only where the leg ends over one. */
enum Question {
    WHO(Tell.said("ask.who"), Tell.said("ask.who-how"), "wearer.name", "wearer.figure", "wearer.age", "style.leg"),
    STATURE(Measure.STATURE, Tell.said("ask.stature"), Tell.said("ask.stature-how")),
    WAIST(Measure.WAIST_GIRTH, Tell.said("ask.waist"), Tell.said("ask.waist-how")),
    SEAT(Measure.HIP_GIRTH, Tell.said("ask.seat"), Tell.said("ask.seat-how")),
    INNER_LEG(Measure.CROTCH_HEIGHT, Tell.said("ask.inner-leg"), Tell.said("ask.inner-leg-how")),
    THROUGH_THE_LEGS(Measure.TOTAL_CROTCH_LENGTH, Tell.said("ask.through"), Tell.said("ask.through-how")),
    CALF(Measure.CALF_GIRTH, Tell.said("ask.calf"), Tell.said("ask.calf-how")),
    CLOTH(Tell.said("ask.cloth"), Tell.said("ask.cloth-how"), "fabric.stretch across", "fabric.stretch along"),
    BOOT_TOP(Tell.said("ask.boot-top"), Tell.said("ask.boot-top-how"), "boot.top girth"),
    BOOT_HEEL(Tell.said("ask.boot-heel"), Tell.said("ask.boot-heel-how"), "boot.heel girth"),
    BOOT_HEM(Tell.said("ask.boot-hem"), Tell.said("ask.boot-hem-how"), "boot.hem girth"),
    ANKLE_TO_HEM(Tell.said("ask.ankle-to-hem"), Tell.said("ask.ankle-to-hem-how"), "boot.ankle to hem");

    private static final String OVER_BOOT = "over boot";

    private final Optional<Measure> measure;
    private final List<String> keys;
    private final Said title;
    private final Said how;

    Question(Said title, Said how, String... keys) {
        this.measure = Optional.empty();
        this.keys = List.of(keys);
        this.title = title;
        this.how = how;
    }

    Question(Measure measure, Said title, Said how) {
        this.measure = Optional.of(measure);
        this.keys = List.of("wearer.measurements." + measure.term());
        this.title = title;
        this.how = how;
    }

    /** Of the body. */
    Optional<Measure> measure() {
        return measure;
    }

    /** Under which its answer stands in the make. */
    List<String> keys() {
        return keys;
    }

    Said title() {
        return title;
    }

    Said how() {
        return how;
    }

    boolean isOfBoot() {
        return ordinal() > CLOTH.ordinal();
    }

    /** An estimate may stand in for a measure of the body; a boot is never guessed. */
    boolean maySkip() {
        return measure.isPresent();
    }

    int number() {
        return ordinal() + 1;
    }

    static Optional<Question> numbered(String typed) {
        return Arrays.stream(values())
                .filter(q -> Integer.toString(q.number()).equals(typed))
                .findFirst();
    }

    /** How many there are for these answers. */
    static int count(Form answers) {
        return answers.value("style.leg").equals(OVER_BOOT) ? values().length : CLOTH.number();
    }

    Optional<Question> next(Form answers) {
        return number() < count(answers) ? Optional.of(values()[number()]) : Optional.empty();
    }
}
