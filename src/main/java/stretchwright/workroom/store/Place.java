package stretchwright.workroom.store;

/** Where a thing is. The order is that of the numbers in the database. */
public enum Place {
    HERE,
    /** Deleted, and can be taken out again. */
    BIN,
    /** Undone before it was there: it comes back when that is done again. */
    NOT_YET;

    static Place of(int number) {
        return values()[number];
    }
}
