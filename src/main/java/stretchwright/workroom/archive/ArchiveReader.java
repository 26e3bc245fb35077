package stretchwright.workroom.archive;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.workroom.store.Everything;
import stretchwright.workroom.store.Store;
import tools.jackson.databind.JsonNode;

/**
 * Reads an archive into a store, in place of what is in it, as one transaction. Nothing of it is ever written as a file: an
 * entry whose name is not one of the five is refused, whatever it is called.
 */
public final class ArchiveReader {
    /** A line holds one version at the most, with its figures, each letter written as six at worst. */
    private static final int LONGEST_LINE = 16 * 1024 * 1024;

    /** What may come out of an archive, bytes: a thousand times the largest club. */
    private static final long MOST = 4L << 30;

    private final String file;
    private final Everything into;
    private final ZipInputStream zip;
    private JsonNode manifest = Format.node();
    private long read;

    private ArchiveReader(String file, Everything into, ZipInputStream zip) {
        this.file = file;
        this.into = into;
        this.zip = zip;
    }

    /** @throws BadInput where it is no archive, or a damaged one; the store is as it was */
    public static void read(String file, InputStream from, Store into) {
        Everything.replace(into, everything -> {
            try (ZipInputStream zip = new ZipInputStream(from, StandardCharsets.UTF_8)) {
                new ArchiveReader(file, everything, zip).all();
            } catch (ZipException | IllegalArgumentException e) {
                throw wrong(file, Tell.said("archive.not"));
            } catch (IOException e) {
                throw wrong(file, Tell.said("archive.broken"));
            }
        });
    }

    private void all() throws IOException {
        List<String> expected = new ArrayList<>(List.of(Format.MANIFEST));
        Format.TABLES.forEach(t -> expected.add(Format.part(t)));
        int part = 0;
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            if (part == expected.size() || !entry.getName().equals(expected.get(part))) {
                throw part == 0
                        ? wrong(file, Tell.said("archive.not"))
                        : wrong(file, Tell.said("archive.stranger", Tell.quoted(entry.getName())));
            }
            part(expected.get(part), part);
            part++;
        }
        if (part < expected.size()) {
            throw wrong(file, part == 0 ? Tell.said("archive.not") : Tell.said("archive.broken"));
        }
        if (!into.isWhole()) {
            throw wrong(file, Tell.said("archive.half"));
        }
    }

    private void part(String name, int part) throws IOException {
        if (part == 0) {
            lines(name, this::manifest);
            return;
        }
        String table = Format.TABLES.get(part - 1);
        long count = lines(name, row -> put(table, row));
        if (count != manifest.path(table + "s").asLong(-1)) {
            throw wrong(file, Tell.said("archive.count", Part.text(name)));
        }
    }

    private void manifest(JsonNode node) {
        int version = node.path(Format.MARK).asInt(0);
        if (version < 1) {
            throw wrong(file, Tell.said("archive.not"));
        }
        if (version > Format.VERSION) {
            throw wrong(file, Tell.said("archive.newer", Part.count(version), Part.count(Format.VERSION)));
        }
        manifest = node;
    }

    private void put(String table, JsonNode row) {
        switch (table) {
            case "thing" -> into.put(Format.thing(row));
            case "version" -> into.put(Format.version(row));
            case "step" -> into.put(Format.step(row));
            default -> into.put(Format.change(row));
        }
    }

    /** How many there were. */
    private long lines(String name, Consumer<JsonNode> to) throws IOException {
        InputStream in = new BufferedInputStream(zip) {
            @Override
            public void close() {
                // the zip goes on behind this entry
            }
        };
        long count = 0;
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int b = in.read(); b >= 0; b = in.read()) {
            if (++read > MOST || line.size() > LONGEST_LINE) {
                throw wrong(file, Tell.said("archive.large"));
            }
            if (b != '\n') {
                line.write(b);
                continue;
            }
            count++;
            row(name, count, line.toString(StandardCharsets.UTF_8), to);
            line.reset();
        }
        if (line.size() > 0) {
            throw wrong(file, Tell.said("archive.broken"));
        }
        return count;
    }

    private void row(String name, long number, String line, Consumer<JsonNode> to) {
        try {
            to.accept(Format.read(line));
        } catch (Format.WrongLine e) {
            throw wrong(
                    file,
                    Tell.said(
                            "archive.line",
                            Part.text(name),
                            Part.count(number),
                            Part.text(String.valueOf(e.getMessage()))));
        } catch (Everything.Misfit e) {
            throw wrong(file, Tell.said("archive.row", Part.text(name), Part.count(number)));
        }
    }

    private static BadInput wrong(String file, Said what) {
        Findings findings = new Findings(file);
        findings.add("", what, Tell.said("archive.help"));
        return new BadInput(findings.all());
    }
}
