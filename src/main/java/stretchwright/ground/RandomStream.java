package stretchwright.ground;

/**
 * A seeded stream of random numbers (SplitMix64, Steele, Lea and Flood 2014): the same seed and name give the same
 * stream on every machine, and a change in one consumer does not disturb another.
 */
public final class RandomStream {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private long state;

    public RandomStream(long seed) {
        this.state = seed;
    }

    /** A stream of its own for a named consumer of the same seed. */
    public static RandomStream of(long seed, String consumer) {
        long mixed = seed;
        for (int i = 0; i < consumer.length(); i++) {
            mixed = mix(mixed + GOLDEN + consumer.charAt(i));
        }
        return new RandomStream(mixed);
    }

    public long nextLong() {
        state += GOLDEN;
        return mix(state);
    }

    /** Evenly spread in [0, 1). */
    public double nextDouble() {
        return (nextLong() >>> 11) * 0x1.0p-53;
    }

    /** Evenly spread in [low, high). */
    public double between(double low, double high) {
        return low + (high - low) * nextDouble();
    }

    /** A whole number in [0, bound). */
    public int below(int bound) {
        if (bound <= 0) {
            throw new IllegalArgumentException("bound " + bound + " must be positive");
        }
        return (int) Math.floor(nextDouble() * bound);
    }

    /** Normally spread with mean 0 and spread 1 (Box and Muller 1958). */
    public double nextGaussian() {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - nextDouble()));
        return radius * StrictMath.cos(2 * StrictMath.PI * nextDouble());
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
