package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Opened;

/**
 * One line of what can be changed.
 *
 * @param now how it stands
 */
public record Control(String label, String now, List<Press> presses) {
    public Control {
        presses = List.copyOf(presses);
    }

    /**
     * A button: this value under that key.
     *
     * @param chosen whether it stands so already
     */
    public record Press(String key, String value, String words, boolean chosen) {}

    static List<Control> of(Opened make) {
        Form form = Form.of(make.text());
        List<Control> out = new ArrayList<>();
        for (Handle handle : Handle.values()) {
            if (handle != Handle.BAND || !form.value("style.waistband.shape").equals("casing")) {
                out.add(moved(make, form, handle));
            }
        }
        out.add(hold(make, form));
        for (Addition addition : Addition.values()) {
            out.add(added(make, form, addition));
        }
        return out;
    }

    private static Control added(Opened make, Form form, Addition addition) {
        Press press = new Press(DraftScreen.DO, addition.word(), make.voice().say(addition.press(form)), false);
        return new Control(make.voice().say(addition.label()), make.voice().say(addition.now(form)), List.of(press));
    }

    private static Control moved(Opened make, Form form, Handle handle) {
        double now = handle.value(form);
        double step = Handle.step(make.session().make().unit() == Unit.IN ? Unit.IN : Unit.MM);
        List<Press> presses = new ArrayList<>();
        press(make, handle, now - step, handle.less()).ifPresent(presses::add);
        press(make, handle, now + step, handle.more()).ifPresent(presses::add);
        return new Control(make.voice().say(handle.label()), make.voice().say(handle.now(now)), presses);
    }

    /** At its limit nothing more can be pressed. */
    private static Optional<Press> press(Opened make, Handle handle, double mm, Said words) {
        return mm < handle.least() - 0.01 || mm > handle.most() + 0.01
                ? Optional.empty()
                : Optional.of(
                        new Press(handle.key(), Handle.written(mm), make.voice().say(words), false));
    }

    private static Control hold(Opened make, Form form) {
        String now = form.value("style.hold").isBlank() ? "medium" : form.value("style.hold");
        List<Press> presses = List.of(
                hold(make, "light", Tell.said("hold.light"), now),
                hold(make, "medium", Tell.said("hold.medium"), now),
                hold(make, "firm", Tell.said("hold.firm"), now));
        return new Control(make.voice().say(Tell.said("handle.hold")), "", presses);
    }

    private static Press hold(Opened make, String value, Said words, String now) {
        return new Press("style.hold", value, make.voice().say(words), value.equals(now));
    }
}
