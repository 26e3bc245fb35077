package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.exchange.PlotReader.Lettering;
import stretchwright.exchange.PlotReader.Stroke;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.Piece;

/** pattern.plt: the pen is followed, and what it draws is held against every piece of every example. */
class PlotTest {
    /** Half a plotter unit each way: 0.0125 mm, across both 0.0177 mm. */
    private static final double HALF_UNIT = 0.0125 * Math.sqrt(2) + 1e-9;

    private double worst;

    @Tag("slow")
    @Test
    void thePenFollowsEveryPiece() {
        int pieces = 0;
        for (Handover handover : ExampleHandovers.all().values()) {
            PlotReader plot = PlotReader.read(Plot.of(handover));
            List<List<Point>> cut = pen(plot, 1);
            List<List<Point>> rest = pen(plot, 2);
            int at = 0;
            int inner = 0;
            for (Piece piece : handover.pattern().pieces()) {
                Point move = move(cut.get(at), piece);
                follows(cut.get(at), piece.cutLine().points(), move, piece);
                at += 1 + Tick.of(piece).size();
                follows(rest.get(inner), piece.sewLine().points(), move, piece);
                inner += (piece.onFold() ? 5 : 4) + piece.marks().size();
                pieces++;
            }
            assertThat(cut).hasSize(at);
            assertThat(rest).hasSize(inner);
            noWiderThanTheWidestPiece(handover, plot);
        }
        System.out.printf("exchange: %d pieces in pattern.plt, no corner farther off than %.4f mm%n", pieces, worst);
        assertThat(pieces).isGreaterThan(50);
        assertThat(worst).isLessThan(HALF_UNIT);
    }

    private static List<List<Point>> pen(PlotReader plot, int pen) {
        return plot.strokes.stream()
                .filter(s -> s.pen() == pen)
                .map(Stroke::points)
                .toList();
    }

    /** A quarter to the right, then by whole units. */
    private static Point move(List<Point> read, Piece piece) {
        Box drafted = Box.around(turned(piece.cutLine().points()));
        Box here = Box.around(read);
        double x = Math.rint((here.minX() - drafted.minX()) / 0.025) * 0.025;
        double y = Math.rint((here.minY() - drafted.minY()) / 0.025) * 0.025;
        // rounding may have gone either way: the nearest of the neighbours is the move
        Point best = Point.ORIGIN;
        double least = Double.MAX_VALUE;
        for (int i = -1; i <= 1; i++) {
            for (int j = -1; j <= 1; j++) {
                Point move = new Point(x + i * 0.025, y + j * 0.025);
                double off = Off.asSets(read, moved(turned(piece.cutLine().points()), move));
                if (off < least) {
                    least = off;
                    best = move;
                }
            }
        }
        return best;
    }

    private void follows(List<Point> read, List<Point> drafted, Point move, Piece piece) {
        worst = Math.max(worst, Off.asSets(read, moved(turned(drafted), move)));
        boolean closed = read.get(0).equals(read.get(read.size() - 1));
        assertThat(closed).as(piece.name().word()).isEqualTo(!piece.onFold());
    }

    private static List<Point> turned(List<Point> points) {
        return points.stream().map(p -> new Point(p.y(), -p.x())).toList();
    }

    private static List<Point> moved(List<Point> points, Point by) {
        return points.stream().map(p -> p.plus(by)).toList();
    }

    /** The lettering included, each letter taken as wide as it is told to be, with the space behind it. */
    private static void noWiderThanTheWidestPiece(Handover handover, PlotReader plot) {
        double widest = handover.pattern().pieces().stream()
                .mapToDouble(p -> p.cutLine().box().width())
                .max()
                .orElseThrow();
        List<Point> all = new ArrayList<>();
        plot.strokes.forEach(s -> all.addAll(s.points()));
        for (Lettering l : plot.labels) {
            all.add(l.at());
            assertThat(l.height()).isBetween(0.3, 8.01);
        }
        assertThat(Box.around(all).maxY()).isLessThan(widest + 0.06);
        assertThat(plot.labels.stream().map(Lettering::words))
                .anyMatch(w -> w.startsWith("fabric stretch: across "))
                .anyMatch(w -> w.contains("leg: cut "));
    }
}
