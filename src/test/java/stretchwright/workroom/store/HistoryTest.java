package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stretchwright.workroom.store.Databases.at;
import static stretchwright.workroom.store.Databases.stored;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;

/** One thing back and forth through its versions, whatever becomes of the others. */
@Tag("slow")
class HistoryTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";

    @ParameterizedTest
    @MethodSource(ALL)
    void itGoesBackToTheFirstAndForthToTheLastOverRestarts(Address address) {
        String id;
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            Thing thing = stored(store.save(Edit.fresh(Kind.MAKE, "Practice", "1", Links.NONE)));
            id = thing.id();
            for (int i = 2; i <= 5; i++) {
                store.save(Edit.fresh(Kind.BOOT, "boot " + i, "of somebody else", Links.NONE));
                thing = stored(store.save(Edit.after(thing, "Practice " + i, Integer.toString(i))));
            }
        }
        for (int i = 4; i >= 1; i--) {
            assertThat(step(address, id, true)).isEqualTo(Integer.toString(i));
        }
        assertThat(step(address, id, true)).isEqualTo("none");
        for (int i = 2; i <= 5; i++) {
            assertThat(step(address, id, false)).isEqualTo(Integer.toString(i));
        }
        assertThat(step(address, id, false)).isEqualTo("none");
    }

    /** In a session of its own. */
    private static String step(Address address, String id, boolean back) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            Thing thing = store.thing(id).orElseThrow();
            store.save(Edit.fresh(Kind.NOTE, "note", "somebody else", Links.NONE));
            return (back ? store.earlier(thing) : store.later(thing))
                    .map(v -> store.stand("stand", thing, v.number()))
                    .map(t -> store.now(t).orElseThrow().text())
                    .orElse("none");
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatIsSavedAfterGoingBackBeginsABranch(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            Thing one = stored(store.save(Edit.fresh(Kind.STYLE, "a", "1", Links.NONE)));
            Thing two = stored(store.save(Edit.after(one, "a", "2")));
            Thing back = store.stand("stand", two, 1);
            Thing three = stored(store.save(Edit.after(back, "a", "3")));
            assertThat(store.earlier(three).orElseThrow().text()).isEqualTo("1");
            assertThat(store.later(three)).isEmpty();
            Thing first = store.stand("stand", three, 1);
            assertThat(store.later(first).orElseThrow().text()).isEqualTo("3");
            Thing second = store.stand("stand", first, 2);
            Thing again = store.stand("stand", second, 1);
            assertThat(store.later(again).orElseThrow().text())
                    .as("the branch where she was")
                    .isEqualTo("2");
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void aVersionDoesNotStandOverWhatSomebodyElseDid(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            Thing seen = stored(store.save(Edit.fresh(Kind.FABRIC, "Ink", "1", Links.NONE)));
            Thing renamed = stored(store.save(Edit.after(seen, "Sky", "2")));
            assertThatThrownBy(() -> store.stand("stand", seen, 1))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("version 2 stands");
            store.save(Edit.fresh(Kind.FABRIC, "ink ", "another", Links.NONE));
            assertThatThrownBy(() -> store.stand("stand", renamed, 1))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("is the name of another one");
            assertThatThrownBy(() -> store.stand("stand", renamed, 7))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("no version 7");
            store.move("bin", List.of(renamed.id()), Place.BIN);
            assertThatThrownBy(() -> store.stand("stand", renamed, 1))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("not here any more");
            store.forget(List.of(renamed.id()));
            assertThatThrownBy(() -> store.stand("stand", renamed, 1)).isInstanceOf(BadInput.class);
            assertThat(store.earlier(renamed)).isEmpty();
            assertThat(store.later(renamed)).isEmpty();
            database.mustBeSound();
        }
    }
}
