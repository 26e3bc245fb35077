package stretchwright.print.cloth;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.ClothShape;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothUse;
import stretchwright.lay.ClubLay;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Hand;
import stretchwright.lay.Lay;
import stretchwright.lay.Leftover;
import stretchwright.lay.Offcut;
import stretchwright.lay.OnHand;
import stretchwright.lay.Shop;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Phrases;

/** The cloth in sentences: the sum to buy, the cloth at hand, each step of cutting, what is left; in the maker's unit. */
public final class ClothWords {
    /** The finest line of an inch tape. */
    private static final double SIXTEENTH = 1.0 / 16;

    private ClothWords() {}

    /** "lay 119.7 cm + shrinkage 2.4 cm + straightening 2 x 5 cm = 132.1 cm, sold as 1.35 m"; its terms add up as shown. */
    public static String sum(Buying b, Unit unit) {
        double digit = unit == Unit.IN ? unit.toMm(SIXTEENTH) : 1;
        long length = Math.round(b.length() / digit);
        long cuts = Math.round(b.straightening() / Shop.STRAIGHTENING);
        long ends = Math.round(Shop.STRAIGHTENING / digit) * cuts;
        long repeat = Math.round(b.repeat() / digit);
        long needed = Math.round(b.needed() / digit);
        long shrinkage = needed - length - ends - repeat;
        List<String> terms = new ArrayList<>();
        terms.add(Phrases.of("sum.lay", length(length * digit, unit)));
        if (b.shrinkage() > 0) {
            terms.add(Phrases.of("sum.shrinkage", length(shrinkage * digit, unit)));
        }
        terms.add(Phrases.of("sum.straightening", String.valueOf(cuts), length(ends * digit / cuts, unit)));
        if (b.repeat() > 0) {
            terms.add(Phrases.of("sum.repeat", length(repeat * digit, unit)));
        }
        String all = String.join(" + ", terms);
        String whole = length(needed * digit, unit);
        return b.counter() == Buying.Counter.YARDS
                ? Phrases.of("sum.in-eighths", all, whole, Amounts.bought(b))
                : Phrases.of("sum.in-steps", all, whole, length(b.counter().step(), unit), Amounts.bought(b));
    }

    private static String length(double mm, Unit unit) {
        return Amounts.length(mm, unit);
    }

    /** What is said of it, without its subject: "fits, 27 cm to spare". */
    public static String onHand(OnHand hand, Unit unit) {
        double whole = hand.spare() >= 0 ? Math.floor(hand.spare() + 1e-6) : Math.ceil(-hand.spare() - 1e-6);
        return switch (hand.verdict()) {
            case FITS -> Phrases.of("on-hand.fits", length(whole, unit));
            case SHORT -> Phrases.of("on-hand.short", length(whole, unit));
            case FITS_IF ->
                Phrases.of(
                        "on-hand.fits-if",
                        length(whole, unit),
                        hand.conditions().stream()
                                .map(c -> condition(c, unit))
                                .reduce((one, other) -> Phrases.of("on-hand.or-if", one, other))
                                .orElse(""));
        };
    }

    /** What would have to be so for it to fit, and what is needed then, to the next millimetre. */
    public static String condition(OnHand.Condition c, Unit unit) {
        String what = switch (c.what()) {
            case LAID_ANOTHER_WAY ->
                Phrases.of("on-hand.if-laid", Voice.plain().say(c.method().said()));
            case PIECES_TURNED -> Phrases.of("on-hand.if-turned");
            case PRINT_NOT_SHIFTED -> Phrases.of("on-hand.if-print-not-shifted");
            case ENDS_STRAIGHT -> Phrases.of("on-hand.if-straight");
            case WASHED -> Phrases.of("on-hand.if-washed");
            case WASHED_AND_STRAIGHT -> Phrases.of("on-hand.if-washed-and-straight");
        };
        return Phrases.of("on-hand.needed", what, length(Math.ceil(c.needed() - 1e-6), unit));
    }

    /** How a piece lies, short, as on the drawing. */
    static String side(CuttingGuide.Step s) {
        List<String> parts = new ArrayList<>();
        parts.add(s.turnedOver() ? Phrases.of("side.turned-over") : Phrases.of("side.up"));
        if (s.headDown()) {
            parts.add(Phrases.of("side.top-down"));
        }
        if (s.onFold()) {
            parts.add(Phrases.of("side.on-fold"));
        } else if (s.layers() == 2) {
            parts.add(Phrases.of("side.two-layers"));
        }
        return String.join(", ", parts);
    }

