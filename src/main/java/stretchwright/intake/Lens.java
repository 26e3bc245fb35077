package stretchwright.intake;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Where the value of a key lives in a make: how it is read there, and how another takes its place.
 *
 * @param get empty where the make has none
 * @param set empty where it follows from other things and cannot be set alone
 */
public record Lens<T>(Function<MakeFile, Optional<T>> get, Optional<BiFunction<MakeFile, T, MakeFile>> set) {
    static <T> Lens<T> reading(Function<MakeFile, Optional<T>> get) {
        return new Lens<>(get, Optional.empty());
    }

    static <T> Lens<T> of(Function<MakeFile, Optional<T>> get, BiFunction<MakeFile, T, MakeFile> set) {
        return new Lens<>(get, Optional.of(set));
    }

    /** Of a key that no record has a place for: its value stays with the answers. */
    static <T> Lens<T> inAnswers(String path) {
        return of(
                make -> make.answers().at(path),
                (make, value) -> make.with(make.answers().with(path, value)));
    }
}
