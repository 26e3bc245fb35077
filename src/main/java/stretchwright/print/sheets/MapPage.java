package stretchwright.print.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfCanvas;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SizeLine;
import stretchwright.print.kit.Tag;
import stretchwright.print.kit.TestSquares;
import stretchwright.print.kit.Tiles;
import stretchwright.print.kit.Tiles.Tile;
import stretchwright.print.kit.Writing;
import stretchwright.print.sheets.Plane.Spot;

/** The first page: which sheet goes where, how to print, join and check, and what the lines mean. */
final class MapPage {
    private static final double TEXT = 3.3;
    private static final double GUTTER = 6;
    /** A narrower column beside the squares would break every few words; the words stand above the squares then. */
    private static final double NARROWEST = 45;

    private static final double ROW = 4.4;
    /** A sample and the name of a size beside each other. */
    private static final double SIZE = 58;
    /** Printers leave up to 13 mm (docs/maths/print.md). */
    private static final double WIDEST = 15;

    private MapPage() {}

    static void draw(Whose whose, List<SizeLine> sizes, Paper paper, Plane plane, PdfFile file) {
        Paper sheet = readable(paper) ? paper : office(paper);
        PdfCanvas page = file.page(sheet.width(), sheet.height());
        file.bookmark(Phrases.of("map.bookmark"));
        Box room = page.sheet().grown(-sheet.margin());
        page.clip(room);
        double right = room.maxX() - TestSquares.SIDE - 1;
        double top = head(whose, paper, plane, page, room);
        double above = room.minY() + TestSquares.SIDE + 6;
        Box beside = new Box(room.minX(), room.minY(), right - GUTTER, top);
        boolean narrow = beside.width() < NARROWEST;
        MapColumn column =
                new MapColumn(file, sheet, page, narrow ? new Box(room.minX(), above, room.maxX(), top) : beside);
        words(whose, plane, !sizes.isEmpty()).forEach(section -> column.block(section, 0));
        legend(column, !sizes.isEmpty());
        sizes(column, sizes);
        TestSquares.draw(page, right, room.minY() + 1);
        Box forMap = narrow ? column.rest(TestSquares.SIDE) : new Box(right, above, room.maxX() - 1, top - 2);
        Canvas there = narrow ? column.page() : page;
        there.spoken(Tag.FIGURE, Phrases.of("map.shows"), () -> map(plane, there, forMap));
    }

    /** A4, with no more of a large printer's margin than leaves room for the words. */
    private static Paper office(Paper paper) {
        Paper usual = Paper.named("A4");
        return new Paper(
                usual.name(), usual.width(), usual.height(), Math.min(paper.margin(), WIDEST), paper.overlap());
    }

    /** Large sheets and rolls are for drawing, and small ones have no room for the words. */
    private static boolean readable(Paper paper) {
        return paper.width() >= 200 && paper.width() <= 300 && paper.height() >= 270 && paper.height() <= 500;
    }

    private static double head(Whose whose, Paper paper, Plane plane, Canvas page, Box room) {
        Column head = new Column(page, room.minX(), room.maxY(), room.width());
        head.write(new Para(6, 0, 0, Phrases.of("foot.whose", whose.make(), whose.wearer())));
        head.write(new Para(
                TEXT,
                0,
                0,
                Phrases.of(
                        "map.cloth",
                        whose.cloth(),
                        Amounts.percent(whose.fabric().asLaid().test().stretchAcross()),
                        Amounts.percent(whose.fabric().asLaid().test().stretchAlong()),
                        String.valueOf(plane.sheets().size()),
                        String.valueOf(plane.tiles().sheets()),
                        paper.name(),
                        row(plane),
                        String.valueOf(plane.tiles().columns()))));
        whose.stops().stream().limit(3).forEach(v -> head.write(new Para(TEXT, 0, 1, stop(v))));
        return head.y() - 2;
    }

    private static String stop(String why) {
        return Phrases.of("map.stop", Letters.shortened(why, Whose.LONGEST_STOP));
    }

    private static String row(Plane plane) {
        return new Tile(plane.tiles().rows() - 1, 0).name().replaceAll("\\d", "");
    }