    /** "leg R", "cuff 2", "waistband". */
    static String name(CuttingGuide.Step s, int cut) {
        if (s.hand() == Hand.EITHER) {
            return s.piece() + (cut > 1 && s.count() < cut ? " " + s.copy() : "");
        }
        boolean said = ClubLay.ownName(s.piece()).startsWith(s.hand().word() + " ");
        boolean several = cut > 2;
        return s.piece()
                + (several ? " " + s.copy() : "")
                + (said ? "" : " " + Voice.plain().say(s.hand().mark()));
    }

    /** One step of the tick list, behind its name. */
    public static String step(CuttingGuide.Step s, Lay lay, Unit unit) {
        boolean fold = lay.fromFold(s.layers());
        List<String> parts = new ArrayList<>();
        parts.add(s.turnedOver() ? Phrases.of("cut.turned-over") : Phrases.of("cut.this-side-up"));
        if (s.headDown()) {
            parts.add(Phrases.of("cut.top-down"));
        }
        if (s.onFold()) {
            parts.add(Phrases.of("cut.fold-edge"));
        }
        boolean unfolded = lay.placements().stream()
                .anyMatch(p -> p.piece().equals(s.piece()) && p.copy() == s.copy() && p.unfolded());
        if (unfolded) {
            parts.add(Phrases.of("cut.unfolded"));
        }
        if (s.layers() == 2) {
            parts.add(layers(s));
        } else if (lay.method() == Lay.Method.FOLDED || lay.method() == Lay.Method.FOLDED_CROSSWISE) {
            parts.add(Phrases.of("cut.layers.upper"));
        } else if (lay.method() != Lay.Method.OPEN) {
            parts.add(Phrases.of("cut.layers.open"));
        }
        parts.add(grain(s, fold, unit));
        boolean cutAcross = lay.method() == Lay.Method.PART_FOLDED && s.layers() == 1;
        parts.add(
                cutAcross
                        ? Phrases.of("cut.from-cut", length(s.fromEnd() - lay.doubled(), unit))
                        : Phrases.of("cut.from-end", length(s.fromEnd(), unit)));
        return String.join("; ", parts) + ".";
    }

    private static String layers(CuttingGuide.Step s) {
        return switch (s.hand()) {
            case PAIR -> Phrases.of("cut.layers.pair");
            case BOTH -> Phrases.of("cut.layers.both");
            default -> s.onFold() ? Phrases.of("cut.layers.whole") : Phrases.of("cut.layers.two");
        };
    }

    private static String grain(CuttingGuide.Step s, boolean fold, Unit unit) {
        String first = length(s.fromEdge().get(0), unit);
        String second = length(s.fromEdge().get(1), unit);
        if (first.equals(second)) {
            return fold ? Phrases.of("cut.grain-even-fold", first) : Phrases.of("cut.grain-even-selvage", first);
        }
        return fold
                ? Phrases.of("cut.grain-uneven-fold", first, second)
                : Phrases.of("cut.grain-uneven-selvage", first, second);
    }

    /** How the cloth lies and how the list is to be used. */
    static List<String> before(LaidCloth cloth) {
        Lay lay = cloth.lay();
        List<String> out = new ArrayList<>();
        out.add(spread(cloth) + " " + Phrases.of("cut.sides") + " " + Phrases.of("cut.distances", from(cloth)));
        cloth.use().guide().print().ifPresent(p -> out.add(print(p, lay, cloth.unit())));
        if (cloth.use().guide().inReaches()) {
            out.add(Phrases.of("cut.in-reaches"));
        }
        if (lay.method() == Lay.Method.PART_FOLDED) {
            out.add(Phrases.of("cut.order-part-folded"));
            out.add(Phrases.of("cut.then-part-folded"));
        } else {
            out.add(lay.fromFold(2) ? Phrases.of("cut.order-fold") : Phrases.of("cut.order-selvage"));
            out.add(Phrases.of("cut.then"));
        }
        return out;
    }

