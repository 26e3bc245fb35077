package stretchwright.web.paper;

import stretchwright.ground.Box;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.TestSquares;
import stretchwright.print.sheets.SheetMap;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.Svg;

/** The paper at its true proportions, and the pattern as it lies on the sheets. */
final class Pictures {
    private static final double WIDE = 220;
    private static final double HIGH = 260;

    /** Of the inner square, mm. */
    private static final double SQUARE = 100;

    private Pictures() {}

    /** A sheet, what the printer leaves white of it, and the square to measure; all to one scale. */
    static String paper(Paper paper, String shows) {
        double scale = Math.min(WIDE / paper.width(), HIGH / paper.height());
        double width = scale * paper.width();
        double height = scale * paper.height();
        double edge = scale * paper.margin();
        double inset = edge + scale * TestSquares.inset(paper.overlap());
        double side = scale * SQUARE;
        return new Svg()
                .open(
                        "svg",
                        "class",
                        "paper-sheet",
                        "viewBox",
                        "-2 -2 " + px(width + 4) + " " + px(height + 4),
                        "width",
                        px(width + 4),
                        "height",
                        px(height + 4),
                        "role",
                        "img",
                        "aria-label",
                        shows)
                .path("white-edge", rectangle(0, 0, width, height))
                .path("inked", rectangle(edge, edge, width - 2 * edge, height - 2 * edge))
                .path("square", rectangle(inset, height - inset - side, side, side))
                .close("svg")
                .toString();
    }

    /** All pieces, to be looked at through the windows of the sheets. */
    static String plane(SheetMap map) {
        Outline plane = new Outline(1, 0, top(map));
        Svg svg = new Svg()
                .open("svg", "class", "unseen", "width", "0", "height", "0", "aria-hidden", "true")
                .open("defs")
                .open("g", "id", "plane");
        map.pieces().forEach(p -> svg.path("on-sheet", plane.path(p.outline(), true)));
        return svg.close("g").close("defs").close("svg").toString();
    }

    /** What a sheet adds to the map: of what overlaps, the lower and the left part belong to its neighbours. */
    static String window(SheetMap map, SheetMap.Sheet sheet) {
        Box window = sheet.window();
        String box = px(window.minX()) + " " + px(top(map) - window.minY() - map.stepY()) + " " + px(map.stepX()) + " "
                + px(map.stepY());
        return new Svg()
                .open("svg", "viewBox", box, "aria-hidden", "true")
                .empty("use", "href", "#plane")
                .close("svg")
                .toString();
    }

    private static double top(SheetMap map) {
        return map.rows() * map.stepY() + map.paper().overlap();
    }

    private static String rectangle(double x, double y, double width, double height) {
        return "M" + px(x) + " " + px(y) + "h" + px(width) + "v" + px(height) + "h" + px(-width) + "Z";
    }

    private static String px(double value) {
        return Outline.px(value);
    }
}
