package stretchwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.StripInstance;
import stretchwright.lay.nest.StripResult;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** lay.json and lay.svg of a plain layout instance, in the instance's own units. */
final class StripOutput {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .defaultPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
            .build();

    private StripOutput() {}

    /** Numbers as they are, not rounded: a rounded placement could overlap its neighbour. */
    static String json(StripInstance instance, StripResult result, List<double[]> history, long seed, double seconds) {
        ObjectNode out = JSON.createObjectNode();
        out.put("instance", instance.name());
        out.put("seed", seed);
        out.put("seconds", seconds);
        out.put("width", instance.stripHeight());
        out.put("length", result.length());
        out.put("density", result.density());
        out.put("work", result.spent().explore() + result.spent().compress());
        out.putArray("rounds").add(result.spent().explore()).add(result.spent().compress());
        ArrayNode placements = out.putArray("placements");
        for (StripResult.Placement p : result.placements()) {
            placements
                    .addObject()
                    .put("item", p.item())
                    .put("x", p.x())
                    .put("y", p.y())
                    .put("rotation", p.rotation());
        }
        ArrayNode steps = out.putArray("history");
        for (double[] step : history) {
            steps.addArray().add(Math.round(step[0] * 1000) / 1000.0).add(step[1]);
        }
        return JSON.writeValueAsString(out) + "\n";
    }

    static String svg(StripInstance instance, StripResult result) {
        double scale = 900 / Math.max(result.length(), instance.stripHeight());
        double width = result.length() * scale;
        double height = instance.stripHeight() * scale;
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"-5 -5 %.2f %.2f\">%n",
                width + 10,
                height + 10,
                width + 10,
                height + 10));
        svg.append(String.format(
                Locale.ROOT,
                "<rect width=\"%.2f\" height=\"%.2f\" fill=\"#ffffff\" stroke=\"#333333\"/>%n",
                width,
                height));
        for (StripResult.Placement p : result.placements()) {
            svg.append("<path d=\"M")
                    .append(corners(outline(instance, p), scale, height))
                    .append("Z\" fill=\"#dfe7ee\" stroke=\"#1f3a54\" stroke-width=\"0.7\"/>\n");
        }
        return svg.append("</svg>\n").toString().replace("\r\n", "\n");
    }

    private static Polygon outline(StripInstance instance, StripResult.Placement p) {
        StripInstance.Item item = instance.items().stream()
                .filter(i -> i.id().equals(p.item()))
                .findFirst()
                .orElseThrow();
        return item.polygon().placed(false, p.rotation(), new Point(p.x(), p.y()));
    }

    /** y upwards in the instance, downwards in SVG. */
    private static String corners(Polygon outline, double scale, double height) {
        return outline.points().stream()
                .map(c -> String.format(Locale.ROOT, "%.3f,%.3f", c.x() * scale, height - c.y() * scale))
                .collect(Collectors.joining(" L"));
    }
}
