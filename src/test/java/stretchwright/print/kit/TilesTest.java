package stretchwright.print.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Box;
import stretchwright.print.kit.Tiles.Tile;

class TilesTest {
    /** Worked example W16 of the trade values: a piece of 620 x 980, margin 10, overlap 10; by hand. */
    @ParameterizedTest
    @CsvSource({
        "A4, false, 4, 4",
        "A4, true, 3, 6",
        "Letter, false, 4, 4",
        "A3, false, 3, 3",
        "A3, true, 2, 4",
        "A0, false, 1, 1"
    })
    void sheetsForTheWorkedExample(String name, boolean pieceTurned, int fewer, int more) {
        Paper paper = Paper.named(name);
        Tiles tiles = pieceTurned ? Tiles.covering(paper, 980, 620) : Tiles.covering(paper, 620, 980);
        assertThat(new int[] {Math.min(tiles.rows(), tiles.columns()), Math.max(tiles.rows(), tiles.columns())})
                .containsExactly(fewer, more);
        assertThat(tiles.sheets()).isEqualTo(fewer * more);
    }

    /** By hand: one sheet of A4 shows 190 mm, two show 370, three 550. */
    @ParameterizedTest
    @CsvSource({"1, 1", "190, 1", "190.01, 2", "370, 2", "370.01, 3", "550, 3"})
    void oneMoreSheetOnlyWhenTheLastIsFull(double length, int sheets) {
        assertThat(Tiles.count(length, 190, 10)).isEqualTo(sheets);
    }

    @Test
    void neighboursShareTheOverlapAndTheTopRowIsA() {
        Tiles tiles = new Tiles(Paper.named("A4"), 3, 2);
        Box a1 = tiles.window(new Tile(0, 0));
        Box a2 = tiles.window(new Tile(0, 1));
        Box b1 = tiles.window(new Tile(1, 0));
        assertThat(a1.maxX() - a2.minX()).isCloseTo(10, within(1e-9));
        assertThat(b1.maxY() - a1.minY()).isCloseTo(10, within(1e-9));
        assertThat(tiles.window(new Tile(2, 0)).minY()).isZero();
    }

    @Test
    void sheetsAreNamedByRowLetterAndColumnNumber() {
        assertThat(new Tile(0, 0).name()).isEqualTo("A1");
        assertThat(new Tile(25, 11).name()).isEqualTo("Z12");
        assertThat(new Tile(26, 0).name()).isEqualTo("AA1");
    }
}
