package stretchwright.sewing;

import stretchwright.ground.Part;
import stretchwright.pattern.Machine;

/** Where a step is done: at a machine, by hand, on the table, with the iron. */
public enum Place {
    OVERLOCKER(Machine.OVERLOCKER.word(), Tell.machine(Machine.OVERLOCKER)),
    COVERSTITCH(Machine.COVERSTITCH.word(), Tell.machine(Machine.COVERSTITCH)),
    COMBINED(Machine.COMBINED.word(), Tell.machine(Machine.COMBINED)),
    LOCKSTITCH(Machine.LOCKSTITCH.word(), Tell.machine(Machine.LOCKSTITCH)),
    HAND(Machine.HAND.word(), Tell.said("place.hand")),
    TABLE("table", Tell.said("place.table")),
    IRON("iron", Tell.said("place.iron"));

    private final String word;
    private final Part said;

    Place(String word, Part said) {
        this.word = word;
        this.said = said;
    }

    static Place of(Machine machine) {
        return switch (machine) {
            case OVERLOCKER -> OVERLOCKER;
            case COVERSTITCH -> COVERSTITCH;
            case COMBINED -> COMBINED;
            case LOCKSTITCH -> LOCKSTITCH;
            case HAND -> HAND;
        };
    }

    /** As the report and the make file have it, the same in every language. */
    public String word() {
        return word;
    }

    /** For people. */
    public Part said() {
        return said;
    }
}
