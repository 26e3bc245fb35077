package stretchwright.print.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stretchwright.body.PoseLength;
import stretchwright.fabric.ClothKnown;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;

/** The tests of a cloth at home, at true scale: fold, hanging strip, show-through, wrap, pose. */
final class ClothCard {
    private final PdfFile file;
    private final Paper sheet;

    private ClothCard(PdfFile file, Paper sheet) {
        this.file = file;
        this.sheet = sheet;
    }

    static Document of(Paper sheet) {
        try (PdfFile file = new PdfFile(Phrases.of("card.file"))) {
            ClothCard card = new ClothCard(file, sheet);
            card.fold();
            card.hanging();
            card.showThrough();
            card.wrap();
            card.pose();
            return file.finished("cloth-test-card.pdf", "cloth test card");
        }
    }

    private CardPage page(int number, String title) {
        return page(number, 0, title);
    }

    private CardPage page(int number, double inset, String title) {
        return new CardPage(file, sheet, inset, number + ". " + title, Phrases.of("card.foot", String.valueOf(number)));
    }

    private void fold() {
        CardPage card = page(1, 84, Phrases.of("fold.title"));
        double left = card.room().minX();
        double foot = card.room().minY() + 1;
        // 4 in and 150 % more are 254 mm: the scale needs the whole height beside the words
        PullScale.draw(card, left, foot, 100, "100 mm");
        PullScale.draw(card, left + 42, foot, 101.6, "4 in");
        double x = left + 84;
        double y = card.words(
                x,
                card.top(),
                card.room().maxX() - x,
                Phrases.of("fold.1"),
                Phrases.of("fold.2"),
                Phrases.of("fold.3"),
                Phrases.of("fold.4"),
                Phrases.of("fold.good"));
        card.directions(x + 4, y - 36);
        double blank = y - 48;
        card.label(x, blank, CardPage.SMALL, Phrases.of("fold.make-file"));
        card.blank(x, blank - 8, 106, "fold across: [100 mm,");
        card.blank(x, blank - 16, 106, "fold along: [100 mm,");
    }

    private void hanging() {
        CardPage card = page(2, Phrases.of("hang.title"));
        double left = card.room().minX();
        double y = card.words(
                left,
                card.top(),
                130,
                Phrases.of("hang.1"),
                Phrases.of("hang.2"),
                Phrases.of("hang.3"),
                Phrases.of("hang.4"),
                Phrases.of("hang.5"),
                Phrases.of("hang.bottle"));
        strip(card, card.room().maxX() - 44, card.top() - 78);
        String[] values = ranges();
        double top = Math.min(y - 4, card.top() - 82);
        card.table(left, top, new double[] {34, 28, 28, 92}, 7.2, hung(), CardPage.SMALL);
        card.words(
                left,
                Math.min(top - 7.2 * hung().size() - 4, card.room().minY() + 100),
                86,
                Phrases.of("hang.buys", values),
                Phrases.of("hang.make-file"),
                "hang across: [112 mm, 125 mm, 148 mm]",
                "hang along: [[500 g, 134 mm]]",
                "strip: {width across: 43 mm,",
                "back across: [131 mm, 116 mm],",
                "after 30 min: 151 mm}",
                Phrases.of("hang.leave-out"),
                Phrases.of("hang.band"));
    }

