package stretchwright.intake;

import java.util.Optional;
import java.util.function.Function;
import stretchwright.ground.Said;

/**
 * How the value of a key may be changed after wearing.
 *
 * @param key under which the change is written down, and its bounds
 * @param becomes what a choice turns it into, once; empty for a length, to which the change is added
 * @param hindered what speaks against it in a make
 */
public record Worn<T>(WearingKey key, Optional<T> becomes, Function<MakeFile, Hindrance> hindered) {
    /** What is wrong, and what to do instead; nothing where nothing is wrong. */
    public record Hindrance(Said wrong, Said right) {
        static final Hindrance NONE = new Hindrance(Said.NOTHING, Said.NOTHING);
    }

    static Worn<Double> by(WearingKey key) {
        return new Worn<>(key, Optional.empty(), m -> Hindrance.NONE);
    }

    static <T> Worn<T> once(WearingKey key, T becomes) {
        return new Worn<>(key, Optional.of(becomes), m -> Hindrance.NONE);
    }

    Worn<T> unless(Function<MakeFile, Hindrance> other) {
        return new Worn<>(key, becomes, other);
    }
}
