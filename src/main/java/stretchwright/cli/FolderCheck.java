package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Whether a folder may be written or replaced, and why not. */
final class FolderCheck {
    /** Of a name, as most disks have it. */
    private static final int MOST_BYTES = 255;

    /** Of what others wrote, so many are named. */
    private static final int NAMED = 3;

    private FolderCheck() {}

    /**
     * What is wrong with it, if anything.
     *
     * @param longest the longest name that writing needs beside it
     */
    static Optional<Said> wrongWith(Path target, Path longest) throws IOException {
        Path parent = target.getParent();
        if (parent == null) {
            return Optional.of(Tell.said("folder.root"));
        }
        if (isTooLong(longest) || isTooLong(target)) {
            return Optional.of(Tell.said("folder.long"));
        }
        if (Files.exists(target)) {
            return wrongWithExisting(target);
        }
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(Tell.said("folder.link"));
        }
        for (Path above = parent; above != null; above = above.getParent()) {
            if (Files.isDirectory(above)) {
                return Files.isWritable(above) ? Optional.empty() : Optional.of(Tell.said("folder.in-locked"));
            }
            if (Files.exists(above, LinkOption.NOFOLLOW_LINKS)) {
                return Optional.of(Tell.said("folder.in-file", Part.text(String.valueOf(above.getFileName()))));
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

    private static Optional<Said> wrongWithExisting(Path target) throws IOException {
        if (!Files.isDirectory(target)) {
            return Optional.of(Tell.said("folder.file"));
        }
        if (Path.of("").toRealPath().startsWith(target)) {
            return Optional.of(Tell.said("folder.working"));
        }
        if (!Files.isWritable(target) || !Files.isWritable(target.resolveSibling("."))) {
            return Optional.of(Tell.said("folder.locked"));
        }
        List<String> foreign = OwnFiles.foreignIn(target);
        if (foreign.isEmpty()) {
            return Optional.empty();
        }
        Part some = Tell.words(foreign.subList(0, Math.min(NAMED, foreign.size())));
        return Optional.of(
                foreign.size() > NAMED ? Tell.said("folder.foreign-more", some) : Tell.said("folder.foreign", some));
    }
}
