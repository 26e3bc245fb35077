package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.fit.Notes;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Pattern;

/** Whatever is made: at most three notes, the others aside, and nothing that safety asks for among those. */
class FewNotesTest {
    private static final Rooms ROOMS = new Rooms();

    private static Optional<FitReport> judged(String name, byte[] text, boolean slips) {
        try {
            MakeFile make = Make.read(name, text);
            Findings findings = new Findings(name);
            Optional<Body> body = ROOMS.body(make.measured(), findings);
            Optional<Pattern> pattern = body.flatMap(b -> ROOMS.draft(b, make, findings));
            return pattern.map(
                    p -> slips ? ROOMS.fit(p, body.orElseThrow(), make) : ROOMS.judge(p, body.orElseThrow(), make));
        } catch (BadInput refused) {
            return Optional.empty();
        }
    }

    private static void isShort(String name, FitReport fit) {
        List<Verdict> notes = fit.verdicts().stream()
                .filter(v -> v.severity() == Severity.NOTE)
                .toList();
        assertThat(notes).as(name).hasSizeLessThanOrEqualTo(3);
        assertThat(fit.asides()).as(name).allMatch(v -> v.severity() == Severity.NOTE);
        assertThat(fit.asides()).as(name).noneMatch(Notes::isForSafety);
        assertThat(notes.size()).as(name).isEqualTo(fit.asides().isEmpty() ? notes.size() : 3);
        assertThat(notes).as(name).allMatch(Notes::isRanked);
        assertThat(fit.asides()).as(name).allMatch(Notes::isRanked);
    }

    private static int styles(long from, int seeds) {
        int judged = 0;
        for (long seed = from; seed < from + seeds; seed++) {
            String name = "seed " + seed;
            Optional<FitReport> fit = judged(name, MixedStyles.of(seed).getBytes(StandardCharsets.UTF_8), false);
            fit.ifPresent(f -> isShort(name, f));
            judged += fit.isPresent() ? 1 : 0;
        }
        return judged;
    }

    @Tag("slow")
    @Test
    void anyStyleHasAFew() {
        assertThat(styles(1, 150)).isGreaterThan(20);
    }

    @Tag("slow")
    @Test
    void thousandsHave() {
        assertThat(styles(20_000, 2000)).isGreaterThan(250);
    }

    @Test
    void examplesHaveAFew() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                String name = file.getFileName().toString();
                isShort(name, judged(name, Files.readAllBytes(file), true).orElseThrow());
            }
        }
    }
}
