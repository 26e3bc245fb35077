package stretchwright.web.draw;

/** Elements of a drawing, one after the other. Texts and attributes are escaped; nothing else is put in as it is. */
public final class Svg {
    private final StringBuilder out = new StringBuilder(4096);

    /** @param attributes names and values in turn; a pair with an empty value is left out */
    public Svg open(String element, String... attributes) {
        start(element, attributes);
        out.append('>');
        return this;
    }

    public Svg close(String element) {
        out.append("</").append(element).append('>');
        return this;
    }

    public Svg empty(String element, String... attributes) {
        start(element, attributes);
        out.append("/>");
        return this;
    }

    public Svg path(String kind, String d) {
        return empty("path", "class", kind, "d", d);
    }

    public Svg line(String kind, double x1, double y1, double x2, double y2) {
        return path(kind, "M" + px(x1) + " " + px(y1) + "L" + px(x2) + " " + px(y2));
    }

    /** @param anchor start, middle or end */
    public Svg text(String kind, double x, double y, String anchor, String words) {
        open("text", "class", kind, "x", px(x), "y", px(y), "text-anchor", anchor.equals("start") ? "" : anchor);
        escape(words);
        return close("text");
    }

    /** What was drawn elsewhere, as it is. */
    public Svg drawn(String elements) {
        out.append(elements);
        return this;
    }

    public Svg words(String words) {
        escape(words);
        return this;
    }

    private void start(String element, String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            if (!attributes[i + 1].isEmpty()) {
                out.append(' ').append(attributes[i]).append("=\"");
                escape(attributes[i + 1]);
                out.append('"');
            }
        }
    }

    private void escape(String words) {
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
    }

    private static String px(double value) {
        return Outline.px(value);
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
