package stretchwright.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Map;

/** Why a file or folder could not be had, in plain words. */
final class Reason {
    private static final String FULL = "No space left on device";
    private static final String QUOTA = "Disk quota exceeded";
    private static final List<String> ROOM = List.of(FULL, QUOTA);

    /** What the system says, where it speaks English, and what that means; otherwise its own words are told. */
    private static final Map<String, String> MEANS = Map.of(
            FULL,
            "the disk is full",
            QUOTA,
            "your share of the disk is used up",
            "File name too long",
            "its name is too long",
            "Read-only file system",
            "the disk may only be read");

    private Reason() {}

    /** Without a full stop. */
    static String of(Exception e) {
        if (e instanceof NoSuchFileException) {
            return "there is no such place";
        }
        if (e instanceof AccessDeniedException) {
            return "it is not allowed";
        }
        String said = e instanceof FileSystemException file && file.getReason() != null
                ? file.getReason()
                : String.valueOf(e.getMessage());
        return MEANS.entrySet().stream()
                .filter(known -> said.contains(known.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(said);
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
