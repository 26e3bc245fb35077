package stretchwright.workroom.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import stretchwright.report.Program;
import stretchwright.workroom.store.Everything;
import stretchwright.workroom.store.Store;
import tools.jackson.databind.node.ObjectNode;

/** Writes a store as it is at one moment, whatever is saved meanwhile. The same store gives the same bytes. */
public final class ArchiveWriter {
    private static final LocalDateTime NO_TIME = LocalDateTime.of(2026, 1, 1, 0, 0);

    private final ZipOutputStream zip;

    private ArchiveWriter(ZipOutputStream zip) {
        this.zip = zip;
    }

    public static void write(Store store, OutputStream to) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(to, StandardCharsets.UTF_8)) {
            ArchiveWriter writer = new ArchiveWriter(zip);
            Everything.of(store, writer::all);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private void all(Everything everything) {
        ObjectNode manifest = Format.node().put(Format.MARK, Format.VERSION).put("program", Program.VERSION);
        Format.TABLES.forEach(t -> manifest.put(t + "s", everything.count(t)));
        part(Format.MANIFEST, lines -> lines.accept(manifest));
        part(Format.part("thing"), lines -> everything.things(t -> lines.accept(Format.of(t))));
        part(Format.part("version"), lines -> everything.versions(v -> lines.accept(Format.of(v))));
        part(Format.part("step"), lines -> everything.steps(s -> lines.accept(Format.of(s))));
        part(Format.part("change"), lines -> everything.changes(c -> lines.accept(Format.of(c))));
    }

    private void part(String name, Consumer<Consumer<ObjectNode>> rows) {
        try {
            ZipEntry entry = new ZipEntry(name);
            entry.setTimeLocal(NO_TIME);
            zip.putNextEntry(entry);
            rows.accept(this::line);
            zip.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void line(ObjectNode row) {
        try {
            zip.write(Format.line(row).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
