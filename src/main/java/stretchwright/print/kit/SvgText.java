package stretchwright.print.kit;

import java.util.List;
import java.util.Locale;
import stretchwright.ground.Point;

/**
 * The text of a drawing in SVG 1.1, whose y runs down: the one place that writes it. Shapes carry classes; what those look
 * like the drawing says in its styles.
 */
public final class SvgText {
    private static final String HEAD =
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
                    + "width=\"%1$s\" height=\"%2$s\" viewBox=\"0 0 %3$s %4$s\">\n<title>%5$s</title>\n%6$s<style>\n%7$s</style>\n";

    private final StringBuilder body = new StringBuilder();

    public void begin(String id) {
        body.append("<g id=\"").append(SvgCanvas.escaped(id)).append("\">\n");
    }

    /** A group whose own origin lies at the place. */
    void begin(String id, String cssClass, Point origin) {
        body.append(String.format(
                Locale.ROOT,
                "<g id=\"%s\" class=\"%s\" transform=\"translate(%s %s)\">\n",
                SvgCanvas.escaped(id),
                cssClass,
                SvgCanvas.number(origin.x()),
                SvgCanvas.number(origin.y())));
    }

    public void end() {
        body.append("</g>\n");
    }

    /**
     * A line of points with y up, drawn from an origin in the drawing.
     *
     * @param scale units of the drawing for a unit of the points
     */
    public void path(String cssClass, List<Point> points, Point origin, double scale, boolean closed) {
        body.append("<path class=\"").append(cssClass);
        String before = "\" d=\"M";
        for (Point p : points) {
            body.append(before)
                    .append(SvgCanvas.number(origin.x() + scale * p.x()))
                    .append(' ')
                    .append(SvgCanvas.number(origin.y() - scale * p.y()));
            before = " L";
        }
        body.append(closed ? " Z" : "").append("\"/>\n");
    }

    public void text(double x, double y, String words) {
        body.append("<text x=\"")
                .append(SvgCanvas.number(x))
                .append("\" y=\"")
                .append(SvgCanvas.number(y))
                .append("\">")
                .append(SvgCanvas.escaped(words))
                .append("</text>\n");
    }

    /** As the canvas writes them: turned about the place. */
    void text(String cssClass, String anchor, double size, Point at, double degrees, String words) {
        body.append(String.format(
                Locale.ROOT,
                "<text class=\"%s\" text-anchor=\"%s\" font-size=\"%s\" transform=\"translate(%s %s) rotate(%s)\">%s</text>\n",
                cssClass,
                anchor,
                SvgCanvas.number(size),
                SvgCanvas.number(at.x()),
                SvgCanvas.number(at.y()),
                SvgCanvas.number(-degrees),
                SvgCanvas.escaped(words)));
    }

    /** What was drawn since, to be laid behind something else. */
    public void add(SvgText other) {
        body.append(other.body);
    }

    /** Letters as they stand in all drawings, in units of the drawing. */
    public static String letters(double size) {
        return "text{font:" + SvgCanvas.number(size) + "px \"Liberation Sans\",Arial,Helvetica,sans-serif}\n";
    }

    /** In millimetres, at true scale. */
    public String finished(double width, double height, String title, String styles) {
        return finished(width, height, 1, title, "", styles);
    }

    /**
     * The whole drawing.
     *
     * @param mm millimetres on paper for a unit of the drawing
     * @param description for those who do not see it; empty for none
     */
    public String finished(double width, double height, double mm, String title, String description, String styles) {
        return String.format(
                        Locale.ROOT,
                        HEAD,
                        SvgCanvas.number(width * mm) + "mm",
                        SvgCanvas.number(height * mm) + "mm",
                        SvgCanvas.number(width),
                        SvgCanvas.number(height),
                        SvgCanvas.escaped(title),
                        description.isEmpty() ? "" : "<desc>" + SvgCanvas.escaped(description) + "</desc>\n",
                        styles)
                + body + "</svg>\n";
    }

    /** As part of a page that carries the styles itself; a picture with a name for those who do not see it. */
    String inline(double width, double height, String description) {
        return String.format(
                        Locale.ROOT,
                        "<svg role=\"img\" aria-label=\"%s\" viewBox=\"0 0 %s %s\">\n",
                        SvgCanvas.escaped(description),
                        SvgCanvas.number(width),
                        SvgCanvas.number(height))
                + body + "</svg>\n";
    }
}
