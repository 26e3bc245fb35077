package stretchwright.print.kit;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.ground.Decimals;
import stretchwright.ground.Point;

/** An SVG drawing, 1 user unit = 1 mm (SVG 1.1; trade-values section 7.2): y runs down there, so it is turned here. */
public final class SvgCanvas implements Canvas {
    private final StringBuilder body = new StringBuilder();
    private final double width;
    private final double height;
    private final String title;
    private double foot;

    /** The canvas's y = 0 lies at the foot of the drawing. */
    public SvgCanvas(double width, double height, String title) {
        this.width = width;
        this.height = height;
        this.title = title;
        foot = height;
    }

    /** Begins a group whose own origin lies at the place; inside it y is counted from there. */
    public void begin(String id, String cssClass, Point origin) {
        body.append(String.format(
                Locale.ROOT,
                "<g id=\"%s\" class=\"%s\" transform=\"translate(%s %s)\">\n",
                escaped(id),
                cssClass,
                number(origin.x()),
                number(height - origin.y())));
        foot = 0;
    }

    public void end() {
        body.append("</g>\n");
        foot = height;
    }

    @Override
    public void line(Ink ink, List<Point> points, boolean closed) {
        body.append("<path class=\"").append(ink.cssClass());
        String before = "\" d=\"M";
        for (Point p : points) {
            body.append(before).append(number(p.x())).append(' ').append(number(foot - p.y()));
            before = " L";
        }
        body.append(closed ? " Z" : "").append("\"/>\n");
    }

    @Override
    public void text(Writing w) {
        String anchor = switch (w.align()) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        body.append(String.format(
                Locale.ROOT,
                "<text class=\"%s\" text-anchor=\"%s\" font-size=\"%s\" transform=\"translate(%s %s) rotate(%s)\">%s</text>\n",
                w.ink().cssClass(),
                anchor,
                number(w.size()),
                number(w.at().x()),
                number(foot - w.at().y()),
                number(-w.degrees()),
                escaped(w.words())));
    }

    public String finished() {
        return finished("");
    }

    /** With a description for those who do not see the drawing; empty for none. */
    public String finished(String description) {
        return String.format(
                        Locale.ROOT,
                        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
                                + "width=\"%1$smm\" height=\"%2$smm\" viewBox=\"0 0 %1$s %2$s\">\n<title>%3$s</title>\n%5$s"
                                + "<style>\n%4$s</style>\n",
                        number(width),
                        number(height),
                        escaped(title),
                        styles(),
                        description.isEmpty() ? "" : "<desc>" + escaped(description) + "</desc>\n")
                + body.toString()
                + "</svg>\n";
    }

    /** As part of a page that carries the styles itself; a picture with a name for those who do not see it. */
    public String inline(String description) {
        return String.format(
                        Locale.ROOT,
                        "<svg role=\"img\" aria-label=\"%s\" viewBox=\"0 0 %s %s\">\n",
                        escaped(description),
                        number(width),
                        number(height))
                + body.toString()
                + "</svg>\n";
    }

    public static String styles() {
        StringBuilder css = new StringBuilder(
                "path{fill:none}\n" + "text{stroke:none;font-family:\"Liberation Sans\",Arial,Helvetica,sans-serif}\n");
        for (Ink ink : Ink.values()) {
            long level = Math.round(ink.grey() * 255);
            String grey = String.format(Locale.ROOT, "#%1$02x%1$02x%1$02x", level);
            String dashes = ink.dashes().stream().map(SvgCanvas::number).collect(Collectors.joining(" "));
            css.append("path.").append(ink.cssClass()).append("{stroke:").append(grey);
            css.append(";stroke-width:").append(number(ink.width()));
            css.append(dashes.isEmpty() ? "" : ";stroke-dasharray:" + dashes).append("}\n");
            css.append("text.")
                    .append(ink.cssClass())
                    .append("{fill:")
                    .append(grey)
                    .append("}\n");
        }
        return css.toString();
    }

    /** At most four decimals: 0.1 micrometre. */
    public static String number(double value) {
        return Decimals.upTo(value, 4);
    }

    /** Safe inside XML text and attributes; what XML 1.0 forbids becomes a visible substitute. */
    public static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&apos;");
                default -> out.appendCodePoint(allowed(c) ? c : 0x25A1);
            }
        });
        return out.toString();
    }

    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
