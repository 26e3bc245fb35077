package stretchwright.advice;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import stretchwright.body.Body;
import stretchwright.fabric.Strain;
import stretchwright.fit.Direction;
import stretchwright.fit.FitReport;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Findings;
import stretchwright.ground.Json;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothWidths;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.print.cards.ClothCards;
import stretchwright.print.cards.ShopNeeds;
import stretchwright.print.kit.Paper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Which cloth a wearer and a style need: cloths of more and less stretch are tried, drafted and judged by the fit check,
 * until the least that passes is found.
 */
public final class ClothNeeds {
    private static final Trials ROOMS = new TrialRooms();

    private static final String NUMBERS = "cloth.json";

    /** Cloth to try: less is none for leggings, more is not sold as such (common practice). */
    private static final double LEAST = 0.05;

    private static final double MOST = 1.50;

    /** To one millimetre on the 100 mm of the card. */
    private static final double FINE = 0.01;

    /** An along stretch that no pose asks for more than: trials across shall not be decided by it. */
    private static final double AMPLE = 1.0;

    /** Standing, a cloth that is easy to wear uses at most this share of its stretch (docs/maths/fit.md, Limits). */
    private static final double STANDING = 0.5;

    private final MakeFile make;
    private final Body body;
    private final boolean asMedium;
    private final MakeFile own;

    /** @param own as written, with its own pressures where it has them */
    private ClothNeeds(MakeFile make, Body body, boolean asMedium, MakeFile own) {
        this.make = make;
        this.own = own;
        this.asMedium = asMedium;
        this.body = body;
    }

    /** What the two cards are, for no one in particular. */
    public static List<Document> usualCards(Paper paper) {
        return cards(ShopNeeds.usual(), paper);
    }

    public static List<Document> cards(MakeFile make, Paper paper) {
        return cards(of(make), paper);
    }

    /** The numbers among the cards, as text. */
    public static String json(List<Document> cards) {
        return cards.stream()
                .filter(d -> d.name().equals(NUMBERS))
                .map(d -> new String(d.bytes(), StandardCharsets.UTF_8))
                .findFirst()
                .orElse("");
    }

    /** Both cards, and the numbers of the shop card as cloth.json; what no cloth reaches is left out there. */
    private static List<Document> cards(ShopNeeds needs, Paper paper) {
        List<Document> out = new ArrayList<>(ClothCards.of(paper, needs));
        ObjectNode file = Json.node();
        ObjectNode cards = file.putObject("clothCards");
        step(cards.putObject("across"), needs.across());
        step(cards.putObject("along"), needs.along());
        cards.put("areal", Numbers.share(needs.areal()));
        cards.put("source", needs.source());
        needs.lengths().ifPresent(l -> widths(file.putArray("buy"), l.widths()));
        out.add(new Document(NUMBERS, "cloth needs", 1, Json.bytes(file)));
        return out;
    }

    /** One entry per width and way of laying; a length is left out where the pieces do not fit on that width. */
    private static void widths(ArrayNode out, ClothWidths widths) {
        for (ClothWidths.Row row : widths.rows()) {
            ObjectNode one = out.addObject();
            one.put("usableWidth", Numbers.mm(row.width()));
            one.put("source", words(row.own() ? Tell.said("needs.own-cloth") : Tell.said("needs.common-width")));
            row.oneWay().ifPresent(b -> bought(one.putObject("oneWay"), b));
            row.turned().ifPresent(b -> bought(one.putObject("turned"), b));
        }
    }

    private static void bought(ObjectNode out, Buying b) {
        out.put("lay", Numbers.mm(b.length()))
                .put("needed", Numbers.mm(b.needed()))
                .put("buy", Numbers.mm(b.bought()));
    }

    /** There are no lengths in them. */
    private static String words(Said said) {
        return Voice.plain().say(said);
    }

    private static void step(ObjectNode out, ShopNeeds.Step step) {
        step.yes().ifPresent(s -> out.put("yes", Numbers.share(s)));
        step.changes().ifPresent(s -> out.put("changes", Numbers.share(s)));
    }

    static ShopNeeds of(MakeFile make) {
        Findings findings = new Findings(make.file());
        Optional<Body> body = ROOMS.body(make.measured(), findings);
        findings.throwIfAny();
        ClothNeeds trials = new ClothNeeds(unread(make), body.orElseThrow(), own(make), make);
        trials.pattern(MOST, AMPLE, findings);
        if (!findings.isEmpty()) {
            throw new BadInput(
                    findings.all().stream().map(f -> f.in(make.unit())).toList());
        }
        return trials.needs();
    }

    /** The cloths tried have no readings, so pressures cannot be asked of them: a medium hold stands for those. */
    private static MakeFile unread(MakeFile make) {
        return own(make) ? make.with(make.style().with(make.style().hold().named())) : make;
    }

