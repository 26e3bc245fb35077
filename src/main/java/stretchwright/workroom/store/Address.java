package stretchwright.workroom.store;

import java.nio.file.Path;
import java.util.regex.Pattern;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;

/** Where a database is. */
public sealed interface Address {
    /** As it is told to people; without a password. */
    String told();

    /** A folder with one SQLite file in it. */
    record Folder(Path path) implements Address {
        public static final String FILE = "workroom.db";

        public Path file() {
            return path.resolve(FILE);
        }

        @Override
        public String told() {
            return path.toString();
        }
    }

    /**
     * A PostgreSQL database.
     *
     * @param server "host:port/database", and behind it settings such as "?sslmode=require"
     * @param user and password; empty where the server's own means know them
     */
    record Server(String server, String user, String password) implements Address {
        /** Neither a password, which would be told, nor settings of the driver but for how the line is kept secret. */
        private static final Pattern PLAIN = Pattern.compile("(\\[[0-9a-fA-F:.]+]|[\\w.-]+)(:\\d{1,5})?/[\\w.-]+"
                + "(\\?ssl[a-z]*=[\\w./-]+(&ssl[a-z]*=[\\w./-]+)*)?");

        public Server {
            if (!PLAIN.matcher(server).matches()) {
                Findings findings = new Findings("postgresql");
                findings.add("--workroom", Tell.said("store.address"), Tell.said("store.address-help"));
                throw new BadInput(findings.all());
            }
        }

        @Override
        public String told() {
            return "postgresql://" + server;
        }

        @Override
        public String toString() {
            return told();
        }
    }
}
