package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.Document;
import stretchwright.ground.Progress;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Databases;

/** Every make of the examples, saved, opened again and made, gives the same bytes. */
@Tag("slow")
class ExamplesStoredTest {
    static Stream<String> examples() throws java.io.IOException {
        return PartsTest.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void savedOpenedAndMadeItIsTheSame(String example) {
        String text = new String(Rooms.example(example), StandardCharsets.UTF_8);
        Workroom.Stored stored = null;
        for (Address address : Databases.all().toList()) {
            String name;
            try (Workroom room = Workroom.open(address, Rooms.NOVEMBER)) {
                name = Rooms.with(room, example).name();
            }
            try (Workroom room = Workroom.open(address, Rooms.NOVEMBER)) {
                stored = room.make(name).orElseThrow();
                assertThat(stored.version().text()).isEqualTo(text);
            }
        }
        Made direct = Make.run(Make.read("examples/" + example + ".yaml", Rooms.example(example)), Progress.silent());
        Made made = Make.run(Objects.requireNonNull(stored).read(), Progress.silent());
        assertThat(made.documents()).hasSameSizeAs(direct.documents());
        for (int i = 0; i < made.documents().size(); i++) {
            Document one = made.documents().get(i);
            assertThat(one.name()).isEqualTo(direct.documents().get(i).name());
            assertThat(one.bytes())
                    .as(one.name())
                    .isEqualTo(direct.documents().get(i).bytes());
        }
    }
}
