package stretchwright.fit;

import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.pattern.Level;

/**
 * What a verdict is about: what people are told, kind and level for the program.
 *
 * @param place opening, level, seam, or region with its direction: the same whatever the numbers
 * @param pose the one that asks most there; empty where none does
 * @param level where the kind means one
 */
public record Subject(Kind kind, Part place, Optional<PoseName> pose, Optional<Level.Name> level) {
    /** What is wrong, as far as a change of style, hold, cloth or stitch could turn it. */
    public enum Kind {
        BAND_OPENING,
        HEM_OPENING,
        LEG_OPENING,
        /** Standing, more stretch used than is good. */
        STRAIN,
        PRESSURE,
        /** The thigh is tighter than the calf. */
        RISING_PRESSURE,
        POSE_ACROSS,
        POSE_ALONG,
        /** The band is much shorter than the edge that it takes in. */
        TAKEN_IN,
        HIGH_BAND,
        /** The waist edge settles below its place, or its back slips in a deep bend. */
        BAND_SLIPS,
        /** The lower edge rises. */
        HEM_RISES,
        /** The hem would end in the blade. */
        LOW_HEM,
        SHOW_THROUGH,
        SHRINKAGE,
        RECOVERY,
        SEAM,
        /** The cloth stretches more along than across. */
        CLOTH_DIRECTION,
        /** Nothing that such a change could turn: measures, health, blades, cords. */
        NONE;

        /** A length of the wearer's own in a pose runs over several levels and means none. */
        private boolean allows(Optional<Level.Name> level) {
            return switch (this) {
                case STRAIN, PRESSURE, RISING_PRESSURE, POSE_ACROSS -> level.isPresent();
                case POSE_ALONG -> true;
                default -> level.isEmpty();
            };
        }
    }

    public Subject {
        if (!kind.allows(level)) {
            throw new IllegalArgumentException(kind + " with level " + level);
        }
    }

    /** Of no kind that a change could turn. */
    public static Subject of(Part place) {
        return of(Kind.NONE, place);
    }

    public static Subject of(Kind kind, Part place) {
        return new Subject(kind, place, Optional.empty(), Optional.empty());
    }

    /** @param place the left one's where the legs differ */
    static Subject at(Kind kind, Level.Name level, Part place) {
        return new Subject(kind, place, Optional.empty(), Optional.of(level));
    }

    public static Subject of(FitReport.Pose p) {
        Kind kind = p.direction() == Direction.ALONG ? Kind.POSE_ALONG : Kind.POSE_ACROSS;
        return new Subject(kind, p.place(), Optional.of(p.pose()), p.region().level());
    }

    /** As said to people: "knee", or "sit spin, knee across". */
    public Part about() {
        return pose.isPresent() ? Tell.said("about.in-pose", pose.get().said(), place) : place;
    }
}
