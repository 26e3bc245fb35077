package stretchwright.web.draw;

/**
 * A drawing for a page, and what it shows in words.
 *
 * @param title short; read out first
 * @param description the whole of what is to be seen
 * @param width px at which it is shown; letters and lines are meant for it
 * @param inside SVG without the outer element, to stand in a larger drawing too
 */
public record Drawing(String title, String description, double width, double height, String inside) {
    /**
     * The whole drawing as it stands in a page.
     *
     * @param id of its own on that page: letters and digits
     * @param classes of the outer element; empty for none
     */
    public String svg(String id, String classes) {
        return "<svg" + (classes.isEmpty() ? "" : " class=\"" + classes + "\"") + " width=\"" + Pen.number(width)
                + "\" height=\"" + Pen.number(height) + "\" viewBox=\"0 0 " + Pen.number(width) + ' '
                + Pen.number(height) + "\" direction=\"ltr\" role=\"img\" aria-labelledby=\"" + id + "t " + id
                + "d\">\n<title id=\"" + id
                + "t\">" + Pen.escaped(title) + "</title>\n<desc id=\"" + id + "d\">" + Pen.escaped(description)
                + "</desc>\n" + inside + "</svg>\n";
    }
}
