package stretchwright.print.kit;

import java.util.List;

/** A column of text on a canvas, written from the top down. */
public final class Column {
    private final Canvas canvas;
    private final double x;
    private final double width;
    private double y;

    public Column(Canvas canvas, double x, double top, double width) {
        this.canvas = canvas;
        this.x = x;
        this.width = width;
        y = top;
    }

    /** The height of what has not been written on. */
    public double y() {
        return y;
    }

    public Column write(Para para) {
        y -= para.before();
        canvas.spoken(para.heading() ? Tag.HEADING : Tag.PARAGRAPH, "", () -> lines(para));
        return this;
    }

    private void lines(Para para) {
        for (String line : Letters.wrapped(para.words(), para.size(), width - para.indent())) {
            y -= para.size() * Letters.LEADING;
            canvas.text(Writing.at(Ink.LABEL, x + para.indent(), y + 0.3 * para.size(), para.size(), line));
        }
    }

    /** Text that is wrapped; sizes in mm. */
    public record Para(double size, double indent, double before, boolean heading, String words) {
        /** Larger letters are a heading's. */
        private static final double HEADING = 5;

        public Para(double size, double indent, double before, String words) {
            this(size, indent, before, size >= HEADING, words);
        }

        public double height(double width) {
            return before + Letters.wrapped(words, size, width - indent).size() * size * Letters.LEADING;
        }
    }

    public static double height(List<Para> paras, double width) {
        return paras.stream().mapToDouble(p -> p.height(width)).sum();
    }
}
