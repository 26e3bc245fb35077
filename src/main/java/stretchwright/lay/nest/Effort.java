package stretchwright.lay.nest;

/**
 * How long a search may take, in rounds of work: to explore with larger steps, then to compress with small ones.
 *
 * <p>A round is 12 million numbers read by each worker, on every machine; the time it takes differs.
 */
public record Effort(int explore, int compress) {
    public Effort {
        if (explore < 0 || compress < 0) {
            throw new IllegalArgumentException("rounds cannot be fewer than none: " + explore + ", " + compress);
        }
    }

    /** No search: the first layout is taken. */
    public static final Effort NONE = new Effort(0, 0);

    /** As long as the clock allows. */
    public static final Effort UNLIMITED = new Effort(Integer.MAX_VALUE / 2, Integer.MAX_VALUE / 2);
}
