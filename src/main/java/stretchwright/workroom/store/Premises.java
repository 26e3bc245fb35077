package stretchwright.workroom.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/** The folder that a workroom's file is in: made where there is none, and nobody's but its owner's. */
final class Premises {
    private static final byte[] HEAD = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private static final String LOCK = "workroom.lock";

    /** How long another that opens the same file is waited for, ms. */
    private static final long PATIENCE = 20_000;

    private static final long PAUSE = 20;

    /** A lock on a file holds between programs, not inside one: there each file has another. */
    private static final ConcurrentMap<Path, ReentrantLock> HERE = new ConcurrentHashMap<>();

    private Premises() {}

    /** Does it while nobody else opens the same file, or brings it up to date. */
    static <T> T opening(Address.Folder folder, Supplier<T> work) {
        ReentrantLock here = HERE.computeIfAbsent(folder.path().toAbsolutePath().normalize(), p -> new ReentrantLock());
        try {
            if (!here.tryLock(PATIENCE, TimeUnit.MILLISECONDS)) {
                throw Trouble.finding(folder, Trouble.busy());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw Trouble.finding(folder, Trouble.busy());
        }
        try {
            prepare(folder);
            return locked(folder, work);
        } catch (IOException e) {
            throw Trouble.finding(folder, Trouble.ofDisk(e));
        } finally {
            here.unlock();
        }
    }

    private static <T> T locked(Address.Folder folder, Supplier<T> work) throws IOException {
        try (FileChannel channel = FileChannel.open(
                        folder.path().resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock held = lock(channel, folder)) {
            make(folder.file());
            mustBeOurs(folder);
            return work.get();
        }
    }

    private static FileLock lock(FileChannel channel, Address.Folder folder) throws IOException {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE);
        while (System.nanoTime() < until) {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return lock;
            }
            try {
                Thread.sleep(PAUSE);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        throw Trouble.finding(folder, Trouble.busy());
    }

    /** Its owner's alone, for it holds what people told of their bodies. */
    private static void prepare(Address.Folder folder) throws IOException {
        Path path = folder.path();
        if (!Files.isDirectory(path)) {
            Files.createDirectories(path);
            ownersAlone(path, "rwx------");
        }
    }

    /** In a folder that others may read it is still its owner's; the log beside it takes after it. */
    private static void make(Path file) throws IOException {
        if (!Files.exists(file)) {
            Files.createFile(file);
            ownersAlone(file, "rw-------");
        }
    }

    private static void ownersAlone(Path path, String may) throws IOException {
        if (path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(may));
        }
    }

    /** Looked at before anything is set in it: what belongs to another program stays as it is. */
    private static void mustBeOurs(Address.Folder folder) throws IOException {
        if (Files.size(folder.file()) == 0) {
            return;
        }
        try (InputStream in = Files.newInputStream(folder.file())) {
            if (!Arrays.equals(in.readNBytes(HEAD.length), HEAD)) {
                throw Trouble.finding(folder, Trouble.damaged());
            }
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.file())) {
            Migration.found(connection, folder);
        } catch (SQLException e) {
            throw Trouble.of(new IllegalStateException(e), folder);
        }
    }
}
