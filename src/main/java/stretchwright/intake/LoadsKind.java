package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Readings of the hanging test, pairs of stretch and force that both grow; on a strip of 50 mm. */
record LoadsKind(ShareKind stretch, QuantityKind force, int most) implements Kind<List<LoadCurve.Reading>> {
    @Override
    public Optional<List<LoadCurve.Reading>> read(Spot at) {
        Optional<List<Tree>> pairs = at.items();
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        int count = pairs.get().size();
        if (count == 0 || count > most) {
            at.add(Tell.said("loads.count", Part.count(count)), Tell.said("loads.give", Part.count(most)));
            return Optional.empty();
        }
        List<LoadCurve.Reading> readings = new ArrayList<>();
        for (Tree pair : pairs.get()) {
            reading(at.of(pair)).ifPresent(readings::add);
        }
        return readings.size() == count && grows(at, readings) ? Optional.of(readings) : Optional.empty();
    }

    private Optional<LoadCurve.Reading> reading(Spot at) {
        if (!(at.tree() instanceof Tree.Items two
                && two.items().size() == 2
                && two.items().get(0) instanceof Tree.Text share
                && two.items().get(1) instanceof Tree.Text newtons)) {
            at.add(Tell.said("loads.pair"), at.likeThis());
            return Optional.empty();
        }
        Optional<Double> extension = stretch.read(at.of(share));
        Optional<Double> newton = force.read(at.of(newtons));
        return extension.isEmpty() || newton.isEmpty()
                ? Optional.empty()
                : Optional.of(new LoadCurve.Reading(extension.get(), newton.get() / LoadCurve.STRIP_WIDTH));
    }

    private boolean grows(Spot at, List<LoadCurve.Reading> readings) {
        for (int i = 1; i < readings.size(); i++) {
            LoadCurve.Reading before = readings.get(i - 1);
            LoadCurve.Reading now = readings.get(i);
            if (!(now.extension() > before.extension() && now.tension() > before.tension())) {
                at.add(Tell.said("loads.falls", Part.count(i + 1L), told(now), told(before)), Tell.said("loads.order"));
                return false;
            }
        }
        return true;
    }

    private Part told(LoadCurve.Reading reading) {
        return Tell.said(
                "loads.reading",
                force.shown(reading.tension() * LoadCurve.STRIP_WIDTH),
                stretch.shown(reading.extension()));
    }

    @Override
    public ObjectNode schema() {
        return Schemas.list(Schemas.pair(stretch.schema(), force.schema()), 1, most);
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.both", stretch.allowed(), force.allowed());
    }

    /** Pairs of a share and N per metre of width. */
    @Override
    public JsonNode json(List<LoadCurve.Reading> readings) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        for (LoadCurve.Reading r : readings) {
            out.addArray().add(Numbers.share(r.extension())).add(Numbers.mm(r.tension()));
        }
        return out;
    }

    @Override
    public Part shown(List<LoadCurve.Reading> readings) {
        return Part.listed(Part.Join.COMMA, readings.stream().map(this::told).toList());
    }

    @Override
    public Input input() {
        return Input.PAIRS;
    }
}
