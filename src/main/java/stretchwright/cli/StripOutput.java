package stretchwright.cli;

import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Json;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.StripInstance;
import stretchwright.lay.nest.StripResult;
import stretchwright.print.kit.SvgText;
import stretchwright.report.Placements;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** lay.json and lay.svg of a plain layout instance, in the instance's own units. */
final class StripOutput {
    /** Round the drawing, and on paper: some 250 mm for the longer side of 900. */
    private static final double MARGIN = 5;

    private static final double MM = 0.28;
    private static final String STYLES =
            "path{stroke-width:.7}.strip{fill:#fff;stroke:#333}.part{fill:#dfe7ee;stroke:#1f3a54}\n";

    private StripOutput() {}

    static String json(StripInstance instance, StripResult result, List<double[]> history, long seed, double seconds) {
        ObjectNode out = Json.node();
        out.put("instance", instance.name());
        out.put("seed", seed);
        out.put("seconds", seconds);
        out.put("width", instance.stripHeight());
        out.put("length", result.length());
        out.put("density", result.density());
        out.put("work", result.spent().explore() + result.spent().compress());
        Placements.put(out, result);
        ArrayNode steps = out.putArray("history");
        for (double[] step : history) {
            steps.addArray().add(Math.round(step[0] * 1000) / 1000.0).add(step[1]);
        }
        return Json.text(out);
    }

    static String svg(StripInstance instance, StripResult result) {
        double scale = 900 / Math.max(result.length(), instance.stripHeight());
        double width = result.length() * scale;
        double height = instance.stripHeight() * scale;
        SvgText svg = new SvgText();
        Point corner = new Point(MARGIN, MARGIN + height);
        svg.path("strip", new Box(0, 0, width, height).corners(), corner, 1, true);
        for (StripResult.Placement p : result.placements()) {
            svg.path("part", outline(instance, p).points(), corner, scale, true);
        }
        return svg.finished(width + 2 * MARGIN, height + 2 * MARGIN, MM, instance.name(), "", STYLES);
    }

    private static Polygon outline(StripInstance instance, StripResult.Placement p) {
        StripInstance.Item item = instance.items().stream()
                .filter(i -> i.id().equals(p.item()))
                .findFirst()
                .orElseThrow();
        return item.polygon().placed(false, p.rotation(), new Point(p.x(), p.y()));
    }
}
