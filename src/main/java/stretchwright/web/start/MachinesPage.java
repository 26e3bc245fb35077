package stretchwright.web.start;

import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.web.ask.TakenOver;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;

/**
 * The machines and the paper, as they stand in the make that was changed last: the next one takes them over.
 *
 * @param of name of that make; empty where there is none
 * @param change where they are changed
 */
public record MachinesPage(Frame frame, String of, String machines, String paper, String change) {
    static MachinesPage of(Bench bench) {
        Frame frame = Frame.plain("machines", words("start.machines"));
        return TakenOver.of(bench)
                .map(last -> new MachinesPage(
                        frame,
                        last.from().name(),
                        last.told(TakenOver.MACHINES),
                        last.told(TakenOver.PAPER),
                        "/makes/" + last.from().id() + "/all"))
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
