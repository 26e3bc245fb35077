package stretchwright.sewing;

import java.util.List;
import java.util.Optional;
import stretchwright.pattern.Stitch;

/** What often goes wrong at a step, and how to put it right. Common practice, no source. */
final class Mishaps {
    private static final List<Mishap> ALL = List.of(
            new Mishap(
                    "test ",
                    "A single layer of scrap is tested, or only one direction.",
                    "Cut another scrap with as many layers as the seam has, and test along and across."),
            new Mishap(LegSteps.SIDE, "A front leg is sewn to the other leg's back: the notches then do not meet.", ""),
            new Mishap(
                    LegSteps.FRONT, "Front is sewn to back: the two edges differ and their notches do not meet.", ""),
            new Mishap(LegSteps.BACK, "The allowance comes to lie outside, for one leg lay inside out.", ""),
            new Mishap(
                    LegSteps.ROW,
                    "The cloth is pulled and the row tunnels, or the allowance flips over under the foot.",
                    "Pull the looper thread out from the end of the row; press the seam flat and sew again, both hands flat."),
            new Mishap(
                    LegSteps.INSEAMS,
                    "The under layer creeps and a leg twists; the crotch seams miss each other.",
                    "Open 150 mm to each side of the crotch, clip the crossing first, and sew outward from it."),
            new Mishap(
                    LegSteps.BAR,
                    "The thick crossing makes the machine skip.",
                    "Leave what was sewn, turn the wheel by hand over the crossing and sew the row once more."),
            new Mishap("waistband ring", "The band is twisted before its ends meet.", ""),
            new Mishap("cuff ring", "A cuff is twisted before its ends meet.", ""),
            new Mishap(
                    "fold and mark",
                    "The clips are set by eye, and one quarter is longer.",
                    "Fold the ring seam on opposite clip; the two halves must lie on each other."),
            new Mishap(
                    "turn and mark",
                    "Facing and band are taken for each other.",
                    "Turn it back: the facing is the layer that will lie on the skin."),
            new Mishap(
                    "mark the ",
                    "The marks are measured from the cut edge of one seam allowance.",
                    "Measure from the seam lines, with both allowances to the same side."),
            new Mishap(
                    "join the waistband",
                    "The garment is stretched instead of the band, and the top waves.",
                    undoneRing("band")),
            new Mishap(
                    "join the cuff",
                    "The seam of the cuff lies at the back of the heel instead of at the inseam.",
                    undoneRing("cuff")),
            new Mishap(
                    FinishSteps.HEM,
                    "The hem is stretched as it is sewn, and stands out in waves.",
                    "Steam is not the cure: unpick the row from its end, raise the feed or lift your hands, sew again."),
            new Mishap(PartSteps.PANELS, "A panel is turned end for end: its notches do not meet.", ""),
            new Mishap(
                    PartSteps.GUSSET,
                    "The stitching runs beyond the seam line at a tip and makes a pucker.",
                    "Unpick 20 mm at the tip, to the crossing of the seam lines, and stop there."),
            new Mishap(PartSteps.PHONE, "The second layer of the leg is caught under the pocket.", ""),
            new Mishap(PartSteps.HIP, "Both pockets are sewn to the same side of the body.", ""),
            new Mishap(PartSteps.KNEE, "Both pockets are sewn to the same leg.", ""),
            new Mishap(PartSteps.TAILBONE, "The sides are closed up to the top, and the pad does not go in.", ""),
            new Mishap(
                    TopSteps.DARTS,
                    "The seam ends before the tip and leaves a peak.",
                    "Sew once more from 30 mm before the tip, the last stitches on the fold itself."),
            new Mishap(TopSteps.POCKET_HEM, "The edge is stretched and gapes.", ""),
            new Mishap(TopSteps.POCKET, "The pocket is sewn on upside down.", ""),
            new Mishap(
                    TopSteps.EYELETS,
                    "Both layers of the band are pierced.",
                    "Lay a patch under the second layer and close that hole by hand."),
            new Mishap(TopSteps.ELASTIC, "The elastic is twisted in its ring.", ""),
            new Mishap(TopSteps.TOP, "The two rings lie inside out: allowances would end up outside.", ""),
            new Mishap(TopSteps.ROW, "The needle pierces the elastic, which then cannot move.", ""),
            new Mishap(TopSteps.CASING, "The fullness is pushed ahead and gathers before the last seam.", ""),
            new Mishap(
                    TopSteps.CORD,
                    "The cord is not sewn fast at the back.",
                    "Lay the band flat, set the middle, sew it fast."),
            new Mishap(LowerSteps.COVERS, "Two halves of the same side are joined: both face the same way.", ""),
            new Mishap(LowerSteps.COVER_JOIN, "A cover is joined with its toe to the back.", ""),
            new Mishap(
                    LowerSteps.STRAP_EDGES,
                    "The tube twists as it is turned.",
                    "Turn it back, press it flat, turn again."),
            new Mishap(LowerSteps.STRAP_ENDS, "A strap is twisted between its ends.", ""),
            new Mishap(
                    FinishSteps.PRESS,
                    "The iron is pushed and stretches the seams, or is too hot and makes the cloth shine.",
                    "Stop at the first shine: it does not come out. Let stretched cloth cool flat and wash it."),
            new Mishap(
                    FinishSteps.TRY_ON,
                    "A seam snaps in the squat.",
                    "Mark the place, note the stitch and its settings, sew a test seam with a shorter stitch or a looser"
                            + " needle thread, then sew over the place."));

    private Mishaps() {}

    /** How a seam is taken out again. */
    private static String unpicked(Stitch stitch) {
        return switch (stitch) {
            case OVERLOCK_3, OVERLOCK_4 ->
                "Cut the needle threads on top every 20 mm and pull them out; the looper threads then fall away. Sew again"
                        + " on the same line.";
            case COVERSTITCH, CHAINSTITCH ->
                "From the end of the row pull the looper thread underneath; then draw the needle threads out. Sew again.";
            case LOCKSTITCH, ZIGZAG, BACKSTITCH_BY_HAND ->
                "Cut every third stitch on one side, pull the thread from the other, never the cloth; then sew again.";
        };
    }

    private static String undoneRing(String ring) {
        return "Unpick the quarter that waves, no more; clip again every 50 mm and stretch only the " + ring + ".";
    }

    /**
     * @param step beginning of the step's name
     * @param undo empty where the seam is unpicked and sewn again
     */
    record Mishap(String step, String mistake, String undo) {}

    static Optional<Mishap> at(Step step) {
        return ALL.stream()
                .filter(m -> step.name().startsWith(m.step))
                .findFirst()
                .map(m -> m.undo.isEmpty() ? new Mishap(m.step, m.mistake, unpicked(step)) : m);
    }

    private static String unpicked(Step step) {
        return step.tool().map(t -> unpicked(t.stitch())).orElse("");
    }
}
