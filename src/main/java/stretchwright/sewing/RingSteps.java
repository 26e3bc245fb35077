package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;

/** The folded rings: waistband and cuffs are made alike. */
record RingSteps(Pattern pattern, Fabric fabric, Kit kit) {

    /**
     * What differs between band and cuff.
     *
     * @param ring "waistband" or "cuff", as said to the sewer
     * @param garment what it is joined to, as said to the sewer
     * @param seamMeets the garment seam at which the ring's own seam is set
     * @param garmentNeeds steps that close the garment's edge into a ring
     */
    private record Kind(
            Seam.Role ends, Seam.Role join, String ring, String garment, String seamMeets, Set<String> garmentNeeds) {
        String many(int times) {
            return times == 1 ? ring : ring + "s";
        }

        String ringStep(int times) {
            return ring + Words.count(times, " ring", " rings");
        }

        String foldStep(int times) {
            return "fold and mark the " + many(times);
        }

        String markStep(int times) {
            return "mark the " + garment + Words.count(times, "", "s");
        }
    }

    private static final Kind BAND = new Kind(
            Seam.Role.WAISTBAND_ENDS,
            Seam.Role.WAISTBAND_JOIN,
            "waistband",
            "leg top",
            "back rise seam",
            Set.of(LegSteps.SIDE, TopSteps.DARTS, PartSteps.PANELS, LegSteps.FRONT, LegSteps.BACK, LegSteps.ROW));
    private static final Kind CUFF = new Kind(
            Seam.Role.CUFF_ENDS,
            Seam.Role.CUFF_JOIN,
            "cuff",
            "leg end",
            "inseam",
            Set.of(LegSteps.SIDE, PartSteps.PANELS, LegSteps.INSEAMS));

    /** The step that closes the band's layers into rings, whether there is one or two. */
    static String[] bandRings() {
        return new String[] {BAND.ringStep(1), BAND.ringStep(2)};
    }

    private String foldName(Kind kind, int times) {
        return twoLayers(kind) ? "turn and mark the waistband" : kind.foldStep(times);
    }

    static String bandFold() {
        return BAND.foldStep(1);
    }

    /** A band of two layers: an outer one and a facing, which are joined along the top instead of folded. */
    private boolean twoLayers(Kind kind) {
        return kind == BAND && SeamGroup.of(pattern, Seam.Role.WAISTBAND_TOP).isPresent();
    }

    List<Step> all() {
        List<Step> steps = new ArrayList<>();
        for (Kind kind : List.of(BAND, CUFF)) {
            SeamGroup.of(pattern, kind.ends).ifPresent(ends -> steps.add(close(kind, ends)));
            SeamGroup.of(pattern, kind.join).ifPresent(join -> {
                steps.add(fold(kind, join));
                steps.add(mark(kind, join));
                steps.add(join(kind, join));
            });
        }
        return steps;
    }

    private Step close(Kind kind, SeamGroup ends) {
        Tool tool = kit.seam();
        return Step.sewn(
                kind.ringStep(ends.times()),
                tool,
                Step.SUPERIMPOSED,
                ends.joins(),
                ends.length(),
                Pace.flatSeam(tool.stitch(), ends.length(), ends.times()),
                kind == BAND ? Set.of(TopSteps.POCKET) : Set.of(),
                "Bring the short ends of "
                        + (twoLayers(kind) ? "the waistband and those of its facing" : whose(kind, ends))
                        + " right sides together and sew " + Words.edges(ends.first()) + " into a ring"
                        + (twoLayers(kind) ? ", each for itself." : ".")
                        + Words.sewLine(ends.first())
                        + Words.pins(tool) + Words.limitAlong(tool, fabric),
                Words.lengths(pattern, ends.first()) + " The ring is not twisted.");
    }

    private static String whose(Kind kind, SeamGroup ends) {
        return Words.count(ends.times(), "the ", "each ") + kind.ring;
    }

