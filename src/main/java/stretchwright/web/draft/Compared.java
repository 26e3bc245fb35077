package stretchwright.web.draft;

import java.util.Optional;
import stretchwright.make.Session;
import stretchwright.web.draft.Spread.Sheet;
import stretchwright.web.frame.Opened;

/** A pattern beside the one before it, to look at on another screen: nothing of it can be moved. */
public final class Compared {
    private Compared() {}

    /** @param before how it was, in tacking */
    public static String drawing(Opened now, Session before, boolean wide) {
        Opened still = new Opened(now.stored(), now.text(), now.session(), true);
        return PatternDrawing.of(still, Optional.of(before), wide ? Sheet.WIDE : Sheet.NARROW);
    }
}
