package stretchwright.print.cloth;

import java.util.ArrayList;
import java.util.List;
import stretchwright.lay.ClothUse;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.TextPages;

/** What is left over of a laid cloth, for the offcut box, and what can be cut from it. */
final class Leftovers {
    private static final double TEXT = 3.8;
    private static final double INDENT = 8;

    private final TextPages pages;
    private final LaidCloth cloth;

    private Leftovers(TextPages pages, LaidCloth cloth) {
        this.pages = pages;
        this.cloth = cloth;
    }

    static void write(TextPages pages, LaidCloth cloth) {
        new Leftovers(pages, cloth).write();
    }

    private void write() {
        pages.heading(Phrases.of("left-over.heading"));
        ClothUse use = cloth.use();
        strip();
        if (use.leftovers().isEmpty()) {
            pages.text(Phrases.of("left-over.none"));
            return;
        }
        List<String> sizes = new ArrayList<>();
        for (int i = 0; i < use.leftovers().size(); i++) {
            sizes.add(ClothWords.leftover(use.leftovers().get(i), (char) ('A' + i), cloth.unit()));
        }
        pages.text(Phrases.of("left-over.rectangles", String.join("; ", sizes)));
        List<String> fits = ClothWords.offcuts(use, cloth.unit());
        pages.text(fits.isEmpty() ? Phrases.of("left-over.nothing-fits") : Phrases.of("left-over.what-fits"));
        fits.forEach(f -> pages.write(List.of(new Para(TEXT, INDENT, 0.5, f))));
    }

    /** What stays whole of the cloth on hand. */
    private void strip() {
        cloth.use()
                .onHand()
                .filter(h -> h.spare() > 0)
                .map(h -> Amounts.length(Math.floor(h.spare()), cloth.unit()))
                .ifPresent(spare -> pages.text(
                        cloth.fabric().roll().shape().outline().isPresent()
                                ? Phrases.of("left-over.of-remnant", spare)
                                : Phrases.of("left-over.strip", spare)));
    }
}
