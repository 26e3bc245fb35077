package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.advice.Remedy;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.web.form.Form;

/** A change that the program made of a make, written into its file to 0.01 mm, does the same. */
class KeyChangesTest {
    static Stream<Path> examples() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("examples"))) {
            return all.sorted().toList().stream();
        }
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("examples")
    void everyRemedyThatTurnsAVerdictCanBeWrittenIntoTheFile(Path file) throws IOException {
        String text = Files.readString(file);
        MakeFile make = Make.read("x", text.getBytes(StandardCharsets.UTF_8));
        for (Remedy remedy : Session.of(make).remedies()) {
            Map<String, String> changes = KeyChanges.between(make, remedy.make());
            assertThat(changes).as(remedy.tried().change().key()).isNotEmpty();
            String changed = Form.of(text).with(changes).makeText();
            MakeFile read = Make.read("x", changed.getBytes(StandardCharsets.UTF_8));
            assertThat(Session.of(read).fit().verdicts())
                    .as("%s: %s", remedy.tried().change(), changes)
                    .noneMatch(v -> v.saysTheSame(remedy.verdict())
                            && v.severity() == remedy.verdict().severity());
        }
    }

    @Test
    void theSameMakeDiffersByNothing() throws IOException {
        MakeFile make = Make.read("x", Files.readAllBytes(Path.of("examples/evening-practice.yaml")));
        assertThat(KeyChanges.between(make, make)).isEmpty();
    }
}
