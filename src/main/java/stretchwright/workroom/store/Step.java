package stretchwright.workroom.store;

/**
 * Something a maker did, as one: undone and done again as one.
 *
 * @param number in the order they were done; the clock has no say in it
 * @param what a short word for it: "save", "bin", "cut", "import"
 * @param about the name of the thing it was about
 */
public record Step(long number, long at, String what, String about, State state) {
    public enum State {
        DONE,
        UNDONE,
        /** Undone, and something else was done since: it cannot be done again. */
        LEFT
    }
}
