package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import stretchwright.ground.Grid;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.DecimalNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A length, in mm on the 0.01 mm grid (58 in is 1473.2 mm to the last digit); a bare number is in the file's unit.
 *
 * @param usual what nearly all of them are, mm: a bare number outside of it that would be inside in another unit is asked about
 * @param signed whether it may be below zero: "-1 cm" lowers, "+1 cm" or "1 cm" raises
 */
record LengthKind(Range range, Optional<Usual> usual, boolean signed) implements Kind<Double> {
    static final String DEFINED = "length";

    /** In which a number without a unit may have been meant. */
    private static final List<Unit> UNITS = List.of(Unit.MM, Unit.CM, Unit.IN, Unit.M);

    /** What nobody would write in mm or in inches. */
    private static final double LONG = 10_000;

    /** What nobody measures with a tape, mm: stitches, needles. */
    private static final double SMALL = 10;

    /** More letters than a number needs. */
    private static final int LONGEST = 20;

    /** From and to, mm; of the amount where it is signed. */
    record Usual(double least, double most) {
        boolean holds(double mm) {
            return Math.abs(mm) >= least && Math.abs(mm) <= most;
        }
    }

    static ObjectNode definition() {
        ObjectNode out =
                Schemas.either(Schemas.type("number"), Schemas.matching("[0-9\\u00bc-\\u00be\\u2150-\\u215e]"));
        return out.put("description", Voice.plain().say(Tell.said("schema.length")));
    }

    @Override
    public Optional<Double> read(Spot at) {
        return at.text().flatMap(text -> read(text, at));
    }

    private Optional<Double> read(String text, Spot at) {
        OptionalDouble bare = Quantities.number(text);
        if (at.unit().isEmpty() && bare.isPresent()) {
            return Optional.empty(); // the missing unit is a finding already
        }
        OptionalDouble mm = Quantities.length(text, at.unit().orElse(Unit.MM));
        Optional<Double> read = new InRange(at, text, range)
                .of(mm, signed, Tell.said("length.is-not", Tell.quoted(text)), write(at), () -> allowed(at, text));
        List<Part> others = read.isEmpty() ? List.of() : meant(text, at);
        if (!others.isEmpty()) {
            Unit own = at.unit().orElseThrow();
            at.add(
                    Tell.said("unit.unusual", Tell.quoted(text), written(text, own)),
                    Tell.said("unit.write", Part.listed(Part.Join.OR, others), written(text, own)));
            return Optional.empty();
        }
        return read.map(Grid::snap);
    }

    private Said write(Spot at) {
        return at.unit().map(u -> Tell.said("length.write", u.said())).orElseGet(() -> Tell.said("length.write-unit"));
    }

    private Said allowed(Spot at, String text) {
        Said between = Tell.said("amount.allowed", least(), most(), range.reason());
        List<Part> others = meant(text, at);
        return others.isEmpty() ? between : between.and(Tell.said("unit.meant", Part.listed(Part.Join.OR, others)));
    }

    /** The same number in the units in which it would be usual, where it is not in the file's own. */
    private List<Part> meant(String text, Spot at) {
        OptionalDouble bare = Quantities.number(text);
        if (bare.isEmpty() || usual.isEmpty() || at.unit().isEmpty() || bare.getAsDouble() == 0) {
            return List.of();
        }
        Usual range = usual.get();
        Unit own = at.unit().get();
        return range.holds(own.toMm(bare.getAsDouble()))
                ? List.of()
                : UNITS.stream()
                        .filter(u -> u != own && range.holds(u.toMm(bare.getAsDouble())))
                        .<Part>map(u -> written(text, u))
                        .toList();
    }

    private static Part written(String number, Unit unit) {
        return Part.text(Echo.shortened(number, LONGEST) + " " + unit.symbol());
    }

    /** What is told to be allowed must be. */
    private Part least() {
        return told(range.least(), false, Part.Length::atLeast);
    }

    private Part most() {
        return told(range.most(), signed, Part.Length::atMost);
    }

    /** Of cloth and thread by the roll in metres, of stitches in mm. */
    private Part told(double mm, boolean signed, UnaryOperator<Part.Length> limit) {
        if (range.most() < SMALL) {
            return Part.millimetres(mm, 1);
        }
        return mm < LONG
                ? limit.apply(Part.written(mm, signed))
                : Part.text(Numbers.plain(Unit.M.fromMm(mm)) + " " + Unit.M.symbol());
    }

    @Override
    public Tree carrying(Tree written, Unit own) {
        return written instanceof Tree.Text text
                        && Quantities.number(text.text()).isPresent()
                ? new Tree.Text(text.text().strip() + " " + own.symbol(), text.line())
                : written;
    }

    @Override
    public ObjectNode schema() {
        return Schemas.reference(DEFINED);
    }

    @Override
    public Said allowed() {
        return range.most() < LONG
                ? Tell.said(
                        "allowed.span", new Part.Span(Part.written(range.least()), Part.written(range.most(), signed)))
                : Tell.said("allowed.between", least(), most());
    }

    @Override
    public JsonNode json(Double mm) {
        return DecimalNode.valueOf(Numbers.mm(mm));
    }

    @Override
    public Part shown(Double mm) {
        return told(mm, signed, UnaryOperator.identity());
    }

    @Override
    public String symbol() {
        return "mm";
    }

    @Override
    public OptionalDouble amount(Double mm) {
        return OptionalDouble.of(mm);
    }

    @Override
    public Optional<Range> within() {
        return Optional.of(range);
    }
}
