package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;

/** A file that lost its newest page, or was hurt: nothing that was acknowledged is lost, or the damage is told. */
@Tag("slow")
class WalCutTest {
    private static final int NEWEST = 4096;
    private static final int ROUNDS = 4;
    private static final int HURTS = 60;
    private static final int LONGEST_MILLIS = 600;

    private interface Harm {
        void to(Path log, Random random) throws Exception;
    }

    @Test
    void theNewestPageOfTheLogIsCutOff() throws Exception {
        killedAndHarmed("cut", 1, WalCutTest::cut);
    }

    /** While a save is carried over the file is half of it: without its log that is damage, and damage is told. */
    @Test
    void theLogIsRemovedIsToldOrNothingIsLost() throws Exception {
        Random random = new Random(2);
        int told = 0;
        for (int i = 0; i < ROUNDS; i++) {
            Address.Folder at = Databases.folder();
            Killing killing = new Killing();
            saved(killing, at, random);
            Files.deleteIfExists(log(at));
            byte[] before = Files.readAllBytes(at.file());
            try {
                killing.allIsThere(at, "removed 2, round " + i);
            } catch (BadInput e) {
                told++;
                assertThat(e).hasMessageContaining("damaged");
                assertThat(at.file()).hasBinaryContent(before);
            }
        }
        System.out.printf("log removed: %d rounds, damage told in %d, else lost 0%n", ROUNDS, told);
    }

    @Test
    void garbageIsBehindTheLog() throws Exception {
        killedAndHarmed("garbage", 3, (log, random) -> {
            byte[] garbage = new byte[1 + random.nextInt(3 * NEWEST)];
            random.nextBytes(garbage);
            Files.write(log, garbage, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        });
    }

    private static void cut(Path log, Random random) throws Exception {
        if (Files.exists(log) && Files.size(log) > NEWEST) {
            try (RandomAccessFile file = new RandomAccessFile(log.toFile(), "rw")) {
                file.setLength(file.length() - NEWEST);
            }
        }
    }

    private static void killedAndHarmed(String told, long seed, Harm harm) throws Exception {
        Random random = new Random(seed);
        Address.Folder at = Databases.folder();
        Killing killing = new Killing();
        Path log = log(at);
        int longer = 0;
        for (int i = 0; i < ROUNDS; i++) {
            saved(killing, at, random);
            longer += Files.exists(log) && Files.size(log) > NEWEST ? 1 : 0;
            harm.to(log, random);
            killing.allIsThere(at, told + " " + seed + ", round " + i);
        }
        System.out.printf(
                "log %s: %d rounds, the log was longer than a page in %d, %d acknowledged, lost 0%n",
                told, ROUNDS, longer, killing.acknowledged());
    }

    private static Path log(Address.Folder at) {
        return at.path().resolve("workroom.db-wal");
    }

    /** By a program that is killed in the middle. */
    private static void saved(Killing killing, Address.Folder at, Random random) throws Exception {
        Killing.Running saver = Killing.loaded(random.nextLong());
        saver.tell(at);
        saver.await("open");
        Thread.sleep(random.nextInt(LONGEST_MILLIS));
        whileItSaves(log(at));
        killing.kill(saver);
    }

    /** Waits for a moment in which the log has something in it, but not for ever. */
    private static void whileItSaves(Path log) {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(1);
        while (log.toFile().length() <= NEWEST && System.nanoTime() < until) {
            Thread.onSpinWait();
        }
    }

    /** The log cannot be emptied while somebody reads an older moment; what is acknowledged then does not hang on its last page. */
    @Test
    void whileSomebodyReadsTheLastPageSaysNothingNew() throws Exception {
        for (int i = 0; i < ROUNDS; i++) {
            Address.Folder at = Databases.folder();
            Address.Folder copy = Databases.folder();
            Files.createDirectories(copy.path());
            try (Database database = Database.open(at)) {
                Store store = new Store(database, Clock.systemUTC());
                int saves = 1 + i;
                database.read(h -> {
                    for (int k = 0; k < saves; k++) {
                        store.save(Edit.fresh(Kind.BOOT, "Boot " + k, "text ".repeat(3000), Links.NONE));
                    }
                    return copied(at, copy);
                });
            }
            cut(log(copy), new Random(i));
            try (Database database = Database.open(copy)) {
                database.mustBeSound();
                assertThat(new Store(database, Clock.systemUTC()).count(Kind.BOOT, Place.HERE))
                        .isEqualTo(1 + i);
            }
        }
    }

    private static boolean copied(Address.Folder from, Address.Folder to) {
        try {
            Files.copy(from.file(), to.file());
            Path log = log(from);
            assertThat(log).exists();
            assertThat(Files.size(log)).isGreaterThan(NEWEST);
            Files.copy(log, log(to));
            return true;
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void aHurtFileIsToldOrSound() throws Exception {
        Address.Folder whole = Databases.folder();
        try (Database database = Database.open(whole)) {
            Store store = new Store(database, Clock.systemUTC());
            for (int i = 0; i < 40; i++) {
                store.save(Edit.fresh(Kind.BOOT, "Boot " + i, ("text " + i + "\n").repeat(300), Links.NONE));
            }
        }
        byte[] bytes = Files.readAllBytes(whole.file());
        Random random = new Random(8);
        int told = 0;
        for (int i = 0; i < HURTS; i++) {
            byte[] hurt = bytes.clone();
            int count = 1 + random.nextInt(20);
            int from = i % 3 == 0 ? 16 : random.nextInt(hurt.length - 200);
            for (int k = 0; k < count; k++) {
                hurt[from + random.nextInt(200)] ^= (byte) (1 + random.nextInt(255));
            }
            Address.Folder at = Databases.folder();
            Files.createDirectories(at.path());
            Files.write(at.file(), hurt);
            told += isTold(at) ? 1 : 0;
        }
        System.out.printf("%d times hurt: %d times told, otherwise sound with every text as it was%n", HURTS, told);
        assertThat(told).isGreaterThan(HURTS / 3);
    }

    /** Any other exception than a finding ends the test. */
    private static boolean isTold(Address.Folder at) {
        try (Database database = Database.open(at)) {
            Store store = new Store(database, Clock.systemUTC());
            try {
                database.mustBeSound();
                int i = 0;
                for (Thing t : store.list(Kind.BOOT, Place.HERE, "", 0, 100).stream()
                        .sorted(java.util.Comparator.comparing(Thing::changed)
                                .thenComparing(t -> t.name().length()))
                        .toList()) {
                    String number = t.name().substring("Boot ".length());
                    assertThat(store.now(t).orElseThrow().text()).isEqualTo(("text " + number + "\n").repeat(300));
                    i++;
                }
                assertThat(i).isEqualTo(40);
                return false;
            } catch (BadInput e) {
                // also what is read or saved in spite of it
                saveAll(store);
                return true;
            }
        } catch (BadInput e) {
            return true;
        }
    }

    private static void saveAll(Store store) {
        for (Kind kind : Kind.values()) {
            store.list(kind, Place.HERE, "oo 1", 0, 100).forEach(store::now);
        }
        store.steps(100);
        store.save(Edit.fresh(Kind.BOOT, "new", "new", Links.NONE));
        store.undo();
        store.redo();
    }
}
