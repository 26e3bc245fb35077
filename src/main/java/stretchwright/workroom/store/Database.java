package stretchwright.workroom.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import stretchwright.ground.Part;

/**
 * A database that is open, of the version that this program knows.
 *
 * <p>In: its address. Out: work done in transactions. Promise: what {@link #write} returned from survives the end of the
 * program, however it ends; what it threw from changed nothing. A database that is newer, damaged, full or may not be
 * written is told as a finding and left as it is.
 */
public final class Database implements AutoCloseable {
    /** Of the newest migration. */
    static final int SCHEMA = 2;

    /** Connected as it is made: what cannot be reached is told without waiting. */
    private static final long AT_ONCE = 1;

    private static final long WHEN_USED = -1;

    private final Address at;
    private final Engine engine;
    private final HikariDataSource readingSource;
    private final HikariDataSource writingSource;
    private final Jdbi reading;
    private final Jdbi writing;

    private Database(Address at, Engine engine) {
        this.at = at;
        this.engine = engine;
        this.writingSource = pool(engine.writing(), "workroom-write", AT_ONCE);
        this.readingSource = pool(engine.reading(), "workroom-read", WHEN_USED);
        this.reading = Jdbi.create(readingSource);
        this.writing = Jdbi.create(writingSource);
    }

    private static HikariDataSource pool(HikariConfig config, String name, long connected) {
        config.setPoolName(name);
        config.setInitializationFailTimeout(connected);
        return new HikariDataSource(config);
    }

    /** What is done in one transaction. */
    public interface Work<T> {
        T of(Handle handle);
    }

    /** Opens it; a folder and a file are made where there is none. */
    public static Database open(Address at) {
        try {
            return at instanceof Address.Folder folder
                    ? Premises.opening(folder, () -> opened(at, new SqliteEngine(folder)))
                    : opened(at, new PostgresEngine((Address.Server) at));
        } catch (RuntimeException e) {
            throw Trouble.of(e, at);
        }
    }

    private static Database opened(Address at, Engine engine) {
        Database database = new Database(at, engine);
        try {
            database.bringUpToDate();
            if (engine.owes(database.writing)) {
                database.sweep();
            }
            return database;
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    public Address at() {
        return at;
    }

    /** Of the same moment, whatever is written meanwhile. */
    public <T> T read(Work<T> work) {
        try {
            return reading.inTransaction(h -> {
                engine.oneMoment(h);
                return work.of(h);
            });
        } catch (RuntimeException e) {
            throw Trouble.of(e, at);
        }
    }

    /** As a whole or not at all; nobody else writes meanwhile. Where it cannot be known which, the finding says so. */
    public <T> T write(Work<T> work) {
        AtomicBoolean ending = new AtomicBoolean();
        T result;
        try {
            result = writing.inTransaction(h -> {
                engine.alone(h);
                T done = work.of(h);
                ending.set(true);
                return done;
            });
        } catch (RuntimeException e) {
            throw ending.get() ? Trouble.atEnd(e, at) : Trouble.of(e, at);
        }
        engine.settle(writing);
        return result;
    }

    /** In a transaction that deletes for good, before {@link #sweep}: what is not swept then is when it is next opened. */
    public void owe(Handle handle) {
        engine.owe(handle);
    }

    /** What was deleted is gone from the disk too; where that cannot be done now it is tried again when next opened. */
    public void sweep() {
        try {
            engine.sweep(writing);
        } catch (JdbiException e) {
            // owed until then: see owesSweeping
        }
    }

    /** Whether traces of what was forgotten are still on the disk: somebody was reading, or the disk was full. */
    public boolean owesSweeping() {
        try {
            return engine.owes(writing);
        } catch (RuntimeException e) {
            throw Trouble.of(e, at);
        }
    }

    /** Reads all of it; a finding where it is damaged. */
    public void mustBeSound() {
        try {
            if (!engine.isSound(reading) || !read(Soundness::holds)) {
                throw Trouble.finding(at, Trouble.damaged());
            }
        } catch (RuntimeException e) {
            throw Trouble.of(e, at);
        }
    }

    /** For who brings tables of its own into the same database. */
    public DataSource source() {
        return writingSource;
    }

    private void bringUpToDate() {
        int found = version();
        if (found > SCHEMA) {
            throw Trouble.finding(
                    at,
                    new Trouble.Told(
                            Tell.said("store.newer", Part.count(found), Part.count(SCHEMA)),
                            Tell.said("store.newer-help")));
        }
        if (found < SCHEMA) {
            Migration.run(writingSource);
            engine.settle(writing);
        }
    }

    private int version() {
        try (Connection connection = writingSource.getConnection()) {
            return Migration.found(connection, at);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        readingSource.close();
        writingSource.close();
    }
}
