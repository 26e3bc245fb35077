package stretchwright.web;

import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What the page says: a key of its sentences (stretchwright/web/words.properties) and what fills the gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("web", key, parts);
    }
}
