package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stretchwright.workroom.store.Databases.at;
import static stretchwright.workroom.store.Databases.stored;

import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;

/** What a store promises, on every database alike. */
@Tag("slow")
class StoreTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";

    @ParameterizedTest
    @MethodSource(ALL)
    void everyVersionIsKept(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1000));
            Thing one = stored(store.save(Edit.fresh(Kind.WEARER, "Linnea", "hip: 96", Links.NONE)));
            Thing two = stored(store.save(Edit.after(one, "Linnea", "hip: 97")));
            assertThat(two.now()).isEqualTo(2);
            assertThat(store.versions(one.id())).extracting(Version::text).containsExactly("hip: 96", "hip: 97");
            assertThat(store.named(Kind.WEARER, "  LINNEA ")).contains(two);
        }
        try (Database again = Database.open(address)) {
            assertThat(new Store(again, at(0)).named(Kind.WEARER, "linnea")).isPresent();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void ofTwoEditorsTheSecondIsShownBoth(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1000));
            Thing seen = stored(store.save(Edit.fresh(Kind.FABRIC, "Ink", "width: 150", Links.NONE)));
            store.save(Edit.after(seen, "Ink", "width: 147"));
            Saved second = store.save(Edit.after(seen, "Ink", "width: 145"));
            assertThat(second).isInstanceOf(Saved.Clash.class);
            Saved.Clash clash = (Saved.Clash) second;
            assertThat(clash.base().text()).isEqualTo("width: 150");
            assertThat(clash.theirs().text()).isEqualTo("width: 147");
            assertThat(clash.yours().text()).isEqualTo("width: 145");
            assertThat(store.versions(seen.id())).hasSize(3);
            assertThat(store.now(store.thing(seen.id()).orElseThrow())
                            .orElseThrow()
                            .text())
                    .isEqualTo("width: 147");
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void stepsAreUndoneAndDoneAgainInALaterSession(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1000));
            Thing one = stored(store.save(Edit.fresh(Kind.BOOT, "High boot", "a", Links.NONE)));
            store.save(Edit.after(one, "Higher boot", "b"));
            store.move("bin", List.of(one.id()), Place.BIN);
        }
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(500));
            assertThat(store.list(Kind.BOOT, Place.HERE, "", 0, 10)).isEmpty();
            assertThat(store.undo().orElseThrow().what()).isEqualTo("bin");
            store.undo();
            assertThat(store.list(Kind.BOOT, Place.HERE, "", 0, 10))
                    .extracting(Thing::name)
                    .containsExactly("High boot");
            store.undo();
            assertThat(store.undo()).isEmpty();
            assertThat(store.count(Kind.BOOT, Place.HERE)).isZero();
            assertThat(store.count(Kind.BOOT, Place.BIN)).isZero();
            store.redo();
            store.redo();
            assertThat(store.named(Kind.BOOT, "higher boot")).isPresent();
            store.save(Edit.fresh(Kind.BOOT, "Low boot", "c", Links.NONE));
            assertThat(store.redo()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void forgottenIsForgotten(Address address) throws Exception {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1000));
            Thing one = stored(store.save(Edit.fresh(Kind.WEARER, "Wilhelmina Quist", "hip: 101.37", Links.NONE)));
            store.save(Edit.fresh(Kind.NOTE, "consent", "Wilhelmina said yes", Links.from(one.id())));
            Thing other = stored(store.save(Edit.fresh(Kind.WEARER, "Other", "hip: 90", Links.NONE)));
            assertThat(store.forget(List.of(one.id()))).isEqualTo(2);
            assertThat(store.thing(one.id())).isEmpty();
            assertThat(store.steps(10)).extracting(Step::about).containsExactly("Other");
            assertThat(store.undo()).isPresent();
            assertThat(store.thing(other.id()).orElseThrow().place()).isEqualTo(Place.NOT_YET);
            if (address instanceof Address.Folder folder) {
                for (String word : List.of("Wilhelmina", "wilhelmina", "101.37")) {
                    try (var files = Files.list(folder.path())) {
                        for (var file : files.toList()) {
                            assertThat(new String(
                                            Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1))
                                    .as(file.getFileName().toString())
                                    .doesNotContain(word);
                        }
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void aClockThatIsSetBackChangesNoOrder(Address address) {
        try (Database database = Database.open(address)) {
            new Store(database, at(5000)).save(Edit.fresh(Kind.STYLE, "First", "a", Links.NONE));
            new Store(database, at(10)).save(Edit.fresh(Kind.STYLE, "Second", "b", Links.NONE));
            Store store = new Store(database, at(20));
            assertThat(store.steps(5)).extracting(Step::about).containsExactly("Second", "First");
            assertThat(store.steps(5)).extracting(Step::at).containsExactly(5000L, 5000L);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatIsFoundIsWhatWasSought(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1000));
            Thing wearer = stored(store.save(Edit.fresh(Kind.WEARER, "Åsa 100%_x", "a", Links.NONE)));
            Links hers = new Links("", wearer.id(), "", "", "");
            store.save(Edit.fresh(Kind.MAKE, "Evening; DROP TABLE thing;--", "b", hers));
            store.save(Edit.fresh(Kind.MAKE, "Morning", "b", Links.NONE));
            assertThat(store.list(Kind.MAKE, Place.HERE, "åSA evening", 0, 9)).hasSize(1);
            assertThat(store.list(Kind.MAKE, Place.HERE, "100%_", 0, 9)).hasSize(1);
            assertThat(store.list(Kind.MAKE, Place.HERE, "1%0", 0, 9)).isEmpty();
            assertThat(store.list(Kind.MAKE, Place.HERE, "'; DROP", 0, 9)).isEmpty();
            assertThat(store.list(Kind.MAKE, Place.HERE, "", 0, 9)).hasSize(2);
            assertThat(store.list(Kind.MAKE, Place.HERE, "", 1, 9)).hasSize(1);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatNoDatabaseKeepsIsAFinding(Address address) {
        try (Database database = Database.open(address)) {
            Store store = new Store(database, at(1000));
            for (String name : List.of("", "  ", "a\nb", "a\u0000", "\ud800", "x".repeat(201))) {
                assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, name, "a", Links.NONE)))
                        .isInstanceOf(BadInput.class);
            }
            for (String text : List.of("a\u0000b", "\udc00", "x".repeat(Names.LONGEST_TEXT + 1))) {
                assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, "a", text, Links.NONE)))
                        .isInstanceOf(BadInput.class);
            }
            String all = "'\";\\ \t\r\n\u0001\u001b\u202e\u2028é𝒳--/*%_";
            Thing kept = stored(store.save(Edit.fresh(Kind.BOOT, "a'\";--é𝒳\u202e", all, Links.NONE)));
            assertThat(store.now(kept).orElseThrow().text()).isEqualTo(all);
            store.save(Edit.fresh(Kind.BOOT, "b", "a", Links.NONE));
            assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, " B ", "a", Links.NONE)))
                    .isInstanceOf(BadInput.class);
            assertThatThrownBy(() -> store.move("bin", List.of("no-such-id"), Place.BIN))
                    .isInstanceOf(BadInput.class);
            assertThatThrownBy(() -> store.forget(List.of("' OR 1=1"))).isInstanceOf(BadInput.class);
            assertThat(store.count(Kind.BOOT, Place.HERE)).isEqualTo(2);
        }
    }

    @Test
    void whatIsNoWorkroomIsLeftAsItIs() throws Exception {
        Address.Folder folder = Databases.folder();
        Files.createDirectories(folder.path());
        Files.writeString(folder.file(), "This was once a letter to a friend, and still is.");
        assertThatThrownBy(() -> Database.open(folder))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("damaged");
        assertThat(folder.file()).hasContent("This was once a letter to a friend, and still is.");
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void aNewerWorkroomIsLeftAsItIs(Address address) {
        try (Database database = Database.open(address)) {
            database.write(h -> h.execute("UPDATE flyway_schema_history SET version = '999'"));
        }
        assertThatThrownBy(() -> Database.open(address))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("newer");
    }
}
