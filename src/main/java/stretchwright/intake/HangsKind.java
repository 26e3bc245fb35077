package stretchwright.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.fabric.Hung;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Lengths between the marks of a hanging strip, from light to heavy or back again: under the usual weights, or each with its
 * own before it, "500 g = 148" or [500 g, 148].
 *
 * @param usual the weights that are meant where none is written, g, in the order of the readings
 * @param out whether the weights grow; on the way back they fall
 */
record HangsKind(LengthKind length, QuantityKind force, List<String> usual, boolean out, int most)
        implements Kind<List<LoadCurve.Reading>> {
    @Override
    public Optional<List<LoadCurve.Reading>> read(Spot at) {
        List<Tree.Text> words = new ArrayList<>();
        if (!flat(at.tree(), words, 0)) {
            at.add(Tell.said("hang.pair"), at.likeThis());
            return Optional.empty();
        }
        boolean weighed = words.stream().anyMatch(HangsKind::isWeight);
        int count = weighed ? (words.size() + 1) / 2 : words.size();
        if (count == 0 || count > most) {
            at.add(Tell.said("loads.count", Part.count(count)), Tell.said("loads.give", Part.count(most)));
            return Optional.empty();
        }
        return weighed ? pairs(at, words) : bare(at, words);
    }

    /** Lists in lists as one row of texts; "500 g = 148" is two of them. */
    private static boolean flat(Tree tree, List<Tree.Text> words, int depth) {
        if (tree instanceof Tree.Text text) {
            Arrays.stream(text.text().split("="))
                    .map(String::strip)
                    .filter(t -> !t.isEmpty())
                    .forEach(t -> words.add(new Tree.Text(t, text.line())));
            return true;
        }
        return tree instanceof Tree.Items list
                && depth < 2
                && list.items().stream().allMatch(i -> flat(i, words, depth + 1));
    }

    private static boolean isWeight(Tree.Text word) {
        return Quantities.force(word.text()).isPresent();
    }

    private Optional<List<LoadCurve.Reading>> bare(Spot at, List<Tree.Text> words) {
        if (words.size() != usual.size()) {
            at.add(
                    Tell.said("hang.which", Part.count(words.size()), Tell.words(usual)),
                    Tell.said("hang.write", Part.text(at.like())));
            return Optional.empty();
        }
        List<Tree.Text> all = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            all.add(new Tree.Text(usual.get(i), words.get(i).line()));
            all.add(words.get(i));
        }
        return pairs(at, all);
    }

    private Optional<List<LoadCurve.Reading>> pairs(Spot at, List<Tree.Text> words) {
        List<LoadCurve.Reading> readings = new ArrayList<>();
        for (int i = 0; i < words.size(); i += 2) {
            if (i + 1 == words.size() || !isWeight(words.get(i)) || isWeight(words.get(i + 1))) {
                at.add(Tell.said("hang.pair"), at.likeThis());
                return Optional.empty();
            }
            Optional<Double> newtons = force.read(at.of(words.get(i)));
            Optional<Double> mm = length.read(at.of(words.get(i + 1)));
            if (newtons.isEmpty() || mm.isEmpty()) {
                return Optional.empty(); // of several slips of one kind the first tells enough
            }
            readings.add(new LoadCurve.Reading(mm.get() / Hung.MARKS - 1, newtons.get() / LoadCurve.STRIP_WIDTH));
        }
        return ordered(at, readings) ? Optional.of(readings) : Optional.empty();
    }

    private boolean ordered(Spot at, List<LoadCurve.Reading> readings) {
        for (int i = 0; i < readings.size(); i++) {
            LoadCurve.Reading now = readings.get(i);
            if (now.extension() <= 0) {
                at.add(Tell.said("hang.not-longer", told(now), Part.length(Hung.MARKS)), Tell.said("hang.marks"));
                return false;
            }
            if (i > 0 && !follows(at, readings.get(i - 1), now, i + 1)) {
                return false;
            }
        }
        return true;
    }

    private boolean follows(Spot at, LoadCurve.Reading before, LoadCurve.Reading now, int number) {
        int way = out ? 1 : -1;
        Part[] which = {Part.count(number), told(now), told(before)};
        if (way * (now.tension() - before.tension()) <= 0) {
            at.add(
                    Tell.said(out ? "hang.weight-out" : "hang.weight-back", which),
                    Tell.said(out ? "hang.order-out" : "hang.order-back"));
            return false;
        }
        if (way * (now.extension() - before.extension()) <= 0) {
            at.add(Tell.said(out ? "hang.length-out" : "hang.length-back", which), Tell.said("hang.again"));
            return false;
        }
        return true;
    }

    Part told(LoadCurve.Reading reading) {
        return Tell.said("hang.reading", length.shown(mm(reading)), Part.text(Numbers.plain(grams(reading)) + " g"));
    }

    static double mm(LoadCurve.Reading reading) {
        return Numbers.mm(Hung.MARKS * (1 + reading.extension())).doubleValue();
    }

    private static long grams(LoadCurve.Reading reading) {
        return Math.round(grams(reading.tension()));
    }

    /** What hangs on the strip. */
    static double grams(double tension) {
        return tension * LoadCurve.STRIP_WIDTH / Quantities.NEWTONS_PER_GRAM;
    }

    /** Of pairs such as "500 g = 148" the lengths. */
    @Override
    public Tree carrying(Tree written, Unit unit) {
        if (written instanceof Tree.Items list) {
            return new Tree.Items(
                    list.items().stream().map(i -> carrying(i, unit)).toList(), list.line());
        }
        return written instanceof Tree.Text text
                ? new Tree.Text(
                        Arrays.stream(text.text().split("="))
                                .map(t -> ((Tree.Text) length.carrying(new Tree.Text(t, text.line()), unit)).text())
                                .map(String::strip)
                                .collect(java.util.stream.Collectors.joining(" = ")),
                        text.line())
                : written;
    }

    @Override
    public ObjectNode schema() {
        ObjectNode text = Schemas.numberOrText();
        return Schemas.either(
                Schemas.numberOrText(), Schemas.list(Schemas.either(text, Schemas.pair(text, text)), 1, most));
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.both", length.allowed(), force.allowed());
    }

    /** Pairs of grams and mm. */
    @Override
    public JsonNode json(List<LoadCurve.Reading> readings) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        readings.forEach(r -> all.addArray().add(Numbers.mm(grams(r))).add(Numbers.mm(mm(r))));
        return all;
    }

    @Override
    public Part shown(List<LoadCurve.Reading> readings) {
        return Part.listed(Part.Join.COMMA, readings.stream().map(this::told).toList());
    }

    @Override
    public Input input() {
        return Input.LIST;
    }
}
