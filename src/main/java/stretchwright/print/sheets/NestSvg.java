package stretchwright.print.sheets;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.pattern.Nest;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SizeLine;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.print.kit.SvgText;

/**
 * A nest at true scale: the pieces side by side, each in all sizes over each other, cut line thick and sew line thin. One
 * class per size ("size-1" and so on), so that a drawing program can show one size alone. How sizes
 * differ: SizeLine.
 */
public final class NestSvg {
    /** As many sizes as can be told apart. */
    public static final int MOST_SIZES = SizeLine.MOST;

    private static final double GAP = 25;
    private static final double LETTER = 6;
    private static final double LEGEND_LINE = 10;
    private static final double SAMPLE = 40;

    private NestSvg() {}

    public static Document of(Nest nest, String title) {
        List<Box> boxes = nest.pieces().stream().map(NestSvg::box).toList();
        double width = GAP + boxes.stream().mapToDouble(b -> b.width() + GAP).sum();
        double legend = 2 * GAP + LEGEND_LINE * nest.sizes().size();
        double height = legend + boxes.stream().mapToDouble(Box::height).max().orElse(0) + 2 * GAP;
        SvgText svg = new SvgText();
        legend(svg, nest.sizes(), title);
        double x = GAP;
        for (int i = 0; i < boxes.size(); i++) {
            piece(
                    svg,
                    nest.pieces().get(i),
                    new Point(x - boxes.get(i).minX(), legend + boxes.get(i).maxY()),
                    boxes.get(i));
            x += boxes.get(i).width() + GAP;
        }
        String text = svg.finished(
                Math.max(width, 300), height, title, styles(nest.sizes().size()));
        return new Document("nest.svg", "nested pattern", 1, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String styles(int sizes) {
        StringBuilder css = new StringBuilder(
                "path{fill:none;stroke-width:.5}path.sew{stroke-width:.2}path.anchor{stroke:#000;stroke-width:.25}\n"
                        + SvgText.letters(LETTER));
        for (int i = 0; i < sizes; i++) {
            SizeLine line = new SizeLine("", i);
            String dash = line.dashes().stream().map(SvgCanvas::number).collect(Collectors.joining(" "));
            css.append(String.format(Locale.ROOT, ".size-%d{stroke:#%06x", i + 1, line.colour()))
                    .append(dash.isEmpty() ? "" : ";stroke-dasharray:" + dash)
                    .append("}\n");
        }
        return css.toString();
    }

    private static void legend(SvgText svg, List<String> sizes, String title) {
        svg.text(GAP, GAP, Phrases.of("nest.legend", title));
        for (int i = 0; i < sizes.size(); i++) {
            double y = GAP + LEGEND_LINE * (i + 1);
            svg.path("size-" + (i + 1), List.of(Point.ORIGIN, new Point(SAMPLE, 0)), new Point(GAP, y - 2), 1, false);
            svg.text(GAP + SAMPLE + 5, y, sizes.get(i));
        }
    }

    private static void piece(SvgText svg, Nest.Nested piece, Point origin, Box box) {
        svg.begin(piece.name().word().replace(' ', '-'));
        svg.text(
                origin.x() + box.minX(),
                origin.y() - box.minY() + LETTER + 4,
                Phrases.said(piece.name().said()));
        svg.path("anchor", List.of(new Point(-6, 0), new Point(6, 0)), origin, 1, false);
        svg.path("anchor", List.of(new Point(0, -6), new Point(0, 6)), origin, 1, false);
        for (int size = 0; size < piece.anchors().size(); size++) {
            String css = "size-" + (size + 1);
            Point anchor = piece.anchors().get(size);
            svg.path("cut " + css, from(anchor, piece.cutLines().get(size).points()), origin, 1, true);
            svg.path("sew " + css, from(anchor, sewLine(piece, size)), origin, 1, true);
        }
        svg.end();
    }

    private static List<Point> sewLine(Nest.Nested piece, int size) {
        List<Point> points = new ArrayList<>();
        for (Nest.Run run : piece.runs()) {
            List<Point> line = run.lines().get(size).points();
            points.addAll(line.subList(0, line.size() - 1));
        }
        return points;
    }

    private static List<Point> from(Point anchor, List<Point> points) {
        return points.stream().map(p -> p.minus(anchor)).toList();
    }

    private static Box box(Nest.Nested piece) {
        List<Point> all = new ArrayList<>();
        for (int size = 0; size < piece.anchors().size(); size++) {
            all.addAll(
                    from(piece.anchors().get(size), piece.cutLines().get(size).points()));
        }
        return Box.around(all);
    }
}
