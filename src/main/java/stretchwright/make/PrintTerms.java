package stretchwright.make;

import java.util.Optional;

/**
 * How the make is put on paper.
 *
 * @param paper its name
 * @param grid squares of the pattern cloth to trace onto, such as "2 cm"; empty for what is usual in the maker's unit
 */
record PrintTerms(String paper, Optional<String> grid) {}
