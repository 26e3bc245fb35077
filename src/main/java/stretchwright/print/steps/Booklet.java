package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.ground.Box;
import stretchwright.ground.Voice;
import stretchwright.pattern.Stitch;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Tag;
import stretchwright.sewing.SewingPlan;
import stretchwright.sewing.SewingPlan.Operation;

/** The pages of the sewing booklet: cover, a page for each step, when the machine misbehaves, settings that worked. */
final class Booklet {
    private static final double TEXT = PlanPdf.TEXT;
    private static final double TITLE = 5;
    private static final double INDENT = 8;
    private static final double TICK = 4.5;
    /** A drawing as high as this where there is room, and never lower than that. */
    private static final double DRAWING = 82;

    private static final double CROWDED = 105;
    private static final double LOWEST = 40;
    /** Where a drawing would be lower than this, the reasons make room for it. */
    private static final double CRAMPED = 70;

    private static final double ROW = 17;

    private final Job job;
    private final StepWords words;
    private final BookletWriter book;

    private Booklet(Job job) {
        this.job = job;
        words = StepWords.of(job);
        book = new BookletWriter(Letters.shortened(job.makeName(), 30));
    }

    static List<BookletPage> pages(Job job) {
        Booklet booklet = new Booklet(job);
        booklet.cover();
        booklet.steps();
        booklet.troubles();
        booklet.settings();
        return booklet.book.pages();
    }

    private void cover() {
        SewingPlan plan = job.sewing();
        book.bookmark(Phrases.of("booklet.cover"));
        List<Para> all = new ArrayList<>();
        all.add(new Para(9, 0, 12, job.make()));
        all.add(text(Phrases.of("booklet.name"), 2));
        all.add(text(job.forWhom(), 2));
        all.add(text(
                Phrases.of(
                        "booklet.effort",
                        String.valueOf(plan.operations().size()),
                        Amounts.number(plan.minutes(), 0),
                        Amounts.number(plan.firstPair(), 0)),
                4));
        all.add(new Para(TITLE, 0, 5, Phrases.of("booklet.thread")));
        threads().forEach(t -> all.add(text(t, 0.5)));
        all.add(new Para(TITLE, 0, 5, Phrases.of("booklet.ready")));
        ready().forEach(r -> all.add(text("- " + r, 0.5)));
        book.write(all.stream().filter(p -> !p.words().isBlank()).toList());
        book.turn();
    }

    private List<String> threads() {
        SewingPlan plan = job.sewing();
        Voice voice = job.voice();
        if (plan.threads().isEmpty()) {
            return plan.thread().entrySet().stream()
                    .map(e -> Phrases.of(
                            "booklet.thread-of", voice.say(e.getKey().said()), Amounts.number(e.getValue(), 0)))
                    .toList();
        }
        return plan.threads().stream()
                .map(t -> Phrases.of(
                        "booklet.spools",
                        voice.say(t.machine().said()),
                        voice.say(t.position().said()),
                        Amounts.number(t.metres(), 0),
                        String.valueOf(t.count()),
                        Amounts.number(t.length(), 0)))
                .toList();
    }

    private List<String> ready() {
        List<String> all = new ArrayList<>();
        List<Operation> steps = job.sewing().operations();
        Voice voice = job.voice();
        all.add(Phrases.of(
                "booklet.machines",
                steps.stream()
                        .filter(o -> o.stitch().isPresent())
                        .map(o -> voice.say(o.place().said()))
                        .distinct()
                        .collect(Collectors.joining(", "))));
        steps.stream()
                .flatMap(o -> o.help().setting().stream())
                .map(s -> words.plain(s.needle()))
                .filter(n -> !n.isEmpty())
                .distinct()
                .map(n -> Phrases.of("booklet.needle", n))
                .forEach(all::add);
        job.pattern().notions().stream()
                .map(n -> Phrases.of(
                        "booklet.notion",
                        String.valueOf(n.count()),
                        Amounts.sewn(Math.rint(n.cut()), job.unit()),
                        Phrases.said(n.name().said()),
                        Amounts.sewn(Math.rint(n.width()), job.unit())))
                .forEach(all::add);
        all.add(Phrases.of("booklet.scraps"));
        all.add(Phrases.of("booklet.pieces"));
        return all;
    }

    private static Para text(String said, double before) {
        return new Para(TEXT, 0, before, said);
    }

    private void steps() {
        boolean first = true;
        double before = 0;
        for (Operation o : job.sewing().operations()) {
            double high = height(o, wanted(o));
            boolean both = high < BookletWriter.room().height() / 2
                    && before < BookletWriter.room().height() / 2;
            if (!first && !book.fresh() && !(both && high + TITLE < book.left())) {
                book.turn();
            }
            step(o);
            before = high;
            first = false;
        }
        book.turn();
    }

