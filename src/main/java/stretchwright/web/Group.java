package stretchwright.web;

import java.util.List;
import java.util.stream.Stream;
import stretchwright.ground.Said;

/**
 * A part of the form: a section of the make file, or one section of a list.
 *
 * @param key of the section in full; empty for what stands at the top of the file
 * @param hint may say nothing
 * @param closed whether it is folded away until it is asked for
 * @param inside parts of this part
 * @param isList whether another one may follow
 */
public record Group(
        String key, Said title, Said hint, boolean closed, List<Field> fields, List<Group> inside, boolean isList) {
    public Group {
        fields = List.copyOf(fields);
        inside = List.copyOf(inside);
    }

    /** Of this part and those inside. */
    Stream<Field> all() {
        return Stream.concat(fields.stream(), inside.stream().flatMap(Group::all));
    }
}