    private static boolean own(MakeFile make) {
        return make.style().hold() instanceof Hold.Profile;
    }

    private ShopNeeds needs() {
        OptionalDouble easy = least(s -> across(s, true));
        OptionalDouble goes = least(s -> across(s, false));
        double across = easy.orElse(goes.orElse(MOST));
        ShopNeeds.Step along =
                new ShopNeeds.Step(least(s -> along(across, s, true)), least(s -> along(across, s, false)));
        String whom = make.wearer().isEmpty() ? make.name() : make.wearer() + ", " + make.name();
        return new ShopNeeds(
                whom,
                words(asMedium ? Tell.said("needs.tried-as-medium") : Tell.said("needs.tried")),
                new ShopNeeds.Step(easy, goes),
                along,
                areal(across, along.yes().orElse(AMPLE)),
                because(across, along.yes().orElse(AMPLE)),
                lengths());
    }

    /** Lays of the make's own pattern, as drafted for its own cloth, on several widths; empty where that cannot be drafted. */
    private Optional<ShopNeeds.Lengths> lengths() {
        return ROOMS.draft(body, own, new Findings(own.file())).map(p -> {
            ClothWidths widths = ClothWidths.of(
                    own.laidPieces(p),
                    own.cloth(),
                    own.style().lay(),
                    own.seed(),
                    Buying.Counter.of(own.unit()),
                    LayClock.NONE);
            return new ShopNeeds.Lengths(widths, own.unit());
        });
    }

    /** The least stretch that passes; a cloth that stretches more passes too, or the search would mean nothing. */
    static OptionalDouble least(DoublePredicate passes) {
        if (!passes.test(MOST)) {
            return OptionalDouble.empty();
        }
        double no = LEAST;
        double yes = MOST;
        if (passes.test(LEAST)) {
            return OptionalDouble.of(LEAST);
        }
        while (yes - no > FINE) {
            double middle = (no + yes) / 2;
            if (passes.test(middle)) {
                yes = middle;
            } else {
                no = middle;
            }
        }
        return OptionalDouble.of(yes);
    }

    /** Whether it goes on and bends: at all, or with the reserve that leaves nothing to be said. */
    boolean across(double stretch, boolean easily) {
        return fit(stretch, AMPLE)
                .filter(f -> f.openings().stream().allMatch(FitReport.Opening::passes))
                .filter(f -> f.poses().stream()
                        .filter(p -> p.direction() == Direction.ACROSS)
                        .allMatch(p -> easily ? p.enough() <= p.available() : p.passes()))
                .filter(f -> !easily || f.levels().stream().allMatch(l -> l.across() <= STANDING * stretch))
                .filter(f -> !easily || f.verdicts().stream().noneMatch(v -> speaksOf(f, v)))
                .isPresent();
    }

    /** A caution or stop about an opening; pressure, measures and the like are not the cloth's stretch. */
    private static boolean speaksOf(FitReport fit, FitReport.Verdict v) {
        return v.severity() != FitReport.Severity.NOTE
                && fit.openings().stream().anyMatch(o -> o.opening().said().equals(v.place()));
    }

    boolean along(double across, double stretch, boolean easily) {
        return fit(across, stretch)
                .filter(f -> f.poses().stream()
                        .filter(p -> p.direction() == Direction.ALONG)
                        .allMatch(p -> easily ? p.enough() <= p.available() : p.needed() <= 2 * p.available()))
                .isPresent();
    }

    private double areal(double across, double along) {
        return fit(across, along).stream()
                .flatMap(f -> f.levels().stream())
                .filter(l -> l.level() == Level.Name.HIP || l.level() == Level.Name.CROTCH)
                .mapToDouble(l -> Strain.then(Math.max(0, l.across()), Math.max(0, l.along())))
                .max()
                .orElse(0);
    }

    /** What asks most of that cloth. */
    private List<String> because(double across, double along) {
        return fit(across, along).stream()
                .flatMap(f -> f.openings().stream())
                .map(o -> words(Tell.said("needs.asks", o.opening().said(), Part.share(o.needed()))))
                .toList();
    }

    private Optional<FitReport> fit(double across, double along) {
        Findings findings = new Findings(make.file());
        Optional<Pattern> pattern = pattern(across, along, findings);
        return findings.isEmpty() ? pattern.map(p -> ROOMS.fit(p, body, in(across, along))) : Optional.empty();
    }

    private Optional<Pattern> pattern(double across, double along, Findings findings) {
        return ROOMS.draft(body, in(across, along), findings);
    }

    private MakeFile in(double across, double along) {
        return make.with(make.fabric().stretching(across, along));
    }
}
