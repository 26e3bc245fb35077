package stretchwright.web.sew;

import java.util.List;
import stretchwright.web.draw.Svg;

/** A line of stitches, one for each step, that is sewn as the work goes on; where a machine is set up there is a short one across. */
final class Stitches {
    private static final double WIDTH = 1000;
    private static final double MIDDLE = 7;
    private static final double GAP = 12;

    /** Of a stitch along the line. */
    private static final double MACHINE = 0.3;

    private Stitches() {}

    static String drawn(List<Stop> stops, int at, int done, String words) {
        double unit = WIDTH / stops.stream().mapToDouble(Stitches::width).sum();
        Svg svg = new Svg()
                .open(
                        "svg",
                        "viewBox",
                        "0 0 1000 14",
                        "preserveAspectRatio",
                        "none",
                        "role",
                        "img",
                        "aria-label",
                        words);
        double x = 0;
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            double end = x + unit * width(stop);
            String kind = i == at ? "here" : i < done ? "done" : "todo";
            double gap = stop.setUp() ? 0 : Math.min(GAP, 0.3 * (end - x));
            String d = stop.setUp()
                    ? "M" + px((x + end) / 2) + " 1V13"
                    : "M" + px(x + gap / 2) + " " + px(MIDDLE) + "H" + px(end - gap / 2);
            svg.empty(
                    "path",
                    "class",
                    stop.setUp() ? String.join(" ", kind, "across") : kind,
                    "d",
                    d,
                    "data-stop",
                    stop.key());
            x = end;
        }
        return svg.close("svg").toString();
    }

    private static double width(Stop stop) {
        return stop.setUp() ? MACHINE : 1;
    }

    private static String px(double value) {
        return stretchwright.web.draw.Outline.px(value);
    }
}
