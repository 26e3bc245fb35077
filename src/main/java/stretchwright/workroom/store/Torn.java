package stretchwright.workroom.store;

/** A row that no program of ours has written so: the database is damaged. */
final class Torn extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Torn(String what) {
        super(what);
    }
}
