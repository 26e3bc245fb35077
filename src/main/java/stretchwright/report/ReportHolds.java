package stretchwright.report;

import stretchwright.fabric.Laplace;
import stretchwright.ground.Numbers;
import stretchwright.ground.Voice;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.WhichLeg;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** How the width at each level was found, in the report. */
final class ReportHolds {
    private ReportHolds() {}

    static void holds(ArrayNode out, Pattern pattern, Voice voice) {
        for (LevelHold hold : pattern.holds()) {
            ObjectNode one = out.addObject().put("level", hold.level().word());
            if (hold.leg() != WhichLeg.BOTH) {
                one.put("leg", hold.leg().word());
            }
            one.put("reduction", Numbers.share(hold.reduction()));
            hold.wanted()
                    .ifPresent(kPa -> one.put("wanted", Numbers.rounded(kPa, 3))
                            .put("wantedMmHg", Numbers.mm(Laplace.toMmHg(kPa))));
            one.put("bound", voice.say(hold.bound().said()));
        }
    }
}
