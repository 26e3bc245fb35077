package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.Column.Para;
import stretchwright.print.Plane.Spot;
import stretchwright.print.Tiles.Tile;

/** The first page: which sheet goes where, how to print, join and check, and what the lines mean. */
final class MapPage {
    private static final double TEXT = 3.3;
    private static final double GUTTER = 6;

    private MapPage() {}

    static void draw(Job job, Paper paper, Plane plane, PdfFile file) {
        Paper sheet = paper.width() <= 300 ? paper : Paper.named("A4");
        PdfCanvas page = file.page(sheet.width(), sheet.height());
        file.bookmark(Phrases.of("map.bookmark"));
        Box room = page.sheet().grown(-paper.margin());
        page.clip(room);
        double right = room.maxX() - TestSquares.SIDE - 1;
        double top = head(job, paper, plane, page, room);
        Column words = new Column(page, room.minX(), top, right - GUTTER - room.minX());
        words(job, plane).forEach(words::write);
        legend(
                page,
                room.minX(),
                words.write(new Para(TEXT + 0.9, 0, 2, Phrases.of("map.lines"))).y());
        TestSquares.draw(page, right, room.minY() + 1);
        map(plane, page, new Box(right, room.minY() + TestSquares.SIDE + 6, room.maxX() - 1, top - 2));
    }

    private static double head(Job job, Paper paper, Plane plane, Canvas page, Box room) {
        Column head = new Column(page, room.minX(), room.maxY(), room.width());
        head.write(new Para(6, 0, 0, Phrases.of("foot.whose", job.make(), job.wearer())));
        head.write(new Para(
                TEXT,
                0,
                0,
                Phrases.of(
                        "map.cloth",
                        job.cloth(),
                        Amounts.percent(job.fabric().stretchAcross()),
                        Amounts.percent(job.fabric().stretchAlong()),
                        String.valueOf(plane.sheets().size()),
                        String.valueOf(plane.tiles().sheets()),
                        paper.name(),
                        row(plane),
                        String.valueOf(plane.tiles().columns()))));
        job.fit().verdicts().stream()
                .filter(v -> v.severity() == FitReport.Severity.STOP)
                .limit(3)
                .forEach(v -> head.write(new Para(TEXT, 0, 1, stop(v))));
        return head.y() - 2;
    }

    private static String stop(Verdict v) {
        return Phrases.of("map.stop", Letters.shortened(v.message() + " " + v.remedy(), 400));
    }

    private static String row(Plane plane) {
        return new Tile(plane.tiles().rows() - 1, 0).name().replaceAll("\\d", "");
    }

    private static List<Para> words(Job job, Plane plane) {
        List<Para> all = new ArrayList<>();
        section(
                all,
                Phrases.of("map.print"),
                Phrases.of("map.print-first"),
                Phrases.of("map.measure-square"),
                Phrases.of("map.print-rest"));
        if (plane.sheets().size() > 1) {
            section(all, Phrases.of("map.join"), Phrases.of("map.join-order"), trim(plane), lay(plane));
        }
        section(
                all,
                Phrases.of("map.check"),
                longest(plane, job),
                Phrases.of("map.grain"),
                Phrases.of("map.this-cloth"));
        return all;
    }

    private static boolean butt(Plane plane) {
        return plane.tiles().sheet().overlap() == 0;
    }

    private static String trim(Plane plane) {
        return butt(plane) ? Phrases.of("map.trim-all") : Phrases.of("map.trim");
    }

    private static String lay(Plane plane) {
        return butt(plane) ? Phrases.of("map.lay-butt") : Phrases.of("map.lay");
    }

    private static String longest(Plane plane, Job job) {
        Spot largest = plane.spots().get(0);
        Box box = largest.piece().cutLine().box();
        return Phrases.of(
                "map.measure-piece",
                Letters.shortened(largest.piece().name(), Letters.LONGEST_NAME),
                Amounts.mm(box.height()),
                Amounts.length(box.height(), job.unit()),
                Amounts.mm(box.width()),
                Amounts.length(box.width(), job.unit()));
    }

