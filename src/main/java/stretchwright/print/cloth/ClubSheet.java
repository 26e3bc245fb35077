package stretchwright.print.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Unit;
import stretchwright.lay.ClubLay;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Lay;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.ClothName;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.print.kit.Tag;
import stretchwright.print.kit.Tiles;

/** One table of a club: its lay with every piece named, what is too small for its words, and its garments to be ticked. */
final class ClubSheet {
    private static final double TEXT = 3.4;
    private static final double TICK = 3.2;
    private static final double TICK_COLUMN = 88;
    private static final double TICK_INDENT = 5.5;

    /** Drawn smaller than this a cuff has no room for its wearer's name. */
    private static final double SMALLEST = 1.0 / 10;

    /** A long page is for a plotter or the screen: as large as a page can be, up to this. */
    private static final double LONG = 1.0 / 6;

    /** How often the key is tried at most, as on the sheet of one make. */
    private static final int KEYS = 4;

    private final ClubLay.Table table;
    private final int number;
    private final int of;
    private final LaidCloth cloth;
    private final Map<String, String> elsewhere;
    private final Paper paper;
    private final List<Para> key;

    ClubSheet(ClubLay.Table table, int number, int of, LaidCloth cloth, Paper wanted, Map<String, String> elsewhere) {
        this.table = table;
        this.number = number;
        this.of = of;
        this.cloth = cloth;
        this.elsewhere = elsewhere;
        boolean letter = wanted.office().name().equals("Letter");
        paper = (letter ? Stream.of("Letter", "Tabloid", "A2", "A1") : Stream.of("A4", "A3", "A2", "A1"))
                .map(Paper::named)
                .flatMap(p -> Stream.of(p, p.turned()))
                .filter(p -> scale(p) >= SMALLEST)
                .findFirst()
                .orElseGet(this::longPage);
        key = key();
    }

    LaidCloth cloth() {
        return cloth;
    }

    Paper paper() {
        return paper;
    }

    int number() {
        return number;
    }

    String title() {
        return table.garments().size() == 1
                ? Phrases.of("club.title-one", String.valueOf(number), String.valueOf(of))
                : Phrases.of(
                        "club.title-many",
                        String.valueOf(number),
                        String.valueOf(of),
                        String.valueOf(table.garments().size()));
    }

    /** For those who do not see the drawing. */
    String words() {
        return table.garments().stream().map(ClubLay.Garment::name).collect(Collectors.joining(", "));
    }

    /** As wide as an A2 sheet and as long as the cloth asks for, up to what a page can have. */
    private Paper longPage() {
        Paper wide = Paper.of("roll 420 mm").orElseThrow();
        double others = wide.height() - clothRoom(wide, List.of()).height();
        return wide.cutTo(others + cloth.lay().spreadLength() * LONG + 40);
    }

    private double scale(Paper sheet) {
        return LayDrawing.scale(cloth, clothRoom(sheet, List.of()));
    }

    private static Box room(Paper sheet) {
        return new Box(0, 0, sheet.width(), sheet.height()).grown(-Tiles.MARGIN);
    }

    private Box clothRoom(Paper sheet, List<Para> keyed) {
        Box room = room(sheet);
        double top = room.maxY() - Column.height(head(), room.width()) - 3;
        double foot = room.minY()
                + Column.height(keyed, room.width())
                + ticksHeight(room.width())
                + Column.height(LaySheet.cautions(), room.width())
                + 6;
        return new Box(room.minX(), Math.min(foot, top - 1), room.maxX(), top);
    }

    void draw(Canvas canvas) {
        Box room = room(paper);
        Column head = new Column(canvas, room.minX(), room.maxY(), room.width());
        head().forEach(head::write);
        Box drawn = clothRoom(paper, key);
        canvas.spoken(Tag.FIGURE, Phrases.of("lay.shows"), () -> new LayDrawing(cloth, canvas, drawn).draw());
        Column foot = new Column(canvas, room.minX(), drawn.minY() - 2, room.width());
        key.forEach(foot::write);
        ticks(canvas, foot.y() - 2, room);
        Column last = new Column(canvas, room.minX(), foot.y() - 2 - ticksHeight(room.width()), room.width());
        LaySheet.cautions().forEach(last::write);
    }

