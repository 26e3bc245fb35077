package stretchwright.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Why a file or folder could not be had, in plain words. */
final class Reason {
    private static final String FULL = "No space left on device";
    private static final String QUOTA = "Disk quota exceeded";
    private static final List<String> ROOM = List.of(FULL, QUOTA);

    /** What the system says, where it speaks English, and what that means; otherwise its own words are told. */
    private static final Map<String, Said> MEANS = Map.of(
            FULL,
            Tell.said("reason.full"),
            QUOTA,
            Tell.said("reason.quota"),
            "File name too long",
            Tell.said("reason.long"),
            "Read-only file system",
            Tell.said("reason.read-only"));

    private Reason() {}

    /** Without a full stop. */
    static Part of(Exception e) {
        if (e instanceof NoSuchFileException) {
            return Tell.said("reason.no-place");
        }
        if (e instanceof AccessDeniedException) {
            return Tell.said("reason.not-allowed");
        }
        String said = e instanceof FileSystemException file && file.getReason() != null
                ? file.getReason()
                : String.valueOf(e.getMessage());
        return MEANS.entrySet().stream()
                .filter(known -> said.contains(known.getKey()))
                .<Part>map(Map.Entry::getValue)
                .findFirst()
                .orElse(Part.text(said));
    }

    /** Whether room on the disk would help. */
    static boolean isRoom(Exception e) {
        return ROOM.stream().anyMatch(String.valueOf(e.getMessage())::contains);
    }

    /** Whether it is about the computer and what may be done on it, and not a fault of the program. */
    static boolean isOutside(Throwable e) {
        return e instanceof FileSystemException
                || e instanceof IOException
                        && MEANS.keySet().stream().anyMatch(String.valueOf(e.getMessage())::contains);
    }
}
