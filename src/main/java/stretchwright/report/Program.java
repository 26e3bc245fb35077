package stretchwright.report;

/** What this program is, for the report and for --version. */
public final class Program {
    /** The same as in pom.xml; a test compares them. */
    public static final String VERSION = "0.1.0";

    private Program() {}
}
