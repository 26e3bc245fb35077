package stretchwright.workroom.store;

import com.zaxxer.hikari.HikariConfig;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** A PostgreSQL server that several instances of the program share. */
final class PostgresEngine implements Engine {
    private static final int CONNECTIONS = 4;

    /** Of the lock that all who write take; any number would do. */
    private static final long LOCK = 5_735_817_094_410_203L;

    private static final long PATIENCE_MILLIS = 10_000;

    /**
     * Nobody waits for ever: not for the lock, and the server takes the lock back from a program that fell silent (a machine
     * that was switched off holds its connection for hours otherwise).
     */
    private static final String BOUNDS = "SET lock_timeout = '10s'; SET idle_in_transaction_session_timeout = '60s'";

    private final Address.Server at;

    PostgresEngine(Address.Server at) {
        this.at = at;
    }

    @Override
    public HikariConfig reading() {
        return config();
    }

    @Override
    public HikariConfig writing() {
        return config();
    }

    private HikariConfig config() {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:postgresql://" + at.server());
        if (!at.user().isEmpty()) {
            config.setUsername(at.user());
        }
        if (!at.password().isEmpty()) {
            config.setPassword(at.password());
        }
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(0);
        config.setConnectionTimeout(PATIENCE_MILLIS);
        config.setConnectionInitSql(BOUNDS);
        Map.of(
                        "ApplicationName",
                        "stretchwright",
                        "connectTimeout",
                        "5",
                        "loginTimeout",
                        "10",
                        "socketTimeout",
                        "120",
                        "tcpKeepAlive",
                        "true")
                .forEach(config::addDataSourceProperty);
        return config;
    }

    @Override
    public void alone(Handle handle) {
        handle.createQuery("SELECT 1 FROM (SELECT pg_advisory_xact_lock(:lock)) AS taken")
                .bind("lock", LOCK)
                .mapTo(int.class)
                .one();
    }

    @Override
    public void oneMoment(Handle handle) {
        handle.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY");
    }

    @Override
    public void settle(Jdbi writing) {
        // a commit is on the disk when the server says so (synchronous_commit, on unless somebody turned it off)
    }

    @Override
    public void owe(Handle handle) {
        // the server sweeps by itself
    }

    @Override
    public boolean owes(Jdbi writing) {
        return false;
    }

    @Override
    public void sweep(Jdbi writing) {
        writing.useHandle(h -> h.execute("VACUUM thing, version, step, change, job, job_file, job_about"));
    }

    @Override
    public boolean isSound(Jdbi reading) {
        return true; // its pages are the server's own business
    }
}
