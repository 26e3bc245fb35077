package stretchwright.print.sheets;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.SvgCanvas;

/** Many leg pieces side by side at an eighth of true scale, to be looked over: sew line, cut line, a few words each. */
public final class LegSheet {
    private static final double SCALE = 1.0 / 8;
    private static final int IN_A_ROW = 7;
    private static final double GAP = 8;
    private static final double LINE = 3.6;

    private LegSheet() {}

    /** A piece, and the lines under it. */
    public record Leg(List<String> words, Piece piece) {
        public Leg {
            words = List.copyOf(words);
        }
    }

    public static Document of(String name, String title, List<Leg> legs) {
        double width = 0;
        double height = 0;
        int lines = 0;
        for (Leg leg : legs) {
            Box box = leg.piece.cutLine().box();
            width = Math.max(width, box.width() * SCALE);
            height = Math.max(height, box.height() * SCALE);
            lines = Math.max(lines, leg.words.size());
        }
        double cellWidth = width + GAP;
        double cellHeight = height + GAP + lines * LINE;
        int rows = (legs.size() + IN_A_ROW - 1) / IN_A_ROW;
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$smm\""
                        + " height=\"%2$smm\" viewBox=\"0 0 %1$s %2$s\">\n<title>%3$s</title>\n"
                        + "<style>path{fill:none;stroke:#000;stroke-width:.3}path.sew{stroke:#0072b2}"
                        + "text{font:2.6px \"Liberation Sans\",Arial,Helvetica,sans-serif}</style>\n",
                SvgCanvas.number(IN_A_ROW * cellWidth + GAP),
                SvgCanvas.number(rows * cellHeight + 2 * GAP),
                SvgCanvas.escaped(title)));
        for (int i = 0; i < legs.size(); i++) {
            double x = GAP + (i % IN_A_ROW) * cellWidth;
            double y = GAP + (i / IN_A_ROW) * cellHeight;
            leg(svg, legs.get(i), x, y + height, width / 2);
        }
        svg.append("</svg>\n");
        return new Document(name, "drawing", 1, svg.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** Its lower left corner at x, foot. */
    private static void leg(StringBuilder svg, Leg leg, double x, double foot, double half) {
        Box box = leg.piece.cutLine().box();
        Point origin = new Point(x + half - SCALE * box.centre().x(), foot + SCALE * box.minY());
        path(svg, "cut", leg.piece.cutLine().points(), origin);
        path(svg, "sew", leg.piece.sewLine().points(), origin);
        for (int i = 0; i < leg.words.size(); i++) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<text x=\"%s\" y=\"%s\">%s</text>\n",
                    SvgCanvas.number(x),
                    SvgCanvas.number(foot + (i + 1) * LINE),
                    SvgCanvas.escaped(leg.words.get(i))));
        }
    }

    private static void path(StringBuilder svg, String cssClass, List<Point> points, Point origin) {
        svg.append("<path class=\"").append(cssClass).append("\" d=\"M");
        svg.append(points.stream()
                .map(p -> SvgCanvas.number(origin.x() + SCALE * p.x()) + " "
                        + SvgCanvas.number(origin.y() - SCALE * p.y()))
                .collect(Collectors.joining(" L")));
        svg.append(" Z\"/>\n");
    }
}
