package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.ground.Unit;
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

/** The cloth in sentences: the sum to buy, the cloth at hand, each step of cutting, what is left; in the maker's unit. */
public final class ClothWords {
    private ClothWords() {}

    /** "lay 119.7 cm + shrinkage 2.4 cm + straightening 2 x 5 cm = 132.1 cm, sold as 1.35 m"; its terms add up as shown. */
    public static String sum(Buying b, Unit unit) {
        double digit = unit == Unit.MM ? 1 : unit == Unit.CM ? 1 : unit.toMm(0.01);
        long length = Math.round(b.length() / digit);
        long cuts = Math.round(b.straightening() / Shop.STRAIGHTENING);
        long ends = Math.round(Shop.STRAIGHTENING / digit) * cuts;
        long repeat = Math.round(b.repeat() / digit);
        long needed = Math.round(b.needed() / digit);
        long shrinkage = needed - length - ends - repeat;
        List<String> terms = new ArrayList<>();
        terms.add("lay " + length(length * digit, unit));
        if (b.shrinkage() > 0) {
            terms.add("shrinkage " + length(shrinkage * digit, unit));
        }
        terms.add("straightening " + cuts + " x " + length(ends * digit / cuts, unit));
        if (b.repeat() > 0) {
            terms.add("print repeat " + length(repeat * digit, unit));
        }
        String step = b.counter() == Buying.Counter.YARDS
                ? "eighths of a yard"
                : "steps of " + length(b.counter().step(), unit);
        return String.join(" + ", terms) + " = " + length(needed * digit, unit) + " needed; in " + step + ": "
                + Amounts.bought(b);
    }

    private static String length(double mm, Unit unit) {
        return Amounts.length(mm, unit);
    }

    /** What is said of it, without its subject: "fits, 27 cm to spare". */
    public static String onHand(OnHand hand, Unit unit) {
        double whole = hand.spare() >= 0 ? Math.floor(hand.spare() + 1e-6) : Math.ceil(-hand.spare() - 1e-6);
        return switch (hand.verdict()) {
            case FITS -> "fits, " + length(whole, unit) + " to spare";
            case SHORT -> "does not fit: " + length(whole, unit) + " short";
            case FITS_IF ->
                "is " + length(whole, unit) + " short, but fits if "
                        + hand.conditions().stream().map(c -> inUnit(c, unit)).collect(Collectors.joining("; or if "));
        };
    }

    /** The one number in a condition, "1234 mm needed", in the maker's unit. */
    private static String inUnit(String condition, Unit unit) {
        int mm = condition.lastIndexOf(" mm needed");
        int colon = condition.lastIndexOf(": ");
        if (mm < 0 || colon < 0) {
            return condition;
        }
        double value = Double.parseDouble(condition.substring(colon + 2, mm));
        return condition.substring(0, colon) + " (" + length(value, unit) + " needed)";
    }

    /** How a piece lies, short, as on the drawing. */
    static String side(CuttingGuide.Step s) {
        return (s.turnedOver() ? "TURNED OVER" : "this side up")
                + (s.headDown() ? ", top down" : "")
                + (s.onFold() ? ", on the fold" : s.layers() == 2 ? ", two layers" : "");
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
                + (said ? "" : " " + s.hand().mark());
    }

    /** One step of the tick list, behind its name. */
    public static String step(CuttingGuide.Step s, Lay lay, Unit unit) {
        boolean fold = lay.fromFold(s.layers());
        List<String> parts = new ArrayList<>();
        parts.add(
                s.turnedOver() ? "paper turned over, printed side DOWN" : "this side up: printed side of the paper up");
        if (s.headDown()) {
            parts.add("its top towards the near end");
        }
        if (s.onFold()) {
            parts.add("its fold edge exactly on the fold of the cloth, which is not cut");
        }
        boolean unfolded = lay.placements().stream()
                .anyMatch(p -> p.piece().equals(s.piece()) && p.copy() == s.copy() && p.unfolded());
        if (unfolded) {
            parts.add("the half pattern is traced, flipped over at its fold edge and traced again: one whole piece");
        }
        if (s.layers() == 2) {
            parts.add(layers(s));
        } else if (lay.method() == Lay.Method.FOLDED || lay.method() == Lay.Method.FOLDED_CROSSWISE) {
            parts.add("upper layer only");
        } else if (lay.method() != Lay.Method.OPEN) {
            parts.add("where the cloth lies in one layer");
        }
        parts.add("grain " + grain(s, unit) + " from the " + (fold ? "fold" : "left selvage"));
        return String.join("; ", parts) + ".";
    }

