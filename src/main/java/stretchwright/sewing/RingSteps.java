package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Said;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Mark;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.Seam;

/** The folded rings: waistband and cuffs are made alike. */
record RingSteps(Pattern pattern, Fabric fabric, Kit kit) {

    /**
     * What differs between band and cuff.
     *
     * @param marks the step that marks what it is joined to
     * @param foldNeeds steps that close the ring and put something into its fold
     * @param garmentNeeds steps that close the garment's edge into a ring
     */
    private record Kind(
            Words.Ring ring,
            Seam.Role ends,
            Seam.Role join,
            StepKind fold,
            StepKind marks,
            StepKind joins,
            Set<StepName> foldNeeds,
            Set<StepName> garmentNeeds) {}

    private static final Kind BAND = new Kind(
            Words.Ring.BAND,
            Seam.Role.WAISTBAND_ENDS,
            Seam.Role.WAISTBAND_JOIN,
            StepKind.BAND_FOLD,
            StepKind.LEG_TOP_MARKS,
            StepKind.BAND_JOIN,
            Set.of(StepKind.BAND_RING, StepKind.BAND_RINGS, StepKind.BAND_TOP, StepKind.EYELETS, StepKind.ELASTIC),
            Set.of(
                    StepKind.SIDE_SEAMS,
                    StepKind.DARTS,
                    StepKind.PANELS,
                    StepKind.FRONT_RISE,
                    StepKind.BACK_RISE,
                    StepKind.ROW_OVER_RISES));
    private static final Kind CUFF = new Kind(
            Words.Ring.CUFF,
            Seam.Role.CUFF_ENDS,
            Seam.Role.CUFF_JOIN,
            StepKind.CUFF_FOLD,
            StepKind.LEG_END_MARKS,
            StepKind.CUFF_JOIN,
            Set.of(StepKind.CUFF_RINGS),
            Set.of(StepKind.SIDE_SEAMS, StepKind.PANELS, StepKind.INSEAMS));

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

    private StepKind rings(Kind kind, SeamGroup ends) {
        if (kind == CUFF) {
            return StepKind.CUFF_RINGS;
        }
        return ends.times() == 1 ? StepKind.BAND_RING : StepKind.BAND_RINGS;
    }

    private Step close(Kind kind, SeamGroup ends) {
        Tool tool = kit.seam();
        return Step.sewn(
                rings(kind, ends),
                tool,
                Step.SUPERIMPOSED,
                ends.joins(),
                ends.length(),
                Pace.flatSeam(tool.stitch(), ends.length(), ends.times()),
                kind == BAND ? Set.of(StepKind.KEY_POCKET) : Set.of(),
                closed(kind, ends)
                        .and(Words.sewLine(ends.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric)),
                Words.lengths(pattern, ends.first()).and(Tell.said("ring.check")));
    }

    private Said closed(Kind kind, SeamGroup ends) {
        Said edges = Words.edges(ends.first());
        if (kind == CUFF) {
            return Tell.said("ring.close-cuffs", edges);
        }
        return twoLayers(kind) ? Tell.said("ring.close-two-bands", edges) : Tell.said("ring.close-band", edges);
    }

    private Step fold(Kind kind, SeamGroup join) {
        Piece piece = pattern.piece(ring(kind, join).piece());
        boolean elastic = kind == BAND
                && !twoLayers(kind)
                && LowerSteps.notion(pattern, NotionName.WAIST_ELASTIC).isPresent();
        return Step.unsewn(
                folding(kind),
                Place.TABLE,
                longEdges(piece, ring(kind, join)),
                join.times() * Pace.FOLD_AND_MARK,
                kind.foldNeeds,
                folded(kind, piece)
                        .and(Tell.said("fold.quarters"))
                        .and(elastic ? Tell.said("fold.elastic") : Said.NOTHING),
                twoLayers(kind) ? Tell.said("fold.check-two-layers") : Tell.said("fold.check"));
    }

    private StepKind folding(Kind kind) {
        return twoLayers(kind) ? StepKind.BAND_TURN : kind.fold;
    }

    private Said folded(Kind kind, Piece piece) {
        if (twoLayers(kind)) {
            return Tell.said("fold.two-layers");
        }
        return piece.marks().stream()
                .filter(m -> m.kind() == Mark.Kind.FOLD)
                .findFirst()
                .map(m -> foldedAlong(kind, m))
                .orElseGet(() -> kind == BAND ? Tell.said("fold.band-middle") : Tell.said("fold.cuffs-middle"));
    }

    private static Said foldedAlong(Kind kind, Mark line) {
        return kind == BAND
                ? Tell.said("fold.band", line.name().said())
                : Tell.said("fold.cuffs", line.name().said());
    }

    private static List<Joined> longEdges(Piece piece, Seam.Side joined) {
        return Stream.of(EdgeName.LOWER_EDGE, EdgeName.UPPER_EDGE)
                .filter(piece::has)
                .map(name -> new Joined(joined.piece(), name))
                .toList();
    }

    private Step mark(Kind kind, SeamGroup join) {
        return Step.unsewn(
                kind.marks,
                Place.TABLE,
                Words.places(pattern, garment(kind, join)),
                join.times() * Pace.MARK,
                kind.garmentNeeds,
                kind == BAND ? Tell.said("marks.leg-top") : Tell.said("marks.leg-ends"),
                Tell.said("marks.check"));
    }

    private Step join(Kind kind, SeamGroup join) {
        Tool tool = kit.seam();
        return Step.sewn(
                kind.joins,
                tool,
                Step.SUPERIMPOSED,
                join.places(pattern),
                join.length(),
                Pace.ringSeam(tool.stitch(), join.length(), join.times()),
                kind == BAND
                        ? Set.of(folding(kind), kind.marks, StepKind.TAILBONE_POCKET)
                        : Set.of(folding(kind), kind.marks),
                slipped(kind)
                        .and(Words.stretch(ring(kind, join), garment(kind, join), kind.ring))
                        .and(kind == BAND ? Said.NOTHING : Tell.said("join.opposite-allowances"))
                        .and(caught(kind))
                        .and(Words.notches(pattern, join.first()))
                        .and(Words.sewLine(join.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAround(tool, fabric)),
                kind == BAND ? Tell.said("join.check-band") : Tell.said("join.check-cuffs"));
    }

    private Said slipped(Kind kind) {
        if (kind == CUFF) {
            return Tell.said("join.cuffs");
        }
        return twoLayers(kind) ? Tell.said("join.finished-band") : Tell.said("join.folded-band");
    }

    private Said caught(Kind kind) {
        boolean pouch = pattern.pieces().stream().anyMatch(p -> p.name().is(PieceKind.TAILBONE_PAD_POCKET));
        return kind == BAND && pouch ? Tell.said("join.pouch") : Said.NOTHING;
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