    /** What is read, with places for it, and what it tells. */
    private static List<List<String>> hung() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                Phrases.of("hang.weight"),
                Phrases.of("hang.across"),
                Phrases.of("hang.along"),
                Phrases.of("hang.tells")));
        rows.add(List.of("100 g", "", "", Phrases.of("hang.tells-out")));
        rows.add(List.of("250 g", "", "", ""));
        rows.add(List.of("500 g", "", "", Phrases.of("hang.tells-full")));
        rows.add(List.of(Phrases.of("hang.width"), "", "", Phrases.of("hang.tells-width")));
        rows.add(List.of(Phrases.of("hang.back", "250 g"), "", "", Phrases.of("hang.tells-back")));
        rows.add(List.of(Phrases.of("hang.back", "100 g"), "", "", ""));
        rows.add(List.of(Phrases.of("hang.long"), "", Phrases.of("hang.not"), Phrases.of("hang.tells-long")));
        return rows;
    }

    /** How far the ends of a pressure are apart with a stretch by hand alone, and with each reading after it. */
    private static String[] ranges() {
        ClothKnown hand = ClothKnown.NOTHING;
        ClothKnown one = hand.with(ClothKnown.Reading.FULL_WEIGHT);
        ClothKnown three = hand.with(ClothKnown.Reading.THREE_WEIGHTS);
        ClothKnown width = three.with(ClothKnown.Reading.WIDTH);
        ClothKnown all = width;
        for (ClothKnown.Reading reading : ClothKnown.Reading.values()) {
            all = all.with(reading);
        }
        return new String[] {range(hand), range(one), range(three), range(width), range(all)};
    }

    private static String range(ClothKnown known) {
        return String.format(Locale.ROOT, "%.1f", known.highOverLow());
    }

    private static void strip(CardPage card, double x, double y) {
        card.rectangle(x, y + 22, 10, 58);
        card.canvas().line(Ink.CUT, new Point(x - 5, y + 80), new Point(x + 15, y + 80));
        card.canvas().line(Ink.LABEL, new Point(x, y + 62), new Point(x + 10, y + 62));
        card.canvas().line(Ink.LABEL, new Point(x, y + 42), new Point(x + 10, y + 42));
        card.label(x + 13, y + 51, CardPage.SMALL, "100 mm");
        card.label(x + 13, y + 72, CardPage.SMALL, Phrases.of("hang.wide"));
        card.path(x + 5, y + 22, 0, 0, 0, -4);
        card.rectangle(x, y, 10, 18);
        card.label(x + 13, y + 8, CardPage.SMALL, Phrases.of("hang.bottle-drawn"));
    }

    private void showThrough() {
        CardPage card = page(3, Phrases.of("show.title"));
        double left = card.room().minX();
        double y = card.words(
                left,
                card.top(),
                card.room().width(),
                Phrases.of("show.1"),
                Phrases.of("show.2"),
                Phrases.of("show.3"));
        double bars = y - 44;
        double x = left;
        for (double width : new double[] {1, 2, 5, 10, 20}) {
            card.black(x, bars, width, 38);
            card.label(x, bars - 4, CardPage.SMALL, String.format(Locale.ROOT, "%.0f mm", width));
            x += width + 12;
        }
        card.grey(x, bars, 40, 38);
        card.label(x, bars - 4, CardPage.SMALL, Phrases.of("show.grey"));
        scale(card, left, bars - 16, Phrases.of("show.across-scale"));
        scale(card, left, bars - 34, Phrases.of("show.along-scale"));
        double top = Math.min(bars - 42, card.room().minY() + 92);
        card.label(left, top + 3, CardPage.SMALL, Phrases.of("show.growth"));
        card.table(left, top, new double[] {18, 13, 13, 13, 13, 13}, 8, growth(), 3.4);
        card.blank(left, top - 62, 83, Phrases.of("show.at"));
        card.label(left, top - 70, CardPage.SMALL, Phrases.of("show.make-file"));
        card.label(left, top - 76, CardPage.SMALL, Phrases.of("show.never"));
    }

    static List<List<String>> growth() {
        int[] steps = {10, 20, 30, 40, 60};
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of(Phrases.of("show.across")));
        for (int along : steps) {
            head.add(Phrases.of("show.along", String.valueOf(along)));
        }
        rows.add(head);
        for (int across : new int[] {10, 20, 30, 40, 60, 80}) {
            List<String> row = new ArrayList<>(List.of(across + " %"));
            for (int along : steps) {
                row.add(String.valueOf(Math.round(((100 + across) * (100 + along) - 10_000) / 100.0)));
            }
            rows.add(row);
        }
        return rows;
    }

    private static void scale(CardPage card, double x, double y, String words) {
        card.canvas().line(Ink.LABEL, new Point(x, y), new Point(x + 100, y));
        for (int percent = 0; percent <= 100; percent += 5) {
            double at = x + 50 * (1 + percent / 100.0);
            card.canvas().line(Ink.LABEL, new Point(at, y), new Point(at, y + (percent % 20 == 0 ? 5 : 3)));
            if (percent % 20 == 0) {
                card.middle(at, y + 6, 3, percent + " %");
            }
        }
        card.canvas().line(Ink.LABEL, new Point(x, y), new Point(x, y + 5));
        card.label(x + 104, y, CardPage.SMALL, words);
    }

    private void wrap() {
        CardPage card = page(4, Phrases.of("wrap.title"));
        double left = card.room().minX();
        double y = card.words(
                left,
                card.top(),
                card.room().width() - 60,
                Phrases.of("wrap.1"),
                Phrases.of("wrap.2"),
                Phrases.of("wrap.3"),
                Phrases.of("wrap.4"),
                Phrases.of("wrap.example"),
                Phrases.of("wrap.caution"));
        double x = card.room().maxX() - 50;
        double top = card.top() - 8;
        // a trunk with the band round the hip
        card.path(x, top - 70, 10, 70, 8, 46, 2, 24, 6, 0);
        card.path(x, top - 70, 34, 70, 36, 46, 42, 24, 38, 0);
        card.path(x, top - 70, 22, 12, 22, 0);
        card.ellipse(x + 22, top - 46, 20, 3);
        card.ellipse(x + 22, top - 34, 20, 3);
        card.canvas().line(Ink.CUT, new Point(x + 22, top - 50), new Point(x + 22, top - 36));
        card.label(x + 24, top - 43, 3, Phrases.of("wrap.pin"));
        tube(card, card.room().maxX() - 52, top - 118);
        double blank = Math.min(y - 12, card.room().minY() + 90);
        card.label(left, blank, CardPage.SMALL, Phrases.of("wrap.make-file"));
        card.blank(left, blank - 12, 83, "wrap hip:");
        card.blank(left, blank - 22, 83, "wrap calf:");
        card.words(left, blank - 28, 83, Phrases.of("wrap.assumed"));
    }

    /** A calf with the tube round it, and the tube lying flat. */
    private static void tube(CardPage card, double x, double y) {
        card.path(x, y, 4, 36, 0, 22, 4, 0);
        card.path(x, y, 18, 36, 22, 22, 18, 0);
        card.ellipse(x + 11, y + 27, 11, 2);
        card.ellipse(x + 11, y + 15, 11, 2);
        card.rectangle(x + 28, y + 14, 22, 14);
        card.arrow(x + 39, y + 9, x + 29, y + 9);
        card.arrow(x + 39, y + 9, x + 49, y + 9);
        card.label(x + 28, y + 3, 3, Phrases.of("wrap.flat"));
    }

    private void pose() {
        CardPage card = page(5, Phrases.of("pose.title"));
        double left = card.room().minX();
        double y = card.words(left, card.top(), card.room().width(), Phrases.of("pose.how"));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(Phrases.of("pose.from-to"), Phrases.of("pose.standing"), Phrases.of("pose.in-the-pose")));
        for (PoseLength.Course course : PoseLength.Course.values()) {
            rows.add(List.of(Voice.plain().say(course.said()), "", ""));
        }
        card.table(left, y - 5, new double[] {90, 45, 45}, 11, rows, CardPage.TEXT);
        double under = y - 5 - 11 * rows.size() - 3;
        for (PoseLength.Course course : PoseLength.Course.values()) {
            under = card.words(
                    left,
                    under,
                    card.room().width(),
                    Phrases.of(
                            "pose.course",
                            Voice.plain().say(course.said()),
                            Voice.plain().say(course.how())));
        }
        sitting(card, left + 8, card.room().minY() + 62);
        card.words(
                left,
                card.room().minY() + 52,
                84,
                Phrases.of("pose.make-file"),
                "pose lengths: {back waist to front waist: [70, 78]}",
                Phrases.of("pose.reaches", "reaches pose: true"));
    }

    /** Sitting low, one leg forward; the tape runs over the bent knee. */
    private static void sitting(CardPage card, double x, double y) {
        card.ellipse(x + 20, y + 38, 4, 5);
        card.path(x, y, 20, 33, 10, 14, 30, 18, 24, 0);
        card.path(x, y, 12, 12, 34, 14, 56, 13, 58, 18);
        card.path(x, y, 18, 28, 34, 24);
        card.arrow(x + 12, y + 18, x + 33, y + 21);
        card.arrow(x + 34, y + 19, x + 29, y + 1);
    }
}
