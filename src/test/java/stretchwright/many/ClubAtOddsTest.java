package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.OneRoll;
import stretchwright.lay.nest.Effort;
import stretchwright.make.Make;

/** What does not go together on one roll, or does not lie on its table, is told; what only looks otherwise is one cloth. */
class ClubAtOddsTest extends ClubMakes {
    @Test
    void whatDiffersIsNamedWithBothFiles() {
        MakeFile first = make("a.yaml", "Rowan", "96.1");
        List<String[]> cases = List.of(
                new String[] {"usable width: 147", "usable width: 150", "fabric.usable width", "is 150 cm, but 147 cm"},
                new String[] {"one way: true", "one way: false", "fabric.one way", "is false, but true"},
                new String[] {"repeat along: 0", "repeat along: 12", "fabric.repeat along", "is 12 cm, but 0 cm"},
                new String[] {"along: 2 %", "along: 3 %", "fabric.shrinkage along", "is 3 %, but 2 %"},
                new String[] {"across: 1 %", "across: 2 %", "fabric.shrinkage across", "is 2 %, but 1 %"},
                new String[] {
                    "stretch across: 60 %", "stretch across: 50 %", "fabric.stretch across", "is 50 %, but 60 %"
                },
                new String[] {"stretch along: 45 %", "stretch along: 40 %", "fabric.stretch along", "is 40 %, but 45 %"
                },
                new String[] {
                    "[60 %, 13 N]]",
                    "[60 %, 15 N]]",
                    "fabric.load across",
                    "is 3.1 N at 20 %, 6.9 N at 40 %, 15 N at 60 %, but 3.1 N at 20 %, 6.9 N at 40 %, 13 N at 60 %"
                },
                new String[] {"weight: 260 g/m2", "weight: 300 g/m2", "fabric.weight", "is 300 g/m2, but 260 g/m2"},
                new String[] {"recovery: 95 %", "recovery: 80 %", "fabric.recovery", "is 80 %, but 95 %"},
                new String[] {
                    "shows through at: 75 %", "shows through at: 100 %", "fabric.shows through at", "is 100 %, but 75 %"
                },
                new String[] {
                    "knit, ink",
                    "knit, rust",
                    "fabric.name",
                    "is \"Heavy performance knit, rust\", but \"Heavy performance knit, ink\""
                },
                new String[] {"lay: open", "lay: folded", "style.lay.way", "is folded, but open"},
                new String[] {
                    "lay: open", "lay: {way: open, scissor gap: 0.5}", "style.lay.scissor gap", "is 0.5 cm, but 0 cm"
                });
        for (String[] c : cases) {
            assertThatThrownBy(() ->
                            Club.of(List.of(first, with(c[0], c[1])), wish(TABLE, Effort.NONE), Progress.silent()))
                    .isInstanceOfSatisfying(
                            BadInput.class,
                            e -> assertThat(e.findings())
                                    .singleElement()
                                    .matches(f ->
                                            f.file().equals("b.yaml") && f.key().equals(c[2]))
                                    .matches(f -> f.problem().startsWith(c[3] + " in a.yaml"), c[3]));
        }
    }

    /** All that differs of the cloth is one finding, that of the lay another. */
    @Test
    void anotherClothIsToldWholeAndOnce() {
        MakeFile first = make("a.yaml", "Rowan", "96.1");
        MakeFile other = Make.read(
                "b.yaml",
                BASE.replace("knit, ink", "jersey")
                        .replace("260 g/m2", "180 g/m2")
                        .replace("stretch across: 60 %", "stretch across: 90 %")
                        .replace("lay: open", "lay: folded")
                        .getBytes(StandardCharsets.UTF_8));
        assertThat(OneRoll.findings(List.of(first, other, other, first)))
                .extracting(Finding::line)
                .containsExactly(
                        "b.yaml: fabric.name: is \"Heavy performance jersey\", but \"Heavy performance knit, ink\" in a.yaml."
                                + " fabric.weight is 180 g/m2, but 260 g/m2. fabric.stretch across is 90 %, but 60 %."
                                + " One roll is one cloth. Give both the same fabric, or lay them in two runs.",
                        "b.yaml: style.lay.way: is folded, but open in a.yaml. One roll is laid in one way. Write the same in"
                                + " both files, or lay them apart.");
    }

