package stretchwright.web.sew;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stretchwright.sewing.SewingPlan;

/**
 * One screen of the sewing: a step of the plan, or before it the machine that it is the first one at.
 *
 * @param step its number in the plan
 */
public record Stop(int step, boolean setUp) {
    private static final String SET_UP = "-machine";

    /** All of a plan, in the order of work. */
    static List<Stop> of(SewingPlan plan) {
        Set<Integer> setUps = new HashSet<>(plan.setUps());
        List<Stop> all = new ArrayList<>();
        for (SewingPlan.Operation o : plan.operations()) {
            if (setUps.contains(o.step())) {
                all.add(new Stop(o.step(), true));
            }
            all.add(new Stop(o.step(), false));
        }
        return List.copyOf(all);
    }

    static boolean isSetUp(String key) {
        return key.endsWith(SET_UP);
    }

    /** As it stands in addresses: "6", "6-machine". */
    String key() {
        return step + (setUp ? SET_UP : "");
    }
}
