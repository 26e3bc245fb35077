package stretchwright.print.sheets;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.TestSquares;
import stretchwright.print.kit.Tiles.Tile;
import stretchwright.print.kit.Writing;

/**
 * What every sheet carries besides the pattern: its name, where to trim, where its neighbours lie, diamonds across the
 * joins, and two test squares in the emptiest corner. All of it in hair lines, inside the printable area.
 *
 * <p>Joins run along the middle of the overlap. A sheet is trimmed on its left and upper side and laid over its
 * neighbours' lines there.
 */
final class SheetFrame {
    private static final double NAME_SIZE = 9;
    private static final double SMALL = 2.6;

    private final Plane plane;
    private final Tile tile;
    private final Drawing whole;
    private final Box room;

    SheetFrame(Plane plane, Tile tile, Drawing whole) {
        this.plane = plane;
        this.tile = tile;
        this.whole = whole;
        Paper sheet = plane.tiles().sheet();
        room = new Box(0, 0, sheet.width(), sheet.height()).grown(-sheet.margin());
    }

    void draw(Whose whose, Canvas page) {
        join(page, -1, 0);
        join(page, 1, 0);
        join(page, 0, -1);
        join(page, 0, 1);
        Box squares = emptiest(TestSquares.SIDE, TestSquares.SIDE);
        TestSquares.draw(page, squares.minX(), squares.minY());
        name(whose, page, squares);
    }

    /** The join towards a neighbour, if there is one. */
    private void join(Canvas page, int right, int down) {
        Tile neighbour = tile.beside(right, down);
        if (!plane.sheets().contains(neighbour)) {
            return;
        }
        double overlap = plane.tiles().sheet().overlap();
        double half = overlap / 2;
        boolean upright = right != 0;
        double fixed = right < 0
                ? room.minX() + half
                : right > 0 ? room.maxX() - half : down < 0 ? room.maxY() - half : room.minY() + half;
        double low = upright ? room.minY() : room.minX();
        double high = upright ? room.maxY() : room.maxX();
        boolean trim = right < 0 || down < 0 || overlap == 0;
        page.line(trim ? Ink.TRIM : Ink.JOIN, on(upright, fixed, low), on(upright, fixed, high));
        double length = high - low;
        for (double share : new double[] {
            Math.max(half, TestSquares.DIAMOND) / length,
            0.3,
            0.5,
            0.7,
            1 - Math.max(half, TestSquares.DIAMOND) / length
        }) {
            diamond(page, on(upright, fixed, low + share * length));
        }
        double inside = fixed + (right < 0 || down > 0 ? 1.5 : -1.5);
        String words = overlap == 0
                ? Phrases.of("sheet.trim-butt", neighbour.name())
                : trim ? Phrases.of("sheet.trim", neighbour.name()) : Phrases.of("sheet.lay", neighbour.name());
        note(page, upright, inside, low + 0.4 * length, right < 0 || down < 0, words);
    }

    private static Point on(boolean upright, double fixed, double along) {
        return upright ? new Point(fixed, along) : new Point(along, fixed);
    }

    private static void note(Canvas page, boolean upright, double fixed, double along, boolean below, String words) {
        double degrees = upright ? 90 : 0;
        // lettering stands on its baseline: on the far side of an upright line, and under a level one, it needs room
        double shift = upright == below ? (upright ? 0.75 * SMALL : 0) : (upright ? 0 : -0.75 * SMALL);
        Point at = on(upright, fixed + (upright ? shift : below ? shift : 0), along);
        page.text(new Writing(Ink.FAINT, at, degrees, SMALL, Writing.Align.MIDDLE, words));
    }

    private static void diamond(Canvas page, Point c) {
        page.line(
                Ink.DIAMOND,
                List.of(
                        c.plus(new Point(TestSquares.DIAMOND, 0)),
                        c.plus(new Point(0, TestSquares.DIAMOND)),
                        c.plus(new Point(-TestSquares.DIAMOND, 0)),
                        c.plus(new Point(0, -TestSquares.DIAMOND))),
                true);
    }

    private void name(Whose whose, Canvas page, Box squares) {
        List<String> lines = List.of(
                whose.make(),
                Phrases.of("sheet.for", whose.wearer()),
                Phrases.of(
                        "sheet.place",
                        tile.name().replaceAll("\\d", ""),
                        String.valueOf(tile.column() + 1),
                        String.valueOf(plane.tiles().columns())));
        double width = NAME_SIZE * 2.2 + 62;
        Box box = corners(width, NAME_SIZE + 3)
                .filter(b -> !b.meets(squares))
                .min(Comparator.comparingInt(this::load))
                .orElseGet(() -> inside(squares, width, NAME_SIZE + 3));
        page.text(Writing.at(Ink.FAINT, box.minX(), box.minY() + 1.5, NAME_SIZE, tile.name()));
        double x = box.minX() + Letters.width(tile.name(), NAME_SIZE) + 2;
        double y = box.minY() + 8;
        for (String line : lines) {
            page.text(Writing.at(
                    Ink.FAINT, x, y, SMALL, Letters.wrapped(line, SMALL, 60).get(0)));
            y -= 1.25 * SMALL;
        }
    }

    /** On a small sheet the squares leave no other corner, but room between their own two lines of lettering. */
    private static Box inside(Box squares, double width, double height) {
        double x = squares.centre().x() - width / 2;
        double y = squares.centre().y() - height / 2;
        return new Box(x, y, x + width, y + height);
    }

    private Box emptiest(double width, double height) {
        return corners(width, height).min(Comparator.comparingInt(this::load)).orElseThrow();
    }

    /** The four corners of the sheet, the lower left first. */
    private Stream<Box> corners(double width, double height) {
        double left = room.minX() + TestSquares.inset(plane.tiles().sheet().overlap());
        double right = room.maxX() - TestSquares.inset(plane.tiles().sheet().overlap()) - width;
        double low = room.minY() + TestSquares.inset(plane.tiles().sheet().overlap());
        double high = room.maxY() - TestSquares.inset(plane.tiles().sheet().overlap()) - height;
        return Stream.of(new Point(left, low), new Point(right, low), new Point(left, high), new Point(right, high))
                .map(p -> new Box(p.x(), p.y(), p.x() + width, p.y() + height));
    }

    /** How much of the pattern is drawn in a box on this sheet. */
    private int load(Box box) {
        Point back = TiledPdf.toSheet(plane.tiles(), tile).move();
        return whole.crossings(
                new Box(box.minX() - back.x(), box.minY() - back.y(), box.maxX() - back.x(), box.maxY() - back.y()));
    }
}
