package stretchwright.web;

import stretchwright.ground.Part;
import stretchwright.ground.Voice;

/**
 * What somebody sees whose make is not done yet.
 *
 * @param before how many makes come before it; 0 where it is worked at
 */
public record WaitingPage(String name, int before) {
    public String words() {
        return Voice.plain()
                .say(before == 0 ? Tell.said("waiting.now") : Tell.said("waiting.before", Part.count(before)));
    }

    public String say(String key) {
        return Voice.plain().say(Tell.said(key));
    }
}
