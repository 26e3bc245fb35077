package stretchwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.lay.Lay;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.print.cloth.LaySheet;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.sheets.PatternSvg;
import stretchwright.print.sheets.PieceDrawing;
import stretchwright.print.sheets.PieceLabel;

/** The two SVG drawings, read back with the JDK's own XML reader. */
public class DrawingsTest {
    private static final Pattern PAIR = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)");

    @Test
    void theSvgHoldsEveryCutLinePointForPoint() throws Exception {
        Job job = SampleJob.on("A4");
        Element root = parsed(PatternSvg.of(job));
        for (Piece piece : job.pattern().pieces()) {
            Element group = group(root, piece.name().word());
            List<Point> expected = PieceDrawing.cutRuns(piece).get(0);
            List<Point> found = points(paths(group, "cut-line").get(0));
            assertThat(found).as(piece.name().word()).hasSameSizeAs(expected);
            for (int i = 0; i < expected.size(); i++) {
                assertThat(found.get(i)
                                .distance(new Point(
                                        expected.get(i).x(), -expected.get(i).y())))
                        .isLessThan(0.0001);
            }
            assertThat(paths(group, "sew-line")).hasSize(1);
            assertThat(paths(group, "grain")).isNotEmpty();
        }
    }

    @Test
    void oneUserUnitIsOneMillimetreAndEverythingLiesOnTheDrawing() throws Exception {
        Element root = parsed(PatternSvg.of(SampleJob.on("A4")));
        String width = root.getAttribute("width").replace("mm", "");
        String height = root.getAttribute("height").replace("mm", "");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 " + width + " " + height);
        for (Piece piece : SampleJob.on("A4").pattern().pieces()) {
            Element group = group(root, piece.name().word());
            Point shift = points(group.getAttribute("transform")).get(0);
            for (Point p : points(paths(group, "cut-line").get(0))) {
                assertThat(p.x() + shift.x()).isBetween(0.0, Double.parseDouble(width));
                assertThat(p.y() + shift.y()).isBetween(0.0, Double.parseDouble(height));
            }
        }
    }

    /** Along a fold nothing is cut: the half waistband's cut line starts and ends on x = 0 and stays open. */
    @Test
    void theFoldIsNotPartOfTheCutLine() throws Exception {
        Job job = SampleJob.on("A4");
        String path = paths(group(parsed(PatternSvg.of(job)), "waistband"), "cut-line")
                .get(0);
        List<Point> found = points(path);
        assertThat(path).doesNotContain("Z");
        assertThat(found.get(0).x()).isZero();
        assertThat(found.get(found.size() - 1).x()).isZero();
        assertThat(texts(PatternSvg.of(job))).anyMatch(t -> t.startsWith("place on the fold"));
    }

    @Test
    void aDoubleNotchIsTwoTicksFourMillimetresApartThatStopShortOfTheSewLine() throws Exception {
        List<String> ticks = paths(group(parsed(PatternSvg.of(SampleJob.on("A4"))), "leg"), "notch");
        assertThat(ticks).hasSize(3);
        List<Point> first = points(ticks.get(0));
        List<Point> second = points(ticks.get(1));
        assertThat(first.get(0).distance(second.get(0))).isCloseTo(4, within(0.001));
        // knee back: sew line at x = 164, allowance 7, tick 5 inwards
        assertThat(first.get(0).x()).isCloseTo(171, within(0.001));
        assertThat(first.get(1).x()).isCloseTo(166, within(0.001));
    }

    @Test
    void everyPieceSaysWhatItNeedsToBeUsedAgain() throws Exception {
        String all = String.join("\n", texts(PatternSvg.of(SampleJob.on("A4"))));
        assertThat(all)
                .contains("leg: cut 1 + 1 mirrored", "waistband: cut 1 on the fold", "cuff: cut 2", "for Rowan")
                .contains("stretch: across 60 %, along 45 %", "hem 10.7 %")
                .contains("the cut line is 7 mm outside the sew line");
    }

    /** The width of most edges is told once, without their names: a list of all made the whole label too small to read. */
    @Test
    void onlyTheEdgesWithAnotherAllowanceAreNamed() {
        Piece leg = SampleJob.on("A4").pattern().pieces().get(0);
        List<Edge> edges = leg.edges().stream()
                .map(e -> e.name() == EdgeName.HEM ? new Edge(e.name(), e.line(), 20) : e)
                .toList();
        assertThat(PieceLabel.allowance(
                        Piece.of(leg.name(), 2, true, false, edges, leg.grain(), leg.notches(), leg.marks())))
                .isEqualTo("the cut line is 7 mm outside the sew line, 20 mm at: hem");
    }

    /** By hand: leg 2 is mirrored and moved by (780, 13), so its crotch back (262, 728) plus allowance lies left of it. */
    @Test
    void theLayShowsPlacementsAsTheyAreDefined() throws Exception {
        Job job = SampleJob.on("A4");
        List<String> cloth = paths(parsed(LaySheet.svg(job, "lay")), "cloth");
        Point corner = points(cloth.get(0)).get(0);
        double scale = points(cloth.get(0)).get(1).minus(corner).x() / 1470;
        List<Point> drawn = points(paths(parsed(LaySheet.svg(job, "lay")), "label").stream()
                .filter(p -> p.endsWith("Z"))
                .toList()
                .get(1));
        List<Point> cut =
                job.pattern().piece(PieceName.of(PieceKind.LEG)).cutLine().points();
        for (int i = 0; i < cut.size(); i++) {
            Point onCloth = new Point(780 - cut.get(i).x(), 13 + cut.get(i).y());
            Point expected = new Point(corner.x() + scale * onCloth.x(), corner.y() - scale * onCloth.y());
            assertThat(drawn.get(i).distance(expected)).isLessThan(0.001);
        }
        assertThat(texts(LaySheet.svg(job, "lay")))
                .contains("leg L", "leg R", "cuff 1", "cuff 2", "waistband", "\u2190 78");
        assertThat(String.join(" ", texts(LaySheet.svg(job, "lay")))).contains("Buy 1.35 m or 1 1/2 yd", "one way");
    }

    /** Drawn so small that no words fit into a cuff: its number stays, the words stand below the drawing. */
    @Test
    void whatASmallPieceHasNoRoomForIsSaidBelow() throws Exception {
        Lay open = SampleJob.openLay();
        Lay tall = new Lay(open.method(), 1470, 6000, 6100, 0.1, 1100, open.placements());
        Job job = SampleJob.with("A4", "Evening practice", "Rowan", SampleFabric.with(1470, 0.60, 0.45, true), tall);
        List<String> words = texts(LaySheet.svg(job, "lay"));
        assertThat(words).doesNotContain("cuff 1").contains("4", "5");
        assertThat(String.join(" ", words)).contains("cuff\u00a01: this side up, \u2190 125.7 cm");
    }

    @Test
    void aFoldedLayNamesItsFoldAndGivesPairs() throws Exception {
        List<String> words = texts(LaySheet.svg(SampleJob.folded(), "lay"));
        assertThat(words)
                .contains(
                        "fold - not cut",
                        "both edges of the usable width",
                        "leg L + R",
                        "cuff",
                        "waistband",
                        "this side up, two layers",
                        "this side up, on the fold");
    }

    public static Element parsed(Document document) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(document.bytes()))
                .getDocumentElement();
    }

    private static Element group(Element root, String id) {
        NodeList groups = root.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            Element g = (Element) groups.item(i);
            if (g.getAttribute("id").equals(id)) {
                return g;
            }
        }
        throw new AssertionError("no group " + id);
    }

    public static List<String> paths(Element in, String cssClass) {
        List<String> out = new ArrayList<>();
        NodeList all = in.getElementsByTagName("path");
        for (int i = 0; i < all.getLength(); i++) {
            Element e = (Element) all.item(i);
            if (e.getAttribute("class").equals(cssClass)) {
                out.add(e.getAttribute("d"));
            }
        }
        return out;
    }

    static List<String> texts(Document document) throws Exception {
        List<String> out = new ArrayList<>();
        NodeList all = parsed(document).getElementsByTagName("text");
        for (int i = 0; i < all.getLength(); i++) {
            out.add(all.item(i).getTextContent());
        }
        return out;
    }

    public static List<Point> points(String d) {
        List<Point> out = new ArrayList<>();
        Matcher m = PAIR.matcher(d);
        while (m.find()) {
            out.add(new Point(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))));
        }
        return out;
    }
}
