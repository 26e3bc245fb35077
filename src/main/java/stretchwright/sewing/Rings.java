package stretchwright.sewing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Steps that wait for each other in a ring. */
final class Rings {
    private final Map<StepName, Step> steps = new LinkedHashMap<>();
    private final Set<StepName> done = new HashSet<>();

    private Rings(List<Step> all) {
        all.forEach(s -> steps.put(s.name(), s));
    }

    /** One ring, each step before the one that waits for it; empty where there is none. */
    static List<StepName> among(List<Step> all) {
        Rings rings = new Rings(all);
        for (Step step : all) {
            List<StepName> ring = rings.from(step, new ArrayList<>(), new HashMap<>());
            if (!ring.isEmpty()) {
                return ring;
            }
        }
        return List.of();
    }

    private List<StepName> from(Step step, List<StepName> path, Map<StepName, Integer> on) {
        Integer met = on.get(step.name());
        if (met != null) {
            List<StepName> ring = new ArrayList<>(path.subList(met, path.size()));
            java.util.Collections.reverse(ring);
            return ring;
        }
        if (!done.add(step.name())) {
            return List.of();
        }
        on.put(step.name(), path.size());
        path.add(step.name());
        for (Step next : steps.values()) {
            List<StepName> ring = step.after().contains(next.name()) ? from(next, path, on) : List.of();
            if (!ring.isEmpty()) {
                return ring;
            }
        }
        on.remove(step.name());
        path.remove(path.size() - 1);
        return List.of();
    }
}
