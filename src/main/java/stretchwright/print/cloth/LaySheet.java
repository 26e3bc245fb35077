package stretchwright.print.cloth;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Unit;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Lay;
import stretchwright.pattern.Notch;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Column;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.print.kit.Tag;
import stretchwright.print.kit.Tiles;

/**
 * The cutter's card: the lay on one office sheet, scaled to fit, with what to buy, grain distances, the order of cutting,
 * notches and cautions, as PDF and as SVG: the same drawing on two canvases. Behind it, in the
 * PDF, the cutting guide.
 */
public final class LaySheet {
    private static final double TEXT = 3.4;

    /** How often the key is tried at most; the second try is usually like the first. */
    private static final int KEYS = 4;

    private LaySheet() {}

    public static Document pdf(Job job, String name) {
        Paper sheet = sheet(job);
        try (PdfFile file = new PdfFile(title(job))) {
            draw(job, file.page(sheet.width(), sheet.height()), sheet);
            CuttingPages.write(file, job);
            return file.finished(name + ".pdf", "lay");
        }
    }

    public static Document svg(Job job, String name) {
        Paper sheet = sheet(job);
        SvgCanvas svg = new SvgCanvas(sheet.width(), sheet.height(), title(job));
        draw(job, svg, sheet);
        return new Document(name + ".svg", "lay drawing", 1, svg.finished().getBytes(StandardCharsets.UTF_8));
    }

    private static String title(Job job) {
        return Phrases.of("lay.title", job.make(), job.wearer());
    }

    /** Upright or on its side, whichever shows the cloth larger. */
    private static Paper sheet(Job job) {
        Paper upright = job.office();
        return Stream.of(upright, upright.turned())
                .max((a, b) -> Double.compare(scale(job, a), scale(job, b)))
                .orElse(upright);
    }

    private static double scale(Job job, Paper sheet) {
        return LayDrawing.scale(job.laid(), clothRoom(job, sheet, List.of()));
    }

    private static Box room(Paper sheet) {
        return new Box(0, 0, sheet.width(), sheet.height()).grown(-Tiles.MARGIN);
    }

    private static Box clothRoom(Job job, Paper sheet, List<Para> key) {
        Box room = room(sheet);
        double top = room.maxY() - Column.height(head(job), room.width()) - 3;
        double foot = room.minY() + Column.height(key, room.width()) + Column.height(cautions(), room.width()) + 4;
        return new Box(room.minX(), foot, room.maxX(), top);
    }

    private static void draw(Job job, Canvas canvas, Paper sheet) {
        Box room = room(sheet);
        Column head = new Column(canvas, room.minX(), room.maxY(), room.width());
        head(job).forEach(head::write);
        List<Para> key = key(job, sheet);
        Box cloth = clothRoom(job, sheet, key);
        canvas.spoken(Tag.FIGURE, Phrases.of("lay.shows"), () -> new LayDrawing(job.laid(), canvas, cloth).draw());
        Column foot = new Column(canvas, room.minX(), cloth.minY() - 3, room.width());
        key.forEach(foot::write);
        cautions().forEach(foot::write);
    }

    /** What the small pieces have no room for. It takes room from the drawing, so it is tried until it stays the same. */
    private static List<Para> key(Job job, Paper sheet) {
        List<Para> key = List.of();
        for (int i = 0; i < KEYS; i++) {
            Canvas scrap = new SvgCanvas(sheet.width(), sheet.height(), "");
            List<CuttingGuide.Step> unsaid = new LayDrawing(job.laid(), scrap, clothRoom(job, sheet, key)).draw();
            List<Para> next = unsaid.isEmpty() ? List.of() : List.of(new Para(TEXT, 0, 1, keyed(job.laid(), unsaid)));
            if (next.equals(key)) {
                return key;
            }
            key = next;
        }
        return key;
    }

