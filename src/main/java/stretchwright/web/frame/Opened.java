package stretchwright.web.frame;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.make.Session;
import stretchwright.workroom.Workroom;

/**
 * A make that is looked at: the version that stands, and what became of it; or what becomes of another text that is tried.
 *
 * @param text of what is shown
 * @param demo whether it is the one that comes with the program: it can be tried, and is nobody's
 */
public record Opened(Workroom.Stored stored, String text, Session session, boolean demo) {
    private static final String CLOCK = "HH:mm";
    private static final String DAY = "d LLLL uuuu";

    public String id() {
        return stored.thing().id();
    }

    public String address() {
        return "/makes/" + id();
    }

    public String name() {
        return stored.version().name();
    }

    /** Which version was seen: what is changed follows it. */
    public long seen() {
        return stored.version().number();
    }

    public Voice voice() {
        return Voice.of(session.make().unit());
    }

    /** When it was last kept, on another day the day. */
    String kept() {
        ZonedDateTime then = Instant.ofEpochMilli(stored.version().at()).atZone(ZoneId.systemDefault());
        boolean today = then.toLocalDate().equals(LocalDate.now(then.getZone()));
        String at = DateTimeFormatter.ofPattern(today ? CLOCK : DAY, Locale.forLanguageTag(Voice.tag()))
                .format(then);
        return demo ? voice().say(Tell.said("kept.demo")) : voice().say(Tell.said("kept.at", Part.text(at)));
    }

    /** The same, as it would be with another text. */
    Opened with(String other, Session became) {
        return new Opened(stored, other, became, demo);
    }
}