    /** The first file does not say which cloth it is for; the others do. */
    @Test
    void everyFileIsHeldAgainstAllThatGoTogether() {
        MakeFile nameless = Make.read(
                "a.yaml",
                BASE.replace("  name: Heavy performance knit, ink\n", "").getBytes(StandardCharsets.UTF_8));
        MakeFile ink = make("c.yaml", "Mika", "92.0");
        MakeFile rust = with("knit, ink", "knit, rust");
        assertThat(OneRoll.findings(List.of(nameless, ink, rust, ink)))
                .singleElement()
                .matches(f -> f.file().equals("b.yaml") && f.key().equals("fabric.name"))
                .matches(f -> f.problem().contains("in c.yaml. One roll is one cloth."));
    }

    /** What a file leaves out, rounds in another unit or assumes for its own wearer is no other cloth. */
    @Test
    void whatIsNotToldOrRoundedOrAssumedIsTheSameCloth() {
        MakeFile first = make("a.yaml", "Rowan", "96.1");
        List<MakeFile> same = List.of(
                with("  weight: 260 g/m2\n", ""),
                with("weight: 260 g/m2", "weight: 7.7 oz/yd2"),
                with("  name: Heavy performance knit, ink\n", ""),
                with("name: Heavy performance knit, ink", "name: heavy  performance knit, INK"),
                with("  recovery: 95 %\n", ""),
                with("  load along:  [[20 %, 4.0 N], [40 %, 9.5 N]]\n", ""),
                with("[60 %, 13 N]]", "[60 %, 1326 g]]"),
                with("price: 14.50 per m", "price: 12 per m"));
        for (MakeFile other : same) {
            assertThat(OneRoll.findings(List.of(first, other))).isEmpty();
        }
        String wrapped = BASE.replace("stretch across: 60 %", "wrap hip: 80")
                .replace("  load across: [[20 %, 3.1 N], [40 %, 6.9 N], [60 %, 13 N]]\n", "");
        MakeFile large = Make.read("c.yaml", wrapped.getBytes(StandardCharsets.UTF_8));
        MakeFile small = Make.read("d.yaml", wrapped.replace("96.1", "92.0").getBytes(StandardCharsets.UTF_8));
        assertThat(large.fabric().test().stretchAcross())
                .isNotEqualTo(small.fabric().test().stretchAcross());
        assertThat(OneRoll.findings(List.of(large, small, first))).isEmpty();
    }

    /** As make says it, for every make that has such a piece; the child's would fit. */
    @Test
    void aPieceWiderThanTheClothIsAFindingOfItsMake() {
        String narrow = BASE.replace("usable width: 147", "usable width: 62 cm");
        MakeFile a = Make.read("a.yaml", narrow.getBytes(StandardCharsets.UTF_8));
        MakeFile b = Make.read("b.yaml", narrow.replace("Rowan", "Mika").getBytes(StandardCharsets.UTF_8));
        MakeFile c = Make.read(
                "c.yaml",
                narrow.replace("waist girth: 74.2\n    hip girth: 96.1", "waist girth: 60\n    hip girth: 75")
                        .replace("stature: 162.7", "stature: 140")
                        .replace("figure: woman\n  age: 31", "figure: child\n  age: 10")
                        .getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> Club.of(List.of(a, b, c, a), wish(TABLE, new Effort(2, 1)), Progress.silent()))
                .isInstanceOfSatisfying(BadInput.class, e -> {
                    assertThat(e.findings()).extracting(Finding::file).containsExactly("a.yaml", "b.yaml");
                    assertThat(e.findings())
                            .allMatch(f -> f.key().equals("fabric.usable width"))
                            .allMatch(f -> f.problem()
                                    .startsWith(
                                            "waistband is 68.2 cm wide unfolded, wider than the 62.0 cm of the cloth"));
                });
    }

    @Test
    void aTableShorterThanALegIsAFinding() {
        MakeFile a = make("a.yaml", "Rowan", "96.1");
        assertThatThrownBy(() -> Club.of(List.of(a), wish(600, new Effort(2, 1)), Progress.silent()))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("Rowan alone is longer than the table of 60.0 cm.");
    }

    @Test
    void clothWithFlawsIsNotCutIntoTables() {
        MakeFile flawed = with("on hand: 1.6 m", "flaws: [{from left: 30, from end: 52, wide: 1, long: 2}]");
        assertThatThrownBy(() -> Club.of(List.of(flawed), wish(TABLE, Effort.NONE), Progress.silent()))
                .hasMessageContaining("Leave --table out.");
    }
}
