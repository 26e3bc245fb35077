package stretchwright.web.start;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/**
 * The machines and the paper, as they stand in the make that was changed last: the next one takes them over.
 *
 * @param of name of that make; empty where there is none
 * @param change where they are changed
 */
public record MachinesPage(Frame frame, String of, String machines, String paper, String change) {
    static MachinesPage of(Bench bench) {
        Frame frame = Frame.plain("machines", words("start.machines"));
        Optional<Thing> last = bench.room().store().list(Kind.MAKE, Place.HERE, "", 0, 1).stream()
                .findFirst();
        return last.map(make -> {
                    Form form = Form.of(bench.room().standing(make).text());
                    return new MachinesPage(
                            frame,
                            make.name(),
                            String.join(", ", form.typed().getOrDefault("machines", List.of())),
                            form.value("print.paper"),
                            "/makes/" + make.id() + "/all");
                })
                .orElseGet(() -> new MachinesPage(frame, "", "", "", "/new/1"));
    }

    public boolean isEmpty() {
        return of.isEmpty();
    }

    public String stands() {
        return Voice.plain().say(Tell.said("machines.stands", Part.text(of)));
    }

    public String told(String value) {
        return value.isBlank() ? words("machines.usual") : value;
    }

    public String say(String key) {
        return words(key);
    }

    private static String words(String key) {
        return Voice.plain().say(Tell.said(key));
    }
}
