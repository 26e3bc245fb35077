package stretchwright.web.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.print.kit.Browser;

/** All drawings on pages to be looked at, light and dark, as a browser shows them: target/drawings. */
@Tag("slow")
class DrawingsGalleryTest {
    private static final Path FOLDER = Path.of("target/drawings");
    private static final Pattern CLASS = Pattern.compile("class=\"([^\"]+)\"");

    private static String styles() throws IOException {
        try (InputStream in = DrawingsGalleryTest.class.getResourceAsStream("gallery.css")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String page(String names, String look) throws IOException {
        StringBuilder page = new StringBuilder("<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\"><title>"
                + names + "</title><style>" + styles() + "</style><section class=\"" + look + "\">");
        for (Marks mark : Marks.values()) {
            page.append("<figure>")
                    .append(mark.svg().replaceFirst("<svg", "<svg width=\"46\""))
                    .append("</figure>");
        }
        int[] count = {0};
        AllDrawings.all().forEach((name, drawing) -> {
            if (name.matches(names)) {
                page.append("<figure>").append(drawing.svg("d" + count[0]++, ""));
                page.append("<figcaption>").append(Pen.escaped(drawing.title())).append("</figcaption></figure>");
            }
        });
        return page.append("</section></html>").toString();
    }

    @Test
    void everyClassHasItsLook() throws IOException {
        String css = styles();
        AllDrawings.all()
                .values()
                .forEach(drawing -> CLASS.matcher(drawing.inside())
                        .results()
                        .flatMap(r -> Stream.of(r.group(1).split(" ")))
                        .distinct()
                        .forEach(c -> assertThat(css).contains("." + c + " {")));
    }

    @Test
    void theGalleryIsShownLightAndDark() throws Exception {
        String browser = Browser.installed().orElse("");
        assumeTrue(!browser.isEmpty(), "no browser: the pages were not made into pictures");
        Files.createDirectories(FOLDER);
        for (String[] part : new String[][] {
            {"tapes-woman", "tape-woman-.*"},
            {"tapes-man", "tape-man-.*"},
            {"tapes-child", "tape-child-.*"},
            {"boots", "boot-.*"},
            {"worn", "(worn|ends)-.*"},
            {"hands", "hands-.*"},
            {"symptoms", "symptom-.*"}
        }) {
            for (String look : new String[] {"light", "dark"}) {
                Path page = FOLDER.resolve(part[0] + "-" + look + ".html");
                Files.writeString(page, page(part[1], look));
                try (Browser shown = new Browser(browser, page.toAbsolutePath().toUri(), 1900, 2400)) {
                    byte[] picture = shown.picture();
                    Files.write(FOLDER.resolve(part[0] + "-" + look + ".png"), picture);
                    assertThat(inked(picture)).as(part[0]).isGreaterThan(0.01);
                }
            }
        }
    }

    /** The share of the picture that is neither of its two commonest grounds: what was drawn. */
    private static double inked(byte[] png) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        java.util.Map<Integer, Integer> colours = new java.util.HashMap<>();
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                colours.merge(image.getRGB(x, y), 1, Integer::sum);
            }
        }
        double all = colours.values().stream().mapToInt(n -> n).sum();
        double grounds = colours.values().stream()
                .sorted(java.util.Comparator.reverseOrder())
                .limit(2)
                .mapToInt(n -> n)
                .sum();
        return 1 - grounds / all;
    }
}
