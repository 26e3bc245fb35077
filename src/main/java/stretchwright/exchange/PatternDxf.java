package stretchwright.exchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Nest;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;

/**
 * The pattern as DXF by the layers of the sewn-product convention (ASTM D6673): one block for each piece, in the piece's
 * own coordinates, and one insert of each, side by side. Sources and exactness: docs/maths/exchange.md.
 */
final class PatternDxf {
    static final String BOUNDARY = "1";
    static final String TURN = "2";
    static final String CURVE = "3";
    static final String NOTCH = "4";
    static final String MIRROR = "6";
    static final String GRAIN = "7";
    static final String INTERNAL = "8";
    static final String HOLE = "13";
    static final String SEW = "14";
    static final String ANNOTATION = "15";

    /** A corner sharper than this is a turn point, degrees (common practice, no source). */
    static final double TURNS = 15;

    private static final double GAP = 20;
    private static final double NAME_SIZE = 3;

    private final Handover handover;
    private final Tags dxf;

    private PatternDxf(Handover handover, Tags dxf) {
        this.handover = handover;
        this.dxf = dxf;
    }

    static byte[] of(Handover handover) {
        List<Piece> pieces = handover.pattern().pieces();
        List<Box> boxes = pieces.stream().map(p -> p.cutLine().box()).toList();
        List<Point> moves = Rows.moves(boxes, 0, GAP);
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            blocks.add(new Block(
                    handover,
                    pieces.get(i),
                    Plain.block(pieces.get(i).name().word(), i + 1),
                    boxes.get(i),
                    moves.get(i)));
        }
        return file(blocks);
    }

    /**
     * A block for each piece in each size, the sizes of a piece inserted over each other.
     *
     * @param sizes in the nest's order, each with the size's name for a wearer
     */
    static byte[] of(Nest nest, List<Handover> sizes) {
        List<List<Box>> boxes =
                nest.pieces().stream().map(PatternDxf::fromAnchors).toList();
        List<Point> moves = Rows.moves(boxes.stream().map(PatternDxf::around).toList(), 0, GAP);
        List<Block> blocks = new ArrayList<>();
        for (int p = 0; p < nest.pieces().size(); p++) {
            Nest.Nested nested = nest.pieces().get(p);
            for (int s = 0; s < sizes.size(); s++) {
                Point anchor = nested.anchors().get(s);
                blocks.add(new Block(
                        sizes.get(s),
                        sizes.get(s).pattern().piece(nested.name()),
                        Plain.block(nested.name() + "-" + sizes.get(s).wearer(), blocks.size() + 1),
                        nested.cutLines().get(s).box(),
                        moves.get(p).minus(anchor)));
            }
        }
        return file(blocks);
    }

    private static List<Box> fromAnchors(Nest.Nested nested) {
        List<Box> out = new ArrayList<>();
        for (int s = 0; s < nested.anchors().size(); s++) {
            Point anchor = nested.anchors().get(s);
            out.add(Box.around(nested.cutLines().get(s).box().corners().stream()
                    .map(c -> c.minus(anchor))
                    .toList()));
        }
        return out;
    }

    private static Box around(List<Box> boxes) {
        return Box.around(boxes.stream().flatMap(b -> b.corners().stream()).toList());
    }

    /** A piece, its block's name, its own box and where it is inserted. */
    private record Block(Handover of, Piece piece, String name, Box box, Point move) {}

    private static byte[] file(List<Block> blocks) {
        Box all = Box.around(blocks.stream()
                .flatMap(b -> b.box.corners().stream().map(c -> c.plus(b.move)))
                .toList());
        Tags dxf = new Tags(all, layers());
        dxf.section("BLOCKS");
        blocks.forEach(b -> new PatternDxf(b.of, dxf).block(b.piece, b.name));
        dxf.endSection().section("ENTITIES");
        new PatternDxf(blocks.get(0).of, dxf).styleText(all);
        blocks.forEach(b -> dxf.insert(BOUNDARY, b.name, b.move));
        dxf.endSection();
        return dxf.finished();
    }

    /** Layers with a colour for the screen (of our own choice). */
    private static Map<String, Integer> layers() {
        Map<String, Integer> out = new LinkedHashMap<>();
        out.put("0", 7);
        out.put(BOUNDARY, 7);
        out.put(TURN, 8);
        out.put(CURVE, 9);
        out.put(NOTCH, 1);
        out.put(MIRROR, 6);
        out.put(GRAIN, 3);
        out.put(INTERNAL, 4);
        out.put(HOLE, 1);
        out.put(SEW, 5);
        out.put(ANNOTATION, 8);
        return Collections.unmodifiableMap(out);
    }

    /** What holds for all pieces; below the row of them. */
    private void styleText(Box all) {
        List<String> words = List.of(
                "ASTM/D13Proposal 1 Version: D 6673-04",
                "Author: Stretchwright",
                "Style Name: " + Plain.dxf(handover.make()),
                "Sample Size: " + Plain.dxf(handover.wearer()),
                "Units: METRIC");
        for (int i = 0; i < words.size(); i++) {
            Point at = new Point(all.minX(), all.minY() - (i + 2) * Label.LEADING * 5);
            dxf.text(BOUNDARY, at, 5, 0, words.get(i));
        }
    }

    private void block(Piece piece, String name) {
        dxf.beginBlock(name, BOUNDARY);
        outline(BOUNDARY, piece.cutLine().points(), true);
        Folded.fold(piece).ifPresent(f -> dxf.line(MIRROR, f.get(0), f.get(1)));
        for (List<Point> run : Folded.runs(piece, piece.sewLine())) {
            boolean closed = run.get(0).equals(run.get(run.size() - 1));
            outline(SEW, closed ? run.subList(0, run.size() - 1) : run, closed);
        }
        Tick.of(piece).forEach(t -> dxf.notch(NOTCH, t));
        dxf.line(GRAIN, piece.grain().from(), piece.grain().to());
        piece.marks().forEach(this::mark);
        pieceText(piece);
        names(piece);
        dxf.endBlock(BOUNDARY);
    }

    /** A line with the points it turns at and those that carry its curves. */
    private void outline(String layer, List<Point> points, boolean closed) {
        dxf.polyline(layer, points, closed);
        for (int i = 0; i < points.size(); i++) {
            dxf.point(turns(points, i, closed) ? TURN : CURVE, points.get(i));
        }
    }

    private static boolean turns(List<Point> p, int i, boolean closed) {
        int n = p.size();
        if (!closed && (i == 0 || i == n - 1)) {
            return true;
        }
        Point in = p.get(i).minus(p.get((i + n - 1) % n));
        Point on = p.get((i + 1) % n).minus(p.get(i));
        return Math.abs(StrictMath.toDegrees(StrictMath.atan2(in.cross(on), in.dot(on)))) > TURNS;
    }

    private void mark(Mark mark) {
        if (mark.kind() == Mark.Kind.EYELET) {
            dxf.point(HOLE, mark.line().at(mark.line().length() / 2));
            return;
        }
        List<Point> line = mark.line().points();
        boolean closed = line.size() > 3 && line.get(0).equals(line.get(line.size() - 1));
        outline(INTERNAL, closed ? line.subList(0, line.size() - 1) : line, closed);
    }

    /** What is said of the piece: the convention's words on the boundary's layer, ours as annotation. */
    private void pieceText(Piece piece) {
        List<String> system = List.of(
                "Piece Name: " + Plain.dxf(piece.name().word()),
                "Size: " + Plain.dxf(handover.wearer()),
                "Quantity: " + piece.cut(),
                "Material: " + Plain.dxf(handover.clothOf(piece)));
        List<String> all = new ArrayList<>(system);
        Words.annotation(handover, piece).forEach(w -> all.add(Plain.sentence(w)));
        Label label = Label.on(piece.sewLine(), drawn(piece), all, Label.WRITING);
        for (int i = 0; i < all.size(); i++) {
            String layer = i < system.size() ? BOUNDARY : ANNOTATION;
            dxf.text(layer, label.line(i), label.size(), label.degrees(), all.get(i));
        }
    }

    private static List<List<Point>> drawn(Piece piece) {
        List<List<Point>> out = new ArrayList<>();
        out.add(List.of(piece.grain().from(), piece.grain().to()));
        piece.marks().forEach(m -> out.add(m.line().points()));
        return out;
    }

    /** Each notch and mark says what it marks, in small letters beside it. */
    private void names(Piece piece) {
        piece.notches().forEach(n -> {
            Point in = n.at().minus(n.outward().times(2));
            String name = Phrases.said(n.name().said());
            String words = n.mark() == Notch.Mark.DOUBLE ? Phrases.of("notch.double", name) : name;
            beside(in, n.outward(), Plain.dxf(words), piece.sewLine());
        });
        piece.marks()
                .forEach(m -> dxf.text(
                        ANNOTATION,
                        m.line().start().towards(m.line().end(), 0.15).plus(new Point(0, 1)),
                        NAME_SIZE,
                        0,
                        Plain.dxf(Phrases.said(m.name().said()))));
    }

    /** Level lettering that ends or starts at the notch, on the side where the piece is; below any line from there. */
    private void beside(Point at, Point outward, String words, Polygon inside) {
        double back = outward.x() > 0 ? words.length() * 0.9 * NAME_SIZE : 0;
        Point start = at.plus(new Point(-back, -NAME_SIZE - 1));
        dxf.text(ANNOTATION, inside.contains(start) ? start : at, NAME_SIZE, 0, words);
    }
}
