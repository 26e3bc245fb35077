package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;
import stretchwright.ground.Voice;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** A make file on its way in: what is new, what is the same, what would be overwritten. */
class IncomingTest {
    private static byte[] changed(String from, String to) {
        return new String(Rooms.example("evening-practice"), StandardCharsets.UTF_8)
                .replace(from, to)
                .getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void itComesWithItsThingsAsOneStep() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "evening-practice");
            assertThat(room.standing(make).text())
                    .isEqualTo(new String(Rooms.example("evening-practice"), StandardCharsets.UTF_8));
            assertThat(room.need(Kind.WEARER, "rowan").id())
                    .isEqualTo(make.links().wearer());
            assertThat(room.need(Kind.FABRIC, "heavy performance knit, ink").id())
                    .isEqualTo(make.links().fabric());
            assertThat(room.need(Kind.BOOT, "figure skate, rowan").id())
                    .isEqualTo(make.links().boot());
            room.store().undo();
            for (Kind kind : Kind.values()) {
                assertThat(room.store().list(kind, Place.HERE, "", 0, 9)).isEmpty();
            }
        }
    }

    /** What nobody has is not on the shelf: it is not listed, cannot be cut from, and leaves no remnant. */
    @Test
    void assumedClothDoesNotComeIntoTheStash() {
        try (Workroom room = Rooms.fresh()) {
            String text = new String(Rooms.example("evening-practice"), StandardCharsets.UTF_8)
                    .replaceAll("(?s)\nfabric:\n.*?\nboot:", "\nfabric: {name: Ink, usual: true}\nboot:");
            Thing make = room.incoming("a.yaml", text.getBytes(StandardCharsets.UTF_8))
                    .take(Incoming.Same.ASK);
            assertThat(make.links().fabric()).isEmpty();
            assertThat(room.store().list(Kind.FABRIC, Place.HERE, "", 0, 9)).isEmpty();
            Cutting.Cut cut = new Cutting(room, room.needMake("Evening practice")).run(false);
            assertThat(cut.cloth()).isEmpty();
            assertThat(cut.remnants()).isEmpty();
            assertThat(cut.used()).isGreaterThan(1000);
        }
    }

    @Test
    void broughtAgainItIsNoStep() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "evening-practice");
            assertThat(Rooms.with(room, "evening-practice")).isEqualTo(make);
            assertThat(room.store().steps(9)).hasSize(1);
        }
    }

    @Test
    void nothingIsOverwrittenInSilence() {
        try (Workroom room = Rooms.fresh()) {
            Thing before = Rooms.with(room, "evening-practice");
            Incoming other = room.incoming("b.yaml", changed("hip girth: 96.1", "hip girth: 97.3"));
            assertThat(other.overwrites()).isTrue();
            assertThat(other.items())
                    .filteredOn(i -> i.kind() == Kind.WEARER)
                    .singleElement()
                    .satisfies(i -> assertThat(Voice.plain().say(i.differences().get(0)))
                            .isEqualTo("wearer.measurements.hip girth: \"96.1 cm\" becomes \"97.3 cm\""));
            assertThatThrownBy(() -> other.take(Incoming.Same.ASK))
                    .isInstanceOfSatisfying(
                            BadInput.class, e -> assertThat(e.findings()).hasSize(2));
            assertThat(room.store().thing(before.id())).contains(before);
            assertThat(other.take(Incoming.Same.KEEP)).isEqualTo(before);
            assertThat(room.store().steps(9)).hasSize(1);
            Thing after = other.take(Incoming.Same.REPLACE);
            assertThat(after.now()).isEqualTo(2);
            assertThat(room.store().versions(after.links().wearer())).hasSize(2);
            assertThat(room.standing(after).text()).contains("97.3");
        }
    }

    @Test
    void anotherMakeOfTheSameWearerUsesWhatIsThere() {
        try (Workroom room = Rooms.fresh()) {
            Thing one = Rooms.with(room, "evening-practice");
            Thing two = room.incoming("c.yaml", changed("name: Evening practice", "name: Morning practice"))
                    .take(Incoming.Same.ASK);
            assertThat(two.id()).isNotEqualTo(one.id());
            assertThat(two.links().wearer()).isEqualTo(one.links().wearer());
            assertThat(room.store().count(Kind.WEARER, Place.HERE)).isEqualTo(1);
            assertThat(room.forget(room.need(Kind.WEARER, "Rowan"))).isEqualTo(6);
            for (Kind kind : new Kind[] {Kind.MAKE, Kind.WEARER, Kind.BOOT, Kind.STYLE}) {
                assertThat(room.store().count(kind, Place.HERE)).as(kind.word()).isZero();
            }
            assertThat(room.store().count(Kind.FABRIC, Place.HERE)).isEqualTo(1);
        }
    }

    @Test
    void whatIsNoMakeFileIsNotStored() {
        try (Workroom room = Rooms.fresh()) {
            for (String text : new String[] {"", "stretchwright: 1", "{", "name: [", "\u0000", "a: b: c"}) {
                assertThatThrownBy(() -> room.incoming("x.yaml", text.getBytes(StandardCharsets.UTF_8)))
                        .isInstanceOf(BadInput.class);
            }
            assertThat(room.store().steps(9)).isEmpty();
        }
    }

    @Test
    void ofTwoWhoChangeOneThingTheSecondIsToldAndShownBoth() {
        try (Workroom room = Rooms.fresh()) {
            Thing seen = Rooms.with(room, "evening-practice");
            String text = room.standing(seen).text();
            room.change("save", seen, text.replace("hold: medium", "hold: firm"));
            assertThatThrownBy(() -> room.change("save", seen, text.replace("hold: medium", "hold: light")))
                    .isInstanceOfSatisfying(
                            BadInput.class,
                            e -> assertThat(e.findings().stream()
                                            .map(f -> f.line())
                                            .toList()
                                            .toString())
                                    .contains("version 2 stands", "version 3", "firm", "light"));
            assertThat(room.store().versions(seen.id())).hasSize(3);
        }
    }
}
