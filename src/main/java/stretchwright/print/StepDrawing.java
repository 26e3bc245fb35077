package stretchwright.print;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
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
    private static final double GAP = 24;
    private static final double PIN = 5;
    /** Along the edge from pin to pin, mm of cloth; wider where that gave more than a dozen. */
    private static final double PIN_SPACING = 100;

    private static final int MOST_PINS = 12;
    private static final double SMALL = 2.4;
    private static final double LARGE = 4.5;
    /** Where along its edge a letter stands. */
    private static final double LETTER_AT = 0.3;
    /** An edge steeper than this has its notch names beside it. */
    private static final double SLANT = 0.3;

    private final Canvas canvas;
    private final List<Panel> panels;
    private final double scale;

    /** An edge that is sewn, where it lies on the piece as shown. */
    private record Sewn(String letter, Path line, List<Notch> notches) {}

    /** A piece as it is shown, whole; the second one of a pair is its mirror image. */
    private record Panel(Piece piece, boolean mirrored, List<Sewn> sewn) {
        List<Point> outline() {
            return LayDrawing.outline(piece, piece.onFold());
        }

        Box box() {
            Box box = Box.around(outline());
            return mirrored ? new Box(-box.maxX(), box.minY(), -box.minX(), box.maxY()) : box;
        }

        boolean shows(Edge edge) {
            return sewn.stream()
                    .anyMatch(s -> s.line().points().containsAll(edge.line().points()));
        }

        /** Whether what is sewn lies left of the middle. */
        boolean sewnOnLeft() {
            double middle = sewn.stream()
                    .mapToDouble(s -> s.line().at(s.line().length() / 2).x())
                    .average()
                    .orElse(0);
            return (mirrored ? -middle : middle) < box().centre().x();
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

    private static List<Panel> panels(Job job, Operation operation) {
        Map<String, Panel> out = new LinkedHashMap<>();
        char letter = 'A';
        for (String place : operation.joins()) {
            for (Piece piece : job.pattern().pieces()) {
                for (Edge edge : piece.edges()) {
                    if (place.equals(piece.name() + ": " + edge.name())) {
                        add(out, piece, edge, String.valueOf(letter++));
                    }
                }
            }
        }
        List<Panel> panels = new ArrayList<>(out.values());
        if (panels.size() == 2 && panels.get(1).mirrored() && panels.get(0).sewnOnLeft()) {
            Collections.reverse(panels);
        }
        return panels;
    }

    /** An edge named twice is that of the second piece of the pair, or the other half's of a piece on the fold. */
    private static void add(Map<String, Panel> out, Piece piece, Edge edge, String letter) {
        List<Notch> notches = piece.notches().stream()
                .filter(n -> n.edge().equals(edge.name()))
                .toList();
        Panel first = out.computeIfAbsent(piece.name(), n -> new Panel(piece, false, new ArrayList<>()));
        if (!first.shows(edge)) {
            first.sewn.add(new Sewn(letter, piece.onFold() ? whole(edge.line()) : edge.line(), notches));
        } else if (piece.onFold()) {
            first.sewn.add(new Sewn(letter, otherHalf(edge.line()), List.of()));
        } else {
            out.computeIfAbsent(piece.name() + " again", n -> new Panel(piece, piece.mirrored(), new ArrayList<>()))
                    .sewn
                    .add(new Sewn(letter, edge.line(), notches));
        }
    }

    private static Path otherHalf(Path line) {
        return new Path(line.reversed().points().stream().map(Point::mirrored).toList());
    }

    /** Both halves of an edge that begins or ends at the fold. */
    private static Path whole(Path half) {
        boolean begins = half.start().x() == 0;
        boolean ends = half.end().x() == 0;
        if (begins == ends) {
            return half;
        }
        List<Point> all = new ArrayList<>(begins ? otherHalf(half).points() : half.points());
        List<Point> rest = begins ? half.points() : otherHalf(half).points();
        all.addAll(rest.subList(1, rest.size()));
        return new Path(all);
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
        canvas.line(Ink.FAINT, panel.outline().stream().map(put).toList(), true);
        for (Sewn sewn : panel.sewn) {
            canvas.line(Ink.CUT, sewn.line().points().stream().map(put).toList(), false);
            pins(sewn.line(), put);
            letter(sewn, put);
            sewn.notches().forEach(n -> notch(n, put));
        }
        Point middle = put.apply(Box.around(panel.outline()).centre());
        canvas.text(Writing.middle(Ink.FAINT, middle.x(), middle.y(), SMALL, "outside"));
    }

    /** Across the edge, to be pulled out as the needle comes. */
    private void pins(Path line, UnaryOperator<Point> put) {
        double length = line.length();
        int count = (int) Math.max(1, Math.min(MOST_PINS, Math.floor(length / PIN_SPACING)));
        for (int i = 0; i < count; i++) {
            double along = length * (i + 0.5) / count;
            Point at = put.apply(line.at(along));
            Point ahead = put.apply(line.at(along + 1));
            if (at.distance(ahead) > 0) {
                Point across = ahead.minus(at).unit().left().times(PIN / 2);
                canvas.line(Ink.LABEL, at.plus(across), at.minus(across));
            }
        }
    }

    /** The name stands outside the piece, where there is room. */
    private void notch(Notch notch, UnaryOperator<Point> put) {
        Point at = put.apply(notch.at());
        Point out = put.apply(notch.at().plus(notch.outward())).minus(at).unit();
        canvas.line(Ink.NOTCH, at.minus(out.times(1.5)), at.plus(out.times(1.5)));
        Point words = at.plus(out.times(3.5)).plus(new Point(0, -0.8));
        Writing.Align align =
                out.x() > SLANT ? Writing.Align.START : out.x() < -SLANT ? Writing.Align.END : Writing.Align.MIDDLE;
        canvas.text(new Writing(Ink.NOTCH, words, 0, SMALL, align, notch.name()));
    }

    private void letter(Sewn sewn, UnaryOperator<Point> put) {
        double along = sewn.line().length() * LETTER_AT;
        Point at = sewn.line().at(along);
        Point there = put.apply(at);
        Point out = put.apply(at.minus(sewn.line().directionAt(along).left()))
                .minus(there)
                .unit()
                .times(6);
        canvas.text(Writing.middle(Ink.LABEL, there.x() + out.x(), there.y() + out.y() - 1.5, LARGE, sewn.letter()));
    }
}
