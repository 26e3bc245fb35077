package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;

/** What the top edge may have besides its band: darts, a key pocket, an elastic, a cord, a casing. */
record TopSteps(Pattern pattern, Fabric fabric, Kit kit) {
    static final String DARTS = "back darts";
    static final String POCKET_HEM = "hem the key pocket";
    static final String POCKET = "sew on the key pocket";
    static final String EYELETS = "eyelets";
    static final String ELASTIC = "elastic ring";
    static final String TOP = "close the waistband's upper edge";
    static final String ROW = "row in the waistband";
    static final String CASING = "casing";
    static final String CORD = "cord";

    /** A row over each end of an elastic, back and forth, mm per mm of its width. */
    private static final double ROWS = 2;

    List<Step> all() {
        List<Step> steps = new ArrayList<>();
        SeamGroup.of(pattern, Seam.Role.DART).map(this::darts).ifPresent(steps::add);
        SeamGroup.of(pattern, Seam.Role.KEY_POCKET_HEM).map(this::pocketHem).ifPresent(steps::add);
        SeamGroup.of(pattern, Seam.Role.KEY_POCKET).map(this::pocket).ifPresent(steps::add);
        eyelets().ifPresent(steps::add);
        notion("waist elastic").map(this::elastic).ifPresent(steps::add);
        SeamGroup.of(pattern, Seam.Role.WAISTBAND_TOP).map(this::top).ifPresent(steps::add);
        row().ifPresent(steps::add);
        SeamGroup.of(pattern, Seam.Role.CASING).map(this::casing).ifPresent(steps::add);
        notion("cord").map(this::cord).ifPresent(steps::add);
        return steps;
    }

    private Optional<Notion> notion(String name) {
        return pattern.notions().stream().filter(n -> n.name().equals(name)).findFirst();
    }

    private Optional<Piece> with(Mark.Kind kind, String words) {
        return pattern.pieces().stream()
                .filter(p -> p.marks().stream()
                        .anyMatch(m -> m.kind() == kind && m.name().startsWith(words)))
                .findFirst();
    }

    private Step darts(SeamGroup darts) {
        Tool tool = kit.seam();
        String fold = with(Mark.Kind.FOLD, "fold the dart").isPresent() ? " along the line \"fold the dart\"" : "";
        String off = tool.hasKnife()
                ? " and let it run off at the tip along the fold; the knife takes the depth of the dart away down to the"
                        + " allowance."
                : " and let the last stitches run along the fold. Do not sew back and forth at the tip; knot the threads.";
        return Step.sewn(
                DARTS,
                tool,
                Step.SUPERIMPOSED,
                darts.joins(),
                darts.length(),
                Pace.flatSeam(tool.stitch(), darts.length(), darts.times()),
                Set.of(),
                "Fold each dart right sides together" + fold + ", so that " + Words.edges(darts.first())
                        + " lie on each other. Sew from the waist edge to the tip" + off + Words.pins(tool)
                        + Words.limitAlong(tool, fabric),
                Words.lengths(pattern, darts.first())
                        + " The waist edge runs on smoothly over the closed dart, and no peak stands" + " at its tip.");
    }

    private Step pocketHem(SeamGroup hem) {
        Tool tool = kit.hem();
        return Step.sewn(
                POCKET_HEM,
                tool,
                Step.TURNED_HEM,
                hem.joins(),
                hem.length(),
                Pace.row(tool.stitch(), hem.length(), hem.times()),
                Set.of(),
                "Turn " + Words.allowance(hem.first())
                        + " of the upper edge of the key pocket to the wrong side and sew" + " over it."
                        + Words.limitAround(tool, fabric),
                "The upper edge lies flat and is not longer than the lower one.");
    }

    private Step pocket(SeamGroup sides) {
        Tool tool = kit.hem();
        Piece carrier = with(Mark.Kind.PLACEMENT, "key pocket").orElseThrow();
        String mark = carrier.marks().stream()
                .map(Mark::name)
                .filter(n -> n.startsWith("key pocket"))
                .findFirst()
                .orElseThrow();
        return Step.sewn(
                POCKET,
                tool,
                Step.SUPERIMPOSED,
                sides.joins(),
                sides.length(),
                Pace.flatSeam(tool.stitch(), sides.length(), sides.times()),
                Set.of(POCKET_HEM),
                "Turn the allowances of both sides of the key pocket under (or leave a finished edge as it is), lay it on the"
                        + " right side of the " + carrier.name() + " on the outline \"" + mark
                        + "\", raw lower edge on raw edge, and sew both sides down. Its lower edge is caught later, when the"
                        + " band is joined." + Words.pins(tool) + Words.limitAlong(tool, fabric),
                "A key slips in from above and does not slip out when the band is turned over.");
    }

    private Optional<Step> eyelets() {
        return with(Mark.Kind.EYELET, "eyelet")
                .map(piece -> Step.unsewn(
                        EYELETS,
                        "hand",
                        List.of(),
                        Pace.EYELETS,
                        Set.of(),
                        "Behind each mark \"eyelet\" of the " + piece.name()
                                + " lay a patch of firm, unstretchable cloth and"
                                + " set an eyelet, or sew a small buttonhole as long as the mark, through the outer layer"
                                + " only: two in all, one on each side of the centre front.",
                        "Neither hole tears or grows when the cloth round it is stretched."));
    }

