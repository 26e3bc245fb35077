package stretchwright.print.cloth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Lay;
import stretchwright.lay.Lay.Placement;
import stretchwright.lay.Leftover;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Clipping;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Writing;

/**
 * The cloth with all placements, drawn small: x across the cloth, y along it. A piece is mirrored if mirrored, turned,
 * then moved, as Placement says.
 */
final class LayDrawing {
    /** Around the cloth: selvage names at the sides, dimensions below, the scale bar above. */
    private static final double SIDE = 13;

    private static final double BELOW = 8;
    private static final double ABOVE = 8;
    private static final double SMALL = 2.8;

    /** On a shorter arrow its weights would hide it. */
    private static final double ROOM_FOR_WEIGHTS = 5;

    private final LaidCloth cloth;
    private final Lay lay;
    private final Canvas canvas;
    private final double scale;
    private final Point corner;

    LayDrawing(LaidCloth cloth, Canvas canvas, Box room) {
        this.cloth = cloth;
        this.canvas = canvas;
        lay = cloth.lay();
        scale = scale(cloth, room);
        double idle = room.width() - 2 * SIDE - lay.fabricWidth() * scale;
        corner = new Point(room.minX() + SIDE + idle / 2, room.maxY() - ABOVE - height(cloth) * scale);
    }

    static double scale(LaidCloth cloth, Box room) {
        double wide = (room.width() - 2 * SIDE) / cloth.lay().fabricWidth();
        double tall = (room.height() - BELOW - ABOVE) / height(cloth);
        return Math.max(1e-3, Math.min(wide, tall));
    }

    /** What is drawn of the cloth, mm: all of a remnant. */
    private static double height(LaidCloth cloth) {
        double remnant = cloth.fabric().roll().shape().outline().stream()
                .mapToDouble(o -> o.box().maxY())
                .findFirst()
                .orElse(0);
        return Math.max(cloth.lay().spreadLength(), remnant);
    }

    /** Gives the pieces that are too small for their words, in the order of cutting. */
    List<CuttingGuide.Step> draw() {
        cloth();
        scaleBar();
        List<CuttingGuide.Step> unsaid = new ArrayList<>();
        lay.placements().forEach(p -> placement(p).ifPresent(unsaid::add));
        List<Leftover> left = cloth.use().leftovers();
        for (int i = 0; i < left.size(); i++) {
            leftover(left.get(i), (char) ('A' + i));
        }
        unsaid.sort(Comparator.comparingInt(CuttingGuide.Step::number));
        return unsaid;
    }

    private Point at(double x, double y) {
        return new Point(x, y).times(scale).plus(corner);
    }

    private void cloth() {
        double w = lay.fabricWidth();
        double h = lay.spreadLength();
        canvas.line(Ink.CLOTH, at(0, 0), at(w, 0));
        canvas.line(Ink.CLOTH, at(0, h), at(w, h));
        ClothEdges edges = ClothEdges.of(lay, cloth.fabric());
        for (ClothEdges.Line line : edges.lines()) {
            canvas.line(
                    line.ink(),
                    at(line.from().x(), line.from().y()),
                    at(line.to().x(), line.to().y()));
        }
        for (ClothEdges.Label label : edges.labels()) {
            Point beside = label.left()
                    ? at(0, label.middle()).plus(new Point(-2, 0))
                    : at(w, label.middle()).plus(new Point(4, 0));
            upright(beside, label.words());
        }
        cloth.fabric().roll().shape().flaws().forEach(this::spoiled);
        cloth.fabric()
                .roll()
                .shape()
                .outline()
                .ifPresent(o -> onCloth(o).forEach(p -> canvas.line(Ink.CLOTH, p, false)));
        dimension(at(0, 0).plus(new Point(0, -3)), at(w, 0).plus(new Point(0, -3)), w, false);
        dimension(at(0, 0).plus(new Point(-7, 0)), at(0, h).plus(new Point(-7, 0)), h, true);
        if (cloth.fabric().roll().oneWay()) {
            direction(at(w, h / 2).plus(new Point(8, 0)), h * scale);
        }
    }

    private void spoiled(Polygon flaw) {
        for (List<Point> outline : onCloth(flaw)) {
            canvas.line(Ink.GRAIN, outline, false);
            Box box = Box.around(outline);
            canvas.text(Writing.at(Ink.LABEL, box.maxX() + 1, box.minY(), SMALL, Phrases.of("drawing.flaw")));
        }
    }

    /** Lines of a place as it is drawn, none beyond the cloth: in both layers where it is folded lengthwise, the left part below. */
    private List<List<Point>> onCloth(Polygon place) {
        double fold = lay.fold();
        double end = Math.max(place.box().maxY(), lay.spreadLength());
        Box upper = new Box(0, 0, lay.fabricWidth(), end);
        if (fold == 0) {
            return drawn(place, upper);
        }
        List<List<Point>> out = new ArrayList<>(drawn(place.placed(false, 0, new Point(-fold, 0)), upper));
        out.addAll(drawn(place.placed(true, 0, new Point(fold, 0)), new Box(0, 0, fold, end)));
        return out;
    }

    private List<List<Point>> drawn(Polygon place, Box layer) {
        return Clipping.inside(place.points(), true, layer).stream()
                .map(line -> line.stream().map(q -> at(q.x(), q.y())).toList())
                .toList();
    }

