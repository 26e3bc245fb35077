package stretchwright.make;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.BadInput;

/**
 * What one stage of a session gives: computed when it is first asked for, once, whoever asks; what was wrong with the input
 * is told to everybody who asks.
 */
final class Stage<T> {
    private final List<Object> inputs;
    private @Nullable Supplier<T> rule;
    private @Nullable T result;
    private @Nullable BadInput wrong;

    /** @param inputs all that the rule reads: where they are equal, its result is */
    Stage(List<Object> inputs, Supplier<T> rule) {
        this.inputs = inputs;
        this.rule = rule;
    }

    List<Object> inputs() {
        return inputs;
    }

    /** The same stage of an earlier session, where it was given the same. */
    Stage<T> unless(Stage<T> earlier) {
        return earlier.inputs.equals(inputs) ? earlier : this;
    }

    synchronized T get() {
        if (wrong != null) {
            throw wrong;
        }
        if (rule != null) {
            try {
                result = rule.get();
            } catch (BadInput e) {
                wrong = e;
                throw e;
            } finally {
                if (result != null || wrong != null) {
                    rule = null; // it holds its session, and that the ones before
                }
            }
        }
        return java.util.Objects.requireNonNull(result);
    }
}
