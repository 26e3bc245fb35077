package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.read;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.fabric.Fabric;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.SampleText;
import stretchwright.lay.ClothLay;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A make of several cloths: what a contrast takes from the fabric, and that each piece lies on its own cloth only. */
class ContrastTest {
    private static String with(String contrasts) {
        return SampleText.WHOLE.replace("  on hand: 1.6 m\n", "  contrasts: " + contrasts + "\n");
    }

    private static String lines(String text) {
        return findings(text).stream().map(Finding::line).collect(Collectors.joining("\n"));
    }

    private static Made run(String contrasts) {
        MakeFile make = Make.read("a.yaml", with(contrasts).getBytes(StandardCharsets.UTF_8));
        return Make.run(make, Progress.silent());
    }

    @Test
    void whatIsNotSaidIsAsInTheFabric() {
        MakeFile make = read(with("[{pieces: cuff}, {name: Rust, pieces: [waistband], usable width: 90, one way: false,"
                + " repeat along: 12, price: 9 per m, on hand: 40}]"));
        Fabric cuff = make.contrasts().get(0).fabric();
        assertThat(cuff.roll().usableWidth()).isEqualTo(make.fabric().roll().usableWidth());
        assertThat(cuff.roll().oneWay()).isEqualTo(make.fabric().roll().oneWay());
        assertThat(cuff.roll().name()).isEqualTo("Contrast 1");
        assertThat(cuff.roll().onHand()).isEmpty();
        assertThat(cuff.roll().price()).isEmpty();
        Fabric band = make.contrasts().get(1).fabric();
        assertThat(band.roll().usableWidth()).isEqualTo(900);
        assertThat(band.roll().oneWay()).isFalse();
        assertThat(band.roll().repeatAlong()).isEqualTo(120);
        assertThat(band.roll().onHand()).hasValue(400);
        assertThat(band.test().stretchAcross()).isEqualTo(make.fabric().test().stretchAcross());
        assertThat(make.contrasts().get(1).pieces()).containsExactly("waistband");
        MakeFile told = read(with("[{pieces: cuff}, {pieces: waistband, usable width: 90}]\n  selvage: 2"));
        assertThat(told.contrasts())
                .extracting(c -> c.fabric().roll().shape().selvage())
                .containsExactly(20.0, 0.0);
    }

    @Tag("slow")
    @Test
    void everyPieceLiesOnItsOwnCloth() {
        Made made = run("[{name: Rust, pieces: [cuff, waistband], usable width: 80, price: 9 per m}]");
        assertThat(names(made.lays().get(0))).containsExactly("leg");
        ClothLay rust = made.contrasts().get(0);
        assertThat(names(rust)).containsExactlyInAnyOrder("waistband", "cuff");
        assertThat(rust.lay().placements())
                .allSatisfy(p -> assertThat(p.piece()).isNotEqualTo("leg"));
        assertThat(made.lay().placements())
                .allSatisfy(p -> assertThat(p.piece().word()).isEqualTo("leg"));
        assertThat(rust.lay().fabricWidth()).isLessThanOrEqualTo(800);
        assertThat(made.documents()).extracting(Document::name).contains("lay.pdf", "lay-2.pdf", "lay-2.svg");
        assertThat(String.join("\n", made.summary())).contains("of Rust for waistband, cuff");
    }

    @Tag("slow")
    @Test
    void theReportTellsBothLaysAndWhatBothCost() {
        Made made = run("[{name: Rust, pieces: [cuff, waistband], price: 9 per m}]");
        JsonNode report = JsonMapper.builder().build().readTree(made.report().bytes());
        JsonNode rust = report.at("/lay/contrasts/0");
        assertThat(rust.get("cloth").asString()).isEqualTo("Rust");
        assertThat(StreamSupport.stream(rust.get("placements").spliterator(), false)
                        .map(p -> p.get("piece").asString()))
                .containsOnly("cuff", "waistband");
        double own = made.make().fabric().roll().price().orElseThrow().perMetre()
                * report.at("/lay/buy").asDouble()
                / 1000;
        double other = 9 * rust.get("buy").asDouble() / 1000;
        assertThat(report.at("/cost/fabric").asDouble())
                .isCloseTo(own + other, org.assertj.core.data.Offset.offset(0.01));
    }

    @Tag("slow")
    @Test
    void aPaperPieceNamesTheClothItIsCutFrom() {
        Made made = run("[{name: Rust, pieces: [cuff]}]");
        Document svg = made.documents().stream()
                .filter(d -> d.name().equals("pattern.svg"))
                .findFirst()
                .orElseThrow();
        assertThat(new String(svg.bytes(), StandardCharsets.UTF_8)).contains("cloth: Rust");
    }

    /** Many names are counted, not told one by one. */
    @Test
    void aThousandNamesAreOneFinding() {
        String names = "a, ".repeat(1000);
        assertThat(lines(with("[{pieces: [" + names + "b]}]"))).contains("names 1001 pieces.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[{pieces: [cuff]}, {pieces: [cuff]}] | \"cuff\" is named twice.",
                "[{pieces: [cuff, cuff]}] | \"cuff\" is named twice.",
                "[{pieces: []}] | names no piece.",
                "[{name: Rust}] | pieces",
                "[{pieces: [cuff], weight: 200}] | weight",
                "[cuff] | sections are wanted.",
                "[{pieces: [cuff], usable width: 1}] | usable width",
                "[{pieces: [cuff], on hand: {outline: [[0, 0], [200, 0], [200, 90]]}}] | farther than the usable width.",
                "[{pieces: a}, {pieces: b}, {pieces: c}, {pieces: d}, {pieces: e}] | lists 5 of them.",
            })
    void whatCannotBeIsAFinding(String contrasts, String said) {
        assertThat(lines(with(contrasts))).contains(said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[{pieces: [cuf]}] | \"cuf\" is not a piece of this pattern.",
                "[{pieces: [leg, cuff, waistband]}] | nothing is left for the fabric itself.",
                "[{pieces: [leg], usable width: 20}] | fabric.contrasts.1.usable width",
            })
    void whatTheDraftCannotBeCutFromIsAFinding(String contrasts, String said) {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> run(contrasts));
        assertThat(bad.findings().stream()
                        .map(stretchwright.ground.Finding::line)
                        .toList()
                        .toString())
                .contains(said);
    }

    private static List<String> names(ClothLay lay) {
        return lay.pieces().stream().map(p -> p.name().word()).toList();
    }
}
