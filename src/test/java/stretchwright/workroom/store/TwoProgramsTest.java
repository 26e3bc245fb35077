package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;

/** Several programs on one database at once: each save stands, and who must wait too long is told. */
@Tag("slow")
class TwoProgramsTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";
    private static final int THREADS = 8;
    private static final int SAVES = 15;

    private static <T> List<T> atOnce(List<Callable<T>> work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(work.size());
        CountDownLatch begin = new CountDownLatch(1);
        try {
            List<Future<T>> all = new ArrayList<>();
            for (Callable<T> one : work) {
                all.add(threads.submit(() -> {
                    begin.await();
                    return one.call();
                }));
            }
            begin.countDown();
            List<T> out = new ArrayList<>();
            for (Future<T> one : all) {
                out.add(one.get(120, TimeUnit.SECONDS));
            }
            return out;
        } finally {
            threads.shutdownNow();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void eachSaveOfEachThreadStands(Address address) throws Exception {
        try (Database one = Database.open(address);
                Database other = Database.open(address)) {
            List<Callable<Integer>> work = new ArrayList<>();
            for (int i = 0; i < THREADS; i++) {
                Store store = new Store(i % 2 == 0 ? one : other, Clock.systemUTC());
                int thread = i;
                work.add(() -> saved(store, thread));
            }
            atOnce(work);
            one.mustBeSound();
            Store store = new Store(one, Clock.systemUTC());
            assertThat(store.count(Kind.MAKE, Place.HERE)).isEqualTo(THREADS * SAVES);
            assertThat(store.steps(10_000))
                    .extracting(Step::number)
                    .containsExactlyElementsOf(LongStream.rangeClosed(1, 2L * THREADS * SAVES)
                            .map(n -> 2L * THREADS * SAVES + 1 - n)
                            .boxed()
                            .toList());
        }
    }

    private static int saved(Store store, int thread) {
        for (int k = 0; k < SAVES; k++) {
            String name = "Make " + thread + " " + k;
            Saved first = store.save(Edit.fresh(Kind.MAKE, name, "first", Links.NONE));
            Thing made = ((Saved.Stored) first).thing();
            assertThat(store.save(Edit.after(made, name, "second".repeat(500)))).isInstanceOf(Saved.Stored.class);
            assertThat(store.named(Kind.MAKE, name)).isPresent();
        }
        return SAVES;
    }

    @Test
    void anotherProgramSavesIntoTheSameFile() throws Exception {
        Address.Folder at = Databases.folder();
        try (Database database = Database.open(at)) {
            Store store = new Store(database, Clock.systemUTC());
            Killing.Running saver = Killing.loadedBeside(11);
            saver.tell(at);
            saver.await("open");
            int others = 0;
            for (int i = 0; i < 4000 && (i < 40 || others < 6); i++) {
                others = store.steps(10_000).size() - i;
                store.save(Edit.fresh(Kind.STYLE, "Style " + i, "text".repeat(1000), Links.NONE));
            }
            assertThat(Files.readString(saver.told())).doesNotContain("failed").doesNotContain("closed");
            saver.process().destroyForcibly().waitFor();
            assertThat(others).as("the other came to its turn").isGreaterThanOrEqualTo(6);
            database.mustBeSound();
            Files.delete(saver.told());
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void aFreshOneIsOpenedByManyAtOnce(Address address) throws Exception {
        List<Killing.Running> programs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            programs.add(Killing.loadedBeside(i));
        }
        for (Killing.Running program : programs) {
            program.await("ready");
        }
        for (Killing.Running program : programs) {
            program.tell(address);
        }
        List<Callable<Integer>> threads = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int thread = i;
            threads.add(() -> {
                try (Database database = Database.open(address)) {
                    return saved(new Store(database, Clock.systemUTC()), thread);
                }
            });
        }
        assertThat(atOnce(threads)).containsOnly(SAVES);
        for (Killing.Running program : programs) {
            program.await("open");
            assertThat(Files.readString(program.told())).contains("open").doesNotContain("closed");
            program.process().destroyForcibly().waitFor();
            Files.delete(program.told());
        }
        try (Database database = Database.open(address)) {
            database.mustBeSound();
        }
    }

    @Test
    void whoHoldsTheFileTooLongIsTold() throws Exception {
        Address.Folder at = Databases.folder();
        try (Database database = Database.open(at);
                Connection other = DriverManager.getConnection("jdbc:sqlite:" + at.file());
                Statement statement = other.createStatement()) {
            Store store = new Store(database, Clock.systemUTC());
            store.save(Edit.fresh(Kind.BOOT, "a", "a", Links.NONE));
            statement.execute("BEGIN IMMEDIATE");
            assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, "b", "b", Links.NONE)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("another program is writing");
            assertThat(store.count(Kind.BOOT, Place.HERE)).isEqualTo(1);
            statement.execute("COMMIT");
            store.save(Edit.fresh(Kind.BOOT, "b", "b", Links.NONE));
            assertThat(store.steps(9)).hasSize(2);
        }
    }

    /** Else each save would wait for it, and others that want to save would be told that the file is busy. */
    @Test
    void whoReadsForLongHoldsUpNobody() throws Exception {
        Address.Folder at = Databases.folder();
        try (Database database = Database.open(at)) {
            Store store = new Store(database, Clock.systemUTC());
            long began = System.nanoTime();
            database.read(h -> {
                for (int i = 0; i < 5; i++) {
                    store.save(Edit.fresh(Kind.BOOT, "Boot " + i, "b", Links.NONE));
                }
                return h;
            });
            assertThat(System.nanoTime() - began).isLessThan(TimeUnit.SECONDS.toNanos(5));
        }
    }

    /** Then traces stay until the file is next opened, and no longer. */
    @Test
    void whatIsForgottenWhileSomebodyReadsIsSweptLater() throws Exception {
        Address.Folder at = Databases.folder();
        try (Database database = Database.open(at)) {
            Store store = new Store(database, Clock.systemUTC());
            Saved saved = store.save(Edit.fresh(Kind.WEARER, "Wilhelmina", "hip: 101.37", Links.NONE));
            database.read(
                    h -> store.forget(List.of(((Saved.Stored) saved).thing().id())));
            assertThat(store.count(Kind.WEARER, Place.HERE)).isZero();
            assertThat(database.owesSweeping()).isTrue();
        }
        try (Database database = Database.open(at)) {
            assertThat(database.owesSweeping()).isFalse();
            try (var files = Files.list(at.path())) {
                for (Path file : files.toList()) {
                    assertThat(new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1))
                            .doesNotContain("Wilhelmina")
                            .doesNotContain("101.37");
                }
            }
        }
    }

    @Test
    void theFileIsItsOwnersAloneInAFolderThatOthersRead() throws Exception {
        Address.Folder at = Databases.folder();
        Files.createDirectories(at.path());
        try (Database database = Database.open(at)) {
            new Store(database, Clock.systemUTC()).save(Edit.fresh(Kind.BOOT, "a", "a", Links.NONE));
            for (String name : List.of("workroom.db", "workroom.db-wal")) {
                assertThat(java.nio.file.attribute.PosixFilePermissions.toString(
                                Files.getPosixFilePermissions(at.path().resolve(name))))
                        .isEqualTo("rw-------");
            }
        }
    }
}
