package stretchwright.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.ground.InWords.words;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.fit.Direction;
import stretchwright.fit.FitReport;
import stretchwright.fit.PoseName;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.make.Rooms;
import stretchwright.pattern.Parts;
import stretchwright.print.cards.ShopNeeds;

/** What a wearer needs of a cloth, against trying one per cent after the other. */
class ClothNeedsTest {
    private static MakeFile make(String name) throws IOException {
        return Make.read(name, Files.readAllBytes(Path.of("examples", name)));
    }

    @Test
    void theSearchFindsTheThreshold() {
        assertThat(ClothNeeds.least(s -> s >= 0.372).orElseThrow()).isBetween(0.372, 0.382);
        assertThat(ClothNeeds.least(s -> true)).hasValue(0.05);
        assertThat(ClothNeeds.least(s -> false)).isEmpty();
    }

    /** Second opinion: the openings of cloths of rising stretch, one by one, straight through draft and fit check. */
    @Tag("slow")
    @Test
    void noClothWithLessGoesOn() throws IOException {
        MakeFile make = make("evening-practice.yaml");
        ShopNeeds needs = ClothNeeds.of(make);
        double found = needs.across().changes().orElseThrow();
        double first = 2;
        for (double s = 1.50; s > 0.05 && goes(make, s); s -= 0.02) {
            first = s;
        }
        assertThat(found).isCloseTo(first, within(0.03));
        assertThat(needs.across().yes().orElseThrow()).isGreaterThanOrEqualTo(found);
        assertThat(needs.along().yes().orElseThrow())
                .isGreaterThan(needs.along().changes().orElseThrow());
    }

    /** What the card asks of a cloth does not hang on what was assumed of one; the assumed width is a common one. */
    @Tag("slow")
    @Test
    void withoutClothTheCardAsksTheSame() throws IOException {
        String text = Files.readString(Path.of("examples", "evening-practice.yaml"));
        ShopNeeds told = ClothNeeds.of(fabric(text, "usable width: 145, stretch across: 50 %, stretch along: 40 %"));
        ShopNeeds usual = ClothNeeds.of(fabric(text, "usual: true"));
        assertThat(usual.across()).isEqualTo(told.across());
        assertThat(usual.along()).isEqualTo(told.along());
        assertThat(usual.lengths().orElseThrow().widths().rows().get(0).own()).isFalse();
        assertThat(told.lengths().orElseThrow().widths().rows().get(0).own()).isTrue();
        assertThat(usual.lengths().orElseThrow().widths().rows().get(0).width()).isEqualTo(1450);
    }

    private static MakeFile fabric(String text, String keys) {
        String other = text.replaceAll("(?s)\nfabric:\n.*?\nboot:", "\nfabric: {" + keys + "}\nboot:");
        return Make.read("a.yaml", other.getBytes(StandardCharsets.UTF_8));
    }

    private static boolean goes(MakeFile make, double stretch) {
        Rooms rooms = new Rooms();
        MakeFile trial = make.with(make.fabric().stretching(stretch, 1.0));
        Findings none = new Findings("");
        return rooms.body(trial.measured(), none)
                .flatMap(b -> rooms.draft(b, trial, none).map(p -> rooms.fit(p, b, trial)))
                .map(f -> f.openings().stream().allMatch(FitReport.Opening::passes)
                        && f.poses().stream()
                                .filter(p -> p.direction() == Direction.ACROSS)
                                .allMatch(FitReport.Pose::passes))
                .orElse(false);
    }

    /** Read from the file: what the wearer's own lengths ask stands among the poses, and what was assumed is said. */
    @Test
    void theExampleToldByWrapAndPoseSaysWhatItAssumes() throws IOException {
        MakeFile make = make("wrap-and-pose.yaml");
        Rooms rooms = new Rooms();
        Findings none = new Findings("");
        FitReport fit = rooms.body(make.measured(), none)
                .flatMap(b -> rooms.draft(b, make, none).map(p -> rooms.fit(p, b, make)))
                .orElseThrow();
        assertThat(fit.poses()).extracting(FitReport.Pose::pose).contains(PoseName.YOUR_POSE);
        assertThat(fit.verdicts()).extracting(v -> words(v.about())).contains("stretch across", "stretch along");
    }

    private static MakeFile changed(String old, String now) throws IOException {
        String text = Files.readString(Path.of("examples/evening-practice.yaml"));
        assertThat(text).contains(old);
        return Make.read("x.yaml", text.replace(old, now).getBytes(StandardCharsets.UTF_8));
    }

    /** No cloth in a shop has readings: own pressures are looked for as a medium hold, and the card says so. */
    @Tag("slow")
    @Test
    void ownPressuresAreLookedForAsAMediumHold() throws IOException {
        ShopNeeds medium = ClothNeeds.of(make("evening-practice.yaml"));
        ShopNeeds own = ClothNeeds.of(changed("hold: medium", "hold: {calf: 8 mmHg}"));
        assertThat(own.across()).isEqualTo(medium.across());
        assertThat(own.source()).contains("medium hold");
        assertThat(medium.source()).doesNotContain("medium hold");
    }

    /** Where no cloth at all can be drafted, the style is at fault: "none" would blame the shop. */
    @Test
    void whatCannotBeDraftedIsToldAndNotCalledNoCloth() throws IOException {
        MakeFile make = make("evening-practice.yaml");
        MakeFile high = make.with(make.style().with(make.style().parts().with(new Parts.Gusset(400, 300))));
        assertThatThrownBy(() -> ClothNeeds.of(high)).isInstanceOf(BadInput.class);
    }
}
