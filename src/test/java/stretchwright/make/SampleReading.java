package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;

/** Reads a make file for a test: the file, or what is found wrong with it. */
final class SampleReading {
    private SampleReading() {}

    static MakeFile read(String text) {
        return SampleRooms.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    static List<Finding> findings(byte[] bytes) {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> SampleRooms.read("a.yaml", bytes));
        assertThat(bad).as("the file should have been refused").isNotNull();
        return bad.findings();
    }

    static List<Finding> findings(String text) {
        return findings(text.getBytes(StandardCharsets.UTF_8));
    }

    static Finding only(String text) {
        List<Finding> all = findings(text);
        assertThat(all).hasSize(1);
        return all.get(0);
    }
}
