package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.List;

/** Pages two up on both sides of sheets that are stacked, folded once and stitched in the fold. */
final class Imposition {
    private Imposition() {}

    /** Page numbers from 1 on one side of a sheet; beyond the last page of the booklet the page is blank. */
    record Side(int left, int right) {}

    /** Padded to whole sheets: four pages each. */
    static int padded(int pages) {
        return (pages + 3) / 4 * 4;
    }

    /** Front and back of each sheet, the outermost first: last and first, second and last but one, and so on. */
    static List<Side> sides(int pages) {
        int all = padded(pages);
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < all / 2; i++) {
            int low = i + 1;
            int high = all - i;
            sides.add(i % 2 == 0 ? new Side(high, low) : new Side(low, high));
        }
        return sides;
    }
}