    /** Each other permitted way, what it needs and why one might still like it; empty where there is none. */
    public static List<String> otherWays(Lay lay, Unit unit) {
        return lay.ways().stream()
                .filter(w -> w.method() != lay.method())
                .map(w -> otherWay(w.method(), w.length(), w.length() - lay.length(), unit))
                .toList();
    }

    private static String otherWay(Lay.Method method, double length, double more, Unit unit) {
        return more < 0.5
                ? Phrases.of("way.as-much", Voice.plain().say(method.said()), length(length, unit), why(method))
                : Phrases.of(
                        "way.more",
                        Voice.plain().say(method.said()),
                        length(length, unit),
                        length(more, unit),
                        why(method));
    }

    /** Common practice, no source. */
    public static String why(Lay.Method method) {
        return switch (method) {
            case FOLDED -> Phrases.of("way.why.folded");
            case OPEN -> Phrases.of("way.why.open");
            case FOLDED_CROSSWISE -> Phrases.of("way.why.folded-crosswise");
            case FOLDED_OFF_THE_MIDDLE -> Phrases.of("way.why.folded-off-the-middle");
            case PART_FOLDED -> Phrases.of("way.why.part-folded");
        };
    }

    /** From where distances across are measured. */
    static String from(LaidCloth cloth) {
        ClothShape shape = cloth.fabric().roll().shape();
        String edge = shape.outline().isPresent()
                ? Phrases.of("lay.from-remnant")
                : shape.selvage() > 0 ? Phrases.of("lay.from-selvage") : Phrases.of("lay.from-usable-width");
        return cloth.lay().method() == Lay.Method.PART_FOLDED
                ? Phrases.of("lay.from-fold-then", edge)
                : cloth.lay().fromFold(2) ? Phrases.of("lay.from-fold") : edge;
    }

    private static String print(CuttingGuide.PrintMatch p, Lay lay, Unit unit) {
        String meets = Phrases.of("cut.print", length(p.repeat(), unit), p.notch(), length(p.from(), unit));
        return lay.method() == Lay.Method.OPEN ? meets : meets + " " + Phrases.of("cut.print-both-layers");
    }

    private static String spread(LaidCloth cloth) {
        Lay lay = cloth.lay();
        double selvage = cloth.fabric().roll().shape().selvage();
        String doubled = length(lay.doubled(), cloth.unit());
        return switch (lay.method()) {
            case FOLDED -> Phrases.of("cut.spread.folded");
            case OPEN -> Phrases.of("cut.spread.open");
            case FOLDED_CROSSWISE -> Phrases.of("cut.spread.folded-crosswise");
            case FOLDED_OFF_THE_MIDDLE ->
                selvage > 0
                        ? Phrases.of(
                                "cut.spread.folded-off-the-middle-selvage",
                                length(lay.doubled() + selvage, cloth.unit()))
                        : Phrases.of("cut.spread.folded-off-the-middle", doubled);
            case PART_FOLDED -> Phrases.of("cut.spread.part-folded", doubled);
        };
    }

    public static String leftover(Leftover l, char letter, Unit unit) {
        String name = String.valueOf(letter);
        String across = length(l.width(), unit);
        String along = length(l.height(), unit);
        if (l.layers() == 1) {
            return Phrases.of("left-over.one", name, across, along);
        }
        return l.atFold()
                ? Phrases.of("left-over.at-fold", name, across, along)
                : Phrases.of("left-over.double", name, across, along);
    }

    /** What comes out of the leftovers, each as if nothing else were cut; what does not come out is left away. */
    public static List<String> offcuts(ClothUse use, Unit unit) {
        return use.offcuts().stream()
                .filter(f -> f.total() > 0)
                .map(f -> Phrases.of(
                        "left-over.fits",
                        Voice.plain().say(f.what().said()),
                        length(f.what().across(), unit),
                        length(f.what().along(), unit),
                        Voice.plain().say(f.what().source()),
                        String.valueOf(f.total()),
                        from(f)))
                .toList();
    }

    private static String from(Offcut.Fit fit) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < fit.counts().size(); i++) {
            if (fit.counts().get(i) > 0) {
                letters.append(letters.isEmpty() ? "" : ", ").append((char) ('A' + i));
            }
        }
        return letters.toString();
    }
}
