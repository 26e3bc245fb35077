package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;

/** A disk that is full, or may not be written, on a small file system of its own. */
@Tag("slow")
class DiskFullTest {
    private static final int SAVES = 400;

    private interface Work {
        void on(Path disk) throws Exception;
    }

    private static void onSmallDisk(Work work) throws Exception {
        Path disk = Files.createTempDirectory("stretchwright-disk");
        boolean mounted = run("mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", disk.toString());
        if (!mounted) {
            System.out.println("SKIPPED: no small disk can be mounted here (only root may)");
            Files.delete(disk);
        }
        assumeTrue(mounted, "no small disk can be mounted here");
        Thread last = new Thread(() -> unmounted(disk));
        Runtime.getRuntime().addShutdownHook(last);
        try {
            work.on(disk);
        } finally {
            unmounted(disk);
            Runtime.getRuntime().removeShutdownHook(last);
        }
    }

    private static void unmounted(Path disk) {
        try {
            run("umount", disk.toString());
            Files.deleteIfExists(disk);
        } catch (IOException | InterruptedException e) {
            System.err.println("left behind: " + disk);
        }
    }

    private static boolean run(String... words) throws IOException, InterruptedException {
        try {
            Process process = new ProcessBuilder(words)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static String text(Random random) {
        StringBuilder out = new StringBuilder();
        for (int i = random.nextInt(2000); i >= 0; i--) {
            out.append(Long.toString(random.nextLong(), 36));
        }
        return out.toString();
    }

    @Test
    void aFullDiskIsToldAndTheStoreIsAsBefore() throws Exception {
        for (long seed = 1; seed <= 4; seed++) {
            Random random = new Random(seed);
            onSmallDisk(disk -> fillAndGoOn(disk, random));
        }
    }

    private static void fillAndGoOn(Path disk, Random random) throws Exception {
        Path ballast = Files.write(disk.resolve("ballast"), new byte[300_000]);
        Address.Folder at = new Address.Folder(disk.resolve("room"));
        List<Thing> acknowledged = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        try (Database database = Database.open(at)) {
            Store store = new Store(database, Clock.systemUTC());
            String said = filled(store, random, acknowledged, texts);
            assertThat(said).contains("the disk is full");
            long steps = store.steps(SAVES).size();
            assertThat(steps).isEqualTo(acknowledged.size());
            for (int i = 0; i < 3; i++) {
                assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, "big", "x".repeat(600_000), Links.NONE)))
                        .isInstanceOf(BadInput.class)
                        .hasMessageContaining("the disk is full");
            }
            assertThat(store.steps(SAVES)).hasSize((int) steps);
            allThere(store, acknowledged, texts);
        }
        Files.delete(ballast);
        try (Database database = Database.open(at)) {
            database.mustBeSound();
            Store store = new Store(database, Clock.systemUTC());
            allThere(store, acknowledged, texts);
            assertThat(store.count(Kind.BOOT, Place.HERE)).isEqualTo(acknowledged.size());
            assertThat(store.save(Edit.fresh(Kind.BOOT, "next", "next", Links.NONE)))
                    .isInstanceOf(Saved.Stored.class);
        }
    }

    private static String filled(Store store, Random random, List<Thing> acknowledged, List<String> texts) {
        for (int i = 0; i < SAVES; i++) {
            String text = text(random);
            try {
                Saved saved = store.save(Edit.fresh(Kind.BOOT, "Boot " + i, text, Links.NONE));
                acknowledged.add(((Saved.Stored) saved).thing());
                texts.add(text);
            } catch (BadInput e) {
                return String.valueOf(e.getMessage());
            }
        }
        return "never full";
    }

    private static void allThere(Store store, List<Thing> things, List<String> texts) {
        assertThat(things).isNotEmpty();
        for (int i = 0; i < things.size(); i++) {
            assertThat(store.now(things.get(i)).orElseThrow().text()).isEqualTo(texts.get(i));
        }
    }

    @Test
    void aDiskThatIsFullFromTheFirstIsTold() throws Exception {
        onSmallDisk(disk -> {
            Files.write(disk.resolve("ballast"), new byte[2 * 1024 * 1024 - 20_000]);
            assertThatThrownBy(() -> Database.open(new Address.Folder(disk.resolve("room"))))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("the disk is full");
            Files.delete(disk.resolve("ballast"));
            Database.open(new Address.Folder(disk.resolve("room"))).close();
        });
    }

    @Test
    void whatMayNotBeWrittenIsTold() throws Exception {
        onSmallDisk(disk -> {
            Address.Folder at = new Address.Folder(disk.resolve("room"));
            try (Database database = Database.open(at)) {
                new Store(database, Clock.systemUTC()).save(Edit.fresh(Kind.BOOT, "a", "a", Links.NONE));
            }
            assertThat(run("mount", "-o", "remount,ro", disk.toString())).isTrue();
            long began = System.nanoTime();
            for (Path folder : List.of(at.path(), disk.resolve("other"))) {
                assertThatThrownBy(() -> Database.open(new Address.Folder(folder)))
                        .isInstanceOf(BadInput.class)
                        .hasMessageContaining("may not be written");
            }
            assertThat(System.nanoTime() - began).isLessThan(TimeUnit.SECONDS.toNanos(5));
            assertThat(run("mount", "-o", "remount,rw", disk.toString())).isTrue();
            try (Database database = Database.open(at)) {
                assertThat(new Store(database, Clock.systemUTC()).named(Kind.BOOT, "a"))
                        .isPresent();
            }
        });
    }
}
