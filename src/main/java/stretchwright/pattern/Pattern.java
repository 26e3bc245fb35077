package stretchwright.pattern;

import java.util.List;
import java.util.Optional;

/**
 * The pieces, how they are sewn together, the levels at which they are checked, and the reductions they carry.
 *
 * @param pieces in the order in which people speak of them: legs, waistband, cuff
 * @param levels from the top down
 * @param reductions what was taken off the body's measures
 */
public record Pattern(List<Piece> pieces, List<Seam> seams, List<Level> levels, Reductions reductions) {

    /**
     * Shares taken off the body's lengths: flat = body x (1 - share).
     *
     * @param across off girths, before shaping evens it out level by level
     * @param along off leg lengths
     * @param crotch off the crotch seam
     * @param waistband off the waist girth for the band
     * @param hem off the girth at the hem
     */
    public record Reductions(double across, double along, double crotch, double waistband, double hem) {}

    public Pattern {
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        levels = List.copyOf(levels);
    }

    public Piece piece(String name) {
        return pieces.stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no piece " + name));
    }

    public Optional<Level> level(Level.Name name) {
        return levels.stream().filter(l -> l.name() == name).findFirst();
    }

    public Optional<Seam> seam(Seam.Role role) {
        return seams.stream().filter(s -> s.role() == role).findFirst();
    }
}
