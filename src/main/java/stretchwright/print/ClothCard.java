package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stretchwright.body.PoseLength;
import stretchwright.ground.Point;

/** The tests of a cloth at home, at true scale: fold, hanging strip, show-through, wrap, pose. */
final class ClothCard {
    private final PdfFile file;
    private final Paper sheet;

    private ClothCard(PdfFile file, Paper sheet) {
        this.file = file;
        this.sheet = sheet;
    }

    static Document of(Paper sheet) {
        try (PdfFile file = new PdfFile("Testing a cloth")) {
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
        return new CardPage(
                file,
                sheet,
                inset,
                number + ". " + title,
                "Testing a cloth, sheet " + number + " of 5 - print at"
                        + " 100 %, without fitting to the page, and measure the squares first");
    }

    private void fold() {
        CardPage card = page(1, 84, "Fold test: stretch and return");
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
                "1. Fold the cloth in the middle, not at an edge. Mark 100 mm (or 4 in) on the fold with two pins.",
                "2. Hold one pin at 0. Pull the other along the scale as far as it goes easily. Read the %.",
                "3. Let go. Wait one minute. Lay it at 0 again. The % it reads now has stayed: 2 % on 100 mm is 102 mm.",
                "4. Do it across and along. The arrows show which is which.",
                "Good cloth keeps at most a tenth of what it gained.");
        card.directions(x + 4, y - 36);
        double blank = y - 48;
        card.label(x, blank, CardPage.SMALL, "Into the make file, under fabric (at rest, pulled, rested):");
        card.blank(x, blank - 8, 106, "fold across: [100 mm,");
        card.blank(x, blank - 16, 106, "fold along: [100 mm,");
    }