    private static List<List<Para>> words(Whose whose, Plane plane, boolean sized) {
        List<List<Para>> all = new ArrayList<>();
        all.add(section(
                Phrases.of("map.print"),
                Phrases.of("map.print-first"),
                Phrases.of("map.measure-square"),
                Phrases.of("map.print-rest")));
        if (plane.sheets().size() > 1) {
            all.add(section(Phrases.of("map.join"), Phrases.of("map.join-order"), trim(plane), lay(plane)));
        }
        all.add(section(
                Phrases.of("map.check"),
                longest(plane, whose, sized),
                Phrases.of("map.grain", LaidCloth.aroundTheLeg(whose.fabric())),
                Phrases.of("map.this-cloth")));
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

    private static String longest(Plane plane, Whose whose, boolean sized) {
        Spot largest = plane.spots().get(0);
        Box box = largest.sheeted().outline().box();
        boolean crosswise = whose.fabric().crosswise();
        double along = crosswise ? box.width() : box.height();
        double across = crosswise ? box.height() : box.width();
        String[] values = {
            Letters.shortened(largest.sheeted().name(), Letters.LONGEST_NAME),
            Amounts.mm(along),
            Amounts.length(along, whose.unit()),
            Amounts.mm(across),
            Amounts.length(across, whose.unit())
        };
        return sized ? Phrases.of("map.measure-nest", values) : Phrases.of("map.measure-piece", values);
    }

    private static List<Para> section(String title, String... words) {
        List<Para> all = new ArrayList<>();
        all.add(new Para(TEXT + 0.9, 0, 2.5, true, title));
        for (String w : words) {
            all.add(new Para(TEXT, 0, 0.8, w));
        }
        return all;
    }

    private static void legend(MapColumn column, boolean sized) {
        List<Ink> inks =
                List.of(Ink.CUT, Ink.SEW, Ink.FOLD, Ink.NOTCH, Ink.GRAIN, Ink.MARK, Ink.TRIM, Ink.JOIN, Ink.DIAMOND);
        column.block(List.of(new Para(TEXT + 0.9, 0, 2, true, Phrases.of("map.lines"))), inks.size() * ROW + 1);
        double y = column.y() - 4;
        for (Ink ink : inks) {
            sample(column.page(), sized && ink == Ink.SEW ? Ink.LABEL : ink, column.left(), y);
            column.page().text(Writing.at(Ink.LABEL, column.left() + 19, y - 1, 2.9, looks(ink, sized)));
            y -= ROW;
        }
        column.down(inks.size() * ROW + 1);
    }

    /** How each size is drawn, in as many columns as there is room for. */
    private static void sizes(MapColumn column, List<SizeLine> sizes) {
        if (sizes.isEmpty()) {
            return;
        }
        List<Para> words = List.of(
                new Para(TEXT + 0.9, 0, 2, true, Phrases.of("map.sizes")),
                new Para(TEXT, 0, 0.8, Phrases.of("map.size-layers")));
        column.block(words, rows(column, sizes) * ROW + 1);
        int rows = rows(column, sizes);
        for (int i = 0; i < sizes.size(); i++) {
            SizeLine size = sizes.get(i);
            double left = column.left() + (i / rows) * SIZE;
            double y = column.y() - 4 - ROW * (i % rows);
            column.page().in(size, () -> column.page().line(Ink.CUT, new Point(left, y), new Point(left + 17, y)));
            column.page().text(Writing.at(Ink.LABEL, left + 19, y - 1, 2.9, Letters.shortened(size.name(), 24)));
        }
        column.down(rows * ROW + 1);
    }

    private static int rows(MapColumn column, List<SizeLine> sizes) {
        int columns = (int) Math.max(1, Math.floor(column.width() / SIZE));
        return (sizes.size() + columns - 1) / columns;
    }

    private static String looks(Ink ink, boolean sized) {
        return switch (ink) {
            case CUT -> sized ? Phrases.of("line.cut-sized") : Phrases.of("line.cut");
            case SEW -> sized ? Phrases.of("line.sew-sized") : Phrases.of("line.sew");
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
