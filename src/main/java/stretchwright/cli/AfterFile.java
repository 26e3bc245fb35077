package stretchwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;
import stretchwright.ground.Findings;

/** Writes the changed make file: over the old one, as a whole or not at all, or beside it under a new name. */
final class AfterFile {
    private AfterFile() {}

    /** In place of the old one, with its permissions. */
    static boolean over(String named, String text, Findings findings) throws IOException {
        Path target = Path.of(named).toRealPath();
        boolean posix = target.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (!Files.isWritable(target) || (posix && locked(Files.getPosixFilePermissions(target)))) {
            findings.add(
                    "--write", "the file may not be written.", "Change its permissions, or name a new one by --out.");
            return false;
        }
        Path aside;
        try {
            aside = Files.createTempFile(target.resolveSibling("."), ".after", ".yaml");
        } catch (AccessDeniedException e) {
            findings.add("--write", "its folder may not be written to.", "Name a new file elsewhere by --out.");
            return false;
        }
        try {
            Files.write(aside, text.getBytes(StandardCharsets.UTF_8));
            if (posix) {
                Files.setPosixFilePermissions(
                        aside, Files.getPosixFilePermissions(target)); // a new file is its owner's alone
            }
            Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
            return true;
        } catch (IOException e) {
            findings.add("--write", "the file cannot be written: " + Reason.of(e) + ".", "It is as it was.");
            return false;
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    /** Nobody may write it: locked on purpose, also for a superuser who could. */
    private static boolean locked(Set<PosixFilePermission> all) {
        return !all.contains(PosixFilePermission.OWNER_WRITE)
                && !all.contains(PosixFilePermission.GROUP_WRITE)
                && !all.contains(PosixFilePermission.OTHERS_WRITE);
    }

    /** Under a name that is free. */
    static boolean fresh(String named, String text, Findings findings) {
        try {
            Path target = Files.createFile(Path.of(named));
            try {
                Files.write(target, text.getBytes(StandardCharsets.UTF_8));
            } catch (IOException e) {
                Files.delete(target);
                throw e;
            }
            return true;
        } catch (FileAlreadyExistsException e) {
            findings.add("--out", "\"" + named + "\" is there already.", "Name a new file.");
        } catch (NoSuchFileException e) {
            findings.add("--out", "there is no folder for \"" + named + "\".", "Make the folder first.");
        } catch (AccessDeniedException e) {
            findings.add("--out", "\"" + named + "\" may not be written.", "Name another file.");
        } catch (InvalidPathException | IOException e) {
            findings.add("--out", "cannot be written: " + Reason.of(e) + ".", "Name another file.");
        }
        return false;
    }
}
