package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Whether a folder may be written or replaced, and why not. */
final class FolderCheck {
    /** Of a name, as most disks have it. */
    private static final int MOST_BYTES = 255;

    private FolderCheck() {}

    /**
     * What is wrong with it, if anything.
     *
     * @param longest the longest name that writing needs beside it
     */
    static Optional<String> wrongWith(Path target, Path longest) throws IOException {
        Path parent = target.getParent();
        if (parent == null) {
            return Optional.of("is the root of the file system.");
        }
        if (isTooLong(longest) || isTooLong(target)) {
            return Optional.of("has a name that is too long.");
        }
        if (Files.exists(target)) {
            return wrongWithExisting(target);
        }
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of("is a link that leads nowhere.");
        }
        for (Path above = parent; above != null; above = above.getParent()) {
            if (Files.isDirectory(above)) {
                return Files.isWritable(above)
                        ? Optional.empty()
                        : Optional.of("lies in a folder that may not be written.");
            }
            if (Files.exists(above, LinkOption.NOFOLLOW_LINKS)) {
                return Optional.of("lies inside " + above.getFileName() + ", which is a file.");
            }
        }
        return Optional.empty();
    }

    private static boolean isTooLong(Path path) {
        for (Path name : path) {
            if (name.toString().getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
                return true;
            }
        }
        return false;
    }

    private static Optional<String> wrongWithExisting(Path target) throws IOException {
        if (!Files.isDirectory(target)) {
            return Optional.of("is a file, not a folder.");
        }
        if (Path.of("").toRealPath().startsWith(target)) {
            return Optional.of("is the folder you are working in, or one above it.");
        }
        if (!Files.isWritable(target) || !Files.isWritable(target.resolveSibling("."))) {
            return Optional.of("may not be written.");
        }
        List<String> foreign = OwnFiles.foreignIn(target);
        if (foreign.isEmpty()) {
            return Optional.empty();
        }
        String some = String.join(", ", foreign.subList(0, Math.min(3, foreign.size())));
        return Optional.of(
                "holds what this program did not write (" + some + (foreign.size() > 3 ? ", ..." : "") + ").");
    }
}
