package stretchwright.print;

import java.util.List;

/**
 * When the machine misbehaves: one change at a time, a scrap test after each.
 *
 * <p>Gathered from what makers report on public pages; where a row says so it is common practice without a source. The
 * starting numbers are starting steps, not limits.
 */
final class Troubles {
    /** @param common whether all of it is common practice, no source */
    record Row(String symptom, String first, String then, boolean common) {}

    static final String RULE =
            "Change one thing at a time. After each change sew 100 mm on a scrap of the same cloth, the same"
                    + " direction and number of layers, and pull it as hard as it will be pulled when worn.";

    static final String MARKED =
            "* is common practice, no source. Numbers are where to begin, not limits. Switch off and"
                    + " unplug before you touch needle, looper or knife; the machine's own handbook comes first.";

    private Troubles() {}

    static List<Row> rows() {
        return List.of(
                new Row(
                        "overlock seam waves",
                        "differential feed from 1 towards 1.5, a step at a time",
                        "too high gathers: a step back; 1 to 2 keeps flat, 0.7 to 1 is for puckers",
                        false),
                new Row(
                        "skipped stitches",
                        "a new stretch needle 75/11, 90/14 for heavy cloth",
                        "hold the cloth flat; turn by hand over thick crossings; a longer stitch over four layers",
                        false),
                new Row(
                        "coverstitch skips",
                        "the needle system that the machine asks for *",
                        "a thicker needle, 90/14",
                        false),
                new Row(
                        "left overlock thread breaks",
                        "it is often too loose: tighten one small step",
                        "a longer stitch",
                        false),
                new Row(
                        "seam gapes, threads show",
                        "needle threads tighter by a step",
                        "stitch length 2 to 2.5 mm",
                        true),
                new Row(
                        "ridge between two rows",
                        "lower thread (bobbin or looper) looser by a step *",
                        "sources disagree about the upper tension: one step either way, 100 mm each, compare; rows closer on"
                                + " light cloth",
                        false),
                new Row(
                        "holes or runs beside the seam",
                        "a new needle with ball or stretch point",
                        "change it every 8 to 10 hours of sewing",
                        false),
                new Row("edges curl", "starch on the wrong side, no steam", "again, up to three times", false),
                new Row(
                        "bulky where seams cross",
                        "turn the allowances opposite ways",
                        "stagger the seams by 10 mm",
                        true));
    }
}
