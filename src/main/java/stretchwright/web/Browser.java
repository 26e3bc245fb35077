package stretchwright.web;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The system's own browser. Where there is none, or no screen, nothing happens: the address is told anyway. */
public final class Browser {
    private Browser() {}

    /** By the command that each system has for it; none of Java's windows are loaded for it. */
    static Optional<List<String>> command(String system, Map<String, String> environment, String address) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return Optional.of(List.of("rundll32", "url.dll,FileProtocolHandler", address));
        }
        if (name.startsWith("mac")) {
            return Optional.of(List.of("open", address));
        }
        boolean screen = !environment.getOrDefault("DISPLAY", "").isEmpty()
                || !environment.getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
        return screen ? Optional.of(List.of("xdg-open", address)) : Optional.empty();
    }

    /** Opens it, and waits for nothing. */
    public static void open(String address) {
        command(System.getProperty("os.name", ""), System.getenv(), address).ifPresent(Browser::start);
    }

    private static void start(List<String> command) {
        try {
            new ProcessBuilder(command)
                    .redirectOutput(Redirect.DISCARD)
                    .redirectError(Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            return; // no such command here
        }
    }
}
