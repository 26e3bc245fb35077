package stretchwright.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import stretchwright.ground.Unit;
import stretchwright.lay.ClothWidths;

/** One page to take to the shop: yes, with changes or no for a cloth, in two minutes. */
final class ShopCard {
    private static final double BIG = 5.6;

    /** Rows of the first table, the lower ones where a second table follows. */
    private static final double HIGH = 13;

    private static final double LOW = 9.5;

    private ShopCard() {}

    static Document of(Paper sheet, ShopNeeds needs) {
        try (PdfFile file = new PdfFile("Shop card")) {
            CardPage card =
                    new CardPage(file, sheet, 36, "Is this cloth right? Two minutes", "Shop card - print at 100 %");
            write(card, needs);
            return file.finished("shop-card.pdf", "shop card");
        }
    }

    private static void write(CardPage card, ShopNeeds needs) {
        double left = card.room().minX();
        PullScale.draw(card, left, card.room().minY() + 1, 100, "100 mm");
        double x = left + 36;
        double width = card.room().maxX() - x;
        double y = card.words(
                x,
                card.top(),
                width,
                "For " + Letters.shortened(needs.forWhom(), Letters.LONGEST_NAME)
                        + ". Fold the cloth, pinch 100 mm, pull"
                        + " it easily along the scale. Across: from selvage to selvage. Along: beside the selvage.");
        double[] columns = {width - 3 * 37, 37, 37, 37};
        double row = needs.lengths().isPresent() ? LOW : HIGH;
        card.table(x, y - 3, columns, row, rows(needs), BIG);
        y = card.words(
                x,
                y - 3 - row * 6 - 1,
                width,
                "Rest: pull 100 mm to 150 mm, let go, wait a minute, read again.",
                weights(needs.areal()),
                "Changes: a lighter hold, a wider band or hem, or a lining. No: leave it in the shop.");
        double below = y;
        needs.lengths().ifPresent(l -> lengths(card, x, below - 4, width, l));
        double box = card.room().minY() + TestSquares.SIDE + 4;
        card.black(x, box, 2, 16);
        card.black(x + 10, box, 5, 16);
        card.black(x + 24, box, 12, 16);
        card.grey(x + 46, box, 20, 16);
        card.words(x + 70, box + 17, width - 70, "Light: stretch it both ways over these bars.");
        List<String> small = new ArrayList<>();
        small.add("Source: " + needs.source() + ".");
        small.addAll(needs.because());
        Column column = new Column(
                card.canvas(),
                x,
                card.room().minY() + TestSquares.SIDE,
                card.room().maxX() - TestSquares.SIDE - 3 - x);
        small.forEach(s -> column.write(new Column.Para(CardPage.SMALL, 0, 1, s)));
    }

    /** How much to ask for: a column per width, a row for cloth with and without a direction. */
    private static void lengths(CardPage card, double x, double top, double width, ShopNeeds.Lengths lengths) {
        List<ClothWidths.Row> widths = lengths.widths().rows();
        double[] columns = new double[widths.size() + 1];
        Arrays.fill(columns, 30);
        columns[0] = width - 30 * widths.size();
        List<String> heads = new ArrayList<>(List.of("Buy, usable width"));
        List<String> oneWay = new ArrayList<>(List.of("One way (nap, print)"));
        List<String> turned = new ArrayList<>(List.of("Pieces turned"));
        for (ClothWidths.Row r : widths) {
            heads.add(width(r.width(), lengths.unit()) + (r.own() ? "" : " *"));
            oneWay.add(r.oneWay().map(Amounts::bought).orElse("too narrow"));
            turned.add(r.turned().map(Amounts::bought).orElse("too narrow"));
        }
        card.table(x, top, columns, 6.5, List.of(heads, oneWay, turned), 3.8);
        card.words(
                x,
                top - 3 * 6.5,
                width,
                "As laid on each width, with shrinkage and straightening. * a common width, no source.");
    }

    /** A tenth of an inch is enough for a width. */
    private static String width(double mm, Unit unit) {
        return unit == Unit.IN ? Amounts.number(unit.fromMm(mm), 1) + " in" : Amounts.length(mm, unit);
    }

    private static List<List<String>> rows(ShopNeeds needs) {
        return List.of(
                List.of("", "YES", "CHANGES", "NO"),
                pulls("Across", needs.across()),
                pulls("Along", needs.along()),
                // growth of a tenth (good) and of 15 in 100 (reject) of the 50 mm gained: working grades, no source
                List.of("Rest", "to 105", "to 107", "over 107"),
                List.of("Bars", "unseen", "faint", "clear"),
                List.of("Hand", "springs", "slow", "stays"));
    }

    private static List<String> pulls(String direction, ShopNeeds.Step step) {
        return List.of(direction, mm(step.yes(), "+"), mm(step.changes(), "+"), no(step));
    }

    private static String no(ShopNeeds.Step step) {
        return step.changes().isPresent() ? "< " + length(step.changes().getAsDouble()) : "any";
    }

    private static String mm(OptionalDouble share, String more) {
        return share.isPresent() ? length(share.getAsDouble()) + more : "none";
    }

    /** 100 mm become this; rounded up, so that the card never asks for less than what was found. */
    static String length(double share) {
        return String.format(Locale.ROOT, "%.0f", Math.ceil(100 * (1 + share) - 1e-6));
    }

    /** 170, 200 and 230 g/m2 are wanted in the stretched cloth, dark, middling and pale (common practice, no source). */
    private static String weights(double areal) {
        return String.format(
                Locale.ROOT,
                "Weight: dark %.0f, middling %.0f, pale %.0f g/m2 or more (common practice, no source).",
                170 * (1 + areal),
                200 * (1 + areal),
                230 * (1 + areal));
    }
}
