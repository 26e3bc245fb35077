package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Pattern;

/** What was read of a strip's width and way back moves draft, levels and course alike, and narrows what is told. */
class WeighedClothTest {
    private static final Rooms ROOMS = new Rooms();

    private record Judged(Pattern pattern, FitReport fit) {
        LevelFit at(Level.Name name) {
            return fit.levels().stream()
                    .filter(l -> l.level() == name)
                    .findFirst()
                    .orElseThrow();
        }

        LevelHold held(Level.Name name) {
            return pattern.holds().stream()
                    .filter(h -> h.level() == name)
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static Judged judged(boolean strip) throws IOException {
        List<String> lines = Files.readAllLines(Path.of("examples", "weighed-cloth.yaml"));
        String text = String.join(
                "\n",
                lines.stream()
                        .filter(l -> strip || !l.matches(" +(strip|back across|width across|after 30 min):.*"))
                        .toList());
        text = text.replace("hold: medium", "hold: light");
        MakeFile make = Make.read("weighed", text.getBytes(StandardCharsets.UTF_8));
        Findings findings = new Findings("weighed");
        Body body = ROOMS.body(make.measured(), findings).orElseThrow();
        Pattern pattern = ROOMS.draft(body, make, findings).orElseThrow();
        return new Judged(pattern, ROOMS.fit(pattern, body, make));
    }

    @Test
    void theDraftPlansWhatTheFitCheckTells() throws IOException {
        Judged read = judged(true);
        LevelHold calf = read.held(Level.Name.CALF);
        assertThat(calf.bound()).isEqualTo(LevelHold.Bound.NONE);
        LevelFit told = read.at(Level.Name.CALF);
        assertThat(told.pressure()).isCloseTo(calf.wanted().orElseThrow(), within(0.02 * told.pressure()));
        assertThat(read.fit().course())
                .anySatisfy(p -> assertThat(p.pressure()).isCloseTo(told.pressure(), within(0.01 * told.pressure())));
    }

    /** This cloth pulls less hard when worn than its strip: for the same pressure it is cut narrower, and told more surely. */
    @Test
    void whatWasReadMovesAndNarrows() throws IOException {
        Judged read = judged(true);
        Judged bare = judged(false);
        assertThat(read.held(Level.Name.CALF).reduction())
                .isGreaterThan(bare.held(Level.Name.CALF).reduction() + 0.005);
        assertThat(read.at(Level.Name.CALF).likely().spread())
                .isLessThan(bare.at(Level.Name.CALF).likely().spread() - 0.02);
    }
}