    private double wanted(Operation o) {
        return StepPanels.of(job, o).panels().size() > 2 ? CROWDED : DRAWING;
    }

    private double height(Operation o, double drawing) {
        return Column.height(above(o), BookletWriter.room().width())
                + (StepDrawing.shows(job, o) ? drawing : 0)
                + Column.height(below(o, true), BookletWriter.room().width());
    }

    private void step(Operation o) {
        if (!book.fresh()) {
            book.gap(TITLE);
        }
        book.bookmark(words.title(o));
        double top = book.y();
        Box box = new Box(
                BookletWriter.room().minX(),
                top - TICK - 1.3,
                BookletWriter.room().minX() + TICK,
                top - 1.3);
        book.also(c -> c.line(Ink.LABEL, box.corners(), true));
        book.write(above(o));
        boolean drawn = StepDrawing.shows(job, o);
        List<Para> below = below(o, true);
        if (drawn && left(below) < CRAMPED) {
            below = below(o, false);
        }
        if (drawn) {
            drawing(o, Math.min(wanted(o), left(below)));
        }
        book.write(below);
    }

    /** Height for a drawing above the paragraphs. */
    private double left(List<Para> below) {
        return book.left() - Column.height(below, BookletWriter.room().width()) - 1;
    }

    private void drawing(Operation o, double height) {
        if (height < LOWEST) {
            book.write(List.of(text(Phrases.of("booklet.drawing", StepDrawing.name(o)), 1)));
            return;
        }
        double top = book.y();
        Box room = new Box(
                BookletWriter.room().minX(),
                top - height + 2,
                BookletWriter.room().maxX(),
                top - 1);
        book.drawing(height, c -> c.spoken(Tag.FIGURE, words.title(o), () -> StepDrawing.draw(job, o, c, room, TEXT)));
    }

    private List<Para> above(Operation o) {
        List<Para> all = new ArrayList<>();
        all.add(new Para(TITLE, INDENT, 0, words.title(o)));
        all.add(text(words.work(o), 1.5));
        together(all, words.setting(o), words.allowance(o));
        return all;
    }

    /** @param reasons whether to say why the step comes here: in the plan too, and less use at the machine than a drawing */
    private List<Para> below(Operation o, boolean reasons) {
        List<Para> all = new ArrayList<>();
        together(all, words.instruction(o));
        together(all, words.spread(o));
        together(all, words.check(o));
        together(all, words.mistake(o), words.undo(o));
        together(all, words.demand(o));
        if (reasons) {
            together(all, words.why(o));
        }
        return all;
    }

    /** One paragraph of what is there: lines are dear on a small page. */
    private static void together(List<Para> all, String... sentences) {
        String said = Stream.of(sentences).filter(w -> !w.isEmpty()).collect(Collectors.joining(" "));
        if (!said.isEmpty()) {
            all.add(text(said, 0.8));
        }
    }

    private void troubles() {
        book.bookmark(Phrases.of("trouble.title"));
        book.write(List.of(
                new Para(TITLE, 0, 0, Phrases.of("trouble.title")),
                text(Phrases.of("trouble.rule"), 1.5),
                text(Phrases.of("trouble.marked"), 1)));
        book.gap(2);
        double[] widths = {32, 42, BookletWriter.room().width() - 74};
        BookletTable table = new BookletTable(book, widths);
        table.row(
                List.of(
                        Phrases.of("trouble.head-see"),
                        Phrases.of("trouble.head-first"),
                        Phrases.of("trouble.head-then")),
                0);
        for (Troubles.Row row : Troubles.rows()) {
            table.row(List.of(row.symptom() + (row.common() ? " *" : ""), row.first(), row.then()), 0);
        }
    }

    /** Blank rows to write on, one for each stitch of this garment and a few more. */
    private void settings() {
        book.bookmark(Phrases.of("booklet.settings"));
        book.write(List.of(
                new Para(TITLE, 0, 6, Phrases.of("booklet.settings")),
                text(Phrases.of("booklet.settings-in", job.cloth()), 1.5)));
        List<String> stitches = job.sewing().operations().stream()
                .flatMap(o -> o.stitch().stream())
                .distinct()
                .map(Stitch::plainName)
                .toList();
        book.gap(2);
        double wide = BookletWriter.room().width();
        BookletTable table = new BookletTable(book, new double[] {34, 18, 18, 25, wide - 95});
        table.row(
                List.of(
                        Phrases.of("booklet.head-stitch"),
                        Phrases.of("booklet.head-length"),
                        Phrases.of("booklet.head-feed"),
                        Phrases.of("booklet.head-tensions"),
                        Phrases.of("booklet.head-needle-thread")),
                0);
        for (String stitch : stitches) {
            table.row(List.of(stitch, "", "", "", ""), ROW);
        }
        for (int i = 0; i < 2; i++) {
            table.row(List.of("", "", "", "", ""), ROW);
        }
    }
}
