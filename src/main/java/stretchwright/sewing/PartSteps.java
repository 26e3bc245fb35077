package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;

/** What is sewn onto or into the legs while they lie flat: pockets, panels; and the gusset before the inseam. */
record PartSteps(Pattern pattern, Fabric fabric, Kit kit) {
    static final String PANELS = "panel seams";
    static final String GUSSET = "gusset";
    static final String PHONE = "phone pocket";
    static final String HIP = "hip pad pocket";
    static final String KNEE = "knee pad pocket";
    static final String TAILBONE = "tailbone pad pocket";

    static final Set<String> ON_THE_FLAT_LEG = Set.of(PHONE, HIP, KNEE);
    static final Set<String> BEFORE_THE_RISES = Set.of(LegSteps.SIDE, TopSteps.DARTS, PANELS, PHONE, HIP, KNEE);

    Optional<Step> panels() {
        return SeamGroup.of(pattern, Seam.Role.PANEL).map(this::panels);
    }

    private Step panels(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                PANELS,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                ON_THE_FLAT_LEG,
                "Lay each side panel on its front leg right sides together (the outsides of the cloth facing) and sew "
                        + Words.edges(seams.first())
                        + "; then sew the back leg to the panel's other edge in the same way."
                        + Words.notches(pattern, seams.first()) + Words.sewLine(seams.first()) + Words.pins(tool)
                        + Words.limitAlong(tool, fabric),
                Words.lengths(pattern, seams.first())
                        + " Opened out, front, panel and back lie flat, and their upper and"
                        + " lower edges run on without a step.");
    }

    Optional<Step> gusset() {
        return SeamGroup.of(pattern, Seam.Role.GUSSET).map(this::gusset);
    }

    private Step gusset(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                GUSSET,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(LegSteps.FRONT, LegSteps.BACK, LegSteps.ROW),
                "Set the gusset into the gap between the legs, right sides together, its single-notched edges to the"
                        + " front: sew each of its four edges to the cut edge of that side, from tip to tip, and stop on"
                        + " the seam line at every tip." + Words.sewLine(seams.first()) + Words.pins(tool)
                        + Words.limitAlong(tool, fabric),
                Words.lengths(pattern, seams.first())
                        + " The front and the back tip lie on the rise seams, and no tip is" + " puckered.");
    }

    List<Step> pockets() {
        List<Step> steps = new ArrayList<>();
        for (String name : List.of(PHONE, HIP, KNEE, TAILBONE)) {
            pattern.pieces().stream()
                    .filter(p -> p.name().equals(name))
                    .findFirst()
                    .ifPresent(piece -> steps.add(pocket(piece)));
        }
        return steps;
    }

    private Step pocket(Piece piece) {
        Tool tool = kit.hem();
        SeamGroup seams = new SeamGroup(pattern.seams().stream()
                .filter(s -> s.sides().get(0).piece().equals(piece.name()))
                .filter(s -> s.role() == Seam.Role.POCKET || s.role() == Seam.Role.POCKET_OPENING)
                .toList());
        boolean pouch = piece.name().equals(TAILBONE);
        return Step.sewn(
                piece.name(),
                tool,
                Step.TURNED_HEM,
                seams.joins(),
                seams.length(),
                Pace.flatSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(),
                (pouch ? pouch(piece, seams) : sewnOn(piece, seams)) + Words.limitAlong(tool, fabric),
                pouch
                        ? "The pad slips in from above and does not show over the edge; the upper edge lies open for the waist"
                                + " seam."
                        : "The leg beneath is flat and no second layer is caught; what goes into the pocket slips in from"
                                + " above.");
    }

    private String opening(SeamGroup seams) {
        return seams.seams().stream()
                .filter(s -> s.role() == Seam.Role.POCKET_OPENING)
                .map(Words::allowance)
                .findFirst()
                .orElseThrow();
    }

    private String sewnOn(Piece piece, SeamGroup seams) {
        String turned = seams.seams().stream()
                .filter(s -> s.role() == Seam.Role.POCKET)
                .map(Words::allowance)
                .findFirst()
                .orElseThrow();
        String where = piece.name().equals(PHONE)
                ? "on the outside of the leg on which it is wanted,"
                : "on the inside of both legs,";
        String times = Words.count(piece.cut(), "", " of each pocket");
        return "Turn " + opening(seams) + " of the upper edge" + times + " under and sew it down; turn " + turned
                + " of the other three edges under. While the leg still lies flat, lay the pocket " + where
                + " onto the line marked \"" + piece.name()
                + "\", opening up, and sew round its sides and lower edge; sew back"
                + " and forth at both ends of the opening.";
    }

    private String pouch(Piece piece, SeamGroup seams) {
        String fold = piece.marks().stream()
                .filter(m -> m.kind() == Mark.Kind.FOLD)
                .findFirst()
                .map(Mark::name)
                .orElseThrow();
        return "Turn " + opening(seams)
                + " of the lower edge under and sew it down; fold the lower end up along the line"
                + " marked \"" + fold
                + "\", wrong sides together, and sew both sides, first through the two layers and on up"
                + " over the single one, turned in. It is sewn to nothing but the waist seam: nothing is stitched across the"
                + " back rise.";
    }
}
