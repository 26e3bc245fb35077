package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * So many lengths: readings of one measure, of which one may stand alone; or the two or three of a test.
 *
 * @param few key of what is said where there are fewer
 */
record LengthsKind(LengthKind each, int least, int most, String few) implements Kind<List<Double>> {
    static final String DEFINED = "readings";

    /** More readings of one measure nobody takes (common practice: two or three). */
    static final int MOST_READINGS = 10;

    @Override
    public Optional<List<Double>> read(Spot at) {
        if (!(at.tree() instanceof Tree.Items list)) {
            return each.read(at).flatMap(one -> enough(List.of(one), at));
        }
        if (list.items().isEmpty() || list.items().size() > most) {
            at.add(
                    Tell.said("lengths.count", Part.count(list.items().size())),
                    least == most ? at.likeThis() : Tell.said("lengths.give", Part.count(least), Part.count(most)));
            return Optional.empty();
        }
        List<Double> all = new ArrayList<>();
        for (Tree item : list.items()) {
            Optional<Double> one = each.read(at.of(item));
            if (one.isEmpty()) {
                return Optional.empty(); // of several slips of one kind the first tells enough
            }
            all.add(one.get());
        }
        return enough(all, at);
    }

    private Optional<List<Double>> enough(List<Double> all, Spot at) {
        if (all.size() < least) {
            at.add(Tell.said(few), at.likeThis());
            return Optional.empty();
        }
        return Optional.of(all);
    }

    @Override
    public Tree carrying(Tree written, Unit unit) {
        return written instanceof Tree.Items list
                ? new Tree.Items(
                        list.items().stream().map(i -> each.carrying(i, unit)).toList(), list.line())
                : each.carrying(written, unit);
    }

    /** One reading, or a list of them. */
    static ObjectNode definition() {
        ObjectNode length = Schemas.reference(LengthKind.DEFINED);
        return Schemas.either(length, Schemas.list(length, 1, MOST_READINGS));
    }

    @Override
    public ObjectNode schema() {
        return least == 1 ? Schemas.reference(DEFINED) : Schemas.list(each.schema(), least, most);
    }

    @Override
    public Said allowed() {
        return each.allowed();
    }

    @Override
    public JsonNode json(List<Double> mm) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        mm.forEach(v -> out.add(Numbers.mm(v)));
        return out;
    }

    @Override
    public Part shown(List<Double> mm) {
        return Part.listed(Part.Join.COMMA, mm.stream().map(each::shown).toList());
    }

    @Override
    public Input input() {
        return Input.LIST;
    }

    @Override
    public String symbol() {
        return each.symbol();
    }

    /** Of readings their mean. */
    @Override
    public OptionalDouble amount(List<Double> mm) {
        return least == 1 ? mm.stream().mapToDouble(v -> v).average() : OptionalDouble.empty();
    }

    @Override
    public Optional<Range> within() {
        return each.within();
    }
}
