package stretchwright.workroom.archive;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import stretchwright.ground.Findings;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Everything;
import stretchwright.workroom.store.Store;

/** Archives as files. */
public final class Archives {
    private Archives() {}

    /** A new file, complete or not there; a finding where one is there already. */
    public static void write(Store store, Path to) throws IOException {
        Path whole = to.toAbsolutePath();
        if (Files.exists(whole)) {
            Findings findings = new Findings(to.toString());
            findings.add("", Tell.said("archive.there"), Tell.said("archive.new-name"));
            findings.throwIfAny();
        }
        Path folder = whole.resolveSibling(".");
        Files.createDirectories(folder);
        Path aside = Files.createTempFile(folder, ".workroom", ".zip");
        try (Passing passing = new Passing(aside)) {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(aside))) {
                ArchiveWriter.write(store, out);
            }
            try (FileChannel written = FileChannel.open(aside, StandardOpenOption.WRITE)) {
                written.force(true);
            }
            place(passing.path(), whole);
        }
    }

    /** Never over a file that came there meanwhile. */
    private static void place(Path aside, Path whole) throws IOException {
        try {
            Files.move(aside, whole);
        } catch (FileAlreadyExistsException e) {
            Findings findings = new Findings(whole.toString());
            findings.add("", Tell.said("archive.there"), Tell.said("archive.new-name"));
            findings.throwIfAny();
        }
    }

    /** In place of what the store holds. */
    public static void read(Path from, Store into) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(from))) {
            ArchiveReader.read(from.toString(), in, into);
        }
    }

    /** An archive that was read into a workroom of its own, in a folder that goes when it is closed. */
    public static final class Coming implements AutoCloseable {
        private final Store store;
        private final Passing folder;

        private Coming(Store store, Passing folder) {
            this.store = store;
            this.folder = folder;
        }

        public Store store() {
            return store;
        }

        @Override
        public void close() throws IOException {
            store.database().close();
            folder.close();
        }
    }

    public static Coming coming(Path from) throws IOException {
        Passing folder = new Passing(Files.createTempDirectory("stretchwright-archive"));
        Coming coming =
                new Coming(new Store(Database.open(new Address.Folder(folder.path())), Clock.systemUTC()), folder);
        try {
            read(from, coming.store());
            return coming;
        } catch (IOException | RuntimeException e) {
            coming.close();
            throw e;
        }
    }

    /** Reads it to its end; how many things it holds. */
    public static long checked(Path file) throws IOException {
        long[] count = {0};
        try (Coming coming = coming(file)) {
            Everything.of(coming.store(), all -> count[0] = all.count("thing"));
        }
        return count[0];
    }
}
