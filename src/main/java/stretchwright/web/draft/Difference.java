package stretchwright.web.draft;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.Key;
import stretchwright.intake.Table;
import stretchwright.web.form.Form;

/** What one text of a make says otherwise than another, in a few words. */
final class Difference {
    private Difference() {}

    /** "1.5 cm longer"; of several the first, and how many more. */
    static Said of(String before, String after) {
        Form was = Form.of(before);
        Form is = Form.of(after);
        Set<String> keys = new LinkedHashSet<>(is.typed().keySet());
        keys.addAll(was.typed().keySet());
        keys.removeIf(k -> was.typed()
                .getOrDefault(k, java.util.List.of())
                .equals(is.typed().getOrDefault(k, java.util.List.of())));
        if (keys.isEmpty()) {
            return Tell.said("difference.none");
        }
        Optional<Addition> added = Arrays.stream(Addition.values())
                .filter(a -> a.isIn(was) != a.isIn(is))
                .findFirst();
        if (added.isPresent()) {
            keys.removeIf(added.get()::owns);
            Said told = added.get().changed(is);
            return keys.isEmpty() ? told : Tell.said("difference.more", told, Part.count(keys.size()));
        }
        Said first = told(keys.iterator().next(), was, is);
        return keys.size() == 1 ? first : Tell.said("difference.more", first, Part.count(keys.size() - 1L));
    }

    private static Said told(String key, Form was, Form is) {
        Optional<Handle> handle = Handle.of(key);
        if (handle.isPresent()) {
            return handle.get().changed(handle.get().value(was), handle.get().value(is));
        }
        Said label =
                Table.keys().find(key).map(Key::label).orElseGet(() -> Tell.said("difference.key", Part.text(key)));
        String value = is.value(key);
        return value.isBlank()
                ? Tell.said("difference.gone", label)
                : Tell.said("difference.now", label, Part.text(value));
    }

    /** The same in words. */
    static String said(String before, String after, Voice voice) {
        return voice.say(of(before, after));
    }
}
