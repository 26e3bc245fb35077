package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Value;
import stretchwright.boot.Boot;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;

/** Whether the foot of this body fits into this boot: a boot smaller than what is inside it was measured wrongly. */
final class BootCheck {
    /**
     * The tape round a soft boot may sit a little tighter than round the foot, mm (common practice, no source:
     * docs/maths/draft.md, hems).
     */
    private static final double TAPE_ROOM = 10;

    private BootCheck() {}

    static boolean pass(Boot boot, Body body, Findings findings) {
        boolean heel = holds("boot.heel girth", boot.heelGirth(), Measure.HEEL_GIRTH, body, findings);
        boolean top = holds("boot.top girth", boot.topGirth(), Measure.ANKLE_GIRTH, body, findings);
        return heel && top;
    }

    private static boolean holds(String key, double girth, Measure inside, Body body, Findings findings) {
        Value value = body.value(inside);
        // two spreads: of an estimate one in forty lies farther off
        double room = TAPE_ROOM + (body.isGiven(inside) ? 0 : 2 * value.spread());
        if (girth >= value.mm() - room) {
            return true;
        }
        Part[] parts = {Part.length(girth), inside.said(), Part.length(value.mm())};
        findings.add(
                key,
                body.isGiven(inside) ? Tell.said("boot.small", parts) : Tell.said("boot.small-estimated", parts),
                Tell.said("boot.small-help"));
        return false;
    }
}
