package stretchwright.web;

import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/** A page without a make: what is the matter, and what to do. */
public record PlainPage(Said heading, Said help) {
    public String title() {
        return Voice.plain().say(heading);
    }

    public String words() {
        return Voice.plain().say(help);
    }

    public String say(String key) {
        return Voice.plain().say(Tell.said(key));
    }
}
