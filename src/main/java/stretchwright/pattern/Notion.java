package stretchwright.pattern;

/**
 * Something that is bought and sewn on, not cut from the cloth: an elastic.
 *
 * @param count how many for the pair
 * @param width mm
 * @param cut length to cut, ends included, mm
 * @param worn length of the way it spans when worn, mm
 * @param ends what is turned or overlapped at each end, mm; 0 where the ends are joined to a ring
 * @param piece piece it is sewn to
 * @param edge edge of that piece
 */
public record Notion(
        NotionName name,
        int count,
        double width,
        double cut,
        double worn,
        double ends,
        PieceName piece,
        EdgeName edge) {}
