package stretchwright.exchange;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Box;
import stretchwright.ground.Decimals;
import stretchwright.ground.Point;

/**
 * Writes DXF of release 12 (AC1009): pairs of a group code and a value, a line each. Lengths are in mm with three
 * decimals. All words must have passed {@link Plain}.
 */
final class Tags {
    private static final String END = "\r\n";
    private final StringBuilder out = new StringBuilder();

    /** The file's head: units and extents, and the layers that are used, each with its colour. */
    Tags(Box extents, Map<String, Integer> layers) {
        section("HEADER");
        tag(9, "$ACADVER").tag(1, "AC1009");
        // metric; the next two came with later releases and are read where known
        tag(9, "$INSUNITS").tag(70, "4").tag(9, "$MEASUREMENT").tag(70, "1");
        tag(9, "$LUNITS").tag(70, "2");
        tag(9, "$EXTMIN").at(10, extents.minX(), extents.minY());
        tag(9, "$EXTMAX").at(10, extents.maxX(), extents.maxY());
        endSection();
        section("TABLES");
        tag(0, "TABLE").tag(2, "LTYPE").tag(70, "1");
        tag(0, "LTYPE").tag(2, "CONTINUOUS").tag(70, "0").tag(3, "Solid line").tag(72, "65");
        tag(73, "0").number(40, 0).tag(0, "ENDTAB");
        tag(0, "TABLE").tag(2, "LAYER").tag(70, Integer.toString(layers.size()));
        layers.forEach((name, colour) -> tag(0, "LAYER")
                .tag(2, name)
                .tag(70, "0")
                .tag(62, colour.toString())
                .tag(6, "CONTINUOUS"));
        tag(0, "ENDTAB");
        tag(0, "TABLE").tag(2, "STYLE").tag(70, "1");
        tag(0, "STYLE")
                .tag(2, "STANDARD")
                .tag(70, "0")
                .number(40, 0)
                .number(41, 1)
                .number(50, 0);
        tag(71, "0").number(42, 2.5).tag(3, "txt").tag(4, "").tag(0, "ENDTAB");
        endSection();
    }

    Tags section(String name) {
        return tag(0, "SECTION").tag(2, name);
    }

    Tags endSection() {
        return tag(0, "ENDSEC");
    }

    byte[] finished() {
        tag(0, "EOF");
        return out.toString().getBytes(StandardCharsets.US_ASCII);
    }

    void beginBlock(String name, String layer) {
        tag(0, "BLOCK").tag(8, layer).tag(2, name).tag(70, "0").at(10, 0, 0).tag(3, name);
    }

    void endBlock(String layer) {
        tag(0, "ENDBLK").tag(8, layer);
    }

    void insert(String layer, String block, Point at) {
        tag(0, "INSERT").tag(8, layer).tag(2, block).at(10, at.x(), at.y());
    }

    void polyline(String layer, List<Point> points, boolean closed) {
        tag(0, "POLYLINE").tag(8, layer).tag(66, "1").at(10, 0, 0).tag(70, closed ? "1" : "0");
        for (Point p : points) {
            tag(0, "VERTEX").tag(8, layer).at(10, p.x(), p.y());
        }
        tag(0, "SEQEND").tag(8, layer);
    }

    void line(String layer, Point from, Point to) {
        tag(0, "LINE").tag(8, layer).at(10, from.x(), from.y()).at(11, to.x(), to.y());
    }

    void point(String layer, Point p) {
        tag(0, "POINT").tag(8, layer).at(10, p.x(), p.y());
    }

    /** A notch: its depth as thickness, and the direction of the cut, in degrees. */
    void notch(String layer, Tick tick) {
        Point way = tick.to().minus(tick.from());
        double degrees = StrictMath.toDegrees(StrictMath.atan2(way.y(), way.x()));
        tag(0, "POINT").tag(8, layer).number(39, tick.depth());
        at(10, tick.from().x(), tick.from().y()).number(50, degrees);
    }

    void text(String layer, Point at, double height, double degrees, String words) {
        tag(0, "TEXT").tag(8, layer).at(10, at.x(), at.y()).number(40, height);
        tag(1, words);
        if (degrees != 0) {
            number(50, degrees);
        }
    }

    private Tags at(int code, double x, double y) {
        return number(code, x).number(code + 10, y).number(code + 20, 0);
    }

    private Tags number(int code, double value) {
        String text = Decimals.fixed(value, 3);
        return tag(code, text.equals("-0.000") ? "0.000" : text);
    }

    private Tags tag(int code, String value) {
        out.append(code < 10 ? "  " : code < 100 ? " " : "").append(code);
        out.append(END).append(value).append(END);
        return this;
    }
}