    private void upright(Point at, String words) {
        canvas.text(new Writing(Ink.LABEL, at, 90, SMALL, Writing.Align.MIDDLE, words));
    }

    private void dimension(Point a, Point b, double mm, boolean upright) {
        canvas.line(Ink.FAINT, a, b);
        head(Ink.FAINT, b, a);
        head(Ink.FAINT, a, b);
        String words = Amounts.wholeMm(mm) + " (" + Amounts.length(mm, cloth.unit()) + ")";
        Point middle = a.towards(b, 0.5).plus(upright ? new Point(-1.2, 0) : new Point(0, -SMALL - 0.4));
        canvas.text(new Writing(Ink.LABEL, middle, upright ? 90 : 0, SMALL, Writing.Align.MIDDLE, words));
    }

    private void direction(Point middle, double length) {
        Point foot = middle.plus(new Point(0, -0.4 * length));
        Point tip = middle.plus(new Point(0, 0.4 * length));
        canvas.line(Ink.GRAIN, foot, tip);
        head(Ink.GRAIN, foot, tip);
        upright(middle.plus(new Point(3.5, 0)), Phrases.of("drawing.one-way"));
    }

    private void head(Ink ink, Point from, Point tip) {
        Point back = from.minus(tip).unit().times(Math.min(2.5, from.distance(tip) / 3));
        Point wide = back.left().times(0.35);
        canvas.line(ink, tip.plus(back).plus(wide), tip, tip.plus(back).minus(wide));
    }

    private void scaleBar() {
        double bar = lay.fabricWidth() >= 400 ? 200 : 50;
        Point a = at(0, height(cloth)).plus(new Point(0, 3));
        Point b = a.plus(new Point(bar * scale, 0));
        canvas.line(Ink.LABEL, a, b);
        for (Point p : List.of(a, a.towards(b, 0.5), b)) {
            canvas.line(Ink.LABEL, p.plus(new Point(0, -1)), p.plus(new Point(0, 1)));
        }
        canvas.text(Writing.at(
                Ink.LABEL,
                b.x() + 2,
                b.y() - 1,
                SMALL,
                Phrases.of("drawing.scale", Amounts.number(bar, 0), Amounts.number(1 / scale, 1))));
    }

    private Optional<CuttingGuide.Step> placement(Placement p) {
        Piece piece = cloth.piece(p.piece());
        List<Point> outline = paper(p, outline(piece, p.unfolded()));
        canvas.line(Ink.LABEL, outline, true);
        if (p.unfolded()) {
            Box box = piece.cutLine().box();
            double tick = box.height() / 8;
            middleTick(p, box.minY(), box.minY() + tick);
            middleTick(p, box.maxY() - tick, box.maxY());
        }
        Point from = paper(p, List.of(piece.grain().from())).get(0);
        Point to = paper(p, List.of(piece.grain().to())).get(0);
        canvas.line(Ink.GRAIN, from, to);
        head(Ink.GRAIN, from, to);
        head(Ink.GRAIN, to, from);
        CuttingGuide.Step step = cloth.use().guide().step(p.piece(), p.copy());
        boolean said = new LayWords(
                        canvas, step, ClothWords.name(step, piece.cut()), cloth.unit(), List.of(from, to), outline)
                .write();
        if (from.distance(to) >= ROOM_FOR_WEIGHTS) {
            step.weights().forEach(w -> weight(at(w.x(), w.y())));
        }
        return said ? Optional.empty() : Optional.of(step);
    }

    /** A small square, beside the arrow so that both can be seen. */
    private void weight(Point w) {
        Point c = w.plus(new Point(-1.6, 0));
        double h = 0.7;
        canvas.line(
                Ink.GRAIN,
                List.of(
                        c.plus(new Point(-h, -h)),
                        c.plus(new Point(h, -h)),
                        c.plus(new Point(h, h)),
                        c.plus(new Point(-h, h))),
                true);
    }

    /** Dotted, a little inside, so that it is not taken for a piece. */
    private void leftover(Leftover l, char letter) {
        double in = 0.5;
        Point low = at(l.x(), l.y()).plus(new Point(in, in));
        Point high = at(l.x() + l.width(), l.y() + l.height()).plus(new Point(-in, -in));
        canvas.line(Ink.MARK, List.of(low, new Point(high.x(), low.y()), high, new Point(low.x(), high.y())), true);
        canvas.text(Writing.at(Ink.MARK, low.x() + 0.8, low.y() + 0.9, SMALL, String.valueOf(letter)));
    }

    private void middleTick(Placement p, double low, double high) {
        canvas.line(Ink.MARK, paper(p, List.of(new Point(0, low), new Point(0, high))), false);
    }

    private List<Point> paper(Placement p, List<Point> points) {
        Point move = new Point(p.x(), p.y());
        return points.stream()
                .map(q -> (p.mirrored() ? q.mirrored() : q).turned(p.rotation()).plus(move))
                .map(q -> at(q.x(), q.y()))
                .toList();
    }

    /** The cut line; of a piece on the fold laid open, both halves. */
    static List<Point> outline(Piece piece, boolean unfolded) {
        return (unfolded ? Folded.whole(piece) : piece.cutLine()).points();
    }
}
