package stretchwright.many;

import java.util.Collection;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.Echo;

/** What this room tells: keys of many/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("many", key, parts);
    }

    /** What a file holds, in quotes and never at length. */
    static Part quoted(String text) {
        return Part.text(Echo.quoted(text));
    }

    /** Words of a file, the same in every language: "a, b, c". */
    static Part words(Collection<String> words) {
        return Part.listed(Part.Join.COMMA, words.stream().map(Part::text).toList());
    }

    /** Where something stands in a table: "row 7, column hip girth"; of the row as a whole without a column. */
    static String at(int row, String column) {
        Part number = Part.count(row);
        return Voice.plain()
                .say(
                        column.isEmpty()
                                ? Tell.said("at.row", number)
                                : Tell.said("at.row-column", number, Part.text(column)));
    }
}
