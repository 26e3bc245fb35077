package stretchwright.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * A hidden file beside an output folder that one run at a time has locked. The system unlocks it when the run ends,
 * however it ends, so a file that was left behind holds nobody up.
 */
final class FolderLock implements AutoCloseable {
    /** So often another run may take the file away between opening and locking it. */
    private static final int TRIES = 20;

    /** The system's locks are for whole programs; within this one the paths are counted. */
    private static final Set<Path> HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private FolderLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Empty where another run has it. */
    static Optional<FolderLock> take(Path file) throws IOException {
        if (!HERE.add(file)) {
            return Optional.empty();
        }
        Optional<FolderLock> taken = Optional.empty();
        try {
            for (int i = 0; i < TRIES && taken.isEmpty(); i++) {
                FileChannel channel = FileChannel.open(
                        file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                Object opened = key(file);
                if (!locked(channel)) {
                    channel.close();
                    return Optional.empty();
                }
                if (opened != null && Objects.equals(opened, key(file))) {
                    taken = Optional.of(new FolderLock(file, channel));
                } else {
                    channel.close(); // the run before took its file away meanwhile
                }
            }
            return taken;
        } finally {
            if (taken.isEmpty()) {
                HERE.remove(file);
            }
        }
    }

    /** On a disk that knows no locks nobody can be told to wait. */
    private static boolean locked(FileChannel channel) {
        try {
            return channel.tryLock() != null;
        } catch (IOException e) {
            return true;
        }
    }

    private static @Nullable Object key(Path file) throws IOException {
        try {
            BasicFileAttributes attributes =
                    Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return attributes.fileKey() == null ? file : attributes.fileKey();
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    @Override
    public void close() {
        try (channel) {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // it stays behind, unlocked
        } finally {
            HERE.remove(file);
        }
    }
}
