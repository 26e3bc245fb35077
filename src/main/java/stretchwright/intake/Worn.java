package stretchwright.intake;

import java.util.Optional;
import java.util.function.BiFunction;
import stretchwright.ground.Said;

/**
 * How the value of a key may be changed after wearing.
 *
 * @param key under which the change is written down, and its bounds
 * @param change what becomes of a make and of this key's value in it, where all changes together are so many mm (1 for a
 *     choice); where the make does not let it be, why
 */
public record Worn<T>(WearingKey key, BiFunction<MakeFile, Double, Outcome> change) {
    /** The changed make, or what is wrong and what to do instead. */
    public record Outcome(Optional<MakeFile> make, Said wrong, Said right) {
        static Outcome of(MakeFile make) {
            return new Outcome(Optional.of(make), Said.NOTHING, Said.NOTHING);
        }

        static Outcome hindered(Said wrong, Said right) {
            return new Outcome(Optional.empty(), wrong, right);
        }

        /** Beyond what can be drafted: then the measures are wrong. */
        static Outcome beyond(Said wrong) {
            return hindered(wrong, Tell.said("worn.measure"));
        }
    }
}