    /** What the small pieces have no room for; it takes room from the drawing, so it is tried until it stays the same. */
    private List<Para> key() {
        List<Para> now = List.of();
        for (int i = 0; i < KEYS; i++) {
            Canvas scrap = new SvgCanvas(paper.width(), paper.height(), "");
            List<CuttingGuide.Step> unsaid = new LayDrawing(cloth, scrap, clothRoom(paper, now)).draw();
            List<Para> next =
                    unsaid.isEmpty() ? List.of() : List.of(new Para(TEXT, 0, 1, LaySheet.keyed(cloth, unsaid)));
            if (next.equals(now)) {
                break;
            }
            now = next;
        }
        return now;
    }

    private List<Para> head() {
        Lay lay = cloth.lay();
        Unit unit = cloth.unit();
        String roll = cloth.fabric().roll().shape().outline().isPresent()
                ? Phrases.of("club.remnant")
                : Phrases.of("club.roll", Amounts.length(cloth.use().buying().needed(), unit));
        String name = ClothName.of(cloth.fabric());
        return List.of(
                new Para(5.5, 0, 0, title()),
                new Para(TEXT, 0, 0.5, LaySheet.size(lay, unit) + " " + roll + " " + LaySheet.use(lay)),
                new Para(
                        TEXT,
                        0,
                        0.5,
                        LaySheet.cloth(name) + " " + LaySheet.way(lay) + " " + LaySheet.signs() + " "
                                + Phrases.of("lay.sign-left-over")),
                new Para(TEXT, 0, 0.5, LaySheet.grain(cloth)));
    }

    private String bundle(ClubLay.Garment garment) {
        String here = garment.name() + ": "
                + garment.pieces().stream().map(ClubSheet::several).collect(Collectors.joining(", "));
        String others = elsewhere.get(garment.name());
        return others == null ? here : Phrases.of("club.not-here", here, others);
    }

    /** With spaces at which no line is broken. */
    private static String several(Piece piece) {
        return Phrases.said(piece.name().said()) + (piece.cut() > 1 ? "\u00a0\u00d7\u00a0" + piece.cut() : "");
    }

    /** The garments in columns of equal counts. */
    private List<List<Para>> tickColumns(double width) {
        int columns = Math.max(1, (int) (width / TICK_COLUMN));
        List<ClubLay.Garment> garments = table.garments();
        int each = (garments.size() + columns - 1) / columns;
        List<List<Para>> out = new ArrayList<>();
        for (int i = 0; i < garments.size(); i += each) {
            out.add(garments.subList(i, Math.min(garments.size(), i + each)).stream()
                    .map(g -> new Para(TICK, TICK_INDENT, 1.2, bundle(g)))
                    .toList());
        }
        return out;
    }

    private static Para tickHead() {
        return new Para(TEXT, 0, 1, Phrases.of("club.tick"));
    }

    private static double tickWidth(double width) {
        return width / Math.max(1, (int) (width / TICK_COLUMN)) - 4;
    }

    private double ticksHeight(double width) {
        double most = tickColumns(width).stream()
                .mapToDouble(c -> Column.height(c, tickWidth(width)))
                .max()
                .orElse(0);
        return tickHead().height(width) + most + 2;
    }

    private void ticks(Canvas canvas, double top, Box room) {
        Column head = new Column(canvas, room.minX(), top, room.width());
        head.write(tickHead());
        double x = room.minX();
        for (List<Para> paras : tickColumns(room.width())) {
            Column column = new Column(canvas, x, head.y(), tickWidth(room.width()));
            for (Para para : paras) {
                box(canvas, new Point(x + 0.3, column.y() - para.before() - 3.9));
                column.write(para);
            }
            x += tickWidth(room.width()) + 4;
        }
    }

    private static void box(Canvas canvas, Point low) {
        double side = 3.2;
        canvas.line(Ink.GRAIN, new Box(low.x(), low.y(), low.x() + side, low.y() + side).corners(), true);
    }
}
