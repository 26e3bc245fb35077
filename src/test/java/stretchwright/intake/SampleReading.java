package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.make.SampleRooms;

/** Reads a make file for a test: the file, or what is found wrong with it. */
public final class SampleReading {
    private SampleReading() {}

    public static MakeFile read(String text) {
        return SampleRooms.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    public static List<Finding> findings(byte[] bytes) {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> SampleRooms.read("a.yaml", bytes));
        assertThat(bad).as("the file should have been refused").isNotNull();
        return bad.findings();
    }

    public static List<Finding> findings(String text) {
        return findings(text.getBytes(StandardCharsets.UTF_8));
    }

    public static Finding only(String text) {
        List<Finding> all = findings(text);
        assertThat(all).hasSize(1);
        return all.get(0);
    }
}