    /** No line is broken inside a name. */
    static String keyed(LaidCloth cloth, List<CuttingGuide.Step> unsaid) {
        return unsaid.stream()
                        .map(s -> (s.number() + " "
                                                + ClothWords.name(
                                                        s,
                                                        cloth.piece(s.piece()).cut()))
                                        .replace(' ', '\u00a0')
                                + ": " + ClothWords.side(s) + ", \u2190 "
                                + Amounts.length(s.fromEdge().get(0), cloth.unit()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    /** How long and how wide the cloth is as it lies. */
    static String size(Lay lay, Unit unit) {
        String[] values = {
            Amounts.wholeMm(lay.length()),
            Amounts.length(lay.length(), unit),
            Amounts.wholeMm(lay.fabricWidth()),
            Amounts.length(lay.fabricWidth(), unit)
        };
        return lay.method() == Lay.Method.FOLDED
                ? Phrases.of("lay.size-folded", values)
                : Phrases.of("lay.size", values);
    }

    static String use(Lay lay) {
        return Phrases.of("lay.use", Amounts.percent(lay.use())) + " "
                + (lay.shortest()
                        ? Phrases.of("lay.shortest")
                        : Phrases.of("lay.above-floor", Amounts.percent(lay.aboveFloor())));
    }

    static String cloth(String name) {
        return Phrases.of("lay.cloth", name);
    }

    /** What the signs of the drawing mean. */
    static String signs() {
        return Phrases.of("lay.signs");
    }

    private static List<Para> head(Job job) {
        var lay = job.lay();
        String buy = job.fabric().roll().shape().outline().isPresent()
                ? Phrases.of("lay.remnant")
                : Phrases.of("lay.buy", Amounts.toBuy(job.use().buying()));
        String size = size(lay, job.unit()) + " " + buy + " " + use(lay);
        return List.of(
                new Para(5.5, 0, 0, title(job)),
                new Para(TEXT, 0, 0.5, size),
                new Para(
                        TEXT,
                        0,
                        0.5,
                        cloth(job.cloth()) + " " + way(lay) + " " + signs() + " " + Phrases.of("lay.sign-left-over")),
                new Para(TEXT, 0, 0.5, grain(job.laid())),
                new Para(TEXT, 0, 0.5, Phrases.of("lay.notches", notches(job))));
    }

    /** Of the pieces on this cloth, those with two cuts told. */
    private static String notches(Job job) {
        return job.lays().get(0).pieces().stream()
                .filter(p -> !p.notches().isEmpty())
                .map(p -> Letters.shortened(p.name(), Letters.LONGEST_NAME) + ": "
                        + p.notches().stream()
                                .map(n -> n.mark() == Notch.Mark.DOUBLE
                                        ? Phrases.of("lay.notch-double", n.name())
                                        : n.name())
                                .distinct()
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    static String grain(LaidCloth cloth) {
        String unit = cloth.unit() == Unit.IN
                ? Phrases.of("lay.inches")
                : cloth.unit().symbol();
        return Phrases.of("lay.grain") + " "
                + Phrases.of("lay.distances", ClothWords.from(cloth), unit, cloth.aroundTheLeg());
    }

    /** How the cloth is spread. */
    static String way(Lay lay) {
        return switch (lay.method()) {
            case OPEN -> Phrases.of("lay.way.open");
            case FOLDED -> Phrases.of("lay.way.folded");
            case FOLDED_CROSSWISE -> Phrases.of("lay.way.folded-crosswise");
            case FOLDED_OFF_THE_MIDDLE -> Phrases.of("lay.way.folded-off-the-middle");
            case PART_FOLDED -> Phrases.of("lay.way.part-folded");
        };
    }

    /** Common practice, no source; grain tolerance and tools: trade-values sections 10 and 12. */
    static List<Para> cautions() {
        return List.of(
                new Para(TEXT, 0, 0, Phrases.of("lay.caution-cloth")),
                new Para(TEXT, 0, 0.5, Phrases.of("lay.caution-tools")));
    }
}
