package stretchwright.print.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import stretchwright.fit.FitReport;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Cautions;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Tag;
import stretchwright.print.kit.TextPages;
import stretchwright.print.kit.Writing;

/** What the fit check found, to read before cutting: verdicts, plots, tables, cautions. */
public final class FitPdf {
    private static final double TEXT = 10 * 25.4 / 72;
    private static final double CELL = 8.5 * 25.4 / 72;
    private static final double GAP = 2;

    private final Job job;
    private final TextPages pages;
    private final Box room;

    private FitPdf(Job job, PdfFile file) {
        this.job = job;
        pages = new TextPages(file, job.office(), job, Phrases.of("fit.foot"));
        room = pages.room();
    }

    public static Document of(Job job) {
        try (PdfFile file = new PdfFile(Phrases.of("fit.title", job.make()))) {
            new FitPdf(job, file).write();
            return file.finished("fit.pdf", "fit sheet");
        }
    }

    private void write() {
        block(List.of(
                new Para(7, 0, 0, Phrases.of("fit.title", job.make())),
                text(0, (job.forWhom() + " " + Phrases.of("fit.read")).strip())));
        heading(job.fit().stops() ? Phrases.of("fit.stop") : Phrases.of("fit.says"));
        if (job.fit().verdicts().isEmpty()) {
            block(List.of(text(0, Phrases.of("fit.nothing"))));
        }
        Voice voice = Voice.of(job.unit());
        for (FitReport.Severity severity : FitReport.Severity.values()) {
            job.fit().verdicts().stream().filter(v -> v.severity() == severity).forEach(v -> block(verdict(v, voice)));
        }
        plots();
        for (FitTables.Table table : FitTables.of(job.fit(), job.pattern(), job.unit())) {
            table(table);
        }
        asides(voice);
        heading(Phrases.of("plan.take-care"));
        Cautions.of(TEXT).forEach(p -> block(List.of(p)));
    }

    /** Notes beyond the three: small, after everything else that was found. */
    private void asides(Voice voice) {
        List<FitReport.Verdict> asides = job.fit().asides();
        if (asides.isEmpty()) {
            return;
        }
        heading(Phrases.of("fit.asides"));
        asides.forEach(v -> block(List.of(new Para(
                CELL,
                0,
                1,
                Letters.shortened(
                        voice.say(v.about()) + ": " + voice.say(v.message().and(v.remedy())), 2000)))));
    }

    private static List<Para> verdict(FitReport.Verdict v, Voice voice) {
        List<Para> all = new ArrayList<>();
        all.add(text(
                0,
                Letters.shortened(
                        voice.say(v.severity().said()).toUpperCase(Locale.ROOT) + ", " + voice.say(v.about()) + ": "
                                + voice.say(v.message().and(v.remedy())),
                        2000)));
        for (FitReport.Tried t : v.tried()) {
            all.add(text(6, "- " + FitTables.tried(t, voice)));
        }
        return all;
    }

    private static Para text(double indent, String words) {
        return new Para(TEXT, indent, 1.2, words);
    }

    /** The two drawings side by side, small enough for both, large enough to read. */
    private void plots() {
        double scale = Math.min(1, (room.width() - 6) / (FitSvg.WIDTH + LoadSvg.WIDTH));
        double tall = FitSvg.HEIGHT * scale + 6;
        if (pages.y() - tall < room.minY()) {
            pages.turn();
        }
        double top = pages.y() - 6;
        Canvas page = pages.page();
        Canvas fit = new Shrunk(page, scale, room.minX(), top - FitSvg.HEIGHT * scale);
        Canvas load = new Shrunk(page, scale, room.minX() + FitSvg.WIDTH * scale + 6, top - LoadSvg.HEIGHT * scale);
        page.spoken(Tag.FIGURE, Phrases.of("fit.drawing-shows"), () -> FitSvg.draw(job, fit));
        page.spoken(Tag.FIGURE, Phrases.of("load.shows"), () -> LoadSvg.draw(job, load));
        pages.goOnAt(top - FitSvg.HEIGHT * scale);
    }

