package stretchwright.intake;

import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * Whether makes that are laid on one roll must say the same under a key.
 *
 * @param about what it is about; empty where they may differ
 * @param whereTold only where both say it: what is left out, or assumed, is no other cloth; otherwise what is left out counts
 *     as its usual value
 * @param alike whether two values are the same as far as they are told
 */
public record Roll<T>(Optional<About> about, boolean whereTold, BiPredicate<T, T> alike) {
    /** One roll is one cloth, laid in one way. */
    public enum About {
        CLOTH,
        LAY
    }

    static <T> Roll<T> any() {
        return new Roll<>(Optional.empty(), true, (a, b) -> true);
    }

    static <T> Roll<T> same(About about) {
        return new Roll<>(Optional.of(about), false, Object::equals);
    }

    static <T> Roll<T> whereTold(BiPredicate<T, T> alike) {
        return new Roll<>(Optional.of(About.CLOTH), true, alike);
    }

    /** Numbers that may differ by as much as they are told to. */
    static Roll<Double> within(double most) {
        return whereTold((a, b) -> Math.abs(a - b) <= most);
    }
}
