package stretchwright.sewing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Said;

/**
 * A step before it has its place in the order.
 *
 * @param after the steps that must come before; those that this garment does not have are passed over
 */
record Step(
        StepName name,
        Place place,
        Optional<Tool> tool,
        String seam,
        List<Joined> joins,
        double length,
        Work work,
        Set<StepName> after,
        Said instruction,
        Said check) {
    /** ISO 4916: plies laid on each other and sewn near the edge. */
    static final String SUPERIMPOSED = "1.01";

    /** ISO 4916: edge turned once and sewn down. */
    static final String TURNED_HEM = "6.02";

    /** ISO 4916: one ply lapped over another and sewn down. */
    static final String LAPPED = "2.01";

    static Step sewn(
            StepName name,
            Tool tool,
            String seam,
            List<Joined> joins,
            double length,
            Work work,
            Set<StepName> after,
            Said instruction,
            Said check) {
        Place place = Place.of(tool.machine());
        return new Step(name, place, Optional.of(tool), seam, joins, length, work, after, instruction, check);
    }

    /** The same, one step more before it. */
    Step alsoAfter(StepName before) {
        Set<StepName> more = new LinkedHashSet<>(after);
        more.add(before);
        return new Step(name, place, tool, seam, joins, length, work, more, instruction, check);
    }

    static Step unsewn(
            StepName name,
            Place place,
            List<Joined> joins,
            double minutes,
            Set<StepName> after,
            Said instruction,
            Said check) {
        return new Step(name, place, Optional.empty(), "", joins, 0, Work.handling(minutes), after, instruction, check);
    }
}
