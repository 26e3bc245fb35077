package stretchwright.cli;

/** Exit codes, as docs/formats.md names them. */
final class Exit {
    static final int DONE = 0;
    /** A fault of the program. */
    static final int FAULT = 1;
    /** The input is wrong, or what was asked for cannot be written. */
    static final int INPUT = 2;
    /** The input is right, but the garment cannot work as asked. */
    static final int CANNOT_WORK = 3;
    /** Stopped by Ctrl-C, as shells count it. */
    static final int INTERRUPTED = 130;

    private Exit() {}
}
