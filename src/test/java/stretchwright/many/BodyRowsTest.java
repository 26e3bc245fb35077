package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;

/** Tables of bodies know the everyday words of the make file, and answer unknown ones as it does. */
class BodyRowsTest {
    private static BodyRows rows(String table) {
        return BodyRows.of("t.csv", table.getBytes(StandardCharsets.UTF_8), Optional.of("cm"));
    }

    private static List<Finding> header(String table) {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> rows(table));
        assertThat(bad).as("the header should have been refused").isNotNull();
        return bad.findings();
    }

    private static List<Finding> broken(String table) {
        Findings findings = new Findings("t.csv");
        rows(table).findings(findings);
        return findings.all();
    }

    @Test
    void everydayWordsAreColumnsToo() {
        BodyRows read = rows("figure,units,height,hips,inside leg\nwoman,cm,162.7,96.1,77.2\n");
        assertThat(read.refused()).isEmpty();
        assertThat(read.rows().get(0).body().isGiven(Measure.STATURE)).isTrue();
        assertThat(read.rows().get(0).body().mm(Measure.HIP_GIRTH)).isEqualTo(961);
        assertThat(read.rows().get(0).body().isGiven(Measure.CROTCH_HEIGHT)).isTrue();
    }

    @Test
    void everydayWordsAreFiguresToo() {
        BodyRows read = rows("figure,age,height\ngirl,9,133\nlady,31,165\nmale,40,177\n");
        assertThat(read.rows())
                .extracting(r -> r.body().figure())
                .containsExactly(Figure.CHILD, Figure.WOMAN, Figure.MAN);
    }

    @Test
    void aWrongCellIsFoundUnderTheWordThatStandsThere() {
        assertThat(broken("figure,height,hips\nwoman,162.7,-4\n"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.key()).isEqualTo("row 2, column hips");
                    assertThat(f.problem()).contains("\"-4\"");
                });
        assertThat(broken("figure,height,hips\nwoman,162.7,9.61\n"))
                .singleElement()
                .satisfies(f -> assertThat(f.key()).isEqualTo("row 2, column hips"));
    }

    @Test
    void theNearestFigureIsSuggested() {
        assertThat(broken("figure,height\nwomen,162.7\ngril,133\nlord,177\n"))
                .extracting(Finding::remedy)
                .containsExactly("Is \"girl\" meant? Choose: woman, man, child.", "Choose: woman, man, child.");
    }

    @Test
    void theNearestColumnIsSuggestedAndTheListToldOnce() {
        List<Finding> all = header("figure,hieght,quux,hip grith,zzz,xyzzy\nwoman,1,2,3,4,5\n");
        assertThat(all).extracting(Finding::key).containsOnly("header");
        assertThat(all).extracting(Finding::remedy).element(0).isEqualTo("Is \"height\" meant?");
        assertThat(all)
                .extracting(Finding::remedy)
                .element(1)
                .asString()
                .startsWith("Known are: name, figure, age, unit, ");
        assertThat(all).extracting(Finding::remedy).element(2).isEqualTo("Is \"hip girth\" meant?");
        assertThat(all)
                .extracting(Finding::remedy)
                .filteredOn(r -> r.equals("The known ones are listed at \"quux\"."))
                .hasSize(2);
        assertThat(all).hasSize(5);
    }

    @Test
    void twoWordsForOneMeasureAreOneTooMany() {
        assertThat(header("figure,hips,hip girth\nwoman,96,96\n"))
                .singleElement()
                .satisfies(f -> assertThat(f.problem()).isEqualTo("\"hip girth\" means the same as \"hips\"."));
        assertThat(header("figure,hips,hips\nwoman,96,96\n"))
                .singleElement()
                .satisfies(f -> assertThat(f.problem()).isEqualTo("\"hips\" stands twice."));
    }
}
