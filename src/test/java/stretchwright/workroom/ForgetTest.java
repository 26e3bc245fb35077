package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** Who is forgotten leaves no letter of her name or her measures in any file of the workroom. */
@Tag("slow")
class ForgetTest {
    private static byte[] changed(String... pairs) {
        String text = new String(Rooms.example("evening-practice"), StandardCharsets.UTF_8);
        for (int i = 0; i < pairs.length; i += 2) {
            assertThat(text).contains(pairs[i]);
            text = text.replace(pairs[i], pairs[i + 1]);
        }
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void assertNoTrace(Address.Folder at, String... words) throws java.io.IOException {
        try (Stream<Path> files = Files.walk(at.path())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                assertThat(List.of(words).stream().filter(text::contains).toList())
                        .as(file.getFileName().toString())
                        .isEmpty();
            }
        }
    }

    @Test
    void whatWasUndoneIsForgottenToo() throws java.io.IOException {
        Address.Folder at = Databases.folder();
        try (Workroom room = Workroom.open(at, Rooms.NOVEMBER)) {
            room.incoming("a.yaml", changed("hip girth: 96.1", "hip girth: 98.7"))
                    .take(Incoming.Same.ASK);
            room.store().undo();
            Rooms.with(room, "evening-practice");
            room.forget(room.need(Kind.WEARER, "Rowan"));
        }
        assertNoTrace(at, "Rowan", "98.7", "96.1");
    }

    @Test
    void bootsAndStylesOfEarlierVersionsGoToo() throws java.io.IOException {
        Address.Folder at = Databases.folder();
        try (Workroom room = Workroom.open(at, Rooms.NOVEMBER)) {
            Rooms.with(room, "evening-practice");
            room.incoming("a.yaml", changed("kind: figure skate", "kind: hockey skate"))
                    .take(Incoming.Same.REPLACE);
            room.forget(room.need(Kind.WEARER, "Rowan"));
        }
        assertNoTrace(at, "Rowan", "Evening");
    }

    @Test
    void bootsThatAreCalledByHerNameGoWithoutAMakeToo() throws java.io.IOException {
        Address.Folder at = Databases.folder();
        try (Workroom room = Workroom.open(at, Rooms.NOVEMBER)) {
            Thing make = Rooms.with(room, "evening-practice");
            room.forget(make);
            room.forget(room.need(Kind.WEARER, "Rowan"));
            assertThat(room.store().count(Kind.FABRIC, Place.HERE)).isEqualTo(1);
        }
        assertNoTrace(at, "Rowan");
    }

    /** The make of the other keeps its own text, with the boot in it. */
    @Test
    void anothersMakeOverHerBootStays() throws java.io.IOException {
        Address.Folder at = Databases.folder();
        try (Workroom room = Workroom.open(at, Rooms.NOVEMBER)) {
            Thing make = Rooms.with(room, "evening-practice");
            Thing boot = room.need(Kind.BOOT, "figure skate, Rowan");
            Thing kim = room.incoming("k.yaml", changed("Rowan", "Kim", "name: Evening practice", "name: Kim's"))
                    .take(Incoming.Same.ASK);
            room.store()
                    .save(stretchwright.workroom.store.Edit.after(
                                    kim, kim.name(), room.standing(kim).text())
                            .with(new stretchwright.workroom.store.Links(
                                    make.id(), kim.links().wearer(), "", boot.id(), "")));
            room.forget(room.need(Kind.WEARER, "Rowan"));
            Thing still = room.need(Kind.MAKE, "Kim's");
            assertThat(still.links().boot()).isEmpty();
            assertThat(room.make("Kim's").orElseThrow().read().boot()).isPresent();
        }
        assertNoTrace(at, "Rowan");
    }
}
