package stretchwright.workroom.store;

import com.zaxxer.hikari.HikariConfig;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/**
 * One SQLite file in WAL mode. A save is acknowledged when it is in the file itself and the log behind it is empty, so that
 * nothing hangs on the log's last page. Where somebody reads an older moment the log stays; then its last page is one that
 * says nothing new.
 */
final class SqliteEngine implements Engine {
    /** How long another program's transaction is waited for, ms. */
    private static final int PATIENCE = 5000;

    /** How long somebody who reads an older moment is waited for, ms: others cannot save meanwhile. */
    private static final int SHORT = 100;

    /** How long a thread of this program waits for its turn, and for a file that cannot be opened, ms. */
    private static final int TURN = 10_000;

    /** The file's mark ("Swwr"), by which programs tell what it is. */
    private static final int MARK = 0x53777772;

    private static final int READERS = 4;

    private final Address.Folder at;

    SqliteEngine(Address.Folder at) {
        this.at = at;
    }

    @Override
    public HikariConfig reading() {
        HikariConfig config = config("DEFERRED");
        config.setMaximumPoolSize(READERS);
        return config;
    }

    @Override
    public HikariConfig writing() {
        HikariConfig config = config("IMMEDIATE");
        config.setMaximumPoolSize(1);
        return config;
    }

    private HikariConfig config(String transactions) {
        Properties settings = new Properties();
        settings.putAll(Map.of(
                "journal_mode", "WAL",
                "synchronous", "FULL",
                "foreign_keys", "true",
                "secure_delete", "true",
                "busy_timeout", Integer.toString(PATIENCE),
                "transaction_mode", transactions));
        HikariConfig config = new HikariConfig();
        config.setDataSource(new SqliteFile(at, settings, PATIENCE));
        config.setMinimumIdle(0);
        config.setConnectionTimeout(TURN);
        return config;
    }

    @Override
    public void alone(Handle handle) {
        // its transactions are IMMEDIATE: the lock is taken as they begin
    }

    /** A deferred transaction sees the moment of its first read. */
    @Override
    public void oneMoment(Handle handle) {
        handle.createQuery("SELECT count(*) FROM sqlite_master")
                .mapTo(long.class)
                .one();
    }

    @Override
    public void settle(Jdbi writing) {
        emptied(writing);
    }

    /** Whether nothing is left in the log. What was committed stands in it, and on the disk, where this cannot be done. */
    private static boolean emptied(Jdbi writing) {
        try {
            return writing.withHandle(h -> {
                wait(h, SHORT);
                try {
                    // one page more: the log's newest page is never the end of a save, also while it is carried over;
                    // it need not reach the disk by itself, for carrying over begins with that
                    h.execute("PRAGMA synchronous = NORMAL");
                    h.execute("PRAGMA application_id = " + MARK);
                    return carried(h);
                } finally {
                    h.execute("PRAGMA synchronous = FULL");
                    wait(h, PATIENCE);
                }
            });
        } catch (JdbiException | IllegalStateException e) {
            return false;
        }
    }

    private static boolean carried(Handle h) {
        return h.createQuery("PRAGMA wal_checkpoint(TRUNCATE)")
                .map((row, context) -> row.getInt(1) == 0)
                .one();
    }

    private static void wait(Handle h, int millis) {
        try {
            SqliteFile.waitLong(h.getConnection(), millis);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void owe(Handle handle) {
        handle.execute("PRAGMA user_version = 1");
    }

    @Override
    public boolean owes(Jdbi writing) {
        return writing.withHandle(
                h -> h.createQuery("PRAGMA user_version").mapTo(int.class).one() != 0);
    }

    @Override
    public void sweep(Jdbi writing) {
        writing.useHandle(h -> h.execute("VACUUM"));
        if (emptied(writing)) {
            writing.useHandle(h -> h.execute("PRAGMA user_version = 0"));
            settle(writing);
        }
    }

    @Override
    public boolean isSound(Jdbi reading) {
        List<String> said = reading.withHandle(h ->
                h.createQuery("PRAGMA integrity_check(1)").mapTo(String.class).list());
        return said.equals(List.of("ok"));
    }
}
