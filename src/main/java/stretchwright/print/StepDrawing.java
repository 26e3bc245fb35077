package stretchwright.print;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import stretchwright.ground.Box;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.sewing.SewingPlan.Operation;

/**
 * What one step of the sewing joins, drawn from the pieces themselves: the edges that meet, thick and lettered, with
 * their notches and pins; all pieces of one step to one scale, outside up.
 */
final class StepDrawing {
    private static final double TEXT = 3;
    private static final double GAP = 10;
    private static final double PIN = 5;
    /** Along the edge from pin to pin, mm of cloth; wider where that gave more than a dozen. */
    private static final double PIN_SPACING = 100;

    private static final int MOST_PINS = 12;

    private final Canvas canvas;
    private final List<Panel> panels;
    private final double scale;

    /** A piece as it is shown, with those of its edges that are sewn; a second one of a pair is its mirror image. */
    private record Panel(Piece piece, boolean mirrored, Map<String, Edge> lettered) {
        Box box() {
            Box box = piece.cutLine().box();
            return mirrored ? new Box(-box.maxX(), box.minY(), -box.minX(), box.maxY()) : box;
        }
    }

    private StepDrawing(Canvas canvas, Box room, List<Panel> panels) {
        this.canvas = canvas;
        this.panels = panels;
        double wide = panels.stream().mapToDouble(p -> p.box().width()).sum();
        double high = panels.stream().mapToDouble(p -> p.box().height()).max().orElse(1);
        scale = Math.min(
                (room.width() - GAP * (panels.size() + 1)) / wide, (room.height() - 2 * GAP - 2 * TEXT) / high);
    }

    /** Whether the step joins edges that can be shown. */
    static boolean shows(Job job, Operation operation) {
        return !panels(job, operation).isEmpty();
    }

    static Document svg(Job job, Operation operation) {
        Box room = new Box(0, 0, 150, 95);
        String title = operation.step() + ". " + operation.name();
        SvgCanvas svg = new SvgCanvas(room.width(), room.height(), title);
        draw(job, operation, svg, room);
        String name = String.format(Locale.ROOT, "step-%02d.svg", operation.step());
        return new Document(name, "step drawing", 1, svg.finished().getBytes(StandardCharsets.UTF_8));
    }

    static void draw(Job job, Operation operation, Canvas canvas, Box room) {
        List<Panel> panels = panels(job, operation);
        if (!panels.isEmpty()) {
            new StepDrawing(canvas, room, panels).draw(room);
        }
    }

    /** Edges that meet carry the same letter where they are told apart by their piece only. */
    private static List<Panel> panels(Job job, Operation operation) {
        Map<String, Panel> out = new LinkedHashMap<>();
        char letter = 'A';
        for (String place : operation.joins()) {
            for (Piece piece : job.pattern().pieces()) {
                for (Edge edge : piece.edges()) {
                    if (!place.equals(piece.name() + ": " + edge.name())) {
                        continue;
                    }
                    Panel first = out.computeIfAbsent(
                            piece.name(), n -> new Panel(piece, false, new LinkedHashMap<>()));
                    boolean again = first.lettered.containsValue(edge);
                    Panel panel = !again
                            ? first
                            : out.computeIfAbsent(
                                    piece.name() + " again",
                                    n -> new Panel(piece, piece.mirrored(), new LinkedHashMap<>()));
                    panel.lettered.putIfAbsent(String.valueOf(letter), edge);
                    letter++;
                }
            }
        }
        return new ArrayList<>(out.values());
    }

    private void draw(Box room) {
        double wide = panels.stream().mapToDouble(p -> scale * p.box().width()).sum() + GAP * (panels.size() - 1);
        double x = room.centre().x() - wide / 2;
        for (Panel panel : panels) {
            Box box = panel.box();
            double left = x - scale * box.minX();
            double foot = room.centre().y() - scale * box.centre().y() + TEXT;
            UnaryOperator<Point> put =
                    p -> new Point(left + scale * (panel.mirrored ? -p.x() : p.x()), foot + scale * p.y());
            draw(panel, put);
            canvas.text(Writing.middle(
                    Ink.LABEL,
                    x + scale * box.width() / 2,
                    room.minY() + 2,
                    TEXT,
                    panel.piece.name() + (panel.mirrored ? ", the other one" : "")));
            x += scale * box.width() + GAP;
        }
    }

    private void draw(Panel panel, UnaryOperator<Point> put) {
        canvas.line(Ink.FAINT, panel.piece.cutLine().points().stream().map(put).toList(), true);
        panel.lettered.forEach((letter, edge) -> {
            canvas.line(Ink.CUT, edge.line().points().stream().map(put).toList(), false);
            pins(edge, put);
            letter(edge, letter, panel, put);
            panel.piece.notches().stream()
                    .filter(n -> n.edge().equals(edge.name()))
                    .forEach(n -> notch(n, put));
        });
    }

    /** Across the edge, from the cloth outwards, as they are pulled out. */
    private void pins(Edge edge, UnaryOperator<Point> put) {
        Path line = edge.line();
        int count = (int) Math.max(1, Math.min(MOST_PINS, Math.floor(edge.length() / PIN_SPACING)));
        for (int i = 0; i < count; i++) {
            double along = edge.length() * (i + 0.5) / count;
            Point at = put.apply(line.at(along));
            Point ahead = put.apply(line.at(along + 1));
            if (at.distance(ahead) > 0) {
                Point across = ahead.minus(at).unit().left().times(PIN / 2);
                canvas.line(Ink.LABEL, at.plus(across), at.minus(across));
            }
        }
    }

    private void notch(Notch notch, UnaryOperator<Point> put) {
        Point at = put.apply(notch.at());
        Point out = put.apply(notch.at().plus(notch.outward())).minus(at).unit();
        canvas.line(Ink.NOTCH, at, at.plus(out.times(2.5)));
        Point words = at.minus(out.times(1.5));
        Writing.Align align = out.x() > 0.3 ? Writing.Align.END : out.x() < -0.3 ? Writing.Align.START : Writing.Align.MIDDLE;
        canvas.text(new Writing(Ink.NOTCH, words.plus(new Point(0, -0.8)), 0, 2.4, align, notch.name()));
    }

    private void letter(Edge edge, String letter, Panel panel, UnaryOperator<Point> put) {
        Point at = edge.line().at(edge.length() * 0.4);
        Point along = edge.line().directionAt(edge.length() * 0.4);
        Point out = along.left().times(-1);
        Point there = put.apply(at);
        Point aside = put.apply(at.plus(out)).minus(there).unit().times(5);
        canvas.text(Writing.middle(
                Ink.LABEL, there.x() + aside.x(), there.y() + aside.y() - 1.5, 4.5, letter));
        Point middle = put.apply(panel.piece.cutLine().box().centre());
        canvas.text(Writing.middle(Ink.FAINT, middle.x(), middle.y(), 2.4, "outside"));
    }
}
