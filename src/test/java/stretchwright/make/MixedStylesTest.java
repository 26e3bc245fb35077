package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.body.Body;
import stretchwright.draft.DraftCheck;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Pattern;

/** Whatever a make file asks for together is drafted soundly, or refused by findings with remedies: never a crash. */
@Tag("slow")
class MixedStylesTest {
    private static final Rooms ROOMS = new Rooms();

    private enum Ended {
        REFUSED,
        DRAFTED
    }

    private static Ended draft(long seed) {
        String who = "seed " + seed;
        Findings findings = new Findings(who);
        try {
            MakeFile make = Make.read(who, MixedStyles.of(seed).getBytes(StandardCharsets.UTF_8));
            Optional<Body> body = ROOMS.body(make.measured(), findings);
            Optional<Pattern> pattern = body.flatMap(b -> ROOMS.draft(b, make, findings));
            assertThat(pattern.isPresent()).as(who).isEqualTo(findings.isEmpty());
            if (pattern.isPresent()) {
                assertThat(DraftCheck.broken(body.get(), make.style(), pattern.get()))
                        .as(who)
                        .isEmpty();
                ROOMS.sewing(pattern.get(), make, ROOMS.judge(pattern.get(), body.get(), make));
            }
            findings.throwIfAny();
            return Ended.DRAFTED;
        } catch (BadInput e) {
            assertThat(e.findings()).extracting(Finding::remedy).as(who).doesNotContain("");
            return Ended.REFUSED;
        } catch (RuntimeException e) {
            return fail(who, e);
        }
    }

    private static void draft(long from, int seeds) {
        int drafted = 0;
        for (long seed = from; seed < from + seeds; seed++) {
            drafted += draft(seed) == Ended.DRAFTED ? 1 : 0;
        }
        assertThat(drafted).isGreaterThan(seeds / 8);
    }

    @Test
    void anyStyleIsDraftedOrRefused() {
        draft(1, 300);
    }

    @Tag("slow")
    @Test
    void thousandsAre() {
        draft(10_000, 4000);
    }

    /** A panel's seam on a dart; a dart into the centre back seam; a narrow panel between shaped seams; a spike of a cut line. */
    @ParameterizedTest
    @ValueSource(longs = {699, 100_923, 208_089, 200_421})
    void whatOnceBrokeDoesNot(long seed) {
        assertThat(draft(seed)).isNotNull();
    }

    /** Through lay and print as well. */
    @Tag("slow")
    @Test
    void someAreMade() {
        int made = 0;
        for (long seed = 1; made < 12; seed++) {
            if (draft(seed) == Ended.DRAFTED) {
                Make.run(
                        Make.read("mixed.yaml", MixedStyles.of(seed).getBytes(StandardCharsets.UTF_8)),
                        Progress.silent());
                made++;
            }
        }
    }
}
