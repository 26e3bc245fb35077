package stretchwright.web.draft;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stretchwright.ground.Finding;
import stretchwright.ground.Voice;
import stretchwright.web.form.Form;

/**
 * A change that cannot be, with what is the matter: everything else stands as before it.
 *
 * @param sent what was asked for
 */
record Refused(Form sent, List<Finding> findings) {
    /** Nothing was. */
    static final Refused NOTHING = new Refused(Form.empty(), List.of());

    Refused {
        findings = List.copyOf(findings);
    }

    private boolean isOf(Handle handle) {
        return findings.stream().anyMatch(f -> f.key().equals(handle.key()))
                && sent.typed().containsKey(handle.key());
    }

    /** What was typed for a handle, to be mended there. */
    Optional<String> typed(Handle handle) {
        return isOf(handle) ? Optional.of(sent.value(handle.key())) : Optional.empty();
    }

    /** What is the matter with it; empty for nothing. */
    String finding(Handle handle, Voice voice) {
        return isOf(handle)
                ? words(f -> f.key().equals(handle.key()), voice).stream().collect(Collectors.joining(" "))
                : "";
    }

    /** What is told on top, since it belongs to no field that was typed in. */
    List<String> others(Voice voice) {
        return words(f -> Handle.of(f.key()).filter(this::isOf).isEmpty(), voice);
    }

    private List<String> words(Predicate<Finding> which, Voice voice) {
        return findings.stream().filter(which).map(f -> f.told(voice)).toList();
    }
}
