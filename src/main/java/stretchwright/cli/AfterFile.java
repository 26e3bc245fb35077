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
            findings.add("--write", Tell.said("after.locked"), Tell.said("after.locked-help"));
            return false;
        }
        Path aside;
        try {
            aside = Files.createTempFile(target.resolveSibling("."), ".after", ".yaml");
        } catch (AccessDeniedException e) {
            findings.add("--write", Tell.said("after.folder-locked"), Tell.said("after.folder-locked-help"));
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
            findings.add("--write", Tell.said("after.cannot", Reason.of(e)), Tell.said("after.as-it-was"));
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

    /**
     * Under a name that is free.
     *
     * @param key what the name was given by
     */
    static boolean fresh(String named, String text, String key, Findings findings) {
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
            findings.add(key, Tell.said("after.there", Tell.quoted(named)), Tell.said("after.new-file"));
        } catch (NoSuchFileException e) {
            findings.add(key, Tell.said("after.no-folder", Tell.quoted(named)), Tell.said("after.make-folder"));
        } catch (AccessDeniedException e) {
            findings.add(key, Tell.said("after.not-allowed", Tell.quoted(named)), Tell.said("after.another"));
        } catch (InvalidPathException | IOException e) {
            findings.add(key, Tell.said("folder.cannot-write", Reason.of(e)), Tell.said("after.another"));
        }
        return false;
    }
}
