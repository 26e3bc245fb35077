package stretchwright.print.cards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import stretchwright.ground.Document;
import stretchwright.lay.ClothWidths;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.TestSquares;

/** One page to take to the shop: yes, with changes or no for a cloth, in two minutes. */
final class ShopCard {
    private static final double BIG = 5.6;

    /** Rows of the first table, the lower ones where a second table follows. */
    private static final double HIGH = 13;

    private static final double LOW = 9.5;

    private ShopCard() {}

    static Document of(Paper sheet, ShopNeeds needs) {
        try (PdfFile file = new PdfFile(Phrases.of("shop.file"))) {
            CardPage card = new CardPage(file, sheet, 36, Phrases.of("shop.title"), Phrases.of("shop.foot"));
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
                x, card.top(), width, Phrases.of("shop.how", Letters.shortened(needs.forWhom(), Letters.LONGEST_NAME)));
        double[] columns = {width - 3 * 37, 37, 37, 37};
        double row = needs.lengths().isPresent() ? LOW : HIGH;
        card.table(x, y - 3, columns, row, rows(needs), BIG);
        y = card.words(
                x,
                y - 3 - row * 6 - 1,
                width,
                Phrases.of("shop.rest"),
                weights(needs.areal()),
                Phrases.of("shop.changes"));
        double below = y;
        needs.lengths().ifPresent(l -> lengths(card, x, below - 4, width, l));
        double box = card.room().minY() + TestSquares.SIDE + 4;
        card.black(x, box, 2, 16);
        card.black(x + 10, box, 5, 16);
        card.black(x + 24, box, 12, 16);
        card.grey(x + 46, box, 20, 16);
        card.words(x + 70, box + 17, width - 70, Phrases.of("shop.light"));
        List<String> small = new ArrayList<>();
        small.add(Phrases.of("shop.source", needs.source()));
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
        List<String> heads = new ArrayList<>(List.of(Phrases.of("shop.buy")));
        List<String> oneWay = new ArrayList<>(List.of(Phrases.of("shop.one-way")));
        List<String> turned = new ArrayList<>(List.of(Phrases.of("shop.turned")));
        for (ClothWidths.Row r : widths) {
            heads.add(Amounts.length(r.width(), lengths.unit()) + (r.own() ? "" : " *"));
            oneWay.add(r.oneWay().map(Amounts::bought).orElse(Phrases.of("shop.too-narrow")));
            turned.add(r.turned().map(Amounts::bought).orElse(Phrases.of("shop.too-narrow")));
        }
        card.table(x, top, columns, 6.5, List.of(heads, oneWay, turned), 3.8);
        card.words(x, top - 3 * 6.5, width, Phrases.of("shop.as-laid"));
    }

    private static List<List<String>> rows(ShopNeeds needs) {
        return List.of(
                List.of("", Phrases.of("shop.head-yes"), Phrases.of("shop.head-changes"), Phrases.of("shop.head-no")),
                pulls(Phrases.of("shop.across"), needs.across()),
                pulls(Phrases.of("shop.along"), needs.along()),
                // growth of a tenth (good) and of 15 in 100 (reject) of the 50 mm gained: working grades, no source
                List.of(
                        Phrases.of("shop.row-rest"),
                        Phrases.of("shop.rest-yes"),
                        Phrases.of("shop.rest-changes"),
                        Phrases.of("shop.rest-no")),
                List.of(
                        Phrases.of("shop.row-bars"),
                        Phrases.of("shop.bars-yes"),
                        Phrases.of("shop.bars-changes"),
                        Phrases.of("shop.bars-no")),
                List.of(
                        Phrases.of("shop.row-hand"),
                        Phrases.of("shop.hand-yes"),
                        Phrases.of("shop.hand-changes"),
                        Phrases.of("shop.hand-no")));
    }

    private static List<String> pulls(String direction, ShopNeeds.Step step) {
        return List.of(direction, mm(step.yes(), "+"), mm(step.changes(), "+"), no(step));
    }

    private static String no(ShopNeeds.Step step) {
        return step.changes().isPresent() ? "< " + length(step.changes().getAsDouble()) : Phrases.of("shop.any");
    }

    private static String mm(OptionalDouble share, String more) {
        return share.isPresent() ? length(share.getAsDouble()) + more : Phrases.of("shop.none");
    }

    /** 100 mm become this; rounded up, so that the card never asks for less than what was found. */
    static String length(double share) {
        return String.format(Locale.ROOT, "%.0f", Math.ceil(100 * (1 + share) - 1e-6));
    }

    /** 170, 200 and 230 g/m2 are wanted in the stretched cloth, dark, middling and pale (common practice, no source). */
    private static String weights(double areal) {
        return Phrases.of(
                "shop.weight",
                Amounts.number(170 * (1 + areal), 0),
                Amounts.number(200 * (1 + areal), 0),
                Amounts.number(230 * (1 + areal), 0));
    }
}
