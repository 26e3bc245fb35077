package stretchwright.web.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.FirstPairKeys;
import stretchwright.intake.Key;
import stretchwright.intake.Keys;
import stretchwright.intake.Kind.Input;
import stretchwright.intake.LearntKeys;

/** The form from the table of keys: every key has a field, in the part of its section; lists have a free place for one more. */
final class Groups {
    private final Form form;

    private Groups(Form form) {
        this.form = form;
    }

    static List<Group> of(Keys table, Form form) {
        return new Groups(form).file(table);
    }

    /** What stands at the top of the file goes before and behind its sections. */
    private List<Group> file(Keys table) {
        List<Field> make = new ArrayList<>();
        List<Field> work = new ArrayList<>();
        List<Group> sections = new ArrayList<>();
        for (Key<?> key : table.inside("")) {
            if (isPart(key)) {
                sections.add(section(key, key.name(), table, isAfterSewing(key)));
            } else if (!key.path().equals(Form.VERSION)) {
                (sections.isEmpty() ? make : work).add(new Field(key.path(), key));
            }
        }
        List<Group> all = new ArrayList<>();
        all.add(new Group("", Tell.said("group.make"), Said.NOTHING, false, false, make, List.of(), false));
        all.addAll(sections);
        all.add(new Group("", Tell.said("group.work"), Said.NOTHING, false, false, work, List.of(), false));
        return all;
    }

    /** Known only of a finished pair: folded away. */
    private static boolean isAfterSewing(Key<?> key) {
        return key.path().equals(FirstPairKeys.FIRST_PAIR.path()) || key.path().equals(LearntKeys.LEARNT.path());
    }

    private static boolean isPart(Key<?> key) {
        return key.input() == Input.SECTION || key.input() == Input.SECTIONS;
    }

    private Group section(Key<?> key, String at, Keys table, boolean closed) {
        if (key.input() == Input.SECTIONS) {
            return list(key, at);
        }
        Group inside = inside(key.path(), at, table);
        return new Group(
                at, key.label(), key.help(), key.need().always(), closed, inside.fields(), inside.inside(), false);
    }

    /** The fields of a section; what is in sections of its own, and in values that may be a section too, stands in parts. */
    private Group inside(String section, String at, Keys table) {
        List<Field> fields = new ArrayList<>();
        List<Group> parts = new ArrayList<>();
        Map<String, List<Field>> instead = new LinkedHashMap<>();
        Map<String, Key<?>> insteadOf = new LinkedHashMap<>();
        for (Key<?> key : table.inside(section)) {
            String path = at.isEmpty() ? key.name() : at + "." + key.name();
            if (isPart(key)) {
                parts.add(section(key, path, table, !key.need().always()));
                continue;
            }
            fields.add(new Field(path, key));
            for (Key<?> inner : table.inside(key.path())) {
                instead.computeIfAbsent(inner.words(), w -> new ArrayList<>())
                        .add(new Field(path + "." + inner.name(), inner));
                insteadOf.putIfAbsent(inner.words(), inner);
            }
        }
        instead.forEach((words, own) -> parts.add(
                new Group("", title(insteadOf.get(words)), Said.NOTHING, false, true, own, List.of(), false)));
        return new Group(at, Said.NOTHING, Said.NOTHING, false, false, fields, parts, false);
    }

    private static Said title(@org.jspecify.annotations.Nullable Key<?> inner) {
        return inner == null ? Said.NOTHING : Tell.said("group.instead", new Part.Capital(inner.help()));
    }

    private Group list(Key<?> key, String at) {
        List<Group> places = new ArrayList<>();
        for (int i = 1; i <= form.places(at); i++) {
            String one = at + "." + i;
            Group inside = inside("", one, key.parts());
            places.add(new Group(
                    one,
                    Tell.said("group.number", Part.count(i)),
                    Said.NOTHING,
                    false,
                    false,
                    inside.fields(),
                    inside.inside(),
                    false));
        }
        return new Group(at, key.label(), key.help(), key.need().always(), true, List.of(), places, true);
    }
}
