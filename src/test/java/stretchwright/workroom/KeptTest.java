package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/** Which versions of a make were kept, and under which numbers. */
@Tag("slow")
class KeptTest {
    @ParameterizedTest
    @MethodSource("stretchwright.workroom.store.Databases#all")
    void numbersCountWhatWasKept(Address address) {
        try (Workroom room = Workroom.open(address)) {
            Store store = room.store();
            Thing make = Rooms.with(room, "evening-practice");
            Version first = room.standing(make);
            assertThat(Kept.of(store, make).versions()).containsExactly(first);
            assertThat(Kept.keep(store, make).versions())
                    .as("it is kept always")
                    .containsExactly(first);
            Thing third = changed(room, changed(room, make, 2), 3);
            assertThat(Kept.of(store, third).number(3)).isEmpty();
            Kept kept = Kept.keep(store, third);
            assertThat(kept.last().number()).isEqualTo(3);
            assertThat(kept.number(1)).hasValue(1);
            assertThat(kept.number(2)).isEmpty();
            assertThat(kept.number(3)).hasValue(2);
            assertThat(Kept.keep(store, third)).isEqualTo(kept);
            assertThat(store.from(make.id(), Kind.NOTE)).as("none twice").hasSize(1);
        }
        try (Workroom again = Workroom.open(address)) {
            Thing make = again.needMake("Evening practice").thing();
            assertThat(Kept.of(again.store(), make).versions())
                    .extracting(Version::number)
                    .containsExactly(1L, 3L);
        }
    }

    /** Who keeps an older version later on does not change the numbers that were told before. */
    @Test
    void numbersStayAsTheyWereTold() {
        try (Workroom room = Workroom.open(stretchwright.workroom.store.Databases.folder())) {
            Store store = room.store();
            Thing third = changed(room, changed(room, Rooms.with(room, "evening-practice"), 2), 3);
            Kept.keep(store, third);
            later();
            Thing second = store.stand(
                    "back", third, store.earlier(third).orElseThrow().number());
            assertThat(Kept.keep(store, second).versions())
                    .extracting(Version::number)
                    .containsExactly(1L, 3L, 2L);
            store.undo();
            store.undo();
            assertThat(Kept.of(store, third).last().number()).isEqualTo(3);
            room.note(third, Kept.KEPT, "no number");
            room.note(third, Kept.KEPT, "99");
            assertThat(Kept.of(store, third).versions())
                    .extracting(Version::number)
                    .containsExactly(1L, 3L);
        }
    }

    /** By the clock's next moment. */
    private static void later() {
        long now = System.currentTimeMillis();
        while (System.currentTimeMillis() == now) {
            Thread.onSpinWait();
        }
    }

    private static Thing changed(Workroom room, Thing make, int number) {
        return room.change("save", make, room.standing(make).text() + "# " + number + "\n");
    }
}
