package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.ground.InWords.words;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.draft.Draft;
import stretchwright.draft.TopStyles;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** Pressures asked for by number are reached, or it is said where they are not. */
class HoldJudgeTest {
    private static final Style ANKLE = TopStyles.ankle(TopStyles.named("straight"));

    private static FitReport fit(Style style) {
        Body body = SampleBody.smallAdult();
        Fabric cloth = SampleFabric.stiff();
        Findings findings = new Findings("test");
        Pattern pattern =
                Draft.of(body, cloth, Optional.empty(), style, findings).orElseThrow();
        return FitCheck.of(pattern, body, cloth, Optional.empty(), style, Set.of(Machine.OVERLOCKER));
    }

    private static Style own(Map<Level.Name, Double> mmHg) {
        Map<Level.Name, Double> kPa = new EnumMap<>(Level.Name.class);
        mmHg.forEach((level, p) -> kPa.put(level, Laplace.fromMmHg(p)));
        return ANKLE.with(new Hold.Profile(kPa));
    }

    private static List<String> said(Style style) {
        return fit(style).verdicts().stream()
                .filter(v -> words(v.about()).equals("hold"))
                .map(v -> words(v.message()))
                .toList();
    }

    /** Sixty is never given: the cloth, the pose and comfort forbid it; at the ankle the hem stands for it. */
    @Test
    void whatIsNotReachedIsSaidWithWhatBoundIt() {
        assertThat(said(own(Map.of(Level.Name.CALF, 60.0, Level.Name.ANKLE, 60.0))))
                .singleElement()
                .asString()
                .contains("calf ", "mmHg for 60.0 (bound by: ", "ankle ");
    }

    @Test
    void whatIsReachedIsNotSaid() {
        double calf = fit(own(Map.of(Level.Name.CALF, 4.0))).levels().stream()
                .filter(l -> l.level() == Level.Name.CALF)
                .mapToDouble(l -> Laplace.toMmHg(l.pressure()))
                .findFirst()
                .orElseThrow();
        assertThat(calf).isBetween(2.5, 5.5);
        assertThat(said(own(Map.of(Level.Name.CALF, 4.0)))).isEmpty();
        assertThat(said(ANKLE)).isEmpty();
    }
}
