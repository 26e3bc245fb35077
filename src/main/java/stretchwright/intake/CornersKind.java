package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The corners of a plain outline, in order, as pairs of lengths. */
record CornersKind(LengthKind each, int most) implements Kind<Polygon> {
    @Override
    public Optional<Polygon> read(Spot at) {
        Optional<List<Tree>> items = at.items();
        if (items.isPresent() && items.get().size() > most) {
            at.add(
                    Tell.said("sections.count", Part.count(items.get().size())),
                    Tell.said("sections.most", Part.count(most)));
            return Optional.empty();
        }
        return items.flatMap(all -> corners(all, at)).flatMap(points -> outline(points, at));
    }

    /** Empty, and a finding, at the first that is no corner. */
    private Optional<List<Point>> corners(List<Tree> all, Spot at) {
        List<Point> out = new ArrayList<>();
        for (Tree item : all) {
            if (!(item instanceof Tree.Items pair && pair.items().size() == 2)) {
                at.of(item).add(Tell.said("corners.pair"), at.likeThis());
                return Optional.empty();
            }
            Optional<Double> x = each.read(at.of(pair.items().get(0)));
            Optional<Double> y = each.read(at.of(pair.items().get(1)));
            if (x.isEmpty() || y.isEmpty()) {
                return Optional.empty();
            }
            out.add(new Point(x.get(), y.get()));
        }
        return Optional.of(out);
    }

    private static Optional<Polygon> outline(List<Point> points, Spot at) {
        if (points.size() < 3 || Polygon.signedArea(points) == 0) {
            at.add(Tell.said("corners.nothing"), at.likeThis());
            return Optional.empty();
        }
        Polygon outline = Polygon.either(points);
        if (!outline.isSimple()) {
            at.add(Tell.said("corners.cross"), Tell.said("corners.order"));
            return Optional.empty();
        }
        return Optional.of(outline);
    }

    @Override
    public Tree carrying(Tree written, Unit unit) {
        return written instanceof Tree.Items list
                ? new Tree.Items(
                        list.items().stream().map(i -> carrying(i, unit)).toList(), list.line())
                : each.carrying(written, unit);
    }

    @Override
    public ObjectNode schema() {
        return Schemas.list(Schemas.pair(each.schema(), each.schema()), 3, most);
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.corners", Part.count(3), Part.count(most));
    }

    @Override
    public JsonNode json(Polygon outline) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        outline.points().forEach(p -> out.addArray().add(Numbers.mm(p.x())).add(Numbers.mm(p.y())));
        return out;
    }

    @Override
    public Part shown(Polygon outline) {
        return Tell.said("corners.shown", Part.count(outline.points().size()));
    }

    @Override
    public Input input() {
        return Input.PAIRS;
    }
}
