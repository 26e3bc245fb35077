package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Opening;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.SeamFit;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Stitch;

/**
 * What each seam is asked along itself, standing and in the worst case, against what its stitch stands. Along the leg the
 * strain of the region; the crotch seam by its own length against the body's, then the seat's growth; rings what they lie
 * on and what must pass. Maths: docs/maths/fit.md, seams.
 */
final class Seams {
    /** Thread in a straight lockstitch per length of seam, both threads together (trade-values section 4.1). */
    static final double LOCKSTITCH_THREAD = 2.5;

    /** Share by which sewing thread stretches before it breaks (W13). */
    static final double THREAD_STRETCH = 0.18;

    private final Worn worn;
    private final FitReport numbers;

    private Seams(Worn worn, FitReport numbers) {
        this.worn = worn;
        this.numbers = numbers;
    }

    private record Asked(double standing, PoseName pose, double needed) {
        static final Asked NOTHING = standing(0);

        static Asked standing(double strain) {
            return new Asked(strain, PoseName.STANDING, strain);
        }
    }

    static List<SeamFit> of(Worn worn, FitReport numbers) {
        Seams seams = new Seams(worn, numbers);
        List<SeamFit> out = new ArrayList<>();
        for (Seam seam : worn.pattern().seams()) {
            Asked asked = seams.asked(seam);
            Stitch stitch = seams.stitch(seam.role());
            double stands = stands(stitch);
            out.add(new SeamFit(
                    seam.name(),
                    asked.standing,
                    asked.pose,
                    asked.needed,
                    stitch,
                    stands,
                    asked.needed <= stands,
                    Reinforcement.of(seam.role(), asked.needed, stands)));
        }
        return out;
    }

    /**
     * The most that a seam can stretch before its thread breaks: what lies in it, drawn straight, and the thread's own
     * stretch. W13: 2.5 per length in two threads, 18 %: 47.5 %. What is sewn breaks earlier, as nothing draws straight.
     *
     * @param threadPerSeam length of thread in a length of seam, all threads together
     */
    static double ceiling(double threadPerSeam, int threads, double threadStretch) {
        return threadPerSeam / threads * (1 + threadStretch) - 1;
    }

    private static double stands(Stitch stitch) {
        return stitch == Stitch.LOCKSTITCH
                ? Math.min(stitch.extensibility(), ceiling(LOCKSTITCH_THREAD, 2, THREAD_STRETCH))
                : stitch.extensibility();
    }

    private Stitch stitch(Seam.Role role) {
        return switch (role) {
            case HEM, CASING, KEY_POCKET_HEM, POCKET, POCKET_OPENING -> Machine.forHem(worn.machines());
            default -> Machine.forSeam(worn.machines());
        };
    }

    private Asked asked(Seam seam) {
        return switch (seam.role()) {
            case INSEAM, SIDE_SEAM, PANEL, STRAP_EDGES -> downTheLeg();
            case FRONT_RISE, BACK_RISE, GUSSET -> crotch();
            case DART -> inPose(along(Level.Name.HIP), Region.SEAT, Direction.ALONG);
            case WAISTBAND_JOIN, WAISTBAND_TOP, CASING, KEY_POCKET_HEM ->
                ring(across(Level.Name.WAIST), OpeningName.WAISTBAND_OVER_HIPS, PoseName.PULLED_OVER_THE_HIPS);
            case CUFF_JOIN, HEM ->
                ring(across(Level.Name.HEM), OpeningName.HEM_OVER_HEEL, PoseName.PULLED_OVER_THE_HEEL);
            case COVER_JOIN -> cover(seam);
            case POCKET, POCKET_OPENING -> pocket(seam);
            case WAISTBAND_ENDS, KEY_POCKET, CUFF_ENDS, COVER_SEAM, STRAP_ENDS -> Asked.NOTHING;
        };
    }

