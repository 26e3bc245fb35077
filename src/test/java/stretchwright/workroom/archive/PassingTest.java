package stretchwright.workroom.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What holds everybody's measures for a while is not left lying about by who presses Ctrl-C. */
@Tag("slow")
class PassingTest {
    /** A program that holds a folder until it is ended. */
    public static void main(String[] args) throws Exception {
        try (Passing passing = new Passing(Path.of(args[0]))) {
            Files.writeString(passing.path().resolve("workroom.db"), "Rowan");
            System.out.println("there");
            TimeUnit.MINUTES.sleep(1);
        }
    }

    @Test
    void itGoesWithTheProgramThatIsEnded(@TempDir Path folder) throws Exception {
        Path passing = Files.createDirectory(folder.resolve("passing"));
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        PassingTest.class.getName(),
                        passing.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            assertThat(program.getInputStream().read()).isEqualTo('t');
            assertThat(passing.resolve("workroom.db")).exists();
        } finally {
            program.destroy();
        }
        assertThat(program.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(passing).doesNotExist();
    }
}
