package stretchwright.print.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTest {
    /** Published: ISO 216, and 8.5 x 11 in, 11 x 17 in. */
    @ParameterizedTest
    @CsvSource({
        "a4, A4, 210, 297",
        "A3, A3, 297, 420",
        "A2, A2, 420, 594",
        "A1, A1, 594, 841",
        "A0, A0, 841, 1189",
        "LETTER, Letter, 215.9, 279.4",
        "tabloid, Tabloid, 279.4, 431.8",
        "Roll 914 mm, roll 914 mm, 914, 5000",
        "roll 36 in, roll 36 in, 914.4, 5000",
        "330 x 483 mm, 330 x 483 mm, 330, 483",
        "13x19 in, 13 x 19 in, 330.2, 482.6",
        "70 X 100 cm, 70 x 100 cm, 700, 1000"
    })
    void knowsItsPapersInAnyCapitals(String words, String name, double width, double height) {
        assertThat(Paper.of(words)).contains(new Paper(name, width, height));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "A7",
                "roll",
                "roll 12 mm",
                "roll 100 mm",
                "roll 9140 mm",
                "A4 x",
                "100 x 300 mm",
                "6000 x 300 mm",
                "300 x 400",
                "0 x 0 mm"
            })
    void doesNotGuess(String words) {
        assertThat(Paper.of(words)).isEmpty();
    }

    @Test
    void aSheetTooSmallForTheTestSquaresIsRefused() {
        assertThatThrownBy(() -> new Paper("card", 100, 150)).hasMessageContaining("100");
    }
}