    private static String layers(CuttingGuide.Step s) {
        return switch (s.hand()) {
            case PAIR -> "both layers: the upper one gives the left, the lower one the right";
            case BOTH -> "both layers: the upper one as drawn, the lower one its mirror image";
            default -> s.onFold() ? "both layers: one whole piece" : "both layers: two pieces";
        };
    }

    private static String grain(CuttingGuide.Step s, Unit unit) {
        String first = length(s.fromEdge().get(0), unit);
        String second = length(s.fromEdge().get(1), unit);
        return first.equals(second) ? first + " at both ends" : first + " at its foot, " + second + " at its head";
    }

    /** How the cloth lies and how the list is to be used. */
    public static List<String> before(Lay lay, Unit unit) {
        return List.of(
                spread(lay, unit)
                        + " The lower edge of the picture is the end next to you. Right and left are the wearer's.",
                "Place the pieces in the order of the list: long ones first, from the "
                        + (lay.fromFold(2) ? "fold" : "left selvage")
                        + " outwards, because a long piece off grain twists. Measure both ends of each grain arrow; then"
                        + " put weights where the drawing has small squares, at both ends first.",
                "When all lie as drawn, and left and right are both there, cut in the same order and tick. Write L or R"
                        + " and the top on each cut piece, on its inside.");
    }

    /** Each other permitted way, what it needs and why one might still like it; empty where there is none. */
    public static List<String> otherWays(Lay lay, Unit unit) {
        return lay.ways().stream()
                .filter(w -> w.method() != lay.method())
                .map(w -> w.method().word() + " needs " + length(w.length(), unit)
                        + more(w.length() - lay.length(), unit) + ": " + why(w.method()))
                .toList();
    }

    private static String more(double mm, Unit unit) {
        return mm < 0.5 ? ", as much" : ", " + length(mm, unit) + " more";
    }

    /** Common practice, no source. */
    public static String why(Lay.Method method) {
        return switch (method) {
            case FOLDED -> "each pair is cut in one go and comes out left and right; two layers may shift";
            case OPEN -> "one layer does not shift and every flaw is seen; left and right are cut one by one";
            case FOLDED_CROSSWISE ->
                "wide pieces are cut in pairs in one go; the lower layer lies the other way round, and two layers may"
                        + " shift";
            case FOLDED_OFF_THE_MIDDLE ->
                "pairs are cut in one go, and nothing is wasted below single pieces; the fold must be kept straight";
            case PART_FOLDED ->
                "pairs are cut in one go first, the rest after it from open cloth: the easiest to follow";
        };
    }

    private static String spread(Lay lay, Unit unit) {
        String doubled = length(lay.doubled(), unit);
        return switch (lay.method()) {
            case FOLDED ->
                "Fold the cloth lengthwise, selvage on selvage, its OUTSIDE OUT. The fold lies on your left, the"
                        + " selvages on your right.";
            case OPEN -> "Lay the cloth open in one layer, its OUTSIDE UP.";
            case FOLDED_CROSSWISE ->
                "Fold the cloth across, cut end on cut end, its OUTSIDE OUT, the selvages at your left and right. The"
                        + " fold lies at the far end.";
            case FOLDED_OFF_THE_MIDDLE ->
                "Lay the cloth open, its OUTSIDE UP, and fold its left edge under so that " + doubled
                        + " lie double. The fold lies on your left; to the right of the lower selvage the cloth lies in"
                        + " one layer, its outside up.";
            case PART_FOLDED ->
                "Fold the first " + doubled
                        + " of the cloth lengthwise, selvage on selvage, its OUTSIDE OUT, the fold on"
                        + " your left. Cut across there when these pieces are cut, and lay the rest open, OUTSIDE UP.";
        };
    }

    public static String leftover(Leftover l, char letter, Unit unit) {
        String size = length(l.width(), unit) + " across x " + length(l.height(), unit) + " along";
        String layers = l.layers() == 1 ? "" : l.atFold() ? ", two layers, at the fold" : ", two layers";
        return letter + ": " + size + layers;
    }

    /** What comes out of the leftovers, each as if nothing else were cut; what does not come out is left away. */
    public static List<String> offcuts(ClothUse use, Unit unit) {
        return use.offcuts().stream()
                .filter(f -> f.total() > 0)
                .map(f -> f.what().name() + " (" + size(f.what(), unit) + "; "
                        + f.what().source() + "): " + f.total() + from(f))
                .toList();
    }

    private static String from(Offcut.Fit fit) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < fit.counts().size(); i++) {
            if (fit.counts().get(i) > 0) {
                letters.append(letters.isEmpty() ? ", from " : ", ").append((char) ('A' + i));
            }
        }
        return letters.toString();
    }

    private static String size(Offcut what, Unit unit) {
        return String.format(
                Locale.ROOT, "%s across x %s along", length(what.across(), unit), length(what.along(), unit));
    }
}
