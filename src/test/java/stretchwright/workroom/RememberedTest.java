package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/** What is remembered of a make besides its text. */
class RememberedTest {
    @Test
    void aPlaceIsReadAsItWasWritten() {
        SewingPlace place = new SewingPlace(6, true, 17, 40, "hem the key pocket");
        assertThat(SewingPlace.of(place.text())).contains(place);
        assertThat(new SewingPlace(18, false, 17, 0, "").isEnded()).isTrue();
        assertThat(SewingPlace.of(new SewingPlace(18, false, 17, 0, "").text().strip()))
                .isPresent();
        assertThat(SewingPlace.of("")).isEmpty();
        assertThat(SewingPlace.of("six of seventeen")).isEmpty();
        assertThat(SewingPlace.of("99999 0 3 1 x")).isEmpty();
    }

    /** Two devices count at once; by hand: 2 times 10 are 20, and none is lost. */
    @Test
    void whoeverGoesOnAtTheSameMomentLosesNothing() throws Exception {
        try (Workroom room = Workroom.open(Databases.folder())) {
            Store store = room.store();
            Thing make = Rooms.with(room, "evening-practice");
            assertThat(Remembered.of(store, make, Remembered.SEWING)).isEmpty();
            ExecutorService two = Executors.newFixedThreadPool(2);
            for (int i = 0; i < 20; i++) {
                two.submit(() -> Remembered.update(store, make, Remembered.SEWING, RememberedTest::more));
            }
            two.shutdown();
            assertThat(two.awaitTermination(20, TimeUnit.SECONDS)).isTrue();
            assertThat(Remembered.of(store, make, Remembered.SEWING)).contains("20");
            assertThat(store.from(make.id(), Kind.NOTE).stream().allMatch(Remembered::isMemory))
                    .isTrue();
            assertThat(room.standing(make).number())
                    .as("the make is not changed")
                    .isEqualTo(1);
        }
    }

    private static String more(String now) {
        return Integer.toString(now.isEmpty() ? 1 : Integer.parseInt(now) + 1);
    }
}
