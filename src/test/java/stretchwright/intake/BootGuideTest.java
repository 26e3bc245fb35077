package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.Voice;

/** How a laced boot is measured, held against the table of keys. */
class BootGuideTest {
    static Stream<Key<?>> measures() {
        return BootGuide.measures().stream();
    }

    @Test
    void theMeasuresAreThoseOfTheTable() {
        assertThat(BootGuide.measures())
                .hasSizeGreaterThan(4)
                .isEqualTo(BootKeys.rows().stream()
                        .filter(k -> !List.of(BootKeys.BOOT, BootKeys.KIND, BootKeys.DRESSING)
                                .contains(k))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("measures")
    void everyMeasureIsToldWithItsPicture(Key<?> key) throws Exception {
        BootGuide guide = BootGuide.of(key.path());
        assertThat(guide.how()).endsWith(".").hasSizeGreaterThan(40);
        assertThat(guide.wrong()).endsWith(".").hasSizeGreaterThan(40);
        assertThat(Path.of("docs/pictures/boot", guide.picture())).exists();
        assertThat(Files.readString(Path.of("docs/measuring.md")))
                .contains("### " + key.name() + "\n", "`" + key.path() + "`", guide.how(), guide.wrong());
    }

    /** What lies near the blade is taken off the foot, with the guard on. */
    @Test
    void bladesAreGuardedAndOffTheFoot() {
        assertThat(BootGuide.text(Voice.plain())).contains("Guards first", "Tape and fingers stay off the edge");
        Stream.of("guard girth", "ankle to sole", "sole length", "sole width", "gap between mounts", "plate length")
                .forEach(name -> assertThat(BootGuide.of("boot." + name).how()).startsWith("Off the foot"));
    }
}