    private Step fold(Kind kind, SeamGroup join) {
        String quarters =
                " Put a clip at its seam, one opposite, and one halfway between on either side: four quarters.";
        Piece piece = pattern.piece(ring(kind, join).piece());
        String line = twoLayers(kind) ? "" : foldLine(piece);
        String elastic = kind == BAND
                        && !twoLayers(kind)
                        && pattern.notions().stream().anyMatch(n -> n.name().equals("waist elastic"))
                ? " Lay the elastic ring into the fold, quarters on quarters."
                : "";
        String how = twoLayers(kind)
                ? "Turn the two layers right sides out, the facing inside, raw lower edges level."
                : "Fold " + Words.count(join.times(), "the ring", "each ring") + line
                        + ", outside of the cloth out, raw" + " edges level.";
        return Step.unsewn(
                foldName(kind, join.times()),
                "table",
                longEdges(piece, ring(kind, join)),
                join.times() * Pace.FOLD_AND_MARK,
                kind == BAND
                        ? Set.of(kind.ringStep(1), kind.ringStep(2), TopSteps.TOP, TopSteps.EYELETS, TopSteps.ELASTIC)
                        : Set.of(kind.ringStep(1), kind.ringStep(2)),
                how + quarters + elastic,
                "The four parts between the clips are equally long, and "
                        + (twoLayers(kind) ? "the upper edge lies flat." : "the fold is not twisted."));
    }

    private static String foldLine(Piece piece) {
        return piece.marks().stream()
                .filter(m -> m.kind() == Mark.Kind.FOLD)
                .findFirst()
                .map(m -> " along the line marked \"" + m.name() + "\"")
                .orElse(" along its middle");
    }

    private static List<String> longEdges(Piece piece, Seam.Side joined) {
        return Stream.of("lower edge", "upper edge")
                .filter(name -> piece.edges().stream().anyMatch(e -> e.name().equals(name)))
                .map(name -> joined.piece() + ": " + name)
                .toList();
    }

    private Step mark(Kind kind, SeamGroup join) {
        String how = kind == BAND
                ? "Bring the front and the back rise seam together and put a clip at each side, where the edge folds;"
                        + " the two seams are the other two marks."
                : "Put a clip opposite the inseam of each leg and one halfway between on either side; the inseam is"
                        + " the fourth mark.";
        return Step.unsewn(
                kind.markStep(join.times()),
                "table",
                Words.places(pattern, garment(kind, join)),
                join.times() * Pace.MARK,
                kind.garmentNeeds,
                how,
                "The edge is parted into four equal lengths.");
    }

    private Step join(Kind kind, SeamGroup join) {
        Tool tool = kit.seam();
        Seam.Side ring = ring(kind, join);
        Seam.Side garment = garment(kind, join);
        String each = Words.count(join.times(), "the ", "each ");
        String inside = kind == BAND ? "" : " Turn the allowances of the two seams to opposite sides.";
        return Step.sewn(
                "join the " + kind.many(join.times()),
                tool,
                Step.SUPERIMPOSED,
                join.places(pattern),
                join.length(),
                Pace.ringSeam(tool.stitch(), join.length(), join.times()),
                before(kind, join),
                "With the pair right side out, slip " + Words.count(join.times(), "the", "a")
                        + (twoLayers(kind) ? " finished " : " folded ") + kind.ring + " over " + each + kind.garment
                        + ", right sides together, all three"
                        + " raw edges level, its seam on the " + kind.seamMeets + " and clip to clip; sew once round."
                        + Words.stretch(ring, garment, kind.ring, kind.garment) + inside + caught(kind)
                        + Words.notches(pattern, join.first())
                        + Words.sewLine(join.first()) + Words.pins(tool)
                        + Words.limitAround(tool, fabric),
                "Fold the " + kind.ring + " away from the leg: all three layers are caught all round, the quarters"
                        + " still meet, and the seam stretches over your hands without a snap.");
    }

    private String caught(Kind kind) {
        boolean pouch = pattern.pieces().stream().anyMatch(p -> p.name().equals(PartSteps.TAILBONE));
        return kind == BAND && pouch ? " Catch the upper edge of the tailbone pad pocket in the seam, inside." : "";
    }

    private static Set<String> before(Kind kind, SeamGroup join) {
        return kind == BAND
                ? Set.of(kind.foldStep(join.times()), kind.markStep(join.times()), PartSteps.TAILBONE)
                : Set.of(kind.foldStep(join.times()), kind.markStep(join.times()));
    }

    /** The side that is also closed into a ring; else the second side. */
    private Seam.Side ring(Kind kind, SeamGroup join) {
        List<Seam.Side> sides = join.first().sides();
        return SeamGroup.of(pattern, kind.ends).stream()
                .flatMap(g -> g.first().sides().stream())
                .flatMap(end -> sides.stream().filter(s -> s.piece().equals(end.piece())))
                .findFirst()
                .orElse(sides.get(sides.size() - 1));
    }

    private Seam.Side garment(Kind kind, SeamGroup join) {
        Seam.Side ring = ring(kind, join);
        return join.first().sides().stream()
                .filter(s -> !s.equals(ring))
                .findFirst()
                .orElse(ring);
    }
}
