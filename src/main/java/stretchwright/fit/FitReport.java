package stretchwright.fit;

import java.util.List;
import java.util.Locale;
import stretchwright.pattern.Level;

/** What the fit check found: numbers first, then what they mean. Shares, not percent: 0.15 is 15 %. */
public record FitReport(List<LevelFit> levels, List<Opening> openings, List<Pose> poses, List<Verdict> verdicts) {
    public FitReport {
        levels = List.copyOf(levels);
        openings = List.copyOf(openings);
        poses = List.copyOf(poses);
        verdicts = List.copyOf(verdicts);
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
     * @param leg "left" or "right" where the legs differ, else empty
     * @param assumed whether the load curve was assumed and not read: then pressure is an indication only
     * @param beyondReadings whether the strain lies beyond the last reading: the curve is carried on straight there
     */
    public record LevelFit(
            Level.Name level,
            String leg,
            double girth,
            double width,
            double across,
            double along,
            double tension,
            double pressure,
            boolean assumed,
            boolean beyondReadings) {
        /** As said to people: "knee", or "left knee". */
        public String place() {
            return leg.isEmpty() ? level.word() : leg + " " + level.word();
        }
    }

    /**
     * Something that must pass through something.
     *
     * @param opening "waistband over hips", "hem over heel", "leg over calf"
     * @param relaxed girth of the opening at rest, mm
     * @param mustPass girth that must pass, mm
     * @param needed stretch needed, share
     * @param allowed stretch that cloth and seam allow, share
     */
    public record Opening(
            String opening, double relaxed, double mustPass, double needed, double allowed, boolean passes) {}

    /**
     * A pose, a region and a direction: the stretch needed there against what the cloth has.
     *
     * @param direction "across" or "along"
     * @param needed where the cloth slides freely over the skin, the lower bound; it decides
     * @param neededIfStuck where the cloth sticks to the skin, the upper bound
     */
    public record Pose(
            String pose,
            String region,
            String direction,
            double needed,
            double neededIfStuck,
            double available,
            boolean passes) {}

    /**
     * What the fit check says.
     *
     * @param about the level, opening or pose it is about
     * @param message what, where and why, with the numbers
     * @param remedy what would change it
     */
    public record Verdict(Severity severity, String about, String message, String remedy) {}

    public enum Severity {
        STOP,
        CAUTION,
        NOTE;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Whether the garment cannot work as asked. */
    public boolean stops() {
        return verdicts.stream().anyMatch(v -> v.severity() == Severity.STOP);
    }
}
