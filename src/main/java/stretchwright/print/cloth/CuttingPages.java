package stretchwright.print.cloth;

import java.util.List;
import stretchwright.ground.Voice;
import stretchwright.lay.ClothUse;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.TextPages;

/** The pages behind the lay drawing: what to buy, the tick list in the order of cutting, what is left over. */
final class CuttingPages {
    private static final double TEXT = 3.8;
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
        Leftovers.write(c.pages, job.laid());
    }

    private void buying() {
        if (job.fabric().roll().shape().outline().isPresent()) {
            pages.heading(Phrases.of("buy.remnant", Amounts.length(job.lay().length(), job.unit())));
        } else {
            pages.heading(Phrases.of("buy.heading", Amounts.bought(use.buying())));
            pages.text(CuttingList.capital(ClothWords.sum(use.buying(), job.unit()) + "."));
            pages.text(
                    Phrases.of("buy.washed", Amounts.length(job.fabric().roll().usableWidth(), job.unit())));
        }
        use.onHand()
                .ifPresent(hand -> pages.text(Phrases.of(
                        "buy.on-hand", Amounts.length(hand.have(), job.unit()), ClothWords.onHand(hand, job.unit()))));
    }

    private void ways() {
        List<String> others = ClothWords.otherWays(job.lay(), job.unit());
        if (!others.isEmpty()) {
            pages.text(Phrases.of(
                    "buy.ways",
                    Voice.plain().say(job.lay().method().said()),
                    ClothWords.why(job.lay().method())));
            others.forEach(w -> pages.write(List.of(new Para(TEXT, INDENT, 0.5, CuttingList.capital(w) + "."))));
        }
    }

    private void steps() {
        pages.heading(Phrases.of("cut.heading"));
        CuttingList.write(pages, job.laid());
    }
}
