package stretchwright.print.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfCanvas;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Tag;
import stretchwright.print.kit.TextPages;
import stretchwright.print.kit.Tiles;
import stretchwright.print.kit.Writing;
import stretchwright.print.sheets.Tracing.Check;
import stretchwright.print.sheets.Tracing.Spot;

/** The tracing sheet: every piece as points to mark on gridded cloth with a ruler, without a printer for the pattern. */
public final class TracingPdf {
    private static final double TEXT = 3.3;
    private static final double ROW = 1.35 * TEXT;
    private static final double TABLE = 110;
    private static final double GUTTER = 6;
    private static final double SMALL = 2.4;
    private static final double LETTERS = 3;

    private final Job job;
    private final TraceGrid grid;
    private final Paper sheet;
    private final PdfFile file;

    private TracingPdf(Job job, TraceGrid grid, PdfFile file) {
        this.job = job;
        this.grid = grid;
        this.file = file;
        sheet = job.office();
    }

    public static Document of(Job job, TraceGrid grid) {
        try (PdfFile file = new PdfFile(Phrases.of("trace.title", job.make()))) {
            TracingPdf pdf = new TracingPdf(job, grid, file);
            pdf.intro();
            job.pattern().pieces().forEach(pdf::piece);
            return file.finished("tracing-sheet.pdf", "tracing sheet");
        }
    }

    private void intro() {
        TextPages pages = new TextPages(file, sheet, job, Phrases.of("trace.foot"));
        file.bookmark(Phrases.of("trace.bookmark"));
        pages.write(List.of(
                new Para(6, 0, 0, Phrases.of("trace.title", job.make())),
                text(job.forWhom()),
                text(Phrases.of("trace.for-cloth", grid.name())),
                new Para(5, 0, 4, Phrases.of("trace.how")),
                text(Phrases.of("trace.1")),
                text(Phrases.of("trace.2")),
                text(Phrases.of("trace.3", grid.said(grid.step()))),
                text(Phrases.of("trace.4")),
                text(Phrases.of("trace.5")),
                text(Phrases.of("trace.cut-line")),
                text(Phrases.of(
                        "trace.this-cloth",
                        Amounts.percent(job.fabric().asLaid().test().stretchAcross()),
                        Amounts.percent(job.fabric().asLaid().test().stretchAlong())))));
    }

    private static Para text(String words) {
        return new Para(Letters.AT_THE_MACHINE, 0, 1.5, words);
    }

    private void piece(Piece piece) {
        Tracing tracing = Tracing.of(piece, grid);
        PdfCanvas page = file.page(sheet.width(), sheet.height());
        file.bookmark(Letters.shortened(Phrases.said(piece.name().said()), Letters.LONGEST_NAME));
        Box room = page.sheet().grown(-2 * Tiles.MARGIN);
        Column head = new Column(page, room.minX(), room.maxY(), room.width());
        head.write(new Para(
                5,
                0,
                0,
                Letters.shortened(Phrases.said(piece.name().said()), Letters.LONGEST_NAME) + ": "
                        + Voice.plain().say(piece.timesCut())));
        List<String> words = PieceLabel.words(job, piece);
        head.write(new Para(TEXT, 0, 1, String.join(" \u00B7 ", words.subList(1, words.size()))));
        double top = head.y() - 4;
        Box left = new Box(room.minX(), room.minY(), room.maxX() - TABLE - GUTTER, top);
        page.spoken(Tag.FIGURE, Phrases.of("trace.shows"), () -> drawing(page, piece, tracing, left));
        List<String[]> rows = rows(tracing);
        int fit = fitting(rows, top - room.minY());
        table(page, room.maxX() - TABLE, top, rows.subList(0, fit));
        List<String[]> rest = rows.subList(fit, rows.size());
        while (!rest.isEmpty()) {
            rest = more(piece, room, rest);
        }
    }

    /** The table goes on; what is left over. */
    private List<String[]> more(Piece piece, Box room, List<String[]> rows) {
        PdfCanvas page = file.page(sheet.width(), sheet.height());
        Column head = new Column(page, room.minX(), room.maxY(), room.width());
        head.write(new Para(
                5,
                0,
                0,
                Phrases.of(
                        "trace.continued",
                        Letters.shortened(Phrases.said(piece.name().said()), Letters.LONGEST_NAME))));
        double top = head.y() - 4;
        int fit = fitting(rows, top - room.minY());
        table(page, room.minX(), top, rows.subList(0, fit));
        return rows.subList(fit, rows.size());
    }

    /** How many rows fit into the height, none at the end that belongs to the next one: a heading, a name. */
    private static int fitting(List<String[]> rows, double height) {
        int most = (int) Math.floor(height / ROW);
        if (most >= rows.size()) {
            return rows.size();
        }
        int fit = most;
        while (fit > 1 && List.of("", Phrases.of("trace.height")).contains(rows.get(fit - 1)[0])) {
            fit--;
        }
        return fit;
    }

