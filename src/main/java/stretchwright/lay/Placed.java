package stretchwright.lay;

import java.util.List;
import java.util.Set;
import stretchwright.pattern.PieceName;

/**
 * Where the pieces of a lay were put: all that has to be kept of it, for the rest follows from the pieces and the cloth.
 *
 * @param doubled as {@link Lay#doubled()}
 * @param byHand whether a person put them so: then it is taken though another lay is shorter
 */
public record Placed(Lay.Method method, double doubled, List<Spot> spots, boolean byHand) {
    public Placed {
        spots = List.copyOf(spots);
    }

    /**
     * One piece, as {@link Lay.Placement} says it.
     *
     * @param piece its name as the report writes it
     */
    public record Spot(
            String piece,
            int copy,
            double x,
            double y,
            double rotation,
            boolean mirrored,
            boolean unfolded,
            int layers) {
        /** Among the pieces of one lay: "cuff 2". */
        public String id() {
            return Placed.id(piece, copy);
        }

        public Spot at(double newX, double newY, double turned) {
            return new Spot(piece, copy, newX, newY, turned, mirrored, unfolded, layers);
        }
    }

    private static String id(String piece, int copy) {
        return piece + " " + copy;
    }

    /** "cuff 2". */
    public static String id(Lay.Placement p) {
        PieceName name = p.piece();
        return id(name.word(), p.copy());
    }

    public static Placed of(Lay lay) {
        return new Placed(
                lay.method(),
                lay.doubled(),
                lay.placements().stream()
                        .map(p -> new Spot(
                                p.piece().word(),
                                p.copy(),
                                p.x(),
                                p.y(),
                                p.rotation(),
                                p.mirrored(),
                                p.unfolded(),
                                p.layers()))
                        .toList(),
                false);
    }

    public Placed put(List<Spot> others) {
        return new Placed(method, doubled, others, true);
    }

    /** The same, put by whomever. */
    public Placed byHand(boolean hand) {
        return new Placed(method, doubled, spots, hand);
    }

    /** Names of those that are asked for and are not there. */
    public List<String> strangers(Set<String> ids) {
        return ids.stream()
                .filter(id -> spots.stream().noneMatch(s -> s.id().equals(id)))
                .sorted()
                .toList();
    }
}
