package stretchwright.draft;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;

/** Where the notches of a long seam stand, so that its two edges can be laid together from one to the next. */
final class Walk {
    /** From one notch to the next, and to the seam's ends, at most, mm: what two hands hold together. */
    static final double MOST_GAP = 200;

    /** A notch nearer to a seam's end than this, mm, would disappear in the hem (common practice, no source). */
    static final double ROOM = 15;

    /** Two notches nearer to each other than this, mm, are taken for one (common practice, no source). */
    static final double APART = 25;

    private Walk() {}

    /** A notch, its distance from the seam's upper end, mm. */
    record Stop(NotchName name, double down) {}

    /** Whether a place keeps clear of others. */
    static boolean isClear(double down, Collection<Stop> others, double apart) {
        return others.stream().allMatch(s -> Math.abs(s.down - down) >= apart);
    }

    /** The same stops from the top down, and more at equal distances in every gap that is too long. */
    static List<Stop> filled(Collection<Stop> stops, double length) {
        List<Stop> sorted =
                stops.stream().sorted(Comparator.comparingDouble(Stop::down)).toList();
        List<Stop> out = new ArrayList<>();
        NotchName above = null;
        double from = 0;
        for (Stop stop : sorted) {
            part(above, from, stop.down, out);
            out.add(stop);
            above = stop.name;
            from = stop.down;
        }
        part(above, from, length, out);
        return out;
    }

    private static void part(@Nullable NotchName above, double from, double to, List<Stop> out) {
        double gap = to - from;
        if (above == null && gap > 2 * MOST_GAP) {
            out.add(new Stop(NotchName.BELOW_WAIST, from + gap / 3));
            out.add(new Stop(NotchName.ABOVE_HIP, from + 2 * gap / 3));
        } else if (gap > MOST_GAP) {
            out.add(new Stop(below(above), from + gap / 2));
        }
    }

    /** What a notch is called that stands below another one, or between top edge and hip. */
    private static NotchName below(@Nullable NotchName above) {
        if (above == null) {
            return NotchName.ABOVE_HIP;
        }
        return switch (above) {
            case HIP -> NotchName.BELOW_HIP;
            case FRONT_RISE, BACK_RISE -> NotchName.ABOVE_CROTCH;
            case CROTCH -> NotchName.BELOW_CROTCH;
            case BELOW_CROTCH -> NotchName.ABOVE_MID_THIGH;
            case MID_THIGH -> NotchName.BELOW_MID_THIGH;
            case KNEE -> NotchName.ABOVE_CALF;
            case BOOT_TOP -> NotchName.BELOW_BOOT_TOP;
            case ANKLE -> NotchName.BELOW_ANKLE;
            default -> NotchName.BELOW_CALF;
        };
    }

    /** How far from the crotch point its notches stand: as wanted, but below those at the hip line where there is room. */
    static double besideHip(double wanted, double... hips) {
        double lowest = DoubleStream.of(hips).min().orElse(wanted);
        return lowest - APART < ROOM ? wanted : Math.min(wanted, lowest - APART);
    }

    /**
     * The notches of a front or back rise.
     *
     * @param hip of the hip line, from the edge's lower end, mm
     * @param crotch of the crotch notch, the same
     */
    static List<Notch> rise(Edge edge, OptionalDouble hip, double crotch) {
        boolean front = edge.name() == EdgeName.FRONT_CROTCH;
        double length = edge.length();
        List<Stop> stops = new ArrayList<>();
        stops.add(new Stop(front ? NotchName.FRONT_RISE : NotchName.BACK_RISE, length - crotch));
        hip.ifPresent(up -> {
            if (up > ROOM && isClear(length - up, stops, ROOM)) {
                stops.add(new Stop(NotchName.HIP, length - up));
            }
        });
        return filled(stops, length).stream()
                .map(s -> Outline.notch(
                        s.name(),
                        edge,
                        front ? s.down() : length - s.down(),
                        front ? Notch.Mark.SINGLE : Notch.Mark.DOUBLE))
                .toList();
    }

    /** Notches of a cut side of a leg: at hip and crotch line, and at the heights of the front inseam's notches. */
    static List<Notch> besideInseam(Piece leg, Edge edge) {
        boolean up = edge.line().end().y() > edge.line().start().y();
        double length = edge.length();
        List<Stop> stops = new ArrayList<>();
        for (Notch n : leg.notches()) {
            if (n.edge() == EdgeName.FRONT_INSEAM) {
                stop(n.name(), n.at().y(), edge, stops);
            }
        }
        for (Mark mark : leg.marks()) {
            double height = mark.line().start().y();
            switch (mark.name()) {
                case HIP -> stop(NotchName.HIP, height, edge, stops);
                case CROTCH -> stop(NotchName.CROTCH, height, edge, stops);
                default -> {}
            }
        }
        return filled(stops, length).stream()
                .map(s -> Outline.notch(s.name, edge, up ? length - s.down : s.down, Notch.Mark.SINGLE))
                .toList();
    }

    private static void stop(NotchName name, double height, Edge edge, List<Stop> out) {
        boolean up = edge.line().end().y() > edge.line().start().y();
        double along = edge.line().alongAtHeight(height);
        double down = up ? edge.length() - along : along;
        if (along > ROOM && along < edge.length() - ROOM && isClear(down, out, ROOM)) {
            out.add(new Stop(name, down));
        }
    }
}
