package stretchwright.web.draw;

import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What drawings say: a key of web/draw/words.properties and what fills the gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("web.draw", key, parts);
    }
}