    private void hanging() {
        CardPage card = page(2, "Hanging test: how hard it pulls");
        double left = card.room().minX();
        double y = card.words(
                left,
                card.top(),
                120,
                "1. Cut a strip 50 mm wide and 300 mm long, away from the selvage. One across, one along: the strip's length"
                        + " is the direction that you test.",
                "2. Draw two marks 100 mm apart in its middle. Clip its upper end to a shelf, over the full width.",
                "3. Hang a weight on the lower end, over the full width. Wait ten seconds. Measure between the marks:"
                        + " 120 mm is 20 %.",
                "4. From light to heavy. Stop where it no longer moves easily.",
                "A bottle with water: its weight on kitchen scales. 100 g pull with 0.98 N.");
        strip(card, card.room().maxX() - 48, card.top() - 84);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("weight", "force", "across: mm", "%", "along: mm", "%"));
        for (int grams : new int[] {100, 200, 300, 500, 750, 1000}) {
            rows.add(List.of(grams + " g", String.format(Locale.ROOT, "%.2f N", grams * 0.00980665), "", "", "", ""));
        }
        card.table(left, y - 5, new double[] {21, 21, 28, 16, 28, 16}, 8, rows, 3.4);
        double below = card.room().minY() + 92;
        card.words(
                left,
                below,
                84,
                "Into the make file, under fabric; stretch and force, or stretch and weight:",
                "load across: [[20 %, 300 g], [40 %, 700 g]]",
                "load along: [[20 %, 400 g]]",
                "Leave it out if you did not test: a usual curve is taken, and the report says so.");
    }

    private static void strip(CardPage card, double x, double y) {
        card.rectangle(x, y + 22, 10, 58);
        card.canvas().line(Ink.CUT, new Point(x - 5, y + 80), new Point(x + 15, y + 80));
        card.canvas().line(Ink.LABEL, new Point(x, y + 62), new Point(x + 10, y + 62));
        card.canvas().line(Ink.LABEL, new Point(x, y + 42), new Point(x + 10, y + 42));
        card.label(x + 13, y + 51, CardPage.SMALL, "100 mm");
        card.label(x + 13, y + 72, CardPage.SMALL, "50 mm wide");
        card.path(x + 5, y + 22, 0, 0, 0, -4);
        card.rectangle(x, y, 10, 18);
        card.label(x + 13, y + 8, CardPage.SMALL, "bottle");
    }

    private void showThrough() {
        CardPage card = page(3, "Show-through");
        double left = card.room().minX();
        double y = card.words(
                left,
                card.top(),
                card.room().width(),
                "1. Draw a square of 50 mm on the cloth, its sides across and along. Lay it on the bars in bright light.",
                "2. Stretch it evenly both ways until you see the bars. Pin it. Read both sides of the square on the scales.",
                "3. Find the area growth in the table: (1 + across) x (1 + along) - 1.");
        double bars = y - 44;
        double x = left;
        for (double width : new double[] {1, 2, 5, 10, 20}) {
            card.black(x, bars, width, 38);
            card.label(x, bars - 4, CardPage.SMALL, String.format(Locale.ROOT, "%.0f mm", width));
            x += width + 12;
        }
        card.grey(x, bars, 40, 38);
        card.label(x, bars - 4, CardPage.SMALL, "half grey");
        scale(card, left, bars - 16, "across: a side of 50 mm stretched");
        scale(card, left, bars - 34, "along: a side of 50 mm stretched");
        double top = Math.min(bars - 42, card.room().minY() + 92);
        card.label(left, top + 3, CardPage.SMALL, "area growth in %");
        card.table(left, top, new double[] {18, 13, 13, 13, 13, 13}, 8, growth(), 3.4);
        card.blank(left, top - 62, 83, "shows through at:");
        card.label(left, top - 70, CardPage.SMALL, "Write it under fabric, with its %.");
        card.label(left, top - 76, CardPage.SMALL, "Never seen? Leave it out.");
    }

    static List<List<String>> growth() {
        int[] steps = {10, 20, 30, 40, 60};
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of("across"));
        for (int along : steps) {
            head.add("al. " + along);
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
        CardPage card = page(4, "Wrap test: without any number of stretch");
        double left = card.room().minX();
        double y = card.words(
                left,
                card.top(),
                card.room().width() - 60,
                "1. Cut a band of the cloth, about 150 mm high and as long as your hip, across the cloth.",
                "2. Wrap it round the fullest part of the hip until it holds and is comfortable. Pin it. Sit, and stand"
                        + " up again. Pin anew if it was tight.",
                "3. Mark both edges at the pins, take it off, lay it flat and measure between the marks.",
                "4. The same round the fullest part of the calf, as a tube.",
                "Example: hip 960 mm, pinned 840 mm: the legging is cut 12.5 % smaller than the hip.",
                "Take it off at once if a leg turns numb, cold or blue. Measure the hip and the calf themselves too.");
        double x = card.room().maxX() - 50;
        double top = card.top() - 8;
        // a trunk with the band round the hip
        card.path(x, top - 70, 10, 70, 8, 46, 2, 24, 6, 0);
        card.path(x, top - 70, 34, 70, 36, 46, 42, 24, 38, 0);
        card.path(x, top - 70, 22, 12, 22, 0);
        card.ellipse(x + 22, top - 46, 20, 3);
        card.ellipse(x + 22, top - 34, 20, 3);
        card.canvas().line(Ink.CUT, new Point(x + 22, top - 50), new Point(x + 22, top - 36));
        card.label(x + 24, top - 43, 3, "pin");
        tube(card, card.room().maxX() - 52, top - 118);
        double blank = Math.min(y - 12, card.room().minY() + 90);
        card.label(left, blank, CardPage.SMALL, "Into the make file, under fabric:");
        card.blank(left, blank - 12, 83, "wrap hip:");
        card.blank(left, blank - 22, 83, "wrap calf:");
        card.words(
                left,
                blank - 28,
                83,
                "With a wrap and no stretch across, the stretch is assumed from it, and the fit check says so at"
                        + " the openings and poses.");
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
        card.label(x + 28, y + 3, 3, "measure flat");
    }

    private void pose() {
        CardPage card = page(5, "Pose tape: how far you reach");
        double left = card.room().minX();
        double y = card.words(
                left,
                card.top(),
                card.room().width(),
                "Lay a tape or a ribbon over the body as the cloth would lie, standing and then in the pose. Go only as far"
                        + " as you do in practice. A second person reads it.");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("from, to", "standing", "in the pose"));
        for (PoseLength.Course course : PoseLength.Course.values()) {
            rows.add(List.of(course.word(), "", ""));
        }
        card.table(left, y - 5, new double[] {90, 45, 45}, 11, rows, CardPage.TEXT);
        double under = y - 5 - 11 * rows.size() - 3;
        for (PoseLength.Course course : PoseLength.Course.values()) {
            under = card.words(left, under, card.room().width(), course.word() + ": " + course.how());
        }
        sitting(card, left + 8, card.room().minY() + 62);
        card.words(
                left,
                card.room().minY() + 52,
                84,
                "Into the make file, under wearer:",
                "pose lengths: {back waist to front waist: [70, 78]}",
                "If the cloth, marked at the standing length, pulls easily to the length in the pose, write under fabric:"
                        + " reaches pose: true");
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
