package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which command opens the browser; none is run here. */
class BrowserTest {
    private static final String AT = "http://127.0.0.1:8000/";

    @Test
    void eachSystemHasItsOwnCommand() {
        assertThat(Browser.command("Mac OS X", Map.of(), AT)).contains(List.of("open", AT));
        assertThat(Browser.command("Windows 11", Map.of(), AT).orElseThrow()).endsWith(AT);
        assertThat(Browser.command("Linux", Map.of("DISPLAY", ":0"), AT)).contains(List.of("xdg-open", AT));
        assertThat(Browser.command("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0"), AT))
                .isPresent();
    }

    @Test
    void withoutAScreenThereIsNone() {
        assertThat(Browser.command("Linux", Map.of(), AT)).isEmpty();
        assertThat(Browser.command("FreeBSD", Map.of("DISPLAY", ""), AT)).isEmpty();
    }
}