    private Step elastic(Notion elastic) {
        Tool tool = kit.hem();
        double length = ROWS * elastic.width();
        return Step.sewn(
                ELASTIC,
                tool,
                Step.SUPERIMPOSED,
                List.of(),
                length,
                Pace.row(tool.stitch(), length, 1),
                Set.of(),
                "Cut the elastic, " + Words.mm(elastic.width()) + " wide, to " + Words.mm(elastic.cut())
                        + "; use one that stretches to twice its length. Lay its ends over each other by "
                        + Words.mm(elastic.ends()) + ", not twisted, and sew across the overlap twice."
                        + " Mark it in four quarters, the join being one.",
                "The ring measures " + Words.mm(elastic.cut() - elastic.ends())
                        + " round; stretched over the hips the join holds and the ring comes back.");
    }

    private Step top(SeamGroup seams) {
        Tool tool = kit.seam();
        return Step.sewn(
                TOP,
                tool,
                Step.SUPERIMPOSED,
                seams.joins(),
                seams.length(),
                Pace.ringSeam(tool.stitch(), seams.length(), seams.times()),
                Set.of(RingSteps.bandRings()),
                "Slip the ring of the facing over the ring of the waistband, right sides together, their seams and notches"
                        + " meeting, and sew " + Words.edges(seams.first()) + " together all round."
                        + Words.notches(pattern, seams.first()) + Words.sewLine(seams.first()) + Words.pins(tool)
                        + Words.limitAround(tool, fabric),
                Words.lengths(pattern, seams.first())
                        + " Turned right side out, the upper edge lies as one smooth curve.");
    }

    /** The row through both layers of a folded band that keeps elastic or cord at the fold. */
    private Optional<Step> row() {
        return with(Mark.Kind.PLACEMENT, "row below the").map(piece -> {
            Tool tool = kit.hem();
            String mark = piece.marks().stream()
                    .map(Mark::name)
                    .filter(n -> n.startsWith("row below the"))
                    .findFirst()
                    .orElseThrow();
            double length = 2 * piece.edge("lower edge").length();
            String elastic = notion("waist elastic").isPresent()
                    ? "With the elastic ring lying in the fold, quarters on quarters, stretch it to the band as you go and"
                            + " never sew into it; its join lies at the band's seam."
                    : "The channel above the row is for the cord.";
            return Step.sewn(
                    ROW,
                    tool,
                    Step.SUPERIMPOSED,
                    List.of(piece.name() + ": lower edge"),
                    length,
                    Pace.ringSeam(tool.stitch(), length, 1),
                    Set.of(RingSteps.bandFold(), ELASTIC, EYELETS),
                    "Sew once round through both layers of the folded band, on the line \"" + mark + "\". " + elastic
                            + pinsOut(tool) + Words.limitAround(tool, fabric),
                    "The row lies level all round and stretches over your hands without a snap.");
        });
    }

    private static String pinsOut(Tool tool) {
        return tool.byHand() ? "" : " Take pins out before they reach the needle.";
    }

    private Step casing(SeamGroup casing) {
        Tool tool = kit.hem();
        return Step.sewn(
                CASING,
                tool,
                Step.TURNED_HEM,
                casing.joins(),
                casing.length(),
                Pace.ringSeam(tool.stitch(), casing.length(), casing.times()),
                Set.of(LegSteps.SIDE, DARTS, LegSteps.FRONT, LegSteps.BACK, LegSteps.ROW, ELASTIC, EYELETS),
                "Lay the elastic ring inside the top, quarters on the front seam, the back seam and the sides, its join"
                        + " behind. Turn " + Words.allowance(casing.first())
                        + " down over it along the line \"fold the casing down along here\" and sew once round over the raw"
                        + " edge, on the line \"row that closes the casing\", stretching elastic and cloth alike and never"
                        + " sewing into the elastic. Then sew through casing and elastic, upright, at the two seams and at"
                        + " both sides: an elastic that is held does not roll." + pinsOut(tool)
                        + Words.limitAround(tool, fabric),
                "The turned layer lies flat, the folds are spread evenly, and the top still passes the hips.");
    }

    private Step cord(Notion cord) {
        return Step.unsewn(
                CORD,
                "hand",
                List.of(),
                Pace.CORD,
                Set.of(ROW, CASING),
                "Cut the cord to " + Words.mm(cord.cut())
                        + ", thread it through the channel from one eyelet to the other, and"
                        + " sew it fast at the centre back through all layers, so that it cannot be pulled out. Each end"
                        + " hangs out by " + Words.mm(cord.ends())
                        + " to tie; seal the ends, no knots or beads on them.",
                "Pulled at either end the cord does not move at the centre back. Worn for skating, the tied ends are tucked"
                        + " inside the band.");
    }
}
