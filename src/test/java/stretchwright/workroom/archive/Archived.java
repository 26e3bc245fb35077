package stretchwright.workroom.archive;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/** Archives in memory, and workrooms made from a seed. */
final class Archived {
    private Archived() {}

    static byte[] out(Store store) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ArchiveWriter.write(store, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static void in(byte[] archive, Store store) {
        ArchiveReader.read("a.zip", new ByteArrayInputStream(archive), store);
    }

    /** Names and texts with whatever makers and strangers write. */
    static String text(Random random, int most) {
        String letters = "abc äöü é𝒳 '\"\\;%_!--/*{}[]:#\t\u0001\u202e\u2028日本";
        int[] points = letters.codePoints().toArray();
        StringBuilder out = new StringBuilder("x");
        for (int i = random.nextInt(most); i > 0; i--) {
            out.appendCodePoint(points[random.nextInt(points.length)]);
        }
        return out.toString();
    }

    static void fill(Store store, long seed, int steps) {
        Random random = new Random(seed);
        List<Thing> all = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            int what = random.nextInt(10);
            if (what < 4 || all.isEmpty()) {
                Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
                String origin =
                        all.isEmpty() ? "" : all.get(random.nextInt(all.size())).id();
                String name = text(random, 12).replaceAll("\\p{Cntrl}", "") + i;
                Edit edit = Edit.fresh(kind, name, text(random, 400), Links.from(origin));
                Edit made = random.nextBoolean() ? edit.with("{\"a\": " + i + "}", "0.1") : edit;
                all.add(((Saved.Stored) store.save(made)).thing());
            } else if (what < 7) {
                Thing seen =
                        store.thing(all.get(random.nextInt(all.size())).id()).orElseThrow();
                if (seen.place() == Place.HERE) {
                    store.save(Edit.after(seen, seen.name(), text(random, 400)));
                    store.save(Edit.after(seen, seen.name(), "too late " + i));
                }
            } else if (what == 7) {
                store.move("bin", List.of(all.get(random.nextInt(all.size())).id()), Place.BIN);
            } else if (what == 8) {
                store.undo();
            } else {
                store.redo();
            }
            all.removeIf(t -> store.thing(t.id()).orElseThrow().place() == Place.NOT_YET);
        }
    }

    static Map<String, String> parts(byte[] archive) throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                parts.put(e.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }

    static byte[] zip(Map<String, String> parts) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return out.toByteArray();
    }

    static Thing thing(Saved saved) {
        return ((Saved.Stored) saved).thing();
    }
}
