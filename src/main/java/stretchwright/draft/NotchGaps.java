package stretchwright.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;

/**
 * Whether the two edges of every long seam can be walked together: notches of one name as far from the seam's lower end on
 * both, and no stretch without one longer than {@link Walk#MOST_GAP}. In: a pattern. Out: what does not hold.
 */
public final class NotchGaps {
    private static final double SLACK = 0.5;

    private static final Set<Seam.Role> LONG =
            Set.of(Seam.Role.INSEAM, Seam.Role.FRONT_RISE, Seam.Role.BACK_RISE, Seam.Role.SIDE_SEAM, Seam.Role.PANEL);

    private NotchGaps() {}

    /** The longest stretch of any long seam from one pair of notches to the next, or to the seam's end, mm. */
    public static double largest(Pattern pattern) {
        return pattern.seams().stream()
                .filter(NotchGaps::isLong)
                .mapToDouble(s -> largest(pattern, s))
                .max()
                .orElse(0);
    }

    static List<DraftCheck.Broken> broken(Pattern pattern) {
        List<DraftCheck.Broken> out = new ArrayList<>();
        pattern.seams().stream().filter(NotchGaps::isLong).forEach(seam -> {
            pairs(pattern, seam, out);
            double gap = largest(pattern, seam);
            if (gap > Walk.MOST_GAP + SLACK) {
                Said name = Tell.said("about.seam", seam.name().said());
                out.add(new DraftCheck.Broken(name, Tell.said("check.notch-gap", name, Part.millimetres(gap, 1))));
            }
        });
        return out;
    }

    private static boolean isLong(Seam seam) {
        return LONG.contains(seam.role()) && seam.sides().size() == 2;
    }

    /** Where one side is eased in over the knee, a pair inside that zone is apart by a part of the ease. */
    private static void pairs(Pattern pattern, Seam seam, List<DraftCheck.Broken> out) {
        Map<NotchName, Double> one = fromLow(pattern, seam.sides().get(0));
        Map<NotchName, Double> other = fromLow(pattern, seam.sides().get(1));
        one.forEach((name, from) -> {
            if (other.containsKey(name)) {
                double apart = other.get(name) - from;
                if (apart < Math.min(0, seam.ease()) - SLACK || apart > Math.max(0, seam.ease()) + SLACK) {
                    out.add(new DraftCheck.Broken(
                            Tell.said("about.notches", name.said()),
                            Tell.said("check.notches", name.said(), Part.millimetres(apart, 2))));
                }
            }
        });
    }

    private static double largest(Pattern pattern, Seam seam) {
        Map<NotchName, Double> one = fromLow(pattern, seam.sides().get(0));
        Map<NotchName, Double> other = fromLow(pattern, seam.sides().get(1));
        one.keySet().retainAll(other.keySet());
        other.keySet().retainAll(one.keySet());
        return Math.max(
                largest(one, seam.sides().get(0).length()),
                largest(other, seam.sides().get(1).length()));
    }

    private static double largest(Map<NotchName, Double> places, double length) {
        List<Double> stops = new ArrayList<>(places.values().stream().sorted().toList());
        stops.add(length);
        double from = 0;
        double most = 0;
        for (double stop : stops) {
            most = Math.max(most, stop - from);
            from = stop;
        }
        return most;
    }

    /** Distances from the lower end of the edge along it, mm. */
    private static Map<NotchName, Double> fromLow(Pattern pattern, Seam.Side side) {
        Piece piece = pattern.piece(side.piece());
        EdgeName edge = side.edge();
        double length = piece.edge(edge).length();
        boolean up = piece.edge(edge).line().end().y()
                > piece.edge(edge).line().start().y();
        Map<NotchName, Double> out = new EnumMap<>(NotchName.class);
        for (Notch n : piece.notches()) {
            if (n.edge() == edge) {
                out.put(n.name(), up ? n.along() : length - n.along());
            }
        }
        return out;
    }
}
