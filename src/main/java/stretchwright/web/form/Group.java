package stretchwright.web.form;

import java.util.List;
import java.util.stream.Stream;
import stretchwright.ground.Said;

/**
 * A part of the form: a section of the make file, or one section of a list.
 *
 * @param key of the section in full, as findings name it; empty for what has no section of its own
 * @param hint may say nothing
 * @param needed whether it must hold something
 * @param closed whether it is folded away until it is asked for
 * @param inside parts of this part
 * @param isList whether another one may follow
 */
public record Group(
        String key,
        Said title,
        Said hint,
        boolean needed,
        boolean closed,
        List<Field> fields,
        List<Group> inside,
        boolean isList) {
    public Group {
        fields = List.copyOf(fields);
        inside = List.copyOf(inside);
    }

    public String id() {
        return Field.id(key);
    }

    /** This part and those inside. */
    Stream<Group> parts() {
        return Stream.concat(Stream.of(this), inside.stream().flatMap(Group::parts));
    }

    /** Of this part and those inside. */
    Stream<Field> all() {
        return Stream.concat(fields.stream(), inside.stream().flatMap(Group::all));
    }
}
