package stretchwright.workroom.store;

import com.zaxxer.hikari.HikariConfig;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * One SQLite file in WAL mode. A save is acknowledged when it is in the file itself and the log behind it is empty, so that
 * nothing hangs on the log's last page.
 */
final class SqliteEngine implements Engine {
    /** How long another program's transaction is waited for, ms. */
    private static final int PATIENCE = 5000;

    /** How often the log is tried to be emptied while somebody reads an older moment; each waits as long as above. */
    private static final int TRIES = 2;

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
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + at.file());
        config.setMinimumIdle(0);
        Map.of(
                        "journal_mode", "WAL",
                        "synchronous", "FULL",
                        "foreign_keys", "true",
                        "secure_delete", "true",
                        "busy_timeout", Integer.toString(PATIENCE),
                        "transaction_mode", transactions)
                .forEach(config::addDataSourceProperty);
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
        for (int i = 0; i < TRIES && !emptied(writing); i++) {
            // a reader still needs the log; the save stands in it, and it is on the disk (synchronous=FULL)
        }
    }

    private static boolean emptied(Jdbi writing) {
        return writing.withHandle(h -> h.createQuery("PRAGMA wal_checkpoint(TRUNCATE)")
                .map((row, context) -> row.getInt(1) == 0)
                .one());
    }

    @Override
    public void sweep(Jdbi writing) {
        writing.useHandle(h -> h.execute("VACUUM"));
        settle(writing);
    }

    @Override
    public boolean isSound(Jdbi reading) {
        List<String> said = reading.withHandle(
                h -> h.createQuery("PRAGMA quick_check(1)").mapTo(String.class).list());
        return said.equals(List.of("ok"));
    }
}
