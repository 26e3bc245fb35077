package stretchwright.web.join;

import java.util.List;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.web.frame.Frame;

/**
 * How a phone comes to this page.
 *
 * @param state of whoever looks
 * @param to what was asked for before joining
 * @param wrong with what was typed; empty for nothing
 * @param addresses that another machine finds the page at, most likely first
 */
public record JoinPage(Frame frame, State state, String to, String wrong, List<String> addresses) {
    public JoinPage {
        addresses = List.copyOf(addresses);
    }

    /** Whether the page is shared, and with whoever looks. */
    public enum State {
        ALONE,
        ASKING,
        JOINED
    }

    static JoinPage alone() {
        return new JoinPage(around(), State.ALONE, "/", "", List.of());
    }

    static JoinPage asking(String to, String wrong) {
        return new JoinPage(around(), State.ASKING, to, wrong, List.of());
    }

    static JoinPage joined(List<String> addresses) {
        return new JoinPage(around(), State.JOINED, "/", "", addresses);
    }

    private static Frame around() {
        return Frame.plain("join", say(Tell.said("join.heading")));
    }

    public boolean isAlone() {
        return state == State.ALONE;
    }

    public boolean isAsking() {
        return state == State.ASKING;
    }

    public boolean isReached() {
        return !addresses.isEmpty();
    }

    public String address() {
        return addresses.get(0);
    }

    /** Those beside the first. */
    public List<String> others() {
        return addresses.subList(1, addresses.size());
    }

    /** The address alone: a code that is photographed lets nobody in. */
    public String code() {
        return QrDrawing.of(address(), say("join.code"));
    }

    public String say(String key) {
        return say(Tell.said(key));
    }

    static String say(Said said) {
        return Voice.plain().say(said);
    }
}
