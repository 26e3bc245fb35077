package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;

/** What the top edge may have besides its band: darts, a key pocket, an elastic, a cord, a casing. */
record TopSteps(Pattern pattern, Fabric fabric, Kit kit) {
    /** A row over each end of an elastic, back and forth, mm per mm of its width. */
    private static final double ROWS = 2;

    List<Step> all() {
        List<Step> steps = new ArrayList<>();
        SeamGroup.of(pattern, Seam.Role.DART).map(this::darts).ifPresent(steps::add);
        SeamGroup.of(pattern, Seam.Role.KEY_POCKET_HEM).map(this::pocketHem).ifPresent(steps::add);
        SeamGroup.of(pattern, Seam.Role.KEY_POCKET).map(this::pocket).ifPresent(steps::add);
        eyelets().ifPresent(steps::add);
        notion(NotionName.WAIST_ELASTIC).map(this::elastic).ifPresent(steps::add);
        SeamGroup.of(pattern, Seam.Role.WAISTBAND_TOP).map(this::top).ifPresent(steps::add);
        row().ifPresent(steps::add);
        SeamGroup.of(pattern, Seam.Role.CASING).map(this::casing).ifPresent(steps::add);
        notion(NotionName.CORD).map(this::cord).ifPresent(steps::add);
        return steps;
    }

    private Optional<Notion> notion(NotionName name) {
        return LowerSteps.notion(pattern, name);
    }

    private Optional<Piece> with(MarkName... names) {
        return pattern.pieces().stream()
                .filter(p -> p.marks().stream().anyMatch(m -> List.of(names).contains(m.name())))
                .findFirst();
    }

    private Step darts(SeamGroup darts) {
        Tool tool = kit.seam();
        Said edges = Words.edges(darts.first());
        boolean line = with(MarkName.FOLD_THE_DART).isPresent();
        return Step.sewn(
                StepKind.DARTS,
                tool,
                Step.SUPERIMPOSED,
                darts.joins(),
                darts.length(),
                Pace.flatSeam(tool.stitch(), darts.length(), darts.times()),
                Set.of(),
                (line
                                ? Tell.said("darts.fold-line", edges, MarkName.FOLD_THE_DART.said())
                                : Tell.said("darts.fold", edges))
                        .and(tool.hasKnife() ? Tell.said("darts.run-off") : Tell.said("darts.to-the-fold"))
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric)),
                Words.lengths(pattern, darts.first()).and(Tell.said("darts.check")));
    }

    private Step pocketHem(SeamGroup hem) {
        Tool tool = kit.hem();
        return Step.sewn(
                StepKind.KEY_POCKET_HEM,
                tool,
                Step.TURNED_HEM,
                hem.joins(),
                hem.length(),
                Pace.row(tool.stitch(), hem.length(), hem.times()),
                Set.of(),
                Tell.said("key-pocket-hem.do", Words.allowance(hem.first())).and(Words.limitAround(tool, fabric)),
                Tell.said("key-pocket-hem.check"));
    }

    private Step pocket(SeamGroup sides) {
        Tool tool = kit.hem();
        Piece carrier = with(MarkName.KEY_POCKET).orElseThrow();
        Part outline = MarkName.KEY_POCKET.said();
        return Step.sewn(
                StepKind.KEY_POCKET,
                tool,
                Step.SUPERIMPOSED,
                sides.joins(),
                sides.length(),
                Pace.flatSeam(tool.stitch(), sides.length(), sides.times()),
                Set.of(StepKind.KEY_POCKET_HEM),
                Tell.said("key-pocket.do", carrier.name().said(), outline)
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric)),
                Tell.said("key-pocket.check"));
    }

    private Optional<Step> eyelets() {
        return with(MarkName.EYELET)
                .map(piece -> Step.unsewn(
                        StepKind.EYELETS,
                        Place.HAND,
                        List.of(),
                        Pace.EYELETS,
                        Set.of(),
                        Tell.said("eyelets.do", piece.name().said()),
                        Tell.said("eyelets.check")));
    }

    private Step elastic(Notion elastic) {
        Tool tool = kit.hem();
        double length = ROWS * elastic.width();
        return Step.sewn(
                StepKind.ELASTIC,
                tool,
                Step.SUPERIMPOSED,
                List.of(),
                length,
                Pace.row(tool.stitch(), length, 1),
                Set.of(),
                Tell.said("elastic.do", Tell.mm(elastic.width()), Tell.mm(elastic.cut()), Tell.mm(elastic.ends())),
                Tell.said("elastic.check", Tell.mm(elastic.cut() - elastic.ends())));
    }

    private Step top(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                StepKind.BAND_TOP,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.ringSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(StepKind.BAND_RING, StepKind.BAND_RINGS),
                Tell.said("band-top.do", Words.edges(seams.first()))
                        .and(Words.notches(pattern, seams.first()))
                        .and(Words.sewLine(seams.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAround(tool, fabric)),
                Words.lengths(pattern, seams.first()).and(Tell.said("band-top.check")));
    }

    /** The row through both layers of a folded band that keeps elastic or cord at the fold. */
    private Optional<Step> row() {
        return with(MarkName.ROW_BELOW_THE_ELASTIC, MarkName.ROW_BELOW_THE_CORD).map(piece -> {
            Tool tool = kit.hem();
            double length = 2 * piece.edge(EdgeName.LOWER_EDGE).length();
            boolean elastic = notion(NotionName.WAIST_ELASTIC).isPresent();
            boolean below = piece.marks().stream().anyMatch(m -> m.name() == MarkName.ROW_BELOW_THE_ELASTIC);
            MarkName row = below ? MarkName.ROW_BELOW_THE_ELASTIC : MarkName.ROW_BELOW_THE_CORD;
            return Step.sewn(
                    StepKind.BAND_ROW,
                    tool,
                    Step.SUPERIMPOSED,
                    List.of(new Joined(piece.name(), EdgeName.LOWER_EDGE)),
                    length,
                    Pace.ringSeam(tool.stitch(), length, 1),
                    Set.of(StepKind.BAND_FOLD, StepKind.ELASTIC, StepKind.EYELETS),
                    Tell.said("band-row.do", row.said())
                            .and(elastic ? Tell.said("band-row.elastic") : Tell.said("band-row.cord"))
                            .and(Words.pinsOut(tool))
                            .and(Words.limitAround(tool, fabric)),
                    Tell.said("band-row.check"));
        });
    }

    private Step casing(SeamGroup casing) {
        Tool tool = kit.hem();
        return Step.sewn(
                StepKind.CASING,
                tool,
                Step.TURNED_HEM,
                casing.joins(),
                casing.length(),
                Pace.ringSeam(tool.stitch(), casing.length(), casing.times()),
                Set.of(
                        StepKind.SIDE_SEAMS,
                        StepKind.DARTS,
                        StepKind.FRONT_RISE,
                        StepKind.BACK_RISE,
                        StepKind.ROW_OVER_RISES,
                        StepKind.ELASTIC,
                        StepKind.EYELETS),
                Tell.said("casing.do", Words.allowance(casing.first()))
                        .and(Words.pinsOut(tool))
                        .and(Words.limitAround(tool, fabric)),
                Tell.said("casing.check"));
    }

    private Step cord(Notion cord) {
        return Step.unsewn(
                StepKind.CORD,
                Place.HAND,
                List.of(),
                Pace.CORD,
                Set.of(StepKind.BAND_ROW, StepKind.CASING),
                Tell.said("cord.do", Tell.mm(cord.cut()), Tell.mm(cord.ends())),
                Tell.said("cord.check"));
    }
}
