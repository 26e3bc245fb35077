package stretchwright.workroom.store;

/** What became of a save. */
public sealed interface Saved {
    /** It stands now. */
    record Stored(Thing thing) implements Saved {}

    /**
     * Somebody else had saved in between. Both are kept: theirs stands, yours is a version beside it.
     *
     * @param base what the editor had begun from
     */
    record Clash(Version base, Version theirs, Version yours) implements Saved {}
}