    /** Another canvas, smaller; lines keep their width. */
    private record Shrunk(Canvas under, double scale, double x, double y) implements Canvas {
        @Override
        public void line(Ink ink, List<Point> points, boolean closed) {
            under.line(ink, points.stream().map(this::at).toList(), closed);
        }

        @Override
        public void text(Writing w) {
            under.text(new Writing(w.ink(), at(w.at()), w.degrees(), w.size() * scale, w.align(), w.words()));
        }

        private Point at(Point p) {
            return new Point(x + scale * p.x(), y + scale * p.y());
        }
    }

    private void table(FitTables.Table table) {
        pages.block(List.of(new Para(TEXT + 0.5, 0, 4, table.caption())), 18);
        if (table.caption().equals(FitTables.levels(job.unit()))) {
            block(List.of(new Para(CELL, 0, 1, FitTables.signs(job.fabric(), job.unit()))));
        }
        double[] widths = widths(table);
        row(table.heads(), widths);
        pages.page().line(Ink.LABEL, new Point(room.minX(), pages.y() - 0.6), new Point(room.maxX(), pages.y() - 0.6));
        for (List<String> cells : table.rows()) {
            double height = height(cells, widths);
            if (pages.y() - height < room.minY()) {
                pages.turn();
                row(table.heads(), widths);
            }
            row(cells, widths);
        }
    }

    /** Each column as wide as its longest cell; where that is more than the sheet has, none narrower than its longest word. */
    private double[] widths(FitTables.Table table) {
        double[] least = new double[table.heads().size()];
        double[] out = new double[least.length];
        List<List<String>> all = new ArrayList<>(table.rows());
        all.add(table.heads());
        for (List<String> cells : all) {
            for (int i = 0; i < out.length; i++) {
                out[i] = Math.max(out[i], Math.min(70, Letters.width(cells.get(i), CELL)) + GAP);
                least[i] = Math.max(least[i], whole(cells.get(i)) + GAP);
            }
        }
        double needed = Arrays.stream(least).sum();
        double wanted = Arrays.stream(out).sum();
        double spare = (room.width() - needed) / Math.max(1, wanted - needed);
        double factor = Math.min(1.25, room.width() / wanted);
        for (int i = 0; i < out.length; i++) {
            out[i] = factor >= 1 ? out[i] * factor : least[i] + Math.max(0, spare) * (out[i] - least[i]);
        }
        return out;
    }

    /** The longest piece of a cell that must stay on one line: a word, or an amount with its sign. */
    private static double whole(String cell) {
        String[] pieces = cell.matches("[-0-9.]+ \\S{1,2}") ? new String[] {cell} : cell.split(" ");
        // a hair more, or the last letter would be turned over by rounding
        return Arrays.stream(pieces)
                        .mapToDouble(w -> Letters.width(w, CELL))
                        .max()
                        .orElse(0)
                + 0.1;
    }

    private static double height(List<String> cells, double[] widths) {
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            lines = Math.max(
                    lines, Letters.wrapped(cells.get(i), CELL, widths[i] - GAP).size());
        }
        return lines * CELL * Letters.LEADING + 1;
    }

    private void row(List<String> cells, double[] widths) {
        double top = pages.y() - 1;
        double x = room.minX();
        for (int i = 0; i < widths.length; i++) {
            new Column(pages.page(), x, top, widths[i] - GAP).write(new Para(CELL, 0, 0, cells.get(i)));
            x += widths[i];
        }
        pages.goOnAt(pages.y() - height(cells, widths));
    }

    private void heading(String words) {
        pages.block(List.of(new Para(5, 0, 4, words)), 25);
    }

    private void block(List<Para> paras) {
        pages.block(paras, 0);
    }
}
