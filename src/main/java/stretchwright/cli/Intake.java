package stretchwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Reads files that a person named; never more than the limit, whatever stands behind the name. */
final class Intake {
    private static final int MEGABYTE = 1024 * 1024;

    private Intake() {}

    /** The bytes, or empty and a finding. */
    static Optional<byte[]> read(String named, int limit, Findings findings) {
        try {
            Path path = Path.of(named);
            if (Files.isDirectory(path)) {
                findings.add("", Tell.said("file.folder"), Tell.said("file.inside"));
                return Optional.empty();
            }
            try (InputStream in = Files.newInputStream(path)) {
                byte[] bytes = in.readNBytes(limit + 1);
                if (bytes.length <= limit) {
                    return Optional.of(bytes);
                }
            }
            Said large = limit >= MEGABYTE
                    ? Tell.said("file.large-mb", Part.count(limit / MEGABYTE))
                    : Tell.said("file.large-bytes", Part.count(limit));
            findings.add("", large, Tell.said("file.right"));
        } catch (NoSuchFileException e) {
            findings.add("", Tell.said("file.none"), Tell.said("file.spelling"));
        } catch (AccessDeniedException e) {
            findings.add("", Tell.said("file.not-allowed"), Tell.said("file.permissions"));
        } catch (InvalidPathException | IOException e) {
            findings.add("", Tell.said("file.cannot", Reason.of(e)), Said.NOTHING);
        }
        return Optional.empty();
    }
}
