package stretchwright.workroom.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.workroom.archive.Archived.in;
import static stretchwright.workroom.archive.Archived.out;
import static stretchwright.workroom.archive.Archived.thing;

import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/** Another workroom comes in as one step: what is new, what says something else, what is the same. */
@Tag("slow")
class MergeTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";

    @ParameterizedTest
    @MethodSource(ALL)
    void anotherWorkroomComesInAsOneStep(Address address) {
        try (Database one = Database.open(Databases.folder());
                Database other = Database.open(address)) {
            Store there = new Store(one, Clock.systemUTC());
            Thing ada = thing(there.save(Edit.fresh(Kind.WEARER, "Ada", "hip: 96", Links.NONE)));
            there.save(Edit.after(ada, "Ada", "hip: 97"));
            there.save(Edit.fresh(Kind.MAKE, "Evening", "e", new Links("", ada.id(), "", "", "")));
            Thing gone = thing(there.save(Edit.fresh(Kind.BOOT, "Gone", "g", Links.NONE)));
            there.move("bin", List.of(gone.id()), Place.BIN);
            Store here = new Store(other, Clock.systemUTC());
            Thing own = thing(here.save(Edit.fresh(Kind.WEARER, "ADA", "hip: 95", Links.NONE)));
            byte[] before = out(here);

            Merge merge = Merge.of(here, there);
            assertThat(merge.fresh()).extracting(Thing::name).containsExactly("Evening");
            assertThat(merge.others()).extracting(o -> o.coming().text()).containsExactly("hip: 97");
            assertThat(out(here)).isEqualTo(before);

            merge.take(false);
            assertThat(here.now(here.thing(own.id()).orElseThrow())
                            .orElseThrow()
                            .text())
                    .isEqualTo("hip: 95");
            assertThat(here.named(Kind.MAKE, "Evening").orElseThrow().links().wearer())
                    .isEqualTo(own.id());
            here.undo();
            assertThat(here.named(Kind.MAKE, "Evening")).isEmpty();
            assertThat(here.count(Kind.BOOT, Place.BIN)).isZero();
            here.redo();
            Merge.of(here, there).take(true);
            assertThat(here.now(here.thing(own.id()).orElseThrow())
                            .orElseThrow()
                            .text())
                    .isEqualTo("hip: 97");
            assertThat(here.versions(own.id())).hasSize(2);
            assertThat(Merge.of(here, there).take(true)).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatLiesInTheBinOrWasUndoneComesInAgain(Address address) {
        try (Database one = Database.open(address);
                Database other = Database.open(Databases.folder())) {
            Store here = new Store(one, Clock.systemUTC());
            Thing high = thing(here.save(Edit.fresh(Kind.BOOT, "High", "h", Links.NONE)));
            here.save(Edit.fresh(Kind.BOOT, "Low", "l", Links.NONE));
            Store there = new Store(other, Clock.systemUTC());
            in(out(here), there);
            here.undo();
            here.move("bin", List.of(high.id()), Place.BIN);
            Merge merge = Merge.of(here, there);
            assertThat(merge.fresh()).extracting(Thing::name).containsExactlyInAnyOrder("High", "Low");
            merge.take(false);
            assertThat(here.list(Kind.BOOT, Place.HERE, "", 0, 9))
                    .extracting(Thing::name)
                    .containsExactlyInAnyOrder("High", "Low");
            one.mustBeSound();
            here.undo();
            assertThat(here.thing(high.id()).orElseThrow().place()).isEqualTo(Place.BIN);
            assertThat(here.named(Kind.BOOT, "Low")).isEmpty();
            one.mustBeSound();
        }
    }

    /** Else her makes would stand under the wearer of before, and be forgotten with her. */
    @Test
    void whatIsReplacedIsLinkedAsItCame() {
        try (Database one = Database.open(Databases.folder());
                Database other = Database.open(Databases.folder())) {
            Store here = new Store(one, Clock.systemUTC());
            Thing ada = thing(here.save(Edit.fresh(Kind.WEARER, "Ada", "a", Links.NONE)));
            here.save(Edit.fresh(Kind.MAKE, "Evening", "e", new Links("", ada.id(), "", "", "")));
            Store there = new Store(other, Clock.systemUTC());
            Thing bo = thing(there.save(Edit.fresh(Kind.WEARER, "Bo", "b", Links.NONE)));
            there.save(Edit.fresh(Kind.MAKE, "Evening", "other", new Links("", bo.id(), "", "", "")));
            Merge.of(here, there).take(true);
            assertThat(here.named(Kind.MAKE, "Evening").orElseThrow().links().wearer())
                    .isEqualTo(bo.id());
        }
    }
}
