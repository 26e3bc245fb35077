package stretchwright.print.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import stretchwright.exchange.Handover;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.PageReader;
import stretchwright.print.kit.PageReader.Stroke;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.SampleJob;

/** Every piece of every example, put together from the sheets alone, against the pattern. */
@Tag("slow")
class ExamplesOnPaperTest {
    private static final double EXACT = 0.05;

    /** A cut line as a sheet draws it, and where on all sheets joined. */
    private record Seen(Stroke stroke, Point corner) {
        Point at(int k) {
            return stroke.points().get(k).plus(corner);
        }

        boolean shows(int k) {
            Point p = stroke.points().get(k);
            return p.x() > stroke.clip().minX() - EXACT
                    && p.x() < stroke.clip().maxX() + EXACT
                    && p.y() > stroke.clip().minY() - EXACT
                    && p.y() < stroke.clip().maxY() + EXACT;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter", "A3", "Tabloid", "A0", "roll 914 mm", "13 x 19 in"})
    void allPiecesAreThereAndTrue(String paper) {
        Map<String, Double> off = new ConcurrentHashMap<>();
        ExampleHandovers.all().entrySet().parallelStream().forEach(e -> {
            Job job = SampleJob.drawing(e.getValue().pattern(), paper);
            List<Seen> seen = read(TiledPdf.of(job, Paper.named(paper)));
            for (Piece piece : job.pattern().pieces()) {
                for (List<Point> run : PieceDrawing.cutRuns(piece)) {
                    off.merge(e.getKey() + ", " + piece.name(), off(run, seen), Math::max);
                }
            }
        });
        assertThat(off)
                .hasSizeGreaterThan(16)
                .allSatisfy((piece, most) -> assertThat(most).as(piece).isLessThan(EXACT));
        System.out.printf(
                "paper: %d pieces on %s, no corner farther off than %.4f mm%n",
                off.size(), paper, Collections.max(off.values()));
    }

    /** The drawing in millimetres, read by the Java library's own XML reader. */
    @Test
    void theSvgHoldsEveryPieceInItsOwnCoordinates() throws Exception {
        int pieces = 0;
        for (Map.Entry<String, Handover> e : ExampleHandovers.all().entrySet()) {
            Job job = SampleJob.drawing(e.getValue().pattern(), "A4");
            NodeList groups = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(PatternSvg.of(job).bytes()))
                    .getElementsByTagName("g");
            assertThat(groups.getLength()).isEqualTo(job.pattern().pieces().size());
            for (int i = 0; i < groups.getLength(); i++) {
                Piece piece = job.pattern().pieces().get(i);
                List<List<Point>> cut = paths((Element) groups.item(i), "cut-line");
                List<List<Point>> runs = PieceDrawing.cutRuns(piece);
                assertThat(cut).as(piece.name().word()).hasSameSizeAs(runs);
                for (int r = 0; r < runs.size(); r++) {
                    same(cut.get(r), runs.get(r));
                }
                same(
                        paths((Element) groups.item(i), "sew-line").get(0),
                        piece.sewLine().points());
                pieces++;
            }
        }
        assertThat(pieces).isGreaterThan(16);
    }

    private static void same(List<Point> drawn, List<Point> meant) {
        assertThat(drawn).hasSameSizeAs(meant);
        for (int k = 0; k < meant.size(); k++) {
            assertThat(drawn.get(k).distance(meant.get(k))).isLessThan(EXACT);
        }
    }

    private static List<List<Point>> paths(Element group, String kind) {
        List<List<Point>> out = new ArrayList<>();
        NodeList paths = group.getElementsByTagName("path");
        for (int i = 0; i < paths.getLength(); i++) {
            Element path = (Element) paths.item(i);
            if (path.getAttribute("class").equals(kind)) {
                List<Point> points = new ArrayList<>();
                String[] numbers =
                        path.getAttribute("d").replaceAll("[MLZ]", " ").strip().split("\\s+");
                for (int k = 0; k + 1 < numbers.length; k += 2) {
                    points.add(new Point(Double.parseDouble(numbers[k]), -Double.parseDouble(numbers[k + 1])));
                }
                out.add(points);
            }
        }
        return out;
    }

    /** The least over all lines that may be this one: distances from two of its points are compared, as joined. */
    private static double off(List<Point> run, List<Seen> seen) {
        double best = Double.POSITIVE_INFINITY;
        for (Seen first : seen) {
            if (first.stroke.points().size() == run.size()) {
                List<Seen> alike = seen.stream()
                        .filter(s -> s.stroke.points().size() == run.size()
                                && s.at(0).distance(first.at(0)) < 1)
                        .toList();
                best = Math.min(best, off(run, first, alike));
            }
        }
        return best;
    }

    private static double off(List<Point> run, Seen first, List<Seen> sheets) {
        int middle = run.size() / 2;
        double most = 0;
        for (int k = 0; k < run.size(); k++) {
            int corner = k;
            List<Seen> showing = sheets.stream().filter(s -> s.shows(corner)).toList();
            if (showing.isEmpty()) {
                return Double.POSITIVE_INFINITY;
            }
            for (Seen s : showing) {
                for (int other : new int[] {0, middle, (k + 1) % run.size()}) {
                    double drawn = s.at(k).distance(first.at(other));
                    most = Math.max(most, Math.abs(drawn - run.get(k).distance(run.get(other))));
                }
            }
        }
        return most;
    }

    private static List<Seen> read(Document tiles) {
        List<Seen> all = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(tiles.bytes())) {
            for (int i = 1; i < pdf.getNumberOfPages(); i++) {
                Point corner = TiledPdfTest.placeOfPage(pdf, i);
                PageReader.strokes(pdf.getPage(i)).stream()
                        .filter(s -> Math.abs(s.width() - Ink.CUT.width()) < 0.01)
                        .forEach(s -> all.add(new Seen(s, corner)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }
}
