package stretchwright.workroom.store;

import java.nio.file.Path;

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
     * @param server "host:port/database"
     * @param user and password; empty where the server's own means know them
     */
    record Server(String server, String user, String password) implements Address {
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
