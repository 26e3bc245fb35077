package stretchwright.workroom.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stretchwright.workroom.archive.Archived.fill;
import static stretchwright.workroom.archive.Archived.in;
import static stretchwright.workroom.archive.Archived.out;
import static stretchwright.workroom.archive.Archived.parts;
import static stretchwright.workroom.archive.Archived.zip;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Store;

/** What is no archive, or a damaged or wicked one, changes nothing. */
@Tag("slow")
class BadArchiveTest {
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
}
