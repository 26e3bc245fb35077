package stretchwright.print.kit;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.ground.Decimals;
import stretchwright.ground.Point;

/** An SVG drawing, 1 user unit = 1 mm (SVG 1.1; trade-values section 7.2): y runs down there, so it is turned here. */
public final class SvgCanvas implements Canvas {
    private final SvgText svg = new SvgText();
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
        svg.begin(id, cssClass, new Point(origin.x(), height - origin.y()));
        foot = 0;
    }

    public void end() {
        svg.end();
        foot = height;
    }

    @Override
    public void line(Ink ink, List<Point> points, boolean closed) {
        svg.path(ink.cssClass(), points, new Point(0, foot), 1, closed);
    }

    @Override
    public void text(Writing w) {
        String anchor = switch (w.align()) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        svg.text(
                w.ink().cssClass(), anchor, w.size(), new Point(w.at().x(), foot - w.at().y()), w.degrees(), w.words());
    }

    public String finished() {
        return finished("");
    }

    /** With a description for those who do not see the drawing; empty for none. */
    public String finished(String description) {
        return svg.finished(width, height, 1, title, description, styles());
    }

    /** As part of a page that carries the styles itself; a picture with a name for those who do not see it. */
    public String inline(String description) {
        return svg.inline(width, height, description);
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

    /** What no file of markup may hold becomes a visible substitute; nothing is escaped. */
    public static String visible(String text) {
        return text.codePoints().allMatch(SvgCanvas::allowed)
                ? text
                : text.codePoints()
                        .map(c -> allowed(c) ? c : 0x25A1)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString();
    }

    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