    private static void section(List<Para> all, String title, String... words) {
        all.add(new Para(TEXT + 0.9, 0, 2.5, title));
        for (String w : words) {
            all.add(new Para(TEXT, 0, 0.8, w));
        }
    }

    private static void legend(Canvas page, double x, double top) {
        double y = top - 4;
        for (Ink ink :
                List.of(Ink.CUT, Ink.SEW, Ink.FOLD, Ink.NOTCH, Ink.GRAIN, Ink.MARK, Ink.TRIM, Ink.JOIN, Ink.DIAMOND)) {
            sample(page, ink, x, y);

            page.text(Writing.at(Ink.LABEL, x + 19, y - 1, 2.9, looks(ink)));
            y -= 4.4;
        }
    }

    private static String looks(Ink ink) {
        return switch (ink) {
            case CUT -> Phrases.of("line.cut");
            case SEW -> Phrases.of("line.sew");
            case FOLD -> Phrases.of("line.fold");
            case NOTCH -> Phrases.of("line.notch");
            case GRAIN -> Phrases.of("line.grain");
            case MARK -> Phrases.of("line.mark");
            case TRIM -> Phrases.of("line.trim");
            case JOIN -> Phrases.of("line.join");
            case DIAMOND -> Phrases.of("line.diamond");
            default -> throw new IllegalArgumentException("not in the legend: " + ink);
        };
    }

    private static void sample(Canvas page, Ink ink, double x, double y) {
        switch (ink) {
            case NOTCH ->
                Stream.of(4.0, 11.0, 15.0)
                        .forEach(at -> page.line(ink, new Point(x + at, y - 1.7), new Point(x + at, y + 1.7)));
            case DIAMOND ->
                page.line(
                        ink,
                        List.of(
                                new Point(x + 6.3, y),
                                new Point(x + 8, y + 1.7),
                                new Point(x + 9.7, y),
                                new Point(x + 8, y - 1.7)),
                        true);
            case GRAIN -> {
                page.line(ink, new Point(x, y), new Point(x + 17, y));
                page.line(ink, new Point(x + 2.5, y + 1), new Point(x, y), new Point(x + 2.5, y - 1));
                page.line(ink, new Point(x + 14.5, y + 1), new Point(x + 17, y), new Point(x + 14.5, y - 1));
            }
            default -> page.line(ink, new Point(x, y), new Point(x + 17, y));
        }
    }

    private static void map(Plane plane, Canvas page, Box room) {
        Tiles tiles = plane.tiles();
        double wide = tiles.columns() * tiles.stepX() + tiles.sheet().overlap();
        double tall = tiles.rows() * tiles.stepY() + tiles.sheet().overlap();
        double scale = Math.min(room.width() / wide, room.height() / tall);
        Point foot = new Point(room.minX(), room.maxY() - tall * scale);
        for (Tile tile : plane.sheets()) {
            Box w = tiles.window(tile);
            List<Point> frame = List.of(
                    new Point(w.minX(), w.minY()),
                    new Point(w.maxX(), w.minY()),
                    new Point(w.maxX(), w.maxY()),
                    new Point(w.minX(), w.maxY()));
            page.line(Ink.FAINT, scaled(frame, scale, foot), true);
            Point c = w.centre().times(scale).plus(foot);
            double size = Math.min(6, 0.3 * scale * Math.min(w.width(), w.height()));
            page.text(Writing.middle(Ink.FAINT, c.x(), c.y() - size / 3, size, tile.name()));
        }
        for (Spot spot : plane.spots()) {
            page.line(Ink.LABEL, scaled(spot.outline().points(), scale, foot), true);
        }
    }

    private static List<Point> scaled(List<Point> points, double scale, Point foot) {
        return points.stream().map(p -> p.times(scale).plus(foot)).toList();
    }
}
