package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.ground.InWords.words;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Style;

/** Which verdicts are the same: by what they are about and by what is said, never by their numbers. */
class SameVerdictTest {
    private static Verdict knee(Said message) {
        return new Verdict(Severity.CAUTION, Part.text("knee"), message, Said.NOTHING);
    }

    private static Said uses(double share) {
        return Tell.said("level.half", Part.text("knee"), Part.share(share), Part.share(0.6));
    }

    @Test
    void numbersSeveritiesAndSentencesThatFollowMakeNoOther() {
        Verdict one = knee(uses(0.31));
        assertThat(one.saysTheSame(knee(uses(0.47)))).isTrue();
        assertThat(one.saysTheSame(knee(uses(0.31).and(Tell.said("level.known", Part.text("x"))))))
                .isTrue();
        assertThat(one.saysTheSame(new Verdict(Severity.NOTE, Part.text("knee"), uses(0.31), Said.NOTHING)))
                .isTrue();
    }

    @Test
    void anotherPlaceOrAnotherSentenceIsAnother() {
        Verdict one = knee(uses(0.31));
        assertThat(one.saysTheSame(new Verdict(Severity.CAUTION, Part.text("calf"), uses(0.31), Said.NOTHING)))
                .isFalse();
        assertThat(one.saysTheSame(
                        knee(Tell.said("level.beyond", Part.text("knee"), Part.share(0.31), Part.share(0.6)))))
                .isFalse();
    }

    /**
     * A second opinion, on random bodies whose cloth is a little stiffer: what is worded the same but for its digits is the
     * same, and no verdict of one garment is the same as another of it.
     */
    @Tag("slow")
    @Test
    void wordsWithoutTheirDigitsAgree() {
        int compared = 0;
        for (int seed = 1; seed <= 40; seed++) {
            List<Verdict> soft = verdicts(SampleBody.random(seed), 0.40);
            List<Verdict> stiff = verdicts(SampleBody.random(seed), 0.38);
            for (Verdict v : soft) {
                assertThat(soft.stream().filter(v::saysTheSame))
                        .as(words(v.message()))
                        .hasSize(1);
                for (Verdict w : stiff) {
                    if (blank(v).equals(blank(w))) {
                        assertThat(v.saysTheSame(w)).as(blank(v)).isTrue();
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(200);
    }

    private static String blank(Verdict v) {
        return words(v.place()) + ": " + words(v.message()).replaceAll("-?[0-9]+([.,][0-9]+)?", "#");
    }

    private static List<Verdict> verdicts(Body body, double stretch) {
        Fabric cloth = SampleFabric.with(1470, stretch, 0.30, true);
        Style style = Style.usual(Style.Leg.ANKLE).with(new Hold.Fixed(0.15));
        return Draft.of(body, cloth, Optional.empty(), style, new Findings("test"))
                .map(p -> FitCheck.withoutSlips(p, body, cloth, Optional.empty(), style, Set.of(Machine.OVERLOCKER))
                        .verdicts())
                .orElse(List.of());
    }
}