    private Asked downTheLeg() {
        boolean knee = numbers.levels().stream().anyMatch(l -> l.level() == Level.Name.KNEE);
        return knee
                ? inPose(along(Level.Name.KNEE), Region.KNEE, Direction.ALONG)
                : inPose(along(Level.Name.CROTCH), Region.SEAT, Direction.ALONG);
    }

    /** What lies on the leg is drawn with it, in the direction that is drawn most. */
    private Asked pocket(Seam seam) {
        boolean knee = seam.sides().get(0).piece().is(PieceKind.KNEE_PAD_POCKET);
        Level.Name level = knee ? Level.Name.KNEE : Level.Name.HIP;
        Region region = knee ? Region.KNEE : Region.SEAT;
        Asked across = inPose(across(level), region, Direction.ACROSS);
        Asked along = inPose(along(level), region, Direction.ALONG);
        return across.needed > along.needed ? across : along;
    }

    /** Standing the body's crotch length over the seam's; then the seat grows under it, front and back being one seam. */
    private Asked crotch() {
        double standing = crotchStanding();
        double hip = 1 + along(Level.Name.HIP);
        return PoseJudge.worst(numbers.poses(), Region.SEAT, Direction.ALONG)
                .map(p -> new Asked(standing, p.pose(), Strain.then(standing, (1 + p.needed()) / hip - 1)))
                .orElse(Asked.standing(standing));
    }

    /**
     * With a gusset part of the way lies in it, and an estimated length may have given way: there the drafted reduction stands
     * for the whole.
     */
    private double crotchStanding() {
        double sewn = worn.pattern().seams().stream()
                .filter(s -> s.role() == Seam.Role.FRONT_RISE || s.role() == Seam.Role.BACK_RISE)
                .mapToDouble(Seam::length)
                .sum();
        if (worn.pattern().seam(Seam.Role.GUSSET).isPresent()
                || !(sewn > 0)
                || !worn.body().isGiven(Measure.TOTAL_CROTCH_LENGTH)) {
            return 1 / (1 - worn.pattern().reductions().crotch()) - 1;
        }
        double body = worn.body().mm(Measure.TOTAL_CROTCH_LENGTH)
                - 2 * worn.style().dropBelowWaist()
                + worn.style().top().frontRaise()
                + worn.style().top().backRaise()
                + worn.pattern().shift(Shift.FRONT_WAIST)
                + worn.pattern().shift(Shift.BACK_WAIST);
        return Strain.of(sewn, body);
    }

    private Asked inPose(double standing, Region region, Direction direction) {
        return PoseJudge.worst(numbers.poses(), region, direction)
                .filter(p -> p.local() > standing)
                .map((Pose p) -> new Asked(standing, p.pose(), p.local()))
                .orElse(Asked.standing(standing));
    }

    private Asked ring(double standing, OpeningName opening, PoseName how) {
        double needed = numbers.openings().stream()
                .filter(o -> o.opening() == opening)
                .mapToDouble(Opening::needed)
                .max()
                .orElse(standing);
        return needed > standing ? new Asked(standing, how, needed) : Asked.standing(standing);
    }

    /** Where the cover hangs on the leg: round the boot's top, and over its heel where the leg is put on first. */
    private Asked cover(Seam seam) {
        double heel = numbers.openings().stream()
                .filter(o -> o.opening() == OpeningName.HEM_OVER_HEEL)
                .mapToDouble(Opening::mustPass)
                .max()
                .orElse(0);
        double standing = across(Level.Name.BOOT_TOP);
        double needed = Strain.of(seam.sides().get(0).length(), heel);
        return needed > standing
                ? new Asked(standing, PoseName.PULLED_OVER_THE_HEEL, needed)
                : Asked.standing(standing);
    }

    private double across(Level.Name name) {
        return numbers.levels().stream()
                .filter(l -> l.level() == name)
                .mapToDouble(LevelFit::across)
                .max()
                .orElse(0);
    }

    private double along(Level.Name name) {
        return numbers.levels().stream()
                .filter(l -> l.level() == name)
                .mapToDouble(LevelFit::along)
                .max()
                .orElse(0);
    }
}
