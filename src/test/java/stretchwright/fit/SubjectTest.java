package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stretchwright.ground.InWords.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

class SubjectTest {
    /** The kind was once read from the words, where "hem" meant the blade only: strain at a hem got no remedy. */
    @Test
    void strainAtAHemIsStrainAtThatLevel() {
        List<Verdict> atHem = new ArrayList<>();
        for (int seed = 1; seed <= 20; seed++) {
            hem(SampleBody.random(seed)).stream()
                    .filter(v ->
                            words(v.about()).equals("hem") && words(v.message()).contains("standing"))
                    .forEach(atHem::add);
        }
        assertThat(atHem).isNotEmpty().allSatisfy(v -> {
            assertThat(v.kind()).isEqualTo(Subject.Kind.STRAIN);
            assertThat(v.subject().level()).contains(Level.Name.HEM);
        });
    }

    @Test
    void aKindThatMeansALevelHasOneAndNoOther() {
        assertThatThrownBy(() -> Subject.of(Subject.Kind.STRAIN, Part.text("knee")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Subject.at(Subject.Kind.SHRINKAGE, Level.Name.KNEE, Part.text("knee")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPoseIsSaidBeforeItsPlace() {
        Subject seat = Subject.of(new FitReport.Pose(
                PoseName.SIT_SPIN, Region.SEAT, Direction.ACROSS, 0.6, 0.6, 0.5, false, false, 0.03));
        assertThat(words(seat.about())).isEqualTo("sit spin, seat across");
        assertThat(words(seat.place())).isEqualTo("seat across");
        assertThat(seat.kind()).isEqualTo(Subject.Kind.POSE_ACROSS);
        assertThat(seat.level()).contains(Level.Name.HIP);
    }

    /** What is said of the hem alone: of several levels that use much the worst is told, the others in its sentence. */
    private static List<Verdict> hem(Body body) {
        Fabric cloth = SampleFabric.with(1470, 0.40, 0.30, true);
        Style style = Style.usual(Style.Leg.KNEE).with(new Hold.Fixed(0.22));
        Optional<Pattern> pattern = Draft.of(body, cloth, Optional.empty(), style, new Findings("test"));
        return pattern.map(p -> new Worn(p, body, cloth, Optional.empty(), style, Set.of(Machine.OVERLOCKER)))
                .map(w -> LevelJudge.of(
                        FitCheck.judged(w, Optional.empty()).levels().stream()
                                .filter(l -> l.level() == Level.Name.HEM)
                                .toList(),
                        w))
                .orElse(List.of());
    }
}
