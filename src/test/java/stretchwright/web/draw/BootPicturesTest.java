package stretchwright.web.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.intake.BootGuide;
import stretchwright.intake.Key;

/**
 * The drawings of the page that docs/measuring.md shows of the boot, each with its own light look, as no style sheet comes with them.
 * After a change write them anew: the same test with -Dstretchwright.write=docs.
 */
class BootPicturesTest {
    private static final Path PICTURES = Path.of("docs/pictures/boot");
    private static final Pattern CLASS = Pattern.compile("class=\"([^\"]+)\"");
    private static final Pattern COLOUR = Pattern.compile("(--[a-z]+): (#[0-9a-f]{6});");

    private static String gallery() throws IOException {
        try (InputStream in = BootPicturesTest.class.getResourceAsStream("gallery.css")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The rules of what is drawn, in the light colours, which come first. */
    private static String look(String inside) throws IOException {
        Set<String> classes = CLASS.matcher(inside)
                .results()
                .flatMap(r -> Arrays.stream(r.group(1).split(" ")))
                .collect(Collectors.toSet());
        String css = gallery();
        String rules = css.lines()
                .map(line -> line.replaceFirst("^svg (?=[.t])", ""))
                .filter(line -> line.startsWith("text ") || classes.contains(firstClass(line)))
                .collect(Collectors.joining("\n"));
        for (MatchResult colour : COLOUR.matcher(css).results().toList()) {
            rules = rules.replace("var(" + colour.group(1) + ")", colour.group(2));
        }
        return rules;
    }

    private static String firstClass(String rule) {
        return rule.startsWith(".") ? rule.substring(1).split("[ .]")[0] : "";
    }

    private static String picture(BootMeasure measure) throws IOException {
        Drawing drawing = Boots.of(measure, BootKind.FIGURE, AllDrawings.VOICE);
        String style = "<style>\n" + look(drawing.inside()) + "\n.ground { fill: #fcfcfa; }\n</style>\n";
        String ground = "<path class=\"ground\" d=\"M0 0H" + Pen.number(drawing.width()) + "V"
                + Pen.number(drawing.height()) + "H0Z\"/>\n";
        return drawing.svg("p", "")
                .replaceFirst("<svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"")
                .replaceFirst("</desc>\n", "</desc>\n" + style + ground);
    }

    @ParameterizedTest
    @EnumSource(BootMeasure.class)
    void everyMeasureHasItsPicture(BootMeasure measure) throws IOException {
        Path file = PICTURES.resolve(BootGuide.of(measure.path()).picture());
        if ("docs".equals(System.getProperty("stretchwright.write"))) {
            Files.createDirectories(PICTURES);
            Files.writeString(file, picture(measure));
        }
        assertThat(Files.readString(file))
                .isEqualTo(picture(measure))
                .contains("class=\"tapeline\"")
                .doesNotContain("var(");
    }

    @Test
    void noMeasureOfTheTableLacksItsPictureAndNoneIsLeftOver() throws IOException {
        List<String> shown = Pattern.compile("pictures/boot/([a-z-]+\\.svg)")
                .matcher(Files.readString(Path.of("docs/measuring.md")))
                .results()
                .map(r -> r.group(1))
                .toList();
        assertThat(shown)
                .isEqualTo(BootGuide.measures().stream()
                        .map(Key::path)
                        .map(p -> BootGuide.of(p).picture())
                        .toList());
        try (Stream<Path> files = Files.list(PICTURES)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(shown);
        }
    }
}
