package stretchwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import stretchwright.ground.Document;
import stretchwright.ground.Unit;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.kit.SvgCanvas;

/** What is printed is the same wherever the machine stands. No other test runs beside: the country holds for all of them. */
@Isolated
class CountriesTest {
    @Test
    @Tag("slow")
    void theSameJobGivesTheSameBytes() {
        List<Document> here = Printing.documents(SampleJob.on("roll 914 mm"));
        assertThat(here.stream().map(Document::name))
                .startsWith("pattern-roll-914-mm.pdf", "pattern-A4.pdf", "pattern-Letter.pdf");
        in(
                Locale.forLanguageTag("ar-EG-u-nu-arab"),
                () -> assertThat(Printing.documents(SampleJob.on("roll 914 mm")))
                        .isEqualTo(here));
    }

    @Test
    void numbersLookTheSame() {
        in(Locale.GERMANY, () -> {
            assertThat(Amounts.percent(0.107)).isEqualTo("10.7 %");
            assertThat(Amounts.length(1058.5, Unit.IN)).isEqualTo("41 11/16 in");
            assertThat(Amounts.number(100, 0)).isEqualTo("100");
            assertThat(SvgCanvas.number(-0.00001)).isEqualTo("0");
        });
    }

    private static void in(Locale country, Runnable test) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(country);
            test.run();
        } finally {
            Locale.setDefault(before);
        }
    }
}
