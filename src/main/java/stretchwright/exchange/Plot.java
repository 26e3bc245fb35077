package stretchwright.exchange;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Piece;

/**
 * The pattern as HP-GL for a pen plotter: 40 units per mm. Each piece once, turned so that the grain runs along the
 * paper (x); across it (y) the plot is no wider than its widest piece. Pen 1 draws cut lines and notches, pen 2 the rest.
 */
final class Plot {
    /** Plotter units per mm: one unit is 0.025 mm (HP-GL/2 manual, table 17-7; trade values S30). */
    static final double UNITS = 40;

    /** Ends the text of a label. */
    private static final char ETX = 3;

    private static final double GAP = 10;

    /** Corners to one instruction: the memory of old plotters is small. */
    private static final int CORNERS = 24;

    private final StringBuilder out = new StringBuilder();

    private Plot() {}

    private record Laid(Piece piece, Point move) {
        /** From the piece's axes to the plot's: a quarter to the right, then moved. */
        Point at(Point p) {
            return p.turned(-90).plus(move);
        }

        List<Point> at(List<Point> line) {
            return line.stream().map(this::at).toList();
        }
    }

    static byte[] of(Handover handover) {
        List<Laid> laid = laid(handover.pattern().pieces());
        Plot plot = new Plot();
        plot.out.append("IN;PA;\nSP1;\n");
        for (Laid l : laid) {
            Folded.runs(l.piece(), l.piece().cutLine()).forEach(r -> plot.draw(l.at(r)));
            Tick.of(l.piece()).forEach(t -> plot.draw(List.of(l.at(t.from()), l.at(t.to()))));
        }
        plot.out.append("SP2;\n");
        for (Laid l : laid) {
            inner(l.piece()).forEach(line -> plot.draw(l.at(line)));
            plot.words(l, handover);
        }
        plot.out.append("PU0,0;SP0;\n");
        return plot.out.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static List<Laid> laid(List<Piece> pieces) {
        List<Box> boxes = pieces.stream()
                .map(p -> p.cutLine().placed(false, -90, Point.ORIGIN).box())
                .toList();
        List<Point> moves = Rows.moves(boxes, 0, GAP);
        List<Laid> out = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            out.add(new Laid(pieces.get(i), onUnits(moves.get(i))));
        }
        return out;
    }

    /** On whole plotter units and not below zero, so that moving a piece rounds nothing. */
    private static Point onUnits(Point p) {
        return new Point(Math.ceil(p.x() * UNITS) / UNITS, Math.ceil(p.y() * UNITS) / UNITS);
    }

    /** Sew line, fold, grain with its arrow heads, and what is marked inside. */
    private static List<List<Point>> inner(Piece piece) {
        List<List<Point>> out = new ArrayList<>(Folded.runs(piece, piece.sewLine()));
        Folded.fold(piece).ifPresent(out::add);
        Point from = piece.grain().from();
        Point to = piece.grain().to();
        out.add(List.of(from, to));
        out.add(head(from, to));
        out.add(head(to, from));
        piece.marks().forEach(m -> out.add(m.line().points()));
        return out;
    }

    private static List<Point> head(Point from, Point tip) {
        Point back = from.minus(tip).unit().times(Math.min(4, from.distance(tip) / 3));
        Point wide = back.left().times(0.35);
        return List.of(tip.plus(back).plus(wide), tip, tip.plus(back).minus(wide));
    }

    private void draw(List<Point> line) {
        out.append("PU").append(units(line.get(0))).append(";\n");
        for (int i = 1; i < line.size(); i += CORNERS) {
            out.append("PD");
            for (int k = i; k < Math.min(line.size(), i + CORNERS); k++) {
                out.append(k > i ? "," : "").append(units(line.get(k)));
            }
            out.append(";\n");
        }
    }

    private void words(Laid l, Handover handover) {
        Piece piece = l.piece();
        List<String> words = new ArrayList<>();
        words.add(Plain.ascii(Phrases.said(piece.name().said())) + ": " + Phrases.said(piece.timesCut()));
        words.add(Plain.ascii(handover.make()));
        words.add(Plain.sentence(Phrases.of("piece.for", Plain.ascii(handover.wearer()))));
        words.add(Plain.sentence(Phrases.of("piece.cloth", Plain.ascii(handover.clothOf(piece)))));
        Words.annotation(handover, piece).stream().skip(1).forEach(w -> words.add(Plain.sentence(w)));
        Polygon inside = piece.sewLine().placed(false, -90, l.move());
        List<List<Point>> drawn = inner(piece).stream().skip(1).map(l::at).toList();
        Label label = Label.on(inside, drawn, words, Label.WRITING);
        // sizes are told in cm; a letter and the space behind it take one and a half of its width
        double wide = Label.WRITING.pitch() * label.size() / 1.5 / 10;
        out.append(String.format(Locale.ROOT, "SI%.3f,%.3f;", wide, label.size() / 10));
        out.append(label.degrees() == 0 ? "DI1,0;\n" : "DI0,1;\n");
        for (int i = 0; i < words.size(); i++) {
            out.append("PU").append(units(label.line(i))).append(";LB");
            out.append(words.get(i)).append(ETX).append(";\n");
        }
    }

    private static String units(Point p) {
        return Math.round(p.x() * UNITS) + "," + Math.round(p.y() * UNITS);
    }
}
