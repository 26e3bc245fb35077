package stretchwright.workroom.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
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

    private static final byte[] SQLITE_HEAD = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private final Address at;
    private final Engine engine;
    private final HikariDataSource readingSource;
    private final HikariDataSource writingSource;
    private final Jdbi reading;
    private final Jdbi writing;

    private Database(Address at, Engine engine) {
        this.at = at;
        this.engine = engine;
        this.readingSource = pool(engine.reading(), "workroom-read");
        this.writingSource = pool(engine.writing(), "workroom-write");
        this.reading = Jdbi.create(readingSource);
        this.writing = Jdbi.create(writingSource);
    }

    /** Connected when first used: who opens and asks nothing waits for nothing. */
    private static HikariDataSource pool(HikariConfig config, String name) {
        config.setPoolName(name);
        config.setInitializationFailTimeout(-1);
        return new HikariDataSource(config);
    }

    /** What is done in one transaction. */
    public interface Work<T> {
        T of(Handle handle);
    }

    /** Opens it; a folder and a file are made where there is none. */
    public static Database open(Address at) {
        Database database = new Database(at, engine(at));
        try {
            database.bringUpToDate();
            return database;
        } catch (RuntimeException e) {
            database.close();
            throw Trouble.of(e, at);
        }
    }

    private static Engine engine(Address at) {
        if (at instanceof Address.Folder folder) {
            prepare(folder);
            return new SqliteEngine(folder);
        }
        return new PostgresEngine((Address.Server) at);
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

    /** As a whole or not at all; nobody else writes meanwhile. */
    public <T> T write(Work<T> work) {
        try {
            T result = writing.inTransaction(h -> {
                engine.alone(h);
                return work.of(h);
            });
            engine.settle(writing);
            return result;
        } catch (RuntimeException e) {
            throw Trouble.of(e, at);
        }
    }

    /** What was deleted is gone from the disk too. */
    void sweep() {
        try {
            engine.sweep(writing);
        } catch (RuntimeException e) {
            throw Trouble.of(e, at);
        }
    }

    /** Reads all of it; a finding where it is damaged. */
    public void mustBeSound() {
        try {
            if (!engine.isSound(reading)) {
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
            Migration.run(writingSource, lockFile());
        }
    }

    /** 0 where nothing was ever stored. */
    private int version() {
        return writing.withHandle(h -> knows(h, Migration.HISTORY)
                ? h.createQuery("SELECT coalesce(max(CAST(version AS INTEGER)), 0) FROM " + Migration.HISTORY
                                + " WHERE success")
                        .mapTo(int.class)
                        .one()
                : 0);
    }

    private static boolean knows(Handle h, String table) {
        try (ResultSet found = h.getConnection().getMetaData().getTables(null, null, table, null)) {
            return found.next();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private Optional<Path> lockFile() {
        return at instanceof Address.Folder folder
                ? Optional.of(folder.path().resolve("workroom.lock"))
                : Optional.empty();
    }

    /** Its owner's alone, for it holds what people told of their bodies. */
    private static void prepare(Address.Folder folder) {
        try {
            Path path = folder.path();
            if (!Files.isDirectory(path)) {
                Files.createDirectories(path);
                if (posix(path)) {
                    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rwx------"));
                }
            }
            mustBeOurs(folder);
            if (!Files.exists(folder.file()) && posix(path)) {
                ownFile(folder.file());
            }
        } catch (IOException e) {
            throw Trouble.finding(
                    folder, new Trouble.Told(Tell.said("store.cannot-open"), Tell.said("store.cannot-open-help")));
        }
    }

    private static boolean posix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static void ownFile(Path file) throws IOException {
        try {
            Files.createFile(
                    file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        } catch (FileAlreadyExistsException e) {
            // another program was first; it is its owner's alone too
        }
    }

    private static void mustBeOurs(Address.Folder folder) throws IOException {
        if (!Files.exists(folder.file())) {
            return;
        }
        try (InputStream in = Files.newInputStream(folder.file())) {
            byte[] head = in.readNBytes(SQLITE_HEAD.length);
            if (head.length > 0 && !java.util.Arrays.equals(head, SQLITE_HEAD)) {
                throw Trouble.finding(folder, Trouble.damaged());
            }
        }
    }

    /** Runs while no other program brings the same file up to date. */
    static void locked(Path lock, Runnable work) {
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock held = channel.lock()) {
            work.run();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        readingSource.close();
        writingSource.close();
    }
}
