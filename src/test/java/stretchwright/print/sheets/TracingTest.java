package stretchwright.print.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.draft.TopStyles;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Document;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.Unit;
import stretchwright.lay.Lay;
import stretchwright.lay.Laying;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SampleNest;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;

/** Pieces drawn again from the numbers of the tracing sheet, against the pieces. */
class TracingTest {
    private static List<Piece> pieces() {
        List<Piece> all = new ArrayList<>(SamplePattern.overBoot().pieces());
        Stream.of("straight with elastic, cord and pocket", "darts under a contoured band")
                .map(TopStyles.drafted()::get)
                .map(java.util.Objects::requireNonNull)
                .map(Pattern::pieces)
                .forEach(all::addAll);
        return all;
    }

    private static Job curved() {
        Pattern pattern = SampleNest.draft(1, Style.Leg.OVER_BOOT);
        Fabric fabric = SampleFabric.heavyKnit();
        Lay lay = Laying.lay(pattern.pieces(), fabric, Style.LayWay.OPEN, new Findings("test"))
                .orElseThrow();
        return SampleJob.of("A4", "Curved", "Rowan", fabric, lay, pattern);
    }

    /** Read as inches a bow would be a lump: 0.3 mm is an eightieth of an inch. */
    @ParameterizedTest
    @ValueSource(strings = {"1 in", "2 cm"})
    void aBowIsToldInMillimetres(String grid) throws IOException {
        Document made = TracingPdf.of(curved(), TraceGrid.of(grid).orElseThrow());
        try (PDDocument pdf = Loader.loadPDF(made.bytes())) {
            assertThat(new PDFTextStripper().getText(pdf))
                    .containsPattern("\\d \\([+-]\\d\\.\\d mm\\)")
                    .doesNotContainPattern("\\d \\([+-]\\d\\.\\d\\)");
        }
    }

    /** The drawn points joined by straight lines lie within 1 mm plus half a step of the cut line, and it of them. */
    @ParameterizedTest
    @ValueSource(strings = {"1 in", "1 cm", "2 cm", "5 cm"})
    void drawnAgainFromItsNumbersAPieceIsItself(String name) {
        TraceGrid grid = TraceGrid.of(name).orElseThrow();
        double most = 0;
        int points = 0;
        for (Piece piece : pieces()) {
            Point origin = new Point(
                    piece.onFold() ? 0 : piece.grain().from().x(),
                    piece.cutLine().box().minY());
            List<Point> drawn = Tracing.of(piece, grid).spots().stream()
                    .map(s -> s.at().plus(origin))
                    .toList();
            points += drawn.size();
            most = Math.max(most, apart(drawn, piece.cutLine().points()));
            most = Math.max(most, apart(piece.cutLine().points(), drawn));
        }
        System.out.printf("tracing on %s: %d points, at most %.2f mm off%n", name, points, most);
        assertThat(most).isLessThanOrEqualTo(1 + grid.step() / 2);
    }

    private static double around(List<Point> line) {
        double sum = 0;
        for (int i = 0; i < line.size(); i++) {
            sum += line.get(i).distance(line.get((i + 1) % line.size()));
        }
        return sum;
    }

    /** The farthest that any place of a closed line lies from another. */
    private static double apart(List<Point> line, List<Point> other) {
        double most = 0;
        for (int i = 0; i < line.size(); i++) {
            Point a = line.get(i);
            Point b = line.get((i + 1) % line.size());
            for (int k = 0; k < 8; k++) {
                most = Math.max(most, distance(a.towards(b, k / 8.0), other));
            }
        }
        return most;
    }

    private static double distance(Point p, List<Point> line) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < line.size(); i++) {
            Point a = line.get(i);
            Point ab = line.get((i + 1) % line.size()).minus(a);
            double square = ab.x() * ab.x() + ab.y() * ab.y();
            Point ap = p.minus(a);
            double share = square == 0 ? 0 : Math.max(0, Math.min(1, (ap.x() * ab.x() + ap.y() * ab.y()) / square));
            least = Math.min(least, ap.distance(ab.times(share)));
        }
        return least;
    }

    /** Folds, placement lines and eyelets too, and all of them. */
    @Test
    void whatIsSewnInsideIsDrawnAgainToo() {
        TraceGrid grid = TraceGrid.of("2 cm").orElseThrow();
        int lines = 0;
        for (Piece piece : pieces()) {
            Point origin = new Point(
                    piece.onFold() ? 0 : piece.grain().from().x(),
                    piece.cutLine().box().minY());
            List<Mark> marks = piece.marks().stream()
                    .filter(m -> m.kind() != Mark.Kind.LEVEL)
                    .toList();
            List<Tracing.Inner> inner = Tracing.of(piece, grid).inner();
            assertThat(inner)
                    .extracting(Tracing.Inner::name)
                    .isEqualTo(marks.stream().map(m -> m.name().word()).toList());
            for (int i = 0; i < marks.size(); i++) {
                List<Point> drawn = inner.get(i).points().stream()
                        .map(s -> s.at().plus(origin))
                        .toList();
                List<Point> meant = marks.get(i).line().points();
                // an eyelet is one point, half its length from the ends of its line
                double allowed = marks.get(i).kind() == Mark.Kind.EYELET
                        ? marks.get(i).line().length() / 2 + 1
                        : 1 + grid.step() / 2;
                assertThat(apart(meant, drawn)).as(marks.get(i).name().word()).isLessThanOrEqualTo(allowed);
                lines++;
            }
        }
        assertThat(lines).isGreaterThan(3);
    }

    /** By hand. */
    @Test
    void distancesAreSaidAsOnARuler() {
        TraceGrid inches = TraceGrid.of("1 in").orElseThrow();
        assertThat(inches.said(25.4 * 13.875)).isEqualTo("13 7/8 in");
        assertThat(inches.said(25.4 / 16)).isEqualTo("1/16 in");
        assertThat(inches.squares(25.4 * 13.875)).isEqualTo("13 sq + 7/8 in");
        TraceGrid two = TraceGrid.of("2 cm").orElseThrow();
        assertThat(two.said(352)).isEqualTo("352 mm");
        assertThat(two.squares(352)).isEqualTo("17 sq + 12 mm");
        assertThat(two.squares(-340)).isEqualTo("17 sq");
        assertThat(two.rounded(12.4)).isEqualTo(12);
    }

    @Test
    void onlyGridsThatAreSoldAreKnown() {
        assertThat(TraceGrid.of("3 cm")).isEmpty();
        assertThat(TraceGrid.of("0 in")).isEmpty();
        assertThat(TraceGrid.usual(Unit.IN).name()).isEqualTo("1 in");
        assertThat(TraceGrid.usual(Unit.CM).name()).isEqualTo("2 cm");
    }

    /** Every check that is printed comes out on the piece: straight distances never exceed those along the line. */
    @Test
    void checksAreTrueOfThePiece() {
        TraceGrid grid = TraceGrid.of("2 cm").orElseThrow();
        for (Piece piece : pieces()) {
            List<Tracing.Check> checks = Tracing.of(piece, grid).checks();
            double around = checks.stream().mapToDouble(Tracing.Check::along).sum();
            assertThat(around)
                    .as(piece.name().word())
                    .isCloseTo(around(piece.cutLine().points()), org.assertj.core.api.Assertions.within(1e-6));
            assertThat(checks).allMatch(c -> c.straight() <= c.along() + 1e-9);
        }
    }
}
