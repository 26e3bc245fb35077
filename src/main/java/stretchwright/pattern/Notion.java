package stretchwright.pattern;

/**
 * Something that is bought and sewn on, not cut from the cloth: an elastic.
 *
 * @param count how many for the pair
 * @param width mm
 * @param cut length to cut, ends included, mm
 * @param worn length of the way it spans when worn, mm
 * @param ends what is turned or overlapped at each end, mm; 0 where the ends are joined to a ring
 * @param lap how deep each end then lies on the edge it is fastened to, mm; 0 where it is caught in a seam or joined to a ring
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
        double lap,
        PieceName piece,
        EdgeName edge) {
    /** Of a strap, without what is turned and what lies on the edges: what spans the way, unstretched, mm. */
    public double free() {
        return cut - 2 * ends - 2 * lap;
    }
}
