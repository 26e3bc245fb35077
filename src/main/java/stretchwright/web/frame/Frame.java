package stretchwright.web.frame;

import java.util.List;
import java.util.Set;
import stretchwright.ground.Voice;

/**
 * What stands around a screen.
 *
 * @param title of the document
 * @param heading of the page
 * @param kind of screen, for its look
 * @param tabs on the tape, at the foot of a phone; may be none
 * @param kept what is told on the right
 */
public record Frame(String title, String heading, String kind, List<Tab> tabs, String kept) {
    /** Languages that are written from right to left (CLDR 45, characterOrder). */
    private static final Set<String> LEFTWARDS = Set.of("ar", "dv", "fa", "he", "ku", "ps", "sd", "ug", "ur", "yi");

    public Frame {
        tabs = List.copyOf(tabs);
    }

    /** @param here whether it is the one that is open */
    public record Tab(String address, String words, boolean here) {}

    /** Where a make can be looked at; none is ever locked. */
    public enum Stop {
        DRAFT(""),
        LAY("/lay"),
        PRINT("/print"),
        SEW("/sew"),
        WORN("/worn");

        private final String path;

        Stop(String path) {
            this.path = path;
        }

        private String words() {
            return say(
                    switch (this) {
                        case DRAFT -> "tab.draft";
                        case LAY -> "tab.lay";
                        case PRINT -> "tab.print";
                        case SEW -> "tab.sew";
                        case WORN -> "tab.worn";
                    });
        }
    }

    /** Of a screen of its own. */
    public static Frame plain(String kind, String heading) {
        return new Frame(heading, heading, kind, List.of(), "");
    }

    /** Around a screen of a make. */
    public static Frame of(Opened make, Stop here) {
        List<Tab> tabs = List.of(Stop.values()).stream()
                .map(s -> new Tab(make.address() + s.path, s.words(), s == here))
                .toList();
        return new Frame(
                here.words() + ": " + make.name(),
                make.name(),
                here.name().toLowerCase(java.util.Locale.ROOT),
                tabs,
                make.kept());
    }

    public String tag() {
        return Voice.tag();
    }

    public String direction() {
        return LEFTWARDS.contains(Voice.tag().replaceAll("-.*", "")) ? "rtl" : "ltr";
    }

    public String workroom() {
        return say("tab.workroom");
    }

    public String job() {
        return say("tab.job");
    }

    /** What is told where a change cannot be sent. */
    public String waits() {
        return say("kept.waits");
    }

    /** What is told where a search cannot be looked at. */
    public String away() {
        return say("kept.away");
    }

    public String skip() {
        return say("tab.skip");
    }

    private static String say(String key) {
        return Voice.plain().say(Tell.said(key));
    }
}
