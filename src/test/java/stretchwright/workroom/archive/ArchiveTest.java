package stretchwright.workroom.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/** A workroom out and in again is an equal one; what is no archive changes nothing. */
@Tag("slow")
class ArchiveTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";

    /** Kept from now on: every later version of the program reads it. */
    private static final Path KEPT = Path.of("src/test/cases/workroom/archive-1.zip");

    private static byte[] out(Store store) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ArchiveWriter.write(store, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void in(byte[] archive, Store store) {
        ArchiveReader.read("a.zip", new ByteArrayInputStream(archive), store);
    }

    /** Names and texts with whatever makers and strangers write. */
    private static String text(Random random, int most) {
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

    @ParameterizedTest
    @MethodSource(ALL)
    void outAndInAgainItIsEqual(Address address) {
        for (long seed = 1; seed <= 4; seed++) {
            try (Database one = Database.open(Databases.folder());
                    Database other = Database.open(address)) {
                Store from = new Store(one, Clock.systemUTC());
                fill(from, seed, 40);
                byte[] archive = out(from);
                Store to = new Store(other, Clock.systemUTC());
                in(archive, to);
                assertThat(out(to)).as("seed %d", seed).isEqualTo(archive);
                from.undo();
                to.undo();
                assertThat(to.steps(1).get(0).number())
                        .isEqualTo(from.steps(1).get(0).number());
                assertThat(to.list(Kind.MAKE, Place.HERE, "", 0, 99))
                        .extracting(Thing::id)
                        .containsExactlyInAnyOrderElementsOf(from.list(Kind.MAKE, Place.HERE, "", 0, 99).stream()
                                .map(Thing::id)
                                .toList());
            }
        }
    }

    private static Map<String, String> parts(byte[] archive) throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                parts.put(e.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }

    private static byte[] zip(Map<String, String> parts) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return out.toByteArray();
    }

    static Stream<String[]> faults() {
        return Stream.of(
                new String[] {"things.ndjson", "\"kind\":\"boot\"", "\"kind\":\"shoe\""},
                new String[] {"things.ndjson", "\"now\":1", "\"now\":7"},
                new String[] {"things.ndjson", "\"now\":1", "\"now\":-1"},
                new String[] {"things.ndjson", "\"now\":1", "\"now\":1e400"},
                new String[] {"things.ndjson", "\"place\":\"here\"", "\"place\":\"../here\""},
                new String[] {"things.ndjson", "\"name\":\"High\"", "\"name\":\"\""},
                new String[] {"things.ndjson", "\"name\":\"High\"", "\"name\":\"a\\u0000b\""},
                new String[] {"things.ndjson", "\"name\":\"High\"", "\"name\":[[[[]]]]"},
                new String[] {"things.ndjson", "\"origin\":\"\"", "\"origin\":\"'; DROP TABLE thing;--\""},
                new String[] {"versions.ndjson", "\"text\":\"one\"", "\"text\":null"},
                new String[] {"versions.ndjson", "\"text\":\"one\"", "\"text\":\"\\ud800\""},
                new String[] {"versions.ndjson", "{\"thing\"", "{\"thing"},
                new String[] {"changes.ndjson", "\"step\":1", "\"step\":99"},
                new String[] {"changes.ndjson", "\"now\":1", "\"now\":3"},
                new String[] {"steps.ndjson", "\"state\":\"done\"", "\"state\":\"won\""},
                new String[] {"steps.ndjson", "\"what\":\"save\"", "\"what\":\"" + "s".repeat(21) + "\""},
                new String[] {"versions.ndjson", "\"program\":\"\"", "\"program\":\"" + "1".repeat(41) + "\""},
                new String[] {"manifest.json", "\"things\":1", "\"things\":2"},
                new String[] {"manifest.json", "workroom\":1", "workroom\":2"},
                new String[] {"manifest.json", "workroom\":1", "workroom\":\"1\u0000\""},
                new String[] {"manifest.json", "\"workroom\":", "\"shop\":"});
    }

    @Test
    void aFaultInAnArchiveChangesNothing() throws IOException {
        try (Database one = Database.open(Databases.folder());
                Database other = Database.open(Databases.folder())) {
            Store from = new Store(one, Clock.systemUTC());
            from.save(Edit.fresh(Kind.BOOT, "High", "one", Links.NONE));
            Store to = new Store(other, Clock.systemUTC());
            to.save(Edit.fresh(Kind.BOOT, "Mine", "mine", Links.NONE));
            byte[] before = out(to);
            Map<String, String> good = parts(out(from));
            for (String[] fault : faults().toList()) {
                Map<String, String> bad = new LinkedHashMap<>(good);
                String changed = good.getOrDefault(fault[0], "").replace(fault[1], fault[2]);
                assertThat(changed).as(fault[2]).isNotEqualTo(good.get(fault[0]));
                bad.put(fault[0], changed);
                assertThatThrownBy(() -> in(zip(bad), to)).as(fault[2]).isInstanceOf(BadInput.class);
                assertThat(out(to)).as(fault[2]).isEqualTo(before);
            }
            for (String strange : new String[] {"../evil", "/etc/passwd", "things.ndjson/..", "C:\\x", "a"}) {
                Map<String, String> bad = new LinkedHashMap<>(good);
                bad.put(strange, "boo");
                assertThatThrownBy(() -> in(zip(bad), to)).isInstanceOf(BadInput.class);
                Map<String, String> first = new LinkedHashMap<>(Map.of(strange, "boo"));
                first.putAll(good);
                assertThatThrownBy(() -> in(zip(first), to)).isInstanceOf(BadInput.class);
            }
            assertThat(out(to)).isEqualTo(before);
        }
    }

    @Test
    void whatIsNoArchiveOrACutOneChangesNothing() throws IOException {
        try (Database one = Database.open(Databases.folder());
                Database other = Database.open(Databases.folder())) {
            Store from = new Store(one, Clock.systemUTC());
            fill(from, 5, 30);
            byte[] good = out(from);
            Store to = new Store(other, Clock.systemUTC());
            to.save(Edit.fresh(Kind.BOOT, "Mine", "mine", Links.NONE));
            byte[] before = out(to);
            Random random = new Random(3);
            for (int i = 0; i < 60; i++) {
                byte[] bad = java.util.Arrays.copyOf(good, random.nextInt(good.length * 3 / 4));
                assertThatThrownBy(() -> in(bad, to)).isInstanceOf(BadInput.class);
            }
            for (int i = 0; i < 60; i++) {
                byte[] bad = good.clone();
                bad[random.nextInt(bad.length)] ^= (byte) (1 + random.nextInt(255));
                try {
                    in(bad, to);
                } catch (BadInput e) {
                    assertThat(out(to)).isEqualTo(before);
                    continue;
                }
                assertThat(out(to)).isEqualTo(good); // the byte said nothing, as a date in the zip's own list
                in(before, to);
            }
            for (String no : new String[] {"", "PK", "PK\u0003\u0004", "{}", "hello"}) {
                assertThatThrownBy(() -> in(no.getBytes(StandardCharsets.ISO_8859_1), to))
                        .isInstanceOf(BadInput.class);
            }
            assertThat(out(to)).isEqualTo(before);
        }
    }

    /** A row of many thousand times its size on the disk is refused while it is read, and a million entries at the second. */
    @Test
    void bombsDoNotGoOff() throws IOException {
        try (Database other = Database.open(Databases.folder())) {
            Store to = new Store(other, Clock.systemUTC());
            ByteArrayOutputStream bomb = new ByteArrayOutputStream();
            try (ZipOutputStream zip = new ZipOutputStream(bomb)) {
                zip.putNextEntry(new ZipEntry(Format.MANIFEST));
                byte[] zeros = new byte[1 << 20];
                for (int i = 0; i < 40; i++) {
                    zip.write(zeros);
                }
            }
            assertThat(bomb.size()).isLessThan(100_000);
            assertThatThrownBy(() -> in(bomb.toByteArray(), to))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("more than any workroom does");
            ByteArrayOutputStream many = new ByteArrayOutputStream();
            try (ZipOutputStream zip = new ZipOutputStream(many)) {
                for (int i = 0; i < 100_000; i++) {
                    zip.putNextEntry(new ZipEntry(i + ".json"));
                }
            }
            assertThatThrownBy(() -> in(many.toByteArray(), to)).isInstanceOf(BadInput.class);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void theFirstFormatStaysReadable(Address address) throws IOException {
        if (Boolean.getBoolean("archive.write")) {
            try (Database database = Database.open(Databases.folder())) {
                Store store = new Store(database, Clock.systemUTC());
                fill(store, 2026, 25);
                Files.createDirectories(KEPT.resolveSibling("."));
                Files.write(KEPT, out(store));
            }
        }
        try (Database database = Database.open(address)) {
            Store store = new Store(database, Clock.systemUTC());
            Archives.read(KEPT, store);
            assertThat(store.steps(99)).isNotEmpty();
            assertThat(store.undo()).isPresent();
            assertThat(store.redo()).isPresent();
        }
    }

    @Test
    void aFileThatIsThereIsNotOverwritten(@TempDir Path folder) throws IOException {
        try (Database database = Database.open(Databases.folder())) {
            Store store = new Store(database, Clock.systemUTC());
            store.save(Edit.fresh(Kind.BOOT, "High", "one", Links.NONE));
            Path there = Files.writeString(folder.resolve("letter.zip"), "dear friend");
            assertThatThrownBy(() -> Archives.write(store, there)).isInstanceOf(BadInput.class);
            assertThat(there).hasContent("dear friend");
            Path good = folder.resolve("new").resolve("room.zip");
            Archives.write(store, good);
            assertThat(Archives.checked(good)).isEqualTo(1);
            try (Stream<Path> files = Files.list(folder.resolve("new"))) {
                assertThat(files).hasSize(1);
            }
        }
    }

    /** What is written meanwhile is in it as a whole or not at all. */
    @ParameterizedTest
    @MethodSource(ALL)
    void anArchiveWrittenWhileOthersSaveIsOfOneMoment(Address address) throws Exception {
        try (Database database = Database.open(address);
                Database other = Database.open(Databases.folder())) {
            Store store = new Store(database, Clock.systemUTC());
            fill(store, 7, 40);
            AtomicBoolean stop = new AtomicBoolean();
            AtomicInteger saved = new AtomicInteger();
            Thread writer = new Thread(() -> {
                while (!stop.get()) {
                    int i = saved.get();
                    // two in one step: both or none
                    store.save(
                            "save",
                            List.of(
                                    Edit.fresh(Kind.BOOT, "left " + i, "l".repeat(2000), Links.NONE),
                                    Edit.fresh(Kind.STYLE, "right " + i, "r".repeat(2000), Links.NONE)));
                    saved.incrementAndGet();
                }
            });
            writer.start();
            try {
                for (int round = 0; round < 5; round++) {
                    int least = saved.get();
                    while (saved.get() < least + 3) {
                        Thread.onSpinWait();
                    }
                    byte[] archive = out(store);
                    Store restored = new Store(other, Clock.systemUTC());
                    in(archive, restored);
                    other.mustBeSound();
                    int lefts = restored.list(Kind.BOOT, Place.HERE, "left", 0, 10_000)
                            .size();
                    assertThat(lefts).isBetween(least + 3, saved.get() + 1);
                    assertThat(restored.list(Kind.STYLE, Place.HERE, "right", 0, 10_000))
                            .hasSize(lefts);
                }
            } finally {
                stop.set(true);
                writer.join();
            }
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void anotherWorkroomComesInAsOneStep(Address address) {
        try (Database one = Database.open(Databases.folder());
                Database other = Database.open(address)) {
            Store there = new Store(one, Clock.systemUTC());
            Thing ada = thing(there.save(Edit.fresh(Kind.WEARER, "Ada", "hip: 96", Links.NONE)));
            there.save(Edit.after(ada, "Ada", "hip: 97"));
            there.save(Edit.fresh(Kind.MAKE, "Evening", "e", new Links("", ada.id(), "", "", "")));
            Thing gone = thing(there.save(Edit.fresh(Kind.BOOT, "Gone", "g", Links.NONE)));
            there.move("bin", List.of(gone.id()), Place.BIN);
            Store here = new Store(other, Clock.systemUTC());
            Thing own = thing(here.save(Edit.fresh(Kind.WEARER, "ADA", "hip: 95", Links.NONE)));
            byte[] before = out(here);

            Merge merge = Merge.of(here, there);
            assertThat(merge.fresh()).extracting(Thing::name).containsExactly("Evening");
            assertThat(merge.others()).extracting(o -> o.coming().text()).containsExactly("hip: 97");
            assertThat(out(here)).isEqualTo(before);

            merge.take(false);
            assertThat(here.now(here.thing(own.id()).orElseThrow())
                            .orElseThrow()
                            .text())
                    .isEqualTo("hip: 95");
            assertThat(here.named(Kind.MAKE, "Evening").orElseThrow().links().wearer())
                    .isEqualTo(own.id());
            here.undo();
            assertThat(here.named(Kind.MAKE, "Evening")).isEmpty();
            assertThat(here.count(Kind.BOOT, Place.BIN)).isZero();
            here.redo();
            Merge.of(here, there).take(true);
            assertThat(here.now(here.thing(own.id()).orElseThrow())
                            .orElseThrow()
                            .text())
                    .isEqualTo("hip: 97");
            assertThat(here.versions(own.id())).hasSize(2);
            assertThat(Merge.of(here, there).take(true)).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatLiesInTheBinOrWasUndoneComesInAgain(Address address) {
        try (Database one = Database.open(address);
                Database other = Database.open(Databases.folder())) {
            Store here = new Store(one, Clock.systemUTC());
            Thing high = thing(here.save(Edit.fresh(Kind.BOOT, "High", "h", Links.NONE)));
            here.save(Edit.fresh(Kind.BOOT, "Low", "l", Links.NONE));
            Store there = new Store(other, Clock.systemUTC());
            in(out(here), there);
            here.undo();
            here.move("bin", List.of(high.id()), Place.BIN);
            Merge merge = Merge.of(here, there);
            assertThat(merge.fresh()).extracting(Thing::name).containsExactlyInAnyOrder("High", "Low");
            merge.take(false);
            assertThat(here.list(Kind.BOOT, Place.HERE, "", 0, 9))
                    .extracting(Thing::name)
                    .containsExactlyInAnyOrder("High", "Low");
            one.mustBeSound();
            here.undo();
            assertThat(here.thing(high.id()).orElseThrow().place()).isEqualTo(Place.BIN);
            assertThat(here.named(Kind.BOOT, "Low")).isEmpty();
            one.mustBeSound();
        }
    }

    /** Else her makes would stand under the wearer of before, and be forgotten with her. */
    @Test
    void whatIsReplacedIsLinkedAsItCame() {
        try (Database one = Database.open(Databases.folder());
                Database other = Database.open(Databases.folder())) {
            Store here = new Store(one, Clock.systemUTC());
            Thing ada = thing(here.save(Edit.fresh(Kind.WEARER, "Ada", "a", Links.NONE)));
            here.save(Edit.fresh(Kind.MAKE, "Evening", "e", new Links("", ada.id(), "", "", "")));
            Store there = new Store(other, Clock.systemUTC());
            Thing bo = thing(there.save(Edit.fresh(Kind.WEARER, "Bo", "b", Links.NONE)));
            there.save(Edit.fresh(Kind.MAKE, "Evening", "other", new Links("", bo.id(), "", "", "")));
            Merge.of(here, there).take(true);
            assertThat(here.named(Kind.MAKE, "Evening").orElseThrow().links().wearer())
                    .isEqualTo(bo.id());
        }
    }

    private static Thing thing(Saved saved) {
        return ((Saved.Stored) saved).thing();
    }
}
