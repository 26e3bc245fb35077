package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** Sentences that several steps share. Every number and name in them comes from the pattern, the cloth or the stitch. */
final class Words {
    /** Shorter differences than this are neither seen nor sewn, mm. */
    private static final double LEVEL = 1;

    /** The upper one of the two notches between which a knee is eased. */
    private static final String ABOVE_KNEE = "above knee";

    private Words() {}

    /** "leg: front inseam". */
    static String place(Seam.Side side) {
        return side.piece() + ": " + side.edge();
    }

    /** All parts of a leg over which the edge runs: "front leg: hem", "back leg: hem". */
    static List<String> places(Pattern pattern, Seam.Side side) {
        return pattern.carrying(side).stream()
                .map(p -> p.name() + ": " + side.edge())
                .toList();
    }

    static String mm(double length) {
        return String.format(Locale.ROOT, "%.0f mm", length);
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", share * 100);
    }

    /** "the two front crotch edges", or "the front inseam and the back inseam". */
    static String edges(Seam seam) {
        String one = seam.sides().get(0).edge();
        String other = seam.sides().get(seam.sides().size() - 1).edge();
        if (!one.equals(other)) {
            return "the " + one + " and the " + other;
        }
        return "the two " + one + (one.endsWith(" end") || one.endsWith(" edge") ? "s" : " edges");
    }

    /** How the notches that both sides of a seam carry are to meet; empty where there are none. */
    static String notches(Pattern pattern, Seam seam) {
        if (seam.sides().size() < 2) {
            return "";
        }
        Seam.Side one = seam.sides().get(0);
        Seam.Side other = seam.sides().get(1);
        List<Notch> here = on(pattern, one);
        List<String> names = new ArrayList<>();
        boolean differ = false;
        for (Notch there : on(pattern, other)) {
            for (Notch notch : here) {
                if (notch.name().equals(there.name()) && !names.contains(notch.name())) {
                    names.add(notch.name());
                    differ |= notch.mark() != there.mark();
                }
            }
        }
        if (names.isEmpty()) {
            return "";
        }
        boolean oneIsSingle = here.stream().anyMatch(n -> n.mark() == Notch.Mark.SINGLE);
        String list = String.join(", ", names) + ".";
        if (!differ) {
            return " Match the " + (oneIsSingle ? "single" : "double") + " notches: " + list;
        }
        return " Match the notches (one cut on the " + (oneIsSingle ? one : other).edge() + " meets two on the "
                + (oneIsSingle ? other : one).edge() + "): " + list;
    }

    /** Names of the notches that both sides of a seam carry, in the order of the first side. */
    static List<String> sharedNotches(Pattern pattern, Seam seam) {
        List<String> there = on(pattern, seam.sides().get(seam.sides().size() - 1)).stream()
                .map(Notch::name)
                .toList();
        return on(pattern, seam.sides().get(0)).stream()
                .map(Notch::name)
                .filter(there::contains)
                .distinct()
                .toList();
    }

    private static List<Notch> on(Pattern pattern, Seam.Side side) {
        return pattern.carrying(side).stream()
                .flatMap(p -> p.notches().stream())
                .filter(n -> n.edge().equals(side.edge()))
                .toList();
    }

    /** What to see when the two edges of a seam have been sewn: their lengths, from the pattern. */
    static String lengths(Pattern pattern, Seam seam) {
        double one = seam.sides().get(0).length();
        double other = seam.sides().get(seam.sides().size() - 1).length();
        if (Math.abs(one - other) <= LEVEL) {
            return "Both edges measure " + mm(one) + " along the sew line, so they must end level.";
        }
        if (seam.sides().stream()
                .allMatch(side ->
                        on(pattern, side).stream().anyMatch(n -> n.name().equals(ABOVE_KNEE)))) {
            return "The edges measure " + mm(one) + " and " + mm(other)
                    + " along the sew line; all of the difference lies between the notches below knee and above knee, where"
                    + " the longer edge is eased in without a fold, and they end level.";
        }
        return "The edges measure " + mm(one) + " and " + mm(other)
                + " along the sew line; the difference is spread over the whole seam and they end level.";
    }

    /** How a ring of another length is brought to the edge it is joined to. */
    static String stretch(Seam.Side ring, Seam.Side garment, String ringName, String garmentName) {
        double shorter = garment.length() - ring.length();
        if (shorter > LEVEL) {
            return " The " + ringName + " is " + mm(shorter) + " shorter all round: between the marks stretch the "
                    + ringName + ", never the " + garmentName + ", until the two lie flat together.";
        }
        if (shorter < -LEVEL) {
            return " The " + ringName + " is " + mm(-shorter) + " longer all round: spread that evenly between the"
                    + " marks, without a fold.";
        }
        return " The two are the same length: stretch neither.";
    }

    /** Where the needle runs. */
    static String sewLine(Seam seam) {
        return " The sew line is " + allowance(seam) + " in from the cut edge.";
    }

    /** Allowances are often not whole millimetres: "6.5 mm". */
    static String allowance(Seam seam) {
        double mm = seam.allowance();
        return mm == Math.rint(mm) ? mm(mm) : String.format(Locale.ROOT, "%.1f mm", mm);
    }

    /** Said wherever pins could meet a knife. */
    static String pins(Tool tool) {
        return tool.hasKnife() ? " Use clips, or take every pin out before it reaches the knife." : "";
    }

    /** What a substitute stitch cannot do; empty where the stitch stretches as far as any cloth. */
    static String limit(Tool tool, double clothStretch, String way) {
        double most = tool.stitch().extensibility();
        if (most >= 1) {
            return "";
        }
        String start = " A seam in " + tool.stitch().plainName() + " stretches about " + percent(most)
                + " before its thread breaks; this cloth stretches " + percent(clothStretch) + " " + way;
        return clothStretch > most
                ? start + ", so the seam gives out before the cloth: do not pull it farther."
                : start + ", so the seam keeps up with it.";
    }

    static String limitAlong(Tool tool, Fabric fabric) {
        return limit(tool, fabric.test().stretchAlong(), "along the leg");
    }

    static String limitAround(Tool tool, Fabric fabric) {
        return limit(tool, fabric.test().stretchAcross(), "around");
    }

    /** "it" or "each", "ring" or "rings". */
    static String count(int times, String one, String several) {
        return times == 1 ? one : several;
    }
}
