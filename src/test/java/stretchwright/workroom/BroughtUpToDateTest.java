package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import stretchwright.body.Measure;
import stretchwright.ground.BadInput;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Thing;

/** A make takes over what became of its wearer, cloth and boot; and how old measures are. */
class BroughtUpToDateTest {
    private static final String LEARNT = "\nlearnt:\n  wearer:\n    hip growth: 12 %\n";

    private static Workroom.Stored stored(Workroom room, Thing make) {
        return room.make(make.name()).orElseThrow();
    }

    private static Thing thing(Workroom room, String id) {
        return room.store().thing(id).orElseThrow();
    }

    @Test
    void theMakeHasTheNewMeasureAndAllElseAsItWasAndBothAreOneStep() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "evening-practice");
            room.change("learn", make, room.standing(make).text() + LEARNT);
            Thing wearer = thing(room, make.links().wearer());
            String text = room.standing(wearer).text().replaceFirst("calf girth: .*", "calf girth: 36.9 cm");
            room.change("measure", wearer, text, stored(room, make));
            Workroom.Stored now = stored(room, make);
            assertThat(now.read().given()).containsEntry(Measure.CALF_GIRTH, 369.0);
            assertThat(now.read().boot()).isPresent();
            assertThat(now.version().text()).contains("hip growth");
            assertThat(room.with(now, wearer)).doesNotContain("36.9"); // the wearer as she was seen
            room.store().undo();
            assertThat(stored(room, make).read().given().get(Measure.CALF_GIRTH))
                    .isNotEqualTo(369.0);
            assertThat(room.standing(thing(room, wearer.id())).text()).doesNotContain("36.9");
        }
    }

    @Test
    void whatWearTaughtOfAClothIsLeftWhereItIsTestedAnewAndStaysWhereOnlyItsLengthChanges() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "evening-practice");
            room.change("learn", make, room.standing(make).text() + LEARNT);
            Thing cloth = thing(room, make.links().fabric());
            String text = room.standing(cloth).text();
            Workroom.Stored before = stored(room, make);
            assertThat(room.with(before, cloth, text.replaceFirst("price: .*", "price: 99 per m")))
                    .contains("hip growth", "99");
            assertThat(room.with(before, cloth, text.replaceFirst("stretch across: .*", "stretch across: 33 %")))
                    .contains("33 %")
                    .doesNotContain("hip growth");
        }
    }

    @Test
    void anotherWearerIsLinkedAndWhatWearTaughtOfTheOneBeforeIsNotHers() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "evening-practice");
            room.change("learn", make, room.standing(make).text() + LEARNT);
            Thing other = thing(room, Rooms.with(room, "hockey-boots").links().wearer());
            room.change("measure", other, room.standing(other).text(), stored(room, make));
            assertThat(thing(room, make.id()).links().wearer()).isEqualTo(other.id());
            assertThat(stored(room, make).read().wearer()).isEqualTo("Alex");
            assertThat(stored(room, make).version().text()).doesNotContain("hip growth");
        }
    }

    @Test
    void whereTheMakeWasChangedMeanwhileNeitherStands() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "evening-practice");
            Workroom.Stored seen = stored(room, make);
            Thing wearer = thing(room, make.links().wearer());
            room.change("change", make, room.standing(make).text().replace("hold: medium", "hold: light"));
            String text = room.standing(wearer).text().replaceFirst("calf girth: .*", "calf girth: 36.9 cm");
            assertThatThrownBy(() -> room.change("measure", wearer, text, seen)).isInstanceOf(BadInput.class);
            assertThat(room.standing(thing(room, wearer.id())).text()).doesNotContain("36.9");
        }
    }

    @Test
    void aMeasureIsAsOldAsTheDayOnWhichItCameAndThoseOfBeforeAsTheWearerSays() {
        Address at = Databases.folder();
        String wearer;
        try (Workroom room = Workroom.open(at, Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC))) {
            Thing thing = thing(room, Rooms.with(room, "roller-child").links().wearer());
            wearer = thing.id();
            room.change(
                    "save",
                    thing,
                    room.standing(thing).text().replace("wearer:", "wearer:\n  measured on: 2026-05-20"));
        }
        try (Workroom room = Workroom.open(at, Rooms.NOVEMBER)) {
            Thing thing = thing(room, wearer);
            String text = room.standing(thing).text().replaceFirst("calf girth: .*", "calf girth: 27.7 cm");
            Taken taken = Taken.of(room, room.change("measure", thing, text));
            LocalDate today = LocalDate.of(2026, 11, 30);
            assertThat(taken.days()).containsEntry(Measure.CALF_GIRTH, today);
            assertThat(taken.days()).containsEntry(Measure.STATURE, LocalDate.of(2026, 5, 20));
            assertThat(taken.oldest()).contains(LocalDate.of(2026, 5, 20));
            assertThat(taken.due(Period.ofMonths(3), today))
                    .contains(Measure.STATURE)
                    .doesNotContain(Measure.CALF_GIRTH);
            String bare = text.replace("27.7 cm", "27.7");
            assertThat(room.own(Kind.WEARER, bare)).isEqualTo(room.own(Kind.WEARER, text));
        }
    }
}
