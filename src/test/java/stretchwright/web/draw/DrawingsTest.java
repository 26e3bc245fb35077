package stretchwright.web.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import stretchwright.body.Measure;
import stretchwright.ground.Point;
import stretchwright.intake.BootKeys;

/** What every drawing of the page keeps to. */
class DrawingsTest {
    private static final Map<String, Drawing> ALL = AllDrawings.all();

    /** Attributes that say what is where; none says how it looks, which a strict content policy would drop. */
    private static final Set<String> ATTRIBUTES = Set.of(
            "class",
            "width",
            "height",
            "viewBox",
            "direction",
            "role",
            "aria-labelledby",
            "id",
            "d",
            "x",
            "y",
            "cx",
            "cy",
            "r",
            "text-anchor");

    /** Of a letter, beside its size: no letter of the page's faces is broader on the average of a word. */
    private static final double BROAD = 0.62;

    /** What a phone of 360 px leaves between its margins for what is drawn for 390; the wide form is not for phones. */
    private static final double PHONE = 328;

    static Stream<String> names() {
        return ALL.keySet().stream();
    }

    private static Drawing drawing(String name) {
        return Objects.requireNonNull(ALL.get(name), name);
    }

    private static Element parsed(String name) throws Exception {
        Drawing drawing = drawing(name);
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(drawing.svg("a", "wide"))))
                .getDocumentElement();
    }

    private static List<Element> elements(Element root, String tag) {
        NodeList nodes = root.getElementsByTagName(tag);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            all.add((Element) nodes.item(i));
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("names")
    void isWellFormedAndSaysWhatItShows(String name) throws Exception {
        Element svg = parsed(name);
        assertThat(svg.getAttribute("aria-labelledby")).isEqualTo("at ad");
        assertThat(elements(svg, "title").get(0).getTextContent()).isNotBlank();
        assertThat(elements(svg, "desc").get(0).getTextContent()).hasSizeGreaterThan(20);
        assertThat(elements(svg, "*")).hasSizeGreaterThan(4);
    }

    @ParameterizedTest
    @MethodSource("names")
    void itsLookStandsInTheStyleSheetAlone(String name) throws Exception {
        Element svg = parsed(name);
        List<Element> all = elements(svg, "*");
        all.add(svg);
        for (Element element : all) {
            assertThat(element.getTagName()).isIn("svg", "title", "desc", "path", "circle", "text");
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                assertThat(element.getAttributes().item(i).getNodeName()).isIn(ATTRIBUTES);
            }
            if (!Set.of("svg", "title", "desc").contains(element.getTagName())) {
                assertThat(element.hasAttribute("id"))
                        .as("ids inside would repeat")
                        .isFalse();
                assertThat(element.getAttribute("class")).isNotEmpty();
            }
        }
    }

    /** In a page from right to left too: figures are not turned round, and letters stay beside what they name. */
    @ParameterizedTest
    @MethodSource("names")
    void isShownInItsOwnSizeAndWay(String name) throws Exception {
        Element svg = parsed(name);
        assertThat(svg.getAttribute("direction")).isEqualTo("ltr");
        assertThat(svg.getAttribute("viewBox"))
                .isEqualTo("0 0 " + svg.getAttribute("width") + " " + svg.getAttribute("height"));
        for (Element text : elements(svg, "text")) {
            assertThat(text.getAttribute("class")).matches("(\\w+ )?f\\d\\d");
            double shown = name.endsWith(TapeFigure.Size.WIDE.name())
                    ? 1
                    : Math.min(1, PHONE / drawing(name).width());
            assertThat(letters(text) * shown).isGreaterThanOrEqualTo(13);
        }
    }

    private static int letters(Element text) {
        String classes = text.getAttribute("class");
        return Integer.parseInt(classes.substring(classes.lastIndexOf('f') + 1));
    }

    @ParameterizedTest
    @MethodSource("names")
    void nothingLiesOutside(String name) throws Exception {
        Element svg = parsed(name);
        Drawing drawing = drawing(name);
        for (Element path : elements(svg, "path")) {
            List<Point> points = PathPoints.of(path.getAttribute("d"));
            String what = name + " " + path.getAttribute("class");
            inside(
                    drawing,
                    what,
                    points.stream().mapToDouble(Point::x).min().orElseThrow(),
                    points.stream().mapToDouble(Point::y).min().orElseThrow());
            inside(
                    drawing,
                    what,
                    points.stream().mapToDouble(Point::x).max().orElseThrow(),
                    points.stream().mapToDouble(Point::y).max().orElseThrow());
        }
        for (Element circle : elements(svg, "circle")) {
            double r = number(circle, "r");
            inside(drawing, name, number(circle, "cx") - r, number(circle, "cy") - r);
            inside(drawing, name, number(circle, "cx") + r, number(circle, "cy") + r);
        }
        for (Element text : elements(svg, "text")) {
            wordsInside(drawing, name + " " + text.getTextContent(), text);
        }
    }

    private static void wordsInside(Drawing drawing, String what, Element text) {
        double wide = BROAD * letters(text) * text.getTextContent().length();
        double left = number(text, "x")
                - switch (text.getAttribute("text-anchor")) {
                    case "middle" -> wide / 2;
                    case "end" -> wide;
                    default -> 0;
                };
        inside(drawing, what, left, number(text, "y") - letters(text));
        inside(drawing, what, left + wide, number(text, "y") + 4);
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static void inside(Drawing drawing, String what, double x, double y) {
        assertThat(x).as(what + ": x of " + drawing.width()).isBetween(0.0, drawing.width());
        assertThat(y).as(what + ": y of " + drawing.height()).isBetween(0.0, drawing.height());
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void everyMeasureHasItsTape(Measure measure) {
        for (TapeFigure.Size size : TapeFigure.Size.values()) {
            Drawing drawing = drawing("tape-woman-" + measure + "-" + size);
            assertThat(drawing.inside()).contains("class=\"tapeline");
            assertThat(drawing.title()).endsWith(": " + AllDrawings.VOICE.say(measure.said()));
        }
    }

    @Test
    void noTwoMeasuresLookTheSame() {
        Stream.of(
                        "tape-woman-.*-WIDE",
                        "tape-woman-.*-NARROW",
                        "boot-FIGURE-.*",
                        "symptom-.*",
                        "ends-[A-Z].*",
                        "hands-.*")
                .forEach(some -> assertThat(names().filter(n -> n.matches(some))
                                .map(n -> drawing(n).inside()))
                        .hasSizeGreaterThan(4)
                        .doesNotHaveDuplicates());
    }

    @Test
    void everyTapeMeasureOfABootHasItsDrawing() {
        List<String> measured = Stream.of(
                        BootKeys.TOP_GIRTH,
                        BootKeys.HEEL_GIRTH,
                        BootKeys.HEM_GIRTH,
                        BootKeys.ANKLE_TO_HEM,
                        BootKeys.ANKLE_TO_TOP,
                        BootKeys.GUARD_GIRTH,
                        BootKeys.ANKLE_TO_SOLE,
                        BootKeys.SOLE_LENGTH,
                        BootKeys.SOLE_WIDTH,
                        BootKeys.ARCH_WIDTH,
                        BootKeys.MOUNT_GAP,
                        BootKeys.PLATE)
                .map(key -> key.path().toString())
                .toList();
        assertThat(Stream.of(BootMeasure.values()).map(BootMeasure::path)).containsExactlyElementsOf(measured);
        assertThat(measured).allMatch(path -> BootMeasure.of(path).isPresent());
    }

    @Test
    void guardsAreOnABladeThatIsMeasured() {
        Drawing figure = drawing("boot-FIGURE-" + BootMeasure.HEEL_GIRTH);
        Drawing roller = drawing("boot-ROLLER-" + BootMeasure.HEEL_GIRTH);
        assertThat(figure.description()).endsWith("Guards are on the blade.");
        assertThat(roller.description()).doesNotContain("Guards");
    }

    @Test
    void namesTellKindsOfBoots() {
        assertThat(BootKind.of("figure skate")).isEqualTo(BootKind.FIGURE);
        assertThat(BootKind.of("Artistic roller boot")).isEqualTo(BootKind.ROLLER);
        assertThat(BootKind.of("HOCKEY")).isEqualTo(BootKind.HOCKEY);
        assertThat(BootKind.of("inline hockey")).isEqualTo(BootKind.INLINE);
        assertThat(BootKind.of("")).isEqualTo(BootKind.FIGURE);
    }

    @Test
    void marksAreForEyesAloneAndStandBesideTheirWord() {
        for (Marks mark : Marks.values()) {
            assertThat(mark.svg())
                    .contains("class=\"mark " + mark.name().toLowerCase(java.util.Locale.ROOT) + "\"")
                    .contains("viewBox=\"0 0 46 46\"")
                    .contains("aria-hidden=\"true\"");
            String d = mark.svg().replaceAll(".* d=\"([^\"]*)\".*", "$1");
            assertThat(PathPoints.of(d)).allMatch(p -> p.x() > 3 && p.x() < 43 && p.y() > 2 && p.y() < 43);
        }
    }

    @Test
    void wordsOfOthersCannotBecomeMarkup() {
        assertThat(new Drawing("<b>\"&", "a < b", 1, 1, "").svg("x", ""))
                .contains("&lt;b&gt;&quot;&amp;")
                .doesNotContain("<b>");
    }
}
