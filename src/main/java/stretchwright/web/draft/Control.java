package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.pattern.Level;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Opened;

/**
 * One line of what can be changed.
 *
 * @param id its name within the page
 * @param now how it stands
 * @param typed where it can be typed too; empty where it is chosen from a few
 */
public record Control(String id, String label, String now, List<Press> presses, Optional<Typed> typed) {
    public Control {
        presses = List.copyOf(presses);
    }

    /**
     * A button: this value under that key.
     *
     * @param chosen whether it stands so already
     */
    public record Press(String id, String key, String value, String words, boolean chosen) {}

    /**
     * A field.
     *
     * @param spoken what it is, where it stands alone
     * @param value in the make's unit; or what was typed, where that was refused
     * @param finding what is the matter with what was typed; empty for nothing
     */
    public record Typed(String key, String value, String unit, String spoken, String finding) {}

    /** The lines of a make. */
    static final class Lines {
        private final Opened make;
        private final Form form;
        private final Refused refused;

        Lines(Opened make, Refused refused) {
            this.make = make;
            this.form = Form.of(make.text());
            this.refused = refused;
        }

        /** Length, waist, band, hold. */
        List<Control> first() {
            List<Control> out = new ArrayList<>();
            out.add(moved(Handle.HEM));
            if (has(Level.Name.HEM)) {
                out.add(moved(Handle.AT_HEM));
            }
            out.add(moved(Handle.FRONT_WAIST));
            out.add(moved(Handle.BACK_WAIST));
            if (!form.value("style.waistband.shape").equals("casing")) {
                out.add(moved(Handle.BAND));
            }
            out.add(hold());
            for (Addition addition : Addition.values()) {
                out.add(added(addition));
            }
            return out;
        }

        private Control added(Addition addition) {
            Press press = new Press(addition.id(), DraftScreen.DO, addition.word(), say(addition.press(form)), false);
            return new Control(
                    addition.id(), say(addition.label()), say(addition.now(form)), List.of(press), Optional.empty());
        }

        /** Widths at the levels that the garment has, and at those where one was asked for. */
        List<Control> levels() {
            return Handle.LEVELS.stream()
                    .filter(h -> has(h.level().orElseThrow()) || !h.isUsual(h.value(form)))
                    .map(this::moved)
                    .toList();
        }

        private boolean has(Level.Name level) {
            return make.session().pattern().levels().stream().anyMatch(l -> l.name() == level);
        }

        private Control moved(Handle handle) {
            double now = handle.value(form);
            double step = Handle.step(make.session().make().unit() == Unit.IN ? Unit.IN : Unit.MM);
            List<Press> presses = new ArrayList<>();
            press(handle, now - step, "less", handle.less()).ifPresent(presses::add);
            press(handle, now + step, "more", handle.more()).ifPresent(presses::add);
            return new Control(
                    handle.id(), say(handle.label()), say(handle.now(now)), presses, Optional.of(typed(handle)));
        }

        private Typed typed(Handle handle) {
            return new Typed(
                    handle.key(),
                    refused.typed(handle).orElseGet(() -> shown(make, form, handle)),
                    make.session().make().unit().symbol(),
                    say(spoken(handle)),
                    refused.finding(handle, make.voice()));
        }

        private Said spoken(Handle handle) {
            Said unit = make.session().make().unit().said();
            return handle == Handle.BAND
                    ? Tell.said("handle.typed-band", handle.spoken(), unit)
                    : Tell.said("handle.typed", handle.spoken(), unit, handle.less());
        }

        /** At its limit nothing more can be pressed. */
        private Optional<Press> press(Handle handle, double mm, String way, Said words) {
            return mm < handle.least() - 0.01 || mm > handle.most() + 0.01
                    ? Optional.empty()
                    : Optional.of(
                            new Press(handle.id() + "-" + way, handle.key(), Handle.written(mm), say(words), false));
        }

        private Control hold() {
            String now = form.value("style.hold").isBlank() ? "medium" : form.value("style.hold");
            List<Press> presses = List.of(
                    hold("light", Tell.said("hold.light"), now),
                    hold("medium", Tell.said("hold.medium"), now),
                    hold("firm", Tell.said("hold.firm"), now));
            return new Control("hold", say(Tell.said("handle.hold")), "", presses, Optional.empty());
        }

        private Press hold(String value, Said words, String now) {
            return new Press("hold-" + value, "style.hold", value, say(words), value.equals(now));
        }

        private String say(Said said) {
            return make.voice().say(said);
        }
    }

    /** What the field of a handle says of a make, without the unit. */
    static String shown(Opened make, Form form, Handle handle) {
        double mm = handle.value(form);
        return make.voice().bare(Part.written(mm));
    }
}
