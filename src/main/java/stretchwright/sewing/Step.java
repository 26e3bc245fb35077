package stretchwright.sewing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A step before it has its place in the order.
 *
 * @param place "table" or "iron" where nothing is sewn, else the machine's word
 * @param after names of the steps that must come before; names of steps this garment does not have are passed over
 */
record Step(
        String name,
        String place,
        Optional<Tool> tool,
        String seam,
        List<String> joins,
        double length,
        Work work,
        Set<String> after,
        String instruction,
        String check) {
    /** ISO 4916: plies laid on each other and sewn near the edge. */
    static final String SUPERIMPOSED = "1.01";

    /** ISO 4916: edge turned once and sewn down. */
    static final String TURNED_HEM = "6.02";

    /** ISO 4916: one ply lapped over another and sewn down. */
    static final String LAPPED = "2.01";

    static Step sewn(
            String name,
            Tool tool,
            String seam,
            List<String> joins,
            double length,
            Work work,
            Set<String> after,
            String instruction,
            String check) {
        return new Step(
                name, tool.machine().word(), Optional.of(tool), seam, joins, length, work, after, instruction, check);
    }

    /** The same, one step more before it. */
    Step alsoAfter(String before) {
        Set<String> more = new LinkedHashSet<>(after);
        more.add(before);
        return new Step(name, place, tool, seam, joins, length, work, more, instruction, check);
    }

    static Step unsewn(
            String name,
            String place,
            List<String> joins,
            double minutes,
            Set<String> after,
            String instruction,
            String check) {
        return new Step(name, place, Optional.empty(), "", joins, 0, Work.handling(minutes), after, instruction, check);
    }
}
