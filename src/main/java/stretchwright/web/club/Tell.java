package stretchwright.web.club;

import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What this room tells: keys of web/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("web", key, parts);
    }
}
