package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** Sentences that several steps share. Every number and name in them comes from the pattern, the cloth or the stitch. */
final class Words {
    /** Shorter differences than this are neither seen nor sewn, mm. */
    private static final double LEVEL = 1;

    private Words() {}

    /** All parts of a leg over which the edge runs: "front leg: hem", "back leg: hem". */
    static List<Joined> places(Pattern pattern, Seam.Side side) {
        return pattern.carrying(side).stream()
                .map(p -> new Joined(p.name(), side.edge()))
                .toList();
    }

    /** "the two front crotch edges", or "the front inseam and the back inseam". */
    static Said edges(Seam seam) {
        String one = seam.sides().get(0).edge();
        String other = seam.sides().get(seam.sides().size() - 1).edge();
        if (!one.equals(other)) {
            return Tell.said("edges.both", Tell.edge(one), Tell.edge(other));
        }
        return switch (seam.role()) {
            case SIDE_SEAM -> Tell.said("edges.sides");
            case WAISTBAND_ENDS -> Tell.said("edges.band-ends");
            case WAISTBAND_TOP -> Tell.said("edges.band-top");
            default -> Tell.said("edges.alike", Tell.edge(one));
        };
    }

    /** How the notches that both sides of a seam carry are to meet; nothing where there are none. */
    static Said notches(Pattern pattern, Seam seam) {
        if (seam.sides().size() < 2) {
            return Said.NOTHING;
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
            return Said.NOTHING;
        }
        boolean oneIsSingle = here.stream().anyMatch(n -> n.mark() == Notch.Mark.SINGLE);
        if (!differ) {
            return oneIsSingle ? Tell.said("notches.single", named(names)) : Tell.said("notches.double", named(names));
        }
        return Tell.said(
                "notches.differ",
                Tell.edge((oneIsSingle ? one : other).edge()),
                Tell.edge((oneIsSingle ? other : one).edge()),
                named(names));
    }

    /** Names of notches, one after the other. */
    static Part named(List<String> notches) {
        return Part.listed(Part.Join.COMMA, notches.stream().map(Tell::notch).toList());
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
    static Said lengths(Pattern pattern, Seam seam) {
        double one = seam.sides().get(0).length();
        double other = seam.sides().get(seam.sides().size() - 1).length();
        if (Math.abs(one - other) <= LEVEL) {
            return Tell.said("lengths.level", Tell.mm(one));
        }
        boolean atTheKnee = seam.sides().stream()
                .allMatch(side ->
                        on(pattern, side).stream().anyMatch(n -> n.name().equals(Named.ABOVE_KNEE)));
        return atTheKnee
                ? Tell.said("lengths.knee", Tell.mm(one), Tell.mm(other))
                : Tell.said("lengths.spread", Tell.mm(one), Tell.mm(other));
    }

    /** How a ring of another length is brought to the edge it is joined to. */
    static Said stretch(Seam.Side ring, Seam.Side garment, Ring which) {
        double shorter = garment.length() - ring.length();
        if (Math.abs(shorter) <= LEVEL) {
            return Tell.said("ring.same");
        }
        return shorter > 0 ? stretched(which, Tell.mm(shorter)) : spread(which, Tell.mm(-shorter));
    }

    /** What is joined to the garment all round. */
    enum Ring {
        BAND,
        CUFF,
        COVER
    }

    private static Said stretched(Ring which, Part by) {
        return switch (which) {
            case BAND -> Tell.said("ring.band-stretched", by);
            case CUFF -> Tell.said("ring.cuff-stretched", by);
            case COVER -> Tell.said("ring.cover-stretched", by);
        };
    }

    private static Said spread(Ring which, Part by) {
        return switch (which) {
            case BAND -> Tell.said("ring.band-spread", by);
            case CUFF -> Tell.said("ring.cuff-spread", by);
            case COVER -> Tell.said("ring.cover-spread", by);
        };
    }

    /** Where the needle runs. */
    static Said sewLine(Seam seam) {
        return Tell.said("sew-line", allowance(seam));
    }

    /** Allowances are often not whole millimetres: "6.5 mm". */
    static Part allowance(Seam seam) {
        return Part.sewn(seam.allowance());
    }

    /** Said wherever pins could meet a knife. */
    static Said pins(Tool tool) {
        return tool.hasKnife() ? Tell.said("pins.knife") : Said.NOTHING;
    }

    /** Said wherever pins could meet a needle; by hand nobody sews over a pin. */
    static Said pinsOut(Tool tool) {
        return tool.byHand() ? Said.NOTHING : Tell.said("pins.needle");
    }

    /** What a substitute stitch cannot do; nothing where the stitch stretches as far as any cloth. */
    static Said limitAlong(Tool tool, Fabric fabric) {
        double most = tool.stitch().extensibility();
        double cloth = fabric.test().stretchAlong();
        if (most >= 1) {
            return Said.NOTHING;
        }
        Part[] values = {Tell.stitch(tool.stitch()), Part.share(most), Part.share(cloth)};
        return cloth > most ? Tell.said("limit.along-less", values) : Tell.said("limit.along", values);
    }

    static Said limitAround(Tool tool, Fabric fabric) {
        double most = tool.stitch().extensibility();
        double cloth = fabric.test().stretchAcross();
        if (most >= 1) {
            return Said.NOTHING;
        }
        Part[] values = {Tell.stitch(tool.stitch()), Part.share(most), Part.share(cloth)};
        return cloth > most ? Tell.said("limit.around-less", values) : Tell.said("limit.around", values);
    }
}
