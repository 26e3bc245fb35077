package stretchwright.body;

/**
 * One measure of a body, mm.
 *
 * @param spread one standard deviation: of hand measuring where given, of the estimate where estimated
 */
public record Value(double mm, Origin origin, double spread) {
    public enum Origin {
        GIVEN,
        ESTIMATED
    }

    public Value {
        if (!(mm > 0 && Double.isFinite(mm) && spread >= 0)) {
            throw new IllegalArgumentException("a measure of " + mm + " mm with spread " + spread + " cannot be");
        }
    }
}
