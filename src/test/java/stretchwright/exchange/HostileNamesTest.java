package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.exchange.DxfReader.Entity;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceName;

/** Names come from a make file: whatever stands there, the files hold the same drawing. */
@Tag("slow")
class HostileNamesTest {
    private static final List<String> NAMES = List.of(
            "\n0\nEOF",
            "\r\n  0\r\nENDSEC\r\n  0\r\nEOF\r\n",
            "\u0003;SP0;IN;PD0,0;",
            "\u001b%-12345X@PJL RESET",
            "a\u0085b\u2028c\u2029d",
            "\"quotes\" 'and' \\backslash\\U+000A\\P ^J %%u %%%010 {;}",
            "\uD83D\uDC83\uD83C\uDFFD\u200D\u2640\uFE0F",
            "\uD83D lone half",
            "\u202E\u05D0\u05D1\u05D2 \u0645\u0631\u062D\u0628\u0627",
            "Zo\u00EB \u00C5ngstr\u00F6m \u0141\u00F3d\u017A",
            "e" + "\u0301".repeat(5000),
            "x".repeat(10_000),
            "\u5B57".repeat(10_000),
            " \t ",
            "");

    private static final Handover SAMPLE =
            Objects.requireNonNull(ExampleHandovers.all().get("evening-practice.yaml"));

    @Test
    void theDrawingIsTheSameWhateverTheName() {
        for (String name : NAMES) {
            Handover hostile = named(SAMPLE.pattern(), name);
            DxfReader dxf = DxfReader.read(PatternDxf.of(hostile));
            DxfReader plain = DxfReader.read(PatternDxf.of(SAMPLE));
            assertThat(dxf.blocks.keySet()).isEqualTo(plain.blocks.keySet());
            plain.blocks.forEach((block, lines) -> assertThat(drawn(Objects.requireNonNull(dxf.blocks.get(block))))
                    .isEqualTo(drawn(lines)));
            assertThat(texts(dxf)).hasSameSizeAs(texts(plain)).allMatch(t -> t.length() <= 255);
            PlotReader plot = PlotReader.read(Plot.of(hostile));
            assertThat(plot.strokes).isEqualTo(PlotReader.read(Plot.of(SAMPLE)).strokes);
            assertThat(plot.labels)
                    .hasSameSizeAs(PlotReader.read(Plot.of(SAMPLE)).labels)
                    .allMatch(l -> l.words().length() <= 200);
        }
    }

    /** No sign that a reader would take for one of its own comes out of a name. */
    @Test
    void noNameBringsAReadersOwnSignsAlong() {
        for (String name : NAMES) {
            for (String text : texts(DxfReader.read(PatternDxf.of(named(SAMPLE.pattern(), name))))) {
                assertThat(text.replaceAll("\\\\U\\+[0-9A-F]{4}", "")).doesNotContain("\\", "^", "%%");
                assertThat(text).doesNotContainPattern("\\\\U\\+00[01]").doesNotContainPattern("\\\\U\\+D[89A-F]");
            }
        }
    }

    @Test
    void whatCanBeReadStaysReadable() {
        Handover zoe = named(SAMPLE.pattern(), "Zo\u00EB");
        assertThat(texts(DxfReader.read(PatternDxf.of(zoe)))).contains("Size: Zo\\U+00EB");
        assertThat(PlotReader.read(Plot.of(zoe)).labels).anyMatch(l -> l.words().equals("for Zoe"));
        assertThat(Plain.ascii("x".repeat(61))).isEqualTo("x".repeat(57) + "...");
        assertThat(Plain.dxf("100 % \\P ^J %%c")).isEqualTo("100 % /P 'J %c");
    }

    /** Pieces are named by the program; if one had a hostile name too, the file would still be whole. */
    @Test
    void piecesOfAnyNameHaveBlocksOfTheirOwn() {
        Pattern p = SAMPLE.pattern();
        for (String name : NAMES) {
            Pattern hostile = new Pattern(
                    p.pieces().stream()
                            .map(piece -> piece.named(PieceName.own(name)))
                            .toList(),
                    p.seams(),
                    p.levels(),
                    p.reductions());
            DxfReader dxf = DxfReader.read(PatternDxf.of(named(hostile, name)));
            assertThat(dxf.blocks).hasSameSizeAs(p.pieces());
            assertThat(dxf.blocks.keySet()).allMatch(b -> b.matches("[A-Z0-9$_-]{1,31}"));
            assertThat(Preview.of(hostile, OptionalInt.empty())).isNotEmpty();
            PlotReader.read(Plot.of(named(hostile, name)));
        }
    }

    @Test
    void theSameMakeGivesTheSameBytes() {
        List<OpenFile> first = Exchange.files(SAMPLE, OptionalInt.empty());
        List<OpenFile> second = Exchange.files(SAMPLE, OptionalInt.empty());
        assertThat(first)
                .extracting(OpenFile::name)
                .containsExactly("pattern.dxf", "pattern-cut.dxf", "pattern.plt", "pattern.png");
        for (int i = 0; i < first.size(); i++) {
            assertThat(first.get(i).content()).isEqualTo(second.get(i).content());
        }
        assertThat(new String(first.get(0).content(), StandardCharsets.US_ASCII))
                .endsWith("  0\r\nEOF\r\n");
    }

    private static Handover named(Pattern pattern, String name) {
        Map<String, String> cloths = Map.of("cuff", name);
        return new Handover(pattern, name, name, name, cloths, SAMPLE.stretchAcross(), SAMPLE.stretchAlong());
    }

    private static List<String> drawn(List<Entity> block) {
        return block.stream()
                .filter(e -> !e.type().equals("TEXT"))
                .map(Entity::line)
                .toList();
    }

    private static List<String> texts(DxfReader dxf) {
        return Stream.concat(dxf.blocks.values().stream().flatMap(List::stream), dxf.entities.stream())
                .filter(e -> e.type().equals("TEXT"))
                .map(Entity::text)
                .toList();
    }
}
