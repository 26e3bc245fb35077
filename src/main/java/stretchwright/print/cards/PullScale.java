package stretchwright.print.cards;

import java.util.Locale;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Phrases;

/** A ruler to pull folded cloth along: a length at rest, then what it gains in per cent. */
final class PullScale {
    private static final int MOST_PERCENT = 150;

    /** Up to here single per cents can be read: what is left after the rest. */
    private static final int FINE = 20;

    private PullScale() {}

    /**
     * Upright, zero at the foot.
     *
     * @param length at rest, mm
     * @param name of that length
     */
    static void draw(CardPage card, double x, double y, double length, String name) {
        Canvas page = card.canvas();
        page.line(Ink.CUT, new Point(x, y), new Point(x, y + at(length, MOST_PERCENT)));
        tick(page, x, y, 14);
        card.label(x + 15, y - 1, CardPage.SMALL, Phrases.of("card.hold"));
        for (int percent = 0; percent <= MOST_PERCENT; percent += percent < FINE ? 1 : 2) {
            double height = y + at(length, percent);
            tick(page, x, height, percent % 10 == 0 ? 10 : 4);
            if (percent % 10 == 0 && percent > 0) {
                card.label(x + 11, height - 1.2, 3.6, String.format(Locale.ROOT, "%d %%", percent));
            }
        }
        tick(page, x, y + length, 14);
        card.label(x + 15, y + length - 1, CardPage.SMALL, Phrases.of("card.length-at-rest", name));
    }

    static double at(double length, double percent) {
        return length * (1 + percent / 100);
    }

    private static void tick(Canvas page, double x, double y, double width) {
        page.line(Ink.LABEL, new Point(x, y), new Point(x + width, y));
    }
}
