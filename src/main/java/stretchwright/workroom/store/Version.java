package stretchwright.workroom.store;

import java.util.Optional;

/**
 * What a thing was at a time; never changed once stored.
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
        long at) {}
