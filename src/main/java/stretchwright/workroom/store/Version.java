package stretchwright.workroom.store;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What a thing was at a time: its name, text and links never change once stored, figures may be found for it later.
 *
 * @param number from 1; they count what was ever entered, also what did not come to stand
 * @param text as it was entered, letter by letter
 * @param figures of a make what it became, as JSON
 * @param program which version of it made them; empty without figures
 * @param at in milliseconds since 1970
 */
public record Version(
        String thing,
        long number,
        String name,
        String text,
        Links links,
        Optional<String> figures,
        String program,
        long at) {
    /** The same with what it became. */
    Version with(String made, String by) {
        return new Version(thing, number, name, text, links, Optional.of(made), by, at);
    }

    /** By which it is seen that not a letter of it was changed since; what it is linked to may be forgotten meanwhile. */
    long seal() {
        CRC32 sum = new CRC32();
        for (String part : List.of(name, text, figures.orElse(""), program, number + " " + at)) {
            sum.update(part.getBytes(StandardCharsets.UTF_8));
            sum.update(0);
        }
        return sum.getValue();
    }
}
