package stretchwright.workroom;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Said;
import stretchwright.workroom.store.Address;

/**
 * Where the workroom is: where --workroom says, or else the environment's STRETCHWRIGHT_WORKROOM, or else where the system's
 * habits have what a program keeps (on Linux XDG_DATA_HOME or ~/.local/share; XDG Base Directory Specification 0.8).
 */
public final class Site {
    /** The setting that stands where no option does. */
    public static final String SETTING = "STRETCHWRIGHT_WORKROOM";

    /** PostgreSQL's own name for it (libpq). */
    private static final String PASSWORD = "PGPASSWORD";

    private static final Pattern SERVER =
            Pattern.compile("postgres(?:ql)?://(?:(?<user>[^:@/?#]+)(?::(?<password>[^@/?#]*))?@)?"
                    + "(?<host>[A-Za-z0-9.\\-]+|\\[[0-9A-Fa-f:.]+\\])(?<port>:[0-9]{1,5})?/(?<database>[A-Za-z0-9_\\-]+)"
                    + "(?<more>\\?[A-Za-z0-9_=&.\\-]*)?");

    private Site() {}

    /** Of this computer. */
    public static Address of(Optional<String> option) {
        return of(option, System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."));
    }

    static Address of(Optional<String> option, Map<String, String> environment, String system, String home) {
        return option.or(() -> Optional.ofNullable(environment.get(SETTING)).filter(s -> !s.isBlank()))
                .map(said -> said(said, environment))
                .orElseGet(() -> new Address.Folder(usual(environment, system, home)));
    }

    private static Address said(String said, Map<String, String> environment) {
        if (said.startsWith("postgres:") || said.startsWith("postgresql:")) {
            return server(said, environment);
        }
        try {
            Path path = Path.of(said);
            if (said.isBlank() || Files.isRegularFile(path)) {
                throw noFolder(said);
            }
            return new Address.Folder(path.toAbsolutePath().normalize());
        } catch (InvalidPathException e) {
            throw noFolder(said);
        }
    }

    private static Address server(String said, Map<String, String> environment) {
        Matcher m = SERVER.matcher(said);
        if (!m.matches()) {
            throw wrong(
                    Tell.said("site.no-server"),
                    Tell.said("site.server-help")); // not what was said: a password may be in it
        }
        String more = Optional.ofNullable(m.group("more")).orElse("");
        String port = Optional.ofNullable(m.group("port")).orElse(":5432");
        return new Address.Server(
                m.group("host") + port + "/" + m.group("database") + more,
                Optional.ofNullable(m.group("user")).orElse(""),
                Optional.ofNullable(m.group("password")).orElseGet(() -> environment.getOrDefault(PASSWORD, "")));
    }

    private static Path usual(Map<String, String> environment, String system, String home) {
        String name = "stretchwright";
        String of = system.toLowerCase(Locale.ROOT);
        if (of.startsWith("mac")) {
            return Path.of(home, "Library", "Application Support", name);
        }
        if (of.startsWith("windows")) {
            return Path.of(environment.getOrDefault("LOCALAPPDATA", home), name);
        }
        Path data = Optional.ofNullable(environment.get("XDG_DATA_HOME"))
                .filter(d -> !d.isBlank() && Path.of(d).isAbsolute())
                .map(Path::of)
                .orElse(Path.of(home, ".local", "share"));
        return data.resolve(name);
    }

    /** Whether something was ever stored there; of a server, and of a folder that may not be read, it is taken for granted. */
    public static boolean isThere(Address at) {
        return !(at instanceof Address.Folder folder) || !Files.notExists(folder.file());
    }

    /** Where backups go that no name was given: beside the workroom, or of a server in the usual folder. */
    public static Path backups(Address at) {
        Path folder = at instanceof Address.Folder own
                ? own.path()
                : usual(System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."));
        return folder.resolve("backups");
    }

    private static BadInput noFolder(String said) {
        return wrong(Tell.said("site.no-folder"), Tell.said("site.help", Tell.quoted(said)));
    }

    private static BadInput wrong(Said what, Said help) {
        Findings findings = new Findings("workroom");
        findings.add("--workroom", what, help);
        return new BadInput(findings.all());
    }
}
