package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stretchwright.workroom.store.Databases.at;
import static stretchwright.workroom.store.Databases.stored;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;

/** What lies at the edges of what a store takes, alike on every database. */
@Tag("slow")
class StoreEdgeTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";

    @ParameterizedTest
    @MethodSource(ALL)
    void aNameThatUnfoldsIsTooLongOnBothAlike(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, "\ufdfa".repeat(200), "a", Links.NONE)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("longer");
            String widest = "\ud835\udcb3".repeat(100);
            store.save(Edit.fresh(Kind.BOOT, widest, "a", Links.NONE));
            store.save(Edit.fresh(Kind.BOOT, "\u6f22".repeat(200), "a", Links.NONE));
            assertThat(store.named(Kind.BOOT, widest)).isPresent();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatCannotBeThereIsNotFound(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            store.save(Edit.fresh(Kind.BOOT, "a b", "a", Links.NONE));
            for (String odd : List.of("\u0000", "a\u0000b", "\ud800", "x".repeat(150))) {
                assertThat(store.list(Kind.BOOT, Place.HERE, odd, 0, 9)).isEmpty();
                assertThat(store.named(Kind.BOOT, odd)).isEmpty();
                assertThat(store.thing(odd)).isEmpty();
                assertThat(store.versions(odd)).isEmpty();
                assertThat(store.from(odd, Kind.NOTE)).isEmpty();
                assertThatThrownBy(() -> store.forget(List.of(odd))).isInstanceOf(BadInput.class);
                assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, "c", "c", Links.from(odd))))
                        .isInstanceOf(BadInput.class);
            }
            assertThatThrownBy(() -> store.save(
                            Edit.fresh(Kind.BOOT, "c", "c", Links.NONE).with("{\u0000}", "1")))
                    .isInstanceOf(BadInput.class);
            assertThat(store.list(Kind.BOOT, Place.HERE, "a ".repeat(100), 0, 9))
                    .hasSize(1);
            assertThatThrownBy(() -> store.list(Kind.BOOT, Place.HERE, "a ".repeat(60_000), 0, 9))
                    .isInstanceOf(BadInput.class);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void timeDoesNotRunBackAfterAnUndoOrAForgetting(Address address) {
        try (Database database = Database.open(address)) {
            Thing one = stored(new Store(database, at(5000)).save(Edit.fresh(Kind.STYLE, "First", "a", Links.NONE)));
            Thing two = stored(new Store(database, at(6000)).save(Edit.fresh(Kind.STYLE, "Other", "a", Links.NONE)));
            new Store(database, at(8000)).undo();
            new Store(database, at(9000)).redo();
            Store back = new Store(database, at(10));
            Thing three = stored(back.save(Edit.after(one, "First", "b")));
            assertThat(three.changed()).isEqualTo(9000);
            assertThat(back.list(Kind.STYLE, Place.HERE, "", 0, 1)).hasSize(1);
            back.forget(List.of(three.id()));
            assertThat(stored(back.save(Edit.after(two, "Other", "b"))).changed())
                    .isGreaterThanOrEqualTo(9000);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatWasBroughtAndUndoneCanBeBroughtAgain(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            Edit brought = new Edit(
                    "an-id", Kind.FABRIC, 0, "Ink", "width: 150", Links.NONE, Optional.empty(), "", Place.HERE);
            store.save(brought);
            store.undo();
            assertThat(stored(store.save(brought)).place()).isEqualTo(Place.HERE);
            assertThat(store.named(Kind.FABRIC, "Ink")).isPresent();
            store.undo();
            assertThat(store.named(Kind.FABRIC, "Ink")).isEmpty();
            store.redo();
            assertThat(store.named(Kind.FABRIC, "Ink")).isPresent();
            database.mustBeSound();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void aNewOneInAStepThatClashesIsLeftWithWhoBroughtIt(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            Thing cloth = stored(store.save(Edit.fresh(Kind.FABRIC, "Ink", "left: 3", Links.NONE)));
            store.save(Edit.after(cloth, "Ink", "left: 2"));
            List<Saved> saved = store.save(
                    "cut",
                    List.of(
                            Edit.fresh(Kind.FABRIC, "Remnant", "left: 1", Links.from(cloth.id())),
                            Edit.after(cloth, "Ink", "left: 1")));
            assertThat(saved).hasSize(1);
            assertThat(((Saved.Clash) saved.get(0)).yours().text()).isEqualTo("left: 1");
            assertThat(store.named(Kind.FABRIC, "Remnant")).isEmpty();
            assertThat(store.steps(9)).hasSize(2);
            database.mustBeSound();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void noStepIsMadeOfNothing(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            assertThat(store.save("save", List.of())).isEmpty();
            Thing one = stored(store.save(Edit.fresh(Kind.BOOT, "a", "a", Links.NONE)));
            store.move("bin", List.of(one.id(), one.id()), Place.BIN);
            store.move("bin", List.of(), Place.BIN);
            assertThat(store.steps(9)).hasSize(2);
            store.undo();
            assertThat(store.named(Kind.BOOT, "a")).isPresent();
            database.mustBeSound();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void aLetterThatChangedByItselfIsDamage(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1));
            Thing one = stored(store.save(Edit.fresh(Kind.BOOT, "a", "hip: 96", Links.NONE)));
            database.mustBeSound();
            database.write(h -> h.execute("UPDATE version SET text = 'hip: 69'"));
            assertThatThrownBy(() -> store.now(one))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("damaged");
            assertThatThrownBy(database::mustBeSound)
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("damaged");
            database.write(h -> h.execute("UPDATE thing SET kind = 'hat'"));
            assertThatThrownBy(() -> store.thing(one.id())).isInstanceOf(BadInput.class);
            database.write(h -> h.execute("UPDATE step SET state = 9"));
            assertThatThrownBy(() -> store.steps(9)).isInstanceOf(BadInput.class);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatHoldsSomethingElseIsLeftAsItIs(Address address) throws Exception {
        String url = address instanceof Address.Folder folder
                ? "jdbc:sqlite:"
                        + java.nio.file.Files.createDirectories(folder.path()).resolve("workroom.db")
                : "jdbc:postgresql://" + ((Address.Server) address).server();
        try (var connection = java.sql.DriverManager.getConnection(url, "postgres", "");
                var statement = connection.createStatement()) {
            statement.execute("CREATE TABLE letters (text TEXT)");
        }
        byte[] before = address instanceof Address.Folder folder
                ? java.nio.file.Files.readAllBytes(folder.file())
                : new byte[0];
        assertThatThrownBy(() -> Database.open(address))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("something else");
        if (address instanceof Address.Folder folder) {
            assertThat(folder.file()).hasBinaryContent(before);
        }
    }
}
