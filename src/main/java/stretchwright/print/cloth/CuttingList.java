package stretchwright.print.cloth;

import java.util.List;
import java.util.Locale;
import stretchwright.ground.Box;
import stretchwright.lay.CuttingGuide;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.TextPages;

/** How the cloth is spread, and the list to tick in the order of placing and cutting, with the count of left and right. */
final class CuttingList {
    private static final double TEXT = 3.8;
    private static final double NAME = 4.4;
    private static final double BOX = 4;
    private static final double INDENT = 8;

    private final TextPages pages;
    private final LaidCloth cloth;
    private final List<CuttingGuide.Step> steps;

    private CuttingList(TextPages pages, LaidCloth cloth) {
        this.pages = pages;
        this.cloth = cloth;
        this.steps = cloth.use().guide().steps();
    }

    static void write(TextPages pages, LaidCloth cloth) {
        CuttingList list = new CuttingList(pages, cloth);
        ClothWords.before(cloth).forEach(pages::text);
        list.steps.forEach(list::step);
        list.count();
    }

    private void step(CuttingGuide.Step s) {
        int cut = cloth.piece(s.piece()).cut();
        Para name = new Para(NAME, INDENT, 2.5, named(s, s.number() + ". " + ClothWords.name(s, cut)));
        Para how = new Para(TEXT, INDENT, 0, capital(ClothWords.step(s, cloth.lay(), cloth.unit())));
        pages.need(name.height(pages.room().width()) + how.height(pages.room().width()));
        box(pages.y() - name.before());
        pages.write(List.of(name, how));
    }

    private static String named(CuttingGuide.Step s, String name) {
        return s.turnedOver()
                ? Phrases.of("cut.named-turned-over", name)
                : s.onFold() ? Phrases.of("cut.named-on-fold", name) : name;
    }

    private void count() {
        long left = yields(true);
        long right = yields(false);
        if (left + right > 0) {
            String check = Phrases.of("cut.count", String.valueOf(left), String.valueOf(right));
            pages.need(2 * TEXT * Letters.LEADING + 2.5);
            box(pages.y() - 2.5);
            pages.write(List.of(new Para(TEXT, INDENT, 2.5, check)));
        }
    }

    private long yields(boolean left) {
        return steps.stream()
                .filter(s -> switch (s.hand()) {
                    case LEFT -> left;
                    case RIGHT -> !left;
                    case PAIR -> true;
                    case AS_DRAWN, TURNED, BOTH, EITHER -> false;
                })
                .count();
    }

    /** An empty square to tick, its top at the height. */
    private void box(double top) {
        double x = pages.room().minX() + 0.5;
        double y = top - BOX - 1;
        pages.page().line(Ink.GRAIN, new Box(x, y, x + BOX, y + BOX).corners(), true);
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
