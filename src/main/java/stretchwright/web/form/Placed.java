package stretchwright.web.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.Key;
import stretchwright.intake.Kind.Input;
import stretchwright.intake.Need;

/**
 * Findings where they belong on the form: at their field, at the heading of their part, the others on top. In the words of
 * the form, nothing twice in one place; where a whole part is missing, each field that is needed of it.
 */
final class Placed {
    private final List<Group> groups;
    private final Unit unit;
    private final Voice voice;
    private final Map<String, Set<String>> at = new LinkedHashMap<>();
    private final Set<String> onTop = new LinkedHashSet<>();

    Placed(List<Group> groups, Unit unit) {
        this.groups = groups;
        this.unit = unit;
        this.voice = Voice.of(unit);
    }

    boolean hasAny() {
        return !onTop.isEmpty() || !at.isEmpty();
    }

    List<String> onTop() {
        return List.copyOf(onTop);
    }

    /** At a field or a heading, by its key; empty where nothing is. */
    String at(String key) {
        return String.join(" ", at.getOrDefault(key, Set.of()));
    }

    /** The line of a file that nobody sees says nothing here. */
    void place(Finding f) {
        Optional<Group> part = groups.stream()
                .flatMap(Group::parts)
                .filter(g -> !f.key().isEmpty() && g.key().equals(f.key()))
                .findFirst();
        Optional<Group> holder = holder(f.key());
        if (holder.isPresent()) {
            atField(holder.get(), f);
        } else if (part.isPresent() && Need.isLack(f.wrong())) {
            lacking(part.get());
        } else if (part.isPresent()) {
            add(f.key(), words(f));
        } else {
            onTop.add(f.key().isEmpty() ? words(f) : f.key() + ": " + words(f));
        }
    }

    private Optional<Group> holder(String key) {
        return groups.stream()
                .flatMap(Group::parts)
                .filter(g -> g.fields().stream().anyMatch(p -> p.key().equals(key)))
                .findFirst();
    }

    private void atField(Group part, Finding f) {
        for (Field field : part.fields()) {
            if (field.key().equals(f.key())) {
                if (Need.isLack(f.wrong())) {
                    lacking(part, field);
                } else {
                    add(f.key(), words(f.wrong(), inForm(f.right(), field.row(), field.example(unit)), f.unit()));
                }
            }
        }
    }

    /** What is needed of a part; where nothing of it is by itself, some of it. */
    private void lacking(Group part) {
        boolean told = false;
        Set<String> asked = new HashSet<>();
        for (Field field : part.fields()) {
            String oneOf = field.row().need().oneOf();
            if (field.isNeeded() || (!oneOf.isEmpty() && asked.add(oneOf))) {
                lacking(part, field);
                told = true;
            }
        }
        for (Group inside : part.inside()) {
            if (inside.needed()) {
                lacking(inside);
                told = true;
            }
        }
        if (!told) {
            add(part.key(), voice.say(Tell.said("part.lack")));
        }
    }

    private void lacking(Group part, Field field) {
        Part example = Part.text(field.example(unit));
        List<Said> others = others(part, field);
        if (!others.isEmpty()) {
            add(field.key(), voice.say(Tell.said("field.lack-or", example, Part.listed(Part.Join.COMMA, others))));
        } else if (field.input() == Input.CHOICE || field.input() == Input.CHECK) {
            add(field.key(), voice.say(Tell.said("field.lack-choose")));
        } else {
            add(field.key(), voice.say(Tell.said("field.lack", example)));
        }
    }

    /** Fields that may be filled in instead of this one. */
    private static List<Said> others(Group part, Field field) {
        String oneOf = field.row().need().oneOf();
        return part.fields().stream()
                .filter(o -> !oneOf.isEmpty()
                        && o.row().need().oneOf().equals(oneOf)
                        && !o.key().equals(field.key()))
                .map(Field::label)
                .toList();
    }

    /** The example of a file's line becomes that of its field. */
    private Said inForm(Said right, Key<?> row, String example) {
        List<Part> ofFile = List.of(Part.text(row.like(Optional.empty())), Part.text(row.like(Optional.of(unit))));
        List<Part> parts = new ArrayList<>();
        right.parts().forEach(p -> parts.add(ofFile.contains(p) ? Part.text(example) : p));
        return new Said(right.room(), right.key(), parts, right.then());
    }

    private void add(String key, String words) {
        at.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(words);
    }

    private static String words(Finding f) {
        return words(f.wrong(), f.right(), f.unit());
    }

    private static String words(Said wrong, Said right, Unit unit) {
        return Voice.of(unit).say(wrong.and(right)).strip();
    }
}