    private List<String[]> rows(Tracing tracing) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {Phrases.of("trace.height"), Phrases.of("trace.point"), tracing.from(), ""});
        tracing.spots().stream()
                .sorted(Comparator.comparingDouble(Spot::up).thenComparingDouble(Spot::across))
                .forEach(s -> rows.add(row(s, s.number() + bow(s))));
        rows.add(new String[] {"", "", "", ""});
        if (!tracing.notches().isEmpty()) {
            rows.add(new String[] {Phrases.of("trace.height"), Phrases.of("trace.notch"), tracing.from(), ""});
            tracing.notches().forEach(s -> {
                rows.add(new String[] {"", "   " + s.name(), "", ""});
                rows.add(row(s, ""));
            });
            rows.add(new String[] {"", "", "", ""});
        }
        if (!tracing.inner().isEmpty()) {
            rows.add(new String[] {Phrases.of("trace.height"), Phrases.of("trace.inner"), tracing.from(), ""});
            tracing.inner().forEach(i -> {
                rows.add(new String[] {"", "   " + i.name(), "", ""});
                i.points().forEach(s -> rows.add(row(s, "")));
            });
            rows.add(new String[] {"", "", "", ""});
        }
        rows.addAll(checks(tracing));
        return rows;
    }

    private List<String[]> checks(Tracing tracing) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {Phrases.of("trace.check"), Phrases.of("trace.straight"), Phrases.of("trace.along"), ""});
        for (Check c : tracing.checks()) {
            rows.add(new String[] {
                Phrases.of("trace.from-to", String.valueOf(c.from()), String.valueOf(c.to())),
                grid.said(grid.rounded(c.straight())),
                grid.said(grid.rounded(c.along())),
                ""
            });
        }
        return rows;
    }

    private String[] row(Spot s, String name) {
        String away = grid.said(Math.abs(s.across()));
        String side = s.across() == 0
                ? Phrases.of("trace.on-it")
                : s.across() < 0 ? Phrases.of("trace.left", away) : Phrases.of("trace.right", away);
        String squares = s.across() == 0 ? "" : grid.squares(s.across());
        return new String[] {grid.said(s.up()) + " = " + grid.squares(s.up()), name, side, squares};
    }

    private String bow(Spot s) {
        return s.bow() == 0 ? "" : String.format(Locale.ROOT, " (%+.1f mm)", s.bow());
    }

    private static void table(Canvas page, double x, double top, List<String[]> rows) {
        double[] at = {0, 44, 66, 88};
        double y = top;
        for (String[] row : rows) {
            y -= ROW;
            for (int c = 0; c < row.length; c++) {
                if (!row[c].isEmpty()) {
                    page.text(Writing.at(Ink.LABEL, x + at[c], y, LETTERS, row[c]));
                }
            }
        }
    }

    private void drawing(Canvas page, Piece piece, Tracing tracing, Box room) {
        List<Spot> spots = tracing.spots();
        List<Point> points = spots.stream().map(Spot::at).toList();
        Box box = Box.around(points);
        double wide = Math.max(box.maxX(), 0) - Math.min(box.minX(), 0);
        double scale = Math.min((room.width() - 16) / wide, (room.height() - 16) / box.height());
        double x = room.minX() + 8 - scale * Math.min(box.minX(), 0);
        double y = room.maxY() - 8 - scale * box.maxY();
        UnaryOperator<Point> put = p -> new Point(x + scale * p.x(), y + scale * p.y());
        squares(page, box, put, scale);
        page.line(Ink.CUT, points.stream().map(put).toList(), true);
        page.line(
                piece.onFold() ? Ink.FOLD : Ink.GRAIN, put.apply(new Point(0, 0)), put.apply(new Point(0, box.maxY())));
        tracing.inner()
                .forEach(i -> page.line(
                        Ink.MARK,
                        i.points().stream().map(s -> put.apply(s.at())).toList(),
                        false));
        numbers(page, spots, put);
        for (Spot s : tracing.notches()) {
            Point at = put.apply(s.at());
            page.line(Ink.MARK, at.minus(new Point(1.2, 0)), at.plus(new Point(1.2, 0)));
        }
    }

    /** Outside the line; of points that lie close together only the first is numbered. */
    private static void numbers(Canvas page, List<Spot> spots, UnaryOperator<Point> put) {
        List<Point> written = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            Spot s = spots.get(i);
            Point at = put.apply(s.at());
            Point before =
                    put.apply(spots.get((i + spots.size() - 1) % spots.size()).at());
            Point next = put.apply(spots.get((i + 1) % spots.size()).at());
            Point out = next.minus(before).unit().left().times(-3);
            Point words = at.plus(out);
            page.line(Ink.NOTCH, at.minus(new Point(0.4, 0)), at.plus(new Point(0.4, 0)));
            boolean free = written.stream().allMatch(w -> w.distance(words) > 1.4 * SMALL);
            if (free) {
                written.add(words);
                page.text(Writing.middle(Ink.LABEL, words.x(), words.y() - 0.8, SMALL, Integer.toString(s.number())));
            }
        }
    }

    /** The grid, every so many squares that the lines stay apart. */
    private void squares(Canvas page, Box box, UnaryOperator<Point> put, double scale) {
        double every = grid.square();
        while (scale * every < 8) {
            every += grid.square();
        }
        for (double gx = Math.ceil(box.minX() / every) * every; gx <= box.maxX(); gx += every) {
            page.line(Ink.FAINT, put.apply(new Point(gx, 0)), put.apply(new Point(gx, box.maxY())));
        }
        for (double gy = 0; gy <= box.maxY(); gy += every) {
            page.line(Ink.FAINT, put.apply(new Point(box.minX(), gy)), put.apply(new Point(box.maxX(), gy)));
        }
    }
}
