package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.Seam;

/** What is sewn onto or into the legs while they lie flat: pockets, panels; and the gusset before the inseam. */
record PartSteps(Pattern pattern, Fabric fabric, Kit kit) {
    static final Set<StepName> ON_THE_FLAT_LEG =
            Set.of(StepKind.PHONE_POCKET, StepKind.HIP_POCKET, StepKind.KNEE_POCKET);
    static final Set<StepName> BEFORE_THE_RISES = Set.of(
            StepKind.SIDE_SEAMS,
            StepKind.DARTS,
            StepKind.PANELS,
            StepKind.PHONE_POCKET,
            StepKind.HIP_POCKET,
            StepKind.KNEE_POCKET);

    private static final List<StepKind> POCKETS =
            List.of(StepKind.PHONE_POCKET, StepKind.HIP_POCKET, StepKind.KNEE_POCKET, StepKind.TAILBONE_POCKET);

    Optional<Step> panels() {
        return SeamGroup.of(pattern, Seam.Role.PANEL).map(this::panels);
    }

    private Step panels(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                StepKind.PANELS,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                ON_THE_FLAT_LEG,
                Tell.said("panels.do", Words.edges(seams.first()))
                        .and(Words.notches(pattern, seams.first()))
                        .and(Words.sewLine(seams.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric)),
                Words.lengths(pattern, seams.first()).and(Tell.said("panels.check")));
    }

    Optional<Step> gusset() {
        return SeamGroup.of(pattern, Seam.Role.GUSSET).map(this::gusset);
    }

    private Step gusset(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                StepKind.GUSSET,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(StepKind.FRONT_RISE, StepKind.BACK_RISE, StepKind.ROW_OVER_RISES),
                Tell.said("gusset.do")
                        .and(Words.sewLine(seams.first()))
                        .and(Words.pins(tool))
                        .and(Words.limitAlong(tool, fabric)),
                Words.lengths(pattern, seams.first()).and(Tell.said("gusset.check")));
    }

    List<Step> pockets() {
        List<Step> steps = new ArrayList<>();
        for (StepKind kind : POCKETS) {
            pattern.pieces().stream()
                    .filter(p -> p.name().is(piece(kind)))
                    .findFirst()
                    .ifPresent(piece -> steps.add(pocket(kind, piece)));
        }
        return steps;
    }

    private static PieceKind piece(StepKind pocket) {
        return switch (pocket) {
            case PHONE_POCKET -> PieceKind.PHONE_POCKET;
            case HIP_POCKET -> PieceKind.HIP_PAD_POCKET;
            case KNEE_POCKET -> PieceKind.KNEE_PAD_POCKET;
            default -> PieceKind.TAILBONE_PAD_POCKET;
        };
    }

    private Step pocket(StepKind kind, Piece piece) {
        Tool tool = kit.hem();
        SeamGroup seams = new SeamGroup(pattern.seams().stream()
                .filter(s -> s.sides().get(0).piece().equals(piece.name()))
                .filter(s -> s.role() == Seam.Role.POCKET || s.role() == Seam.Role.POCKET_OPENING)
                .toList());
        boolean pouch = kind == StepKind.TAILBONE_POCKET;
        return Step.sewn(
                kind,
                tool,
                Step.TURNED_HEM,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(),
                (pouch ? pouch(piece, seams) : sewnOn(kind, piece, seams)).and(Words.limitAlong(tool, fabric)),
                pouch ? Tell.said("pouch.check") : Tell.said("pocket.check"));
    }

    private static Part turned(SeamGroup seams, Seam.Role role) {
        return seams.seams().stream()
                .filter(s -> s.role() == role)
                .map(Words::allowance)
                .findFirst()
                .orElseThrow();
    }

    private static Said sewnOn(StepKind kind, Piece piece, SeamGroup seams) {
        Part[] values = {
            turned(seams, Seam.Role.POCKET_OPENING),
            turned(seams, Seam.Role.POCKET),
            piece.name().said()
        };
        return kind == StepKind.PHONE_POCKET
                ? Tell.said("pocket.one-outside", values)
                : Tell.said("pocket.both-inside", values);
    }

    private static Said pouch(Piece piece, SeamGroup seams) {
        MarkName fold = piece.marks().stream()
                .filter(m -> m.kind() == Mark.Kind.FOLD)
                .findFirst()
                .map(Mark::name)
                .orElseThrow();
        return Tell.said("pouch.do", turned(seams, Seam.Role.POCKET_OPENING), fold.said());
    }
}
