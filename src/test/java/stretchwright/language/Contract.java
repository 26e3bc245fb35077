package stretchwright.language;

import java.util.Set;

/** What reports hold for programs, in the words of the make file: the same in every language. */
final class Contract {
    /** Keys whose values are names, terms or words of the contract. */
    private static final Set<String> KEYS = Set.of(
            // what the maker wrote
            "name",
            "wearer",
            "file",
            "fabric",
            "cloth",
            "garments",
            "instance",
            "item",
            "id",
            "note",
            "date",
            // terms of the make file
            "figure",
            "unit",
            "machines",
            "machine",
            "method",
            "symptom",
            "answer",
            "leg",
            "key",
            "column",
            "term",
            "rise",
            "hem",
            "lay",
            "hold",
            "back",
            "band",
            "gusset",
            "shape",
            "dressing",
            "kind",
            "way",
            "paper",
            // pieces and what is at them
            "piece",
            "pieces",
            "edge",
            "edges",
            "seam",
            "seams",
            "level",
            "cut",
            "mark",
            "at",
            "from",
            "to",
            "onlyInA",
            "onlyInB",
            "join",
            "joins",
            // words of the report
            "role",
            "origin",
            "bound",
            "region",
            "direction",
            "pose",
            "opening",
            "verdict",
            "status",
            "severity",
            "severityA",
            "severityB",
            "hand",
            "printedSide",
            "top",
            "step",
            "steps",
            "stitch",
            "stitchName",
            "position",
            "measure",
            "place",
            "outcome",
            "who",
            "case",
            "forcedBy",
            "version",
            "dimension",
            "format");

    /** Names that are told after all: what goes into a rule. */
    private static final Set<String> TOLD = Set.of("inputs.name");

    /** Names inside of some lists only: the edges that meet at a corner. */
    private static final Set<String> INSIDE = Set.of("corners.before", "corners.after");

    private Contract() {}

    /** Whether a value is for programs. */
    static boolean holds(String inside, String key) {
        return INSIDE.contains(inside + "." + key) || KEYS.contains(key) && !TOLD.contains(inside + "." + key);
    }
}
