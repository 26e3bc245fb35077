package stretchwright.workroom.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stretchwright.workroom.archive.Archived.fill;
import static stretchwright.workroom.archive.Archived.in;
import static stretchwright.workroom.archive.Archived.out;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
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
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/** A workroom out and in again is an equal one. */
@Tag("slow")
class ArchiveTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";

    /** Kept from now on: every later version of the program reads it. */
    private static final Path KEPT = Path.of("src/test/cases/workroom/archive-1.zip");

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
}
