package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stretchwright.ground.Box;
import stretchwright.lay.ClothUse;
import stretchwright.lay.CuttingGuide;
import stretchwright.print.Column.Para;

/** The pages behind the lay drawing: what to buy, the tick list in the order of cutting, what is left over. */
final class CuttingPages {
    private static final double TEXT = 3.8;
    private static final double HEAD = 5.5;
    private static final double BOX = 4;
    private static final double INDENT = 8;

    private final TextPages pages;
    private final Job job;
    private final ClothUse use;

    private CuttingPages(PdfFile file, Job job) {
        pages = new TextPages(file, job.office(), job, Phrases.of("cut.foot"));
        this.job = job;
        use = job.use();
    }

    static void write(PdfFile file, Job job) {
        CuttingPages c = new CuttingPages(file, job);
        c.buying();
        c.ways();
        c.steps();
        c.leftovers();
    }

    private void heading(String words) {
        pages.block(List.of(new Para(HEAD, 0, 5, words)), 3 * HEAD);
    }

    private void text(String words) {
        pages.write(List.of(new Para(TEXT, 0, 1.5, words)));
    }

    private void buying() {
        heading(Phrases.of("buy.heading", Amounts.bought(use.buying())));
        text(capital(ClothWords.sum(use.buying(), job.unit()) + "."));
        text(Phrases.of("buy.washed", Amounts.length(job.fabric().usableWidth(), job.unit())));
        use.onHand()
                .ifPresent(hand -> text(Phrases.of(
                        "buy.on-hand", Amounts.length(hand.have(), job.unit()), ClothWords.onHand(hand, job.unit()))));
    }

    private void ways() {
        List<String> others = ClothWords.otherWays(job.lay(), job.unit());
        if (!others.isEmpty()) {
            text(Phrases.of(
                    "buy.ways",
                    job.lay().method().word(),
                    ClothWords.why(job.lay().method())));
            others.forEach(w -> pages.write(List.of(new Para(TEXT, INDENT, 0.5, capital(w) + "."))));
        }
    }

    private void steps() {
        heading(Phrases.of("cut.heading"));
        ClothWords.before(job.lay(), job.unit()).forEach(this::text);
        for (CuttingGuide.Step s : use.guide().steps()) {
            int cut = job.pattern().piece(s.piece()).cut();
            Para name = new Para(4.4, INDENT, 2.5, named(s, s.number() + ". " + ClothWords.name(s, cut)));
            Para how = new Para(TEXT, INDENT, 0, capital(ClothWords.step(s, job.lay(), job.unit())));
            pages.need(
                    name.height(pages.room().width()) + how.height(pages.room().width()));
            box(pages.y() - name.before());
            pages.write(List.of(name, how));
        }
        long left = count(true);
        long right = count(false);
        if (left + right > 0) {
            String check = Phrases.of("cut.count", String.valueOf(left), String.valueOf(right));
            pages.need(2 * TEXT * Letters.LEADING + 2.5);
            box(pages.y() - 2.5);
            pages.write(List.of(new Para(TEXT, INDENT, 2.5, check)));
        }
    }

    private static String named(CuttingGuide.Step s, String name) {
        return s.turnedOver()
                ? Phrases.of("cut.named-turned-over", name)
                : s.onFold() ? Phrases.of("cut.named-on-fold", name) : name;
    }

    private long count(boolean left) {
        return use.guide().steps().stream()
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

    private void leftovers() {
        heading(Phrases.of("left-over.heading"));
        if (use.leftovers().isEmpty()) {
            text(Phrases.of("left-over.none"));
            return;
        }
        List<String> sizes = new ArrayList<>();
        for (int i = 0; i < use.leftovers().size(); i++) {
            sizes.add(ClothWords.leftover(use.leftovers().get(i), (char) ('A' + i), job.unit()));
        }
        text(Phrases.of("left-over.rectangles", String.join("; ", sizes)));
        use.onHand()
                .filter(h -> h.spare() > 0)
                .ifPresent(h -> text(Phrases.of("left-over.strip", Amounts.length(Math.floor(h.spare()), job.unit()))));
        List<String> fits = ClothWords.offcuts(use, job.unit());
        text(fits.isEmpty() ? Phrases.of("left-over.nothing-fits") : Phrases.of("left-over.what-fits"));
        fits.forEach(f -> pages.write(List.of(new Para(TEXT, INDENT, 0.5, f))));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
