package stretchwright.web.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/** What the tape says of a make that is open. */
class OpenedTest {
    private static String kept(LocalDateTime then) {
        long at = then.atZone(ZoneId.systemDefault()).toInstant().toEpochMilli();
        Workroom.Stored demo = Demo.stored();
        String text = demo.version().text();
        Thing thing = demo.thing();
        Version version = new Version("1", 1, "Make", text, Links.NONE, Optional.empty(), "", at);
        Session session = Session.of(Make.read("make", text.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        return new Opened(new Workroom.Stored(thing, version), text, session, false).kept();
    }

    @Test
    void whatWasKeptOnAnotherDayIsToldWithItsDay() {
        LocalDateTime now = LocalDateTime.now(ZoneId.systemDefault());
        assertThat(kept(now)).matches("Kept, [0-9]{2}:[0-9]{2}");
        assertThat(kept(LocalDateTime.of(2024, 3, 5, 14, 2))).isEqualTo("Kept, 5 March 2024");
    }
}
