package stretchwright.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stretchwright.body.Comfort;
import stretchwright.body.Measure;
import stretchwright.fabric.Likely;
import stretchwright.ground.Chance;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Stitch;
import stretchwright.pattern.WhichLeg;
import stretchwright.settle.SettleRange;

/**
 * What the fit check found: numbers first, then what they mean. Shares, not percent: 0.15 is 15 %.
 *
 * @param seams what each seam is asked in the worst pose
 * @param covers how the cloth grows and thins, region by region
 * @param lengths what washing does to the finished lengths
 * @param slips what a slip of the tape would do
 * @param course strain and pressure along the leg, from the top down, for the plots
 * @param settles where waist edge, back and hem come to lie; empty where that was not asked
 * @param asides notes beyond the three that stand among the verdicts: also good to know
 */
public record FitReport(
        List<LevelFit> levels,
        List<Opening> openings,
        List<Pose> poses,
        List<SeamFit> seams,
        List<Cover> covers,
        List<LengthFit> lengths,
        List<Slip> slips,
        List<CoursePoint> course,
        Optional<SettleRange> settles,
        List<Verdict> verdicts,
        List<Verdict> asides) {
    public FitReport {
        levels = List.copyOf(levels);
        openings = List.copyOf(openings);
        poses = List.copyOf(poses);
        seams = List.copyOf(seams);
        covers = List.copyOf(covers);
        lengths = List.copyOf(lengths);
        slips = List.copyOf(slips);
        course = List.copyOf(course);
        verdicts = List.copyOf(verdicts);
        asides = List.copyOf(asides);
    }

    /** Nothing aside. */
    public FitReport(
            List<LevelFit> levels,
            List<Opening> openings,
            List<Pose> poses,
            List<SeamFit> seams,
            List<Cover> covers,
            List<LengthFit> lengths,
            List<Slip> slips,
            List<CoursePoint> course,
            Optional<SettleRange> settles,
            List<Verdict> verdicts) {
        this(levels, openings, poses, seams, covers, lengths, slips, course, settles, verdicts, List.of());
    }

    /** Levels, openings and poses only. */
    public FitReport(List<LevelFit> levels, List<Opening> openings, List<Pose> poses, List<Verdict> verdicts) {
        this(
                levels,
                openings,
                poses,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                verdicts);
    }

    /** The same with what a slip of the tape would do, and the verdicts that then stand. */
    public FitReport with(List<Slip> other, List<Verdict> said) {
        return new FitReport(levels, openings, poses, seams, covers, lengths, other, course, settles, said, asides);
    }

    /** The same with the course along the leg. */
    public FitReport withCourse(List<CoursePoint> points) {
        return new FitReport(levels, openings, poses, seams, covers, lengths, slips, points, settles, verdicts, asides);
    }

    /** The same numbers with other verdicts. */
    public FitReport with(List<Verdict> other) {
        return new FitReport(levels, openings, poses, seams, covers, lengths, slips, course, settles, other, asides);
    }

    /** The same numbers with other verdicts, and what stands aside. */
    FitReport withAside(List<Verdict> said, List<Verdict> aside) {
        return new FitReport(levels, openings, poses, seams, covers, lengths, slips, course, settles, said, aside);
    }

    /** Verdicts and asides: all that was found. */
    public List<Verdict> all() {
        return Stream.concat(verdicts.stream(), asides.stream()).toList();
    }

    /**
     * Strain, tension and pressure standing, at one level.
     *
     * @param girth of the body or boot, mm (one leg, or the whole body above the crotch)
     * @param width flat width of the garment there, mm
     * @param across strain = girth / width - 1
     * @param along strain along the leg, standing
     * @param tension N/m across
     * @param pressure kPa, by Laplace's law for a cylinder
     * @param leg of which it is told
     * @param assumed whether the load curve was assumed and not read: then pressure is an indication only
     * @param beyondReadings whether the strain lies beyond the last reading: the curve is carried on straight there
     * @param likely strain and pressure of 8 in 10 such garments
     */
    public record LevelFit(
            Level.Name level,
            WhichLeg leg,
            double girth,
            double width,
            double across,
            double along,
            double tension,
            double pressure,
            boolean assumed,
            boolean beyondReadings,
            Likely likely) {
        /** As said to people: "knee", or "left knee". */
        public Part place() {
            return Terms.place(level, leg);
        }
    }

    /**
     * Something that must pass through something.
     *
     * @param relaxed girth of the opening at rest, mm
     * @param mustPass girth that must pass, mm
     * @param needed stretch needed, share
     * @param allowed stretch that cloth and seam allow, share
     */
    public record Opening(
            OpeningName opening, double relaxed, double mustPass, double needed, double allowed, boolean passes) {}

    /**
     * A pose, a region and a direction: the stretch needed there against what the cloth has.
     *
     * @param needed by the growth of the whole girth, or along where the cloth slides; it decides
     * @param neededIfStuck where the cloth sticks to the skin, by the skin's own growth at the place
     * @param derived whether the skin's growth is derived here and not published: never more than a caution
     * @param spread one standard deviation of what is needed
     */
    public record Pose(
            PoseName pose,
            Region region,
            Direction direction,
            double needed,
            double neededIfStuck,
            double available,
            boolean passes,
            boolean derived,
            double spread) {
        /** That more is needed than the cloth has. */
        public double chance() {
            return Chance.below(needed, available, spread);
        }

        /** Stretch that leaves nothing to be said. */
        public double enough() {
            return needed + Comfort.PLANNED_SPREADS * spread;
        }

        /** What seam and cloth see at the place itself: the skin's own growth across, along what sliding leaves. */
        public double local() {
            return direction == Direction.ACROSS ? neededIfStuck : needed;
        }

        /** What it is about: "knee across". */
        public Said place() {
            return Tell.said("pose.place", region.said(), direction.said());
        }
    }

    /**
     * A seam in the worst pose against what its stitch stands.
     *
     * @param seam as named in the pattern
     * @param standing strain along the seam, standing
     * @param pose the pose that asks most of it
     * @param needed strain along the seam in that pose
     * @param stands strain at which the stitch breaks
     * @param reinforcement what to sew besides; empty where nothing is needed
     */
    public record SeamFit(
            SeamName seam,
            double standing,
            PoseName pose,
            double needed,
            Stitch stitch,
            double stands,
            boolean holds,
            List<Reinforcement> reinforcement) {
        public SeamFit {
            reinforcement = List.copyOf(reinforcement);
        }
    }

    /**
     * What the verdicts become where one measure was taken longer or shorter by the usual slip.
     *
     * @param by mm, signed
     * @param changes what changes; empty where nothing does
     */
    public record Slip(Measure measure, double by, List<Said> changes) {
        public Slip {
            changes = List.copyOf(changes);
        }
    }

    /**
     * One height of the course along the leg.
     *
     * @param leg of which it is told
     * @param height above the bare foot's floor, mm
     * @param across strain across, standing
     * @param pressure kPa
     */
    public record CoursePoint(
            WhichLeg leg, double height, double girth, double width, double across, double pressure) {}

    /**
     * What the fit check says.
     *
     * @param subject the level, opening or pose it is about
     * @param message what, where and why, with the numbers
     * @param remedy what would change it
     * @param tried remedies that the program has tried, the best first
     * @param chance that it comes so; empty where it is no matter of chance
     */
    public record Verdict(
            Severity severity, Subject subject, Said message, Said remedy, List<Tried> tried, OptionalDouble chance) {
        public Verdict {
            tried = List.copyOf(tried);
        }

        /** Nothing tried yet. */
        public Verdict(Severity severity, Subject subject, Said message, Said remedy) {
            this(severity, subject, message, remedy, List.of(), OptionalDouble.empty());
        }

        /** About what no change of style, hold, cloth or stitch can turn. */
        public Verdict(Severity severity, Part about, Said message, Said remedy) {
            this(severity, Subject.of(about), message, remedy);
        }

        /** The same with what was tried, and the help that follows from it. */
        public Verdict with(Said help, List<Tried> attempts) {
            return new Verdict(severity, subject, message, help, attempts, chance);
        }

        /** The same, that comes so by a chance. */
        public Verdict by(double odds) {
            return new Verdict(severity, subject, message, remedy, tried, OptionalDouble.of(odds));
        }

        /** Whether the same is said about the same, whatever the numbers, the pose and the severity. */
        public boolean saysTheSame(Verdict other) {
            return kind() == other.kind() && place().equals(other.place()) && message.sameKey(other.message);
        }

        /** All of it in one line: "caution: knee: ...". */
        public Said line() {
            return Tell.said("verdict.line", severity.said(), about(), message.and(remedy));
        }

        /** What it is about, as said to people. */
        public Part about() {
            return subject.about();
        }

        public Subject.Kind kind() {
            return subject.kind();
        }

        /** What it is about without the pose, because another pose may become the hardest one. */
        public Part place() {
            return subject.place();
        }
    }

    /**
     * A change and what became of the verdict when the program made it.
     *
     * @param change what to do, with its amount: "a cuff 12 mm wider"
     * @param turns whether the verdict is gone and no worse one came in its place
     * @param after what the fit check says then
     */
    public record Tried(Said change, boolean turns, Said after) {}

    public enum Severity {
        STOP(Tell.said("severity.stop")),
        CAUTION(Tell.said("severity.caution")),
        NOTE(Tell.said("severity.note"));

        private final Said said;

        Severity(Said said) {
            this.said = said;
        }

        /** As written in the report. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public Said said() {
            return said;
        }
    }

    /** How many of each severity: "1 stop, 2 cautions". */
    public Part count() {
        return Tally.of(verdicts);
    }

    /** Whether the garment cannot work as asked. */
    public boolean stops() {
        return verdicts.stream().anyMatch(v -> v.severity() == Severity.STOP);
    }
}
