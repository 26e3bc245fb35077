package stretchwright.web.door;

import java.util.regex.Pattern;

/** What somebody asked for before joining, so that a phone comes back to its step of the sewing. */
public final class Wanted {
    /** Field of the form and of the address. */
    public static final String NAME = "to";

    private static final String START = "/";

    /** An address of this page: nothing that a browser could take for one elsewhere. */
    private static final Pattern OURS = Pattern.compile("(/[A-Za-z0-9._-]{1,80}){1,8}");

    private Wanted() {}

    static String behindJoin(String path) {
        String wanted = of(path);
        return wanted.equals(START) ? "/join" : "/join?" + NAME + "=" + wanted;
    }

    /** The same where it can be one of ours, else the start. */
    public static String of(String path) {
        return OURS.matcher(path).matches() && !path.contains("/.") ? path : START;
    }
}
