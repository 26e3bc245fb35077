package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.workroom.jobs.Jobs;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/**
 * One sample of each format, kept from the day it was first written: every later version of the program reads it. A new format
 * adds a sample and changes none. Of archives: ArchiveTest. The database's sample is written by -Dformats.write=true.
 */
@Tag("slow")
class KeptFormatsTest {
    private static final Path KEPT = Path.of("src/test/cases/workroom");

    @Test
    void theFirstMakeFileStaysReadable() throws IOException {
        MakeFile make = Make.read("make-1.yaml", Files.readAllBytes(KEPT.resolve("make-1.yaml")));
        assertThat(make.name()).isEqualTo("Kept");
        assertThat(make.given()).hasSize(17);
    }

    @Test
    void theFirstDatabaseStaysReadable() throws IOException {
        Path kept = KEPT.resolve("workroom-2.db");
        if (Boolean.getBoolean("formats.write")) {
            write(kept);
        }
        Address.Folder folder = Databases.folder();
        Files.createDirectories(folder.path());
        Files.copy(kept, folder.file());
        try (Workroom room = Workroom.open(folder, Rooms.NOVEMBER)) {
            room.store().database().mustBeSound();
            Thing make = room.need(Kind.MAKE, "kept");
            assertThat(room.store().versions(make.id())).hasSize(2);
            assertThat(room.standing(make).text()).contains("hold: firm");
            assertThat(room.make("Kept@1").orElseThrow().read().name()).isEqualTo("Kept");
            assertThat(room.store().from(make.id(), Kind.NOTE)).hasSize(1);
            assertThat(room.store().count(Kind.STYLE, Place.BIN)).isEqualTo(1);
            assertThat(Jobs.open(room.store().database()).list(9)).isEmpty();
            room.store().undo();
            assertThat(room.store().count(Kind.STYLE, Place.BIN)).isZero();
            room.note(make, "note", "still written into");
        }
    }

    private static void write(Path kept) throws IOException {
        Address.Folder folder = Databases.folder();
        try (Workroom room = Workroom.open(folder, Rooms.NOVEMBER)) {
            Thing make = room.incoming("make-1.yaml", Files.readAllBytes(KEPT.resolve("make-1.yaml")))
                    .take(Incoming.Same.ASK);
            room.note(make, "after wearing", "the band stayed");
            Thing now = room.change("save", make, room.standing(make).text().replace("hold: medium", "hold: firm"));
            room.store().move("bin", java.util.List.of(now.links().style()), Place.BIN);
        }
        Files.deleteIfExists(kept);
        Files.copy(folder.file(), kept);
    }
}
