package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Finding;

class PrintTermsTest {
    private static String with(String print) {
        assertThat(SampleText.WHOLE).contains("print: {paper: A4}");
        return SampleText.WHOLE.replace("print: {paper: A4}", "print: " + print);
    }

    @Test
    void whatIsNotSaidIsLeftOpen() {
        PrintTerms print = read(with("{paper: A3}")).print();
        assertThat(print.paper()).isEqualTo("A3");
        assertThat(print.margin()).isEmpty();
        assertThat(print.overlap()).isEmpty();
        assertThat(print.grid()).isEmpty();
    }

    @Test
    void allIsRead() {
        PrintTerms print = read(with("{paper: Letter, margin: 6 mm, overlap: 0, grid: 5 cm, preview: 50 dpi}"))
                .print();
        assertThat(print.margin()).hasValue(6);
        assertThat(print.overlap()).hasValue(0);
        assertThat(print.grid()).contains("5 cm");
        assertThat(print.preview()).hasValue(50);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{margin: 2 mm} | print.margin",
                "{margin: 60 mm} | print.margin",
                "{margin: wide} | print.margin",
                "{overlap: -1 mm} | print.overlap",
                "{overlap: 300 mm} | print.overlap",
                "{margin: 45 mm, overlap: 10 mm} | print",
                "{paper: roll 160 mm, margin: 25 mm} | print",
                "{grid: 3 cm} | print.grid",
                "{paper: napkin} | print.paper",
                "{paper: 20 x 30 mm} | print.paper",
                "{preview: 0 dpi} | print.preview",
                "{preview: 50} | print.preview",
                "{preview: 999999 dpi} | print.preview",
                "{preview: -5 dpi} | print.preview",
                "{glue: yes} | print.glue"
            })
    void whatCannotBeIsAFinding(String print, String key) {
        assertThat(findings(with(print))).extracting(Finding::key).contains(key);
    }
}
