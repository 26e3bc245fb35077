package stretchwright.lay.nest;

import java.util.List;

/**
 * What parts are laid on: a strip of the cloth, open towards larger y, with places on it that must stay free.
 *
 * @param width in units
 * @param taken flaws, holes and what lies outside a remnant, each where it lies
 */
public record Strip(long width, List<Shape> taken) {
    public Strip {
        taken = List.copyOf(taken);
    }

    /** Nothing taken. */
    static Strip plain(long width) {
        return new Strip(width, List.of());
    }
}
