package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Voice;
import stretchwright.print.kit.Cautions;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.TextPages;
import stretchwright.sewing.SewingPlan.Operation;

/** The sewing plan to read at the machine: 11 pt and more, one tick box per step, care and cautions at the end. */
public final class PlanPdf {
    static final double TEXT = Letters.AT_THE_MACHINE;

    private static final double HEADING = 5;
    private static final double INDENT = 9;

    private final Job job;
    private final TextPages pages;

    private PlanPdf(Job job, PdfFile file) {
        this.job = job;
        pages = new TextPages(file, Paper.named("A4"), job, Phrases.of("plan.foot"));
    }

    public static Document of(Job job) {
        try (PdfFile file = new PdfFile(PlanWords.title(job))) {
            PlanPdf plan = new PlanPdf(job, file);
            plan.write();
            return file.finished("sewing-plan.pdf", "sewing plan");
        }
    }

    private void write() {
        block(false, PlanWords.summary(job));
        List<Para> verdicts = PlanWords.verdicts(job.fit(), Voice.of(job.unit()));
        if (!verdicts.isEmpty()) {
            verdicts.forEach(v -> block(false, List.of(v)));
        }
        heading(Phrases.of("plan.steps"));
        job.sewing().operations().forEach(o -> block(true, step(o)));
        heading(Phrases.of("plan.care"));
        PlanWords.care().forEach(p -> block(false, List.of(p)));
        heading(Phrases.of("plan.take-care"));
        Cautions.of(TEXT).forEach(p -> block(false, List.of(p)));
    }

    private List<Para> step(Operation o) {
        StepWords words = StepWords.of(job);
        List<Para> all = new ArrayList<>();
        all.add(new Para(TEXT + 0.5, INDENT, 3, words.title(o)));
        all.add(new Para(TEXT, INDENT, 0, words.work(o)));
        if (!o.joins().isEmpty()) {
            all.add(new Para(TEXT, INDENT, 0, words.joins(o)));
        }
        all.add(new Para(TEXT, INDENT, 0.5, words.instruction(o)));
        if (!o.check().isNothing()) {
            all.add(new Para(TEXT, INDENT, 0.5, words.check(o)));
        }
        words.help(o).forEach(said -> all.add(new Para(TEXT, INDENT, 0.5, said)));
        return all;
    }

    private void heading(String words) {
        // a heading alone at the foot of a page helps nobody
        block(false, List.of(new Para(HEADING, 0, 5, words)), 30);
    }

    private void block(boolean tick, List<Para> paras) {
        block(tick, paras, 0);
    }

    private void block(boolean tick, List<Para> paras, double more) {
        pages.need(pages.height(paras) + more);
        if (tick) {
            tickBox(pages.y() - paras.get(0).before());
        }
        pages.write(paras);
    }

    private void tickBox(double top) {
        double side = 4;
        double y = top - side - 0.8;
        double x = pages.room().minX();
        pages.page().line(Ink.LABEL, new Box(x, y, x + side, y + side).corners(), true);
    }
}
