package stretchwright.print.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.Document;
import stretchwright.print.kit.PageReader;
import stretchwright.print.kit.PageReader.Stroke;
import stretchwright.print.kit.Paper;

/** The cards read back from their bytes: true scale, squares on every sheet, nothing in the margin. */
class ClothCardTest {
    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter"})
    void everySheetCarriesBothSquaresAndKeepsItsMargin(String paper) throws IOException {
        for (Document card : ClothCards.of(Paper.named(paper), ShopNeeds.usual())) {
            try (PDDocument pdf = Loader.loadPDF(card.bytes())) {
                assertThat(pdf.getNumberOfPages()).isEqualTo(card.pages());
                for (PDPage page : pdf.getPages()) {
                    List<Stroke> strokes = PageReader.strokes(page);
                    assertThat(squares(strokes, 100)).hasSize(1);
                    assertThat(squares(strokes, 101.6)).hasSize(1);
                    Paper sheet = Paper.named(paper);
                    assertThat(strokes.stream().map(Stroke::box))
                            .filteredOn(b -> b.minX() < 9.9
                                    || b.minY() < 9.9
                                    || b.maxX() > sheet.width() - 9.9
                                    || b.maxY() > sheet.height() - 9.9)
                            .isEmpty();
                }
            }
        }
    }

    private static List<Stroke> squares(List<Stroke> strokes, double side) {
        return strokes.stream()
                .filter(Stroke::closed)
                .filter(s -> Math.abs(s.box().width() - side) < 0.01
                        && Math.abs(s.box().height() - side) < 0.01)
                .toList();
    }

    /** 100 mm and 150 % more are 250 mm, 4 in and 150 % more are 254 mm. */
    @Test
    void theScalesOfTheFoldTestAreTrue() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(ClothCard.of(Paper.named("Letter")).bytes())) {
            List<Double> uprights = PageReader.strokes(pdf.getPage(0)).stream()
                    .filter(s -> s.box().width() < 0.01 && s.box().height() > 200)
                    .map(s -> s.box().height())
                    .toList();
            assertThat(uprights).hasSize(2);
            assertThat(uprights.get(0)).isCloseTo(250, within(0.01));
            assertThat(uprights.get(1)).isCloseTo(254, within(0.01));
        }
    }

    /** (1.3)(1.1) - 1 = 43 %: the worked example W15 of our trade values. */
    @Test
    void theAreaTableMultipliesBothWays() {
        assertThat(ClothCard.growth().get(3)).startsWith("30 %", "43");
    }

    @Test
    void theShopCardRoundsUpToWholeMillimetres() {
        assertThat(ShopCard.length(0.375)).isEqualTo("138");
        assertThat(ShopCard.length(0.50)).isEqualTo("150");
    }

    @Test
    void theSameCardHasTheSameBytes() {
        assertThat(ClothCards.of(Paper.named("A4"), ShopNeeds.usual()))
                .isEqualTo(ClothCards.of(Paper.named("A4"), ShopNeeds.usual()));
    }
}
