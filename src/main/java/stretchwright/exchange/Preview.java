package stretchwright.exchange;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;

/**
 * The pattern at a glance, as PNG: white ground, every piece once, {@link #LONG_SIDE} points on the long side or true to
 * scale at so many points per inch. Drawn without the machine's own typefaces and without its screen.
 */
final class Preview {
    static final int LONG_SIDE = 1200;

    private static final double INCH = 25.4;
    private static final double GAP = 30;
    private static final Color CLOTH = new Color(0xE8EEF4);
    private static final Color CUT = new Color(0x1B1B1B);
    private static final Color SEW = new Color(0x0067A5);
    private static final Color INNER = new Color(0x8A8A8A);

    private static final Label.Letters LETTERS =
            new Label.Letters(0.8, List.of(36.0, 28.0, 22.0, 18.0, 15.0, 12.0, 10.0, 8.0, 6.0));

    private Preview() {}

    /** @param dpi points per inch of the pattern; empty for a picture of a usual size */
    static byte[] of(Pattern pattern, OptionalInt dpi) {
        List<Box> boxes = pattern.pieces().stream().map(p -> p.cutLine().box()).toList();
        double tallest = boxes.stream().mapToDouble(Box::height).max().orElse(1);
        List<Point> moves = Rows.moves(boxes, tallest, GAP);
        Box all = around(boxes, moves).grown(GAP);
        double scale = dpi.isPresent() ? dpi.getAsInt() / INCH : LONG_SIDE / Math.max(all.width(), all.height());
        int width = Math.max(1, (int) Math.round(all.width() * scale));
        int height = Math.max(1, (int) Math.round(all.height() * scale));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        try (Face face = Face.open()) {
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, width, height);
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            pen.transform(new AffineTransform(scale, 0, 0, -scale, -all.minX() * scale, all.maxY() * scale));
            for (int i = 0; i < moves.size(); i++) {
                AffineTransform before = pen.getTransform();
                pen.translate(moves.get(i).x(), moves.get(i).y());
                draw(pattern.pieces().get(i), pen, face, scale);
                pen.setTransform(before);
            }
        } finally {
            pen.dispose();
        }
        return Picture.png(image, scale);
    }

    private static Box around(List<Box> boxes, List<Point> moves) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Point move = moves.get(i);
            boxes.get(i).corners().forEach(c -> corners.add(c.plus(move)));
        }
        return Box.around(corners);
    }

    /** Its name and how often it is cut, upright on the screen although y runs up here. */
    private static void name(Piece piece, Graphics2D pen, Face face) {
        List<List<Point>> drawn = new ArrayList<>();
        drawn.add(List.of(piece.grain().from(), piece.grain().to()));
        piece.marks().forEach(m -> drawn.add(m.line().points()));
        List<String> words = List.of(Plain.ascii(Phrases.said(piece.name().said())), Phrases.said(piece.timesCut()));
        Label label = Label.on(piece.sewLine(), drawn, words, LETTERS);
        pen.setColor(CUT);
        for (int i = 0; i < words.size(); i++) {
            AffineTransform before = pen.getTransform();
            Point at = label.line(i);
            pen.translate(at.x(), at.y());
            pen.rotate(StrictMath.toRadians(label.degrees()));
            pen.scale(label.size(), label.size());
            pen.fill(face.outline(words.get(i)));
            pen.setTransform(before);
        }
    }

    private static void draw(Piece piece, Graphics2D pen, Face face, double scale) {
        pen.setColor(CLOTH);
        pen.fill(line(piece.cutLine().points(), true));
        pen.setColor(INNER);
        pen.setStroke(stroke(1 / scale));
        piece.marks().forEach(m -> pen.draw(line(m.line().points(), false)));
        pen.draw(line(List.of(piece.grain().from(), piece.grain().to()), false));
        pen.setColor(SEW);
        Folded.runs(piece, piece.sewLine()).forEach(r -> pen.draw(line(r, false)));
        float dash = (float) (6 / scale);
        pen.setColor(CUT);
        pen.setStroke(new BasicStroke(
                (float) (1.5 / scale), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {dash, dash}, 0));
        Folded.fold(piece).ifPresent(f -> pen.draw(line(f, false)));
        pen.setStroke(stroke(2 / scale));
        Folded.runs(piece, piece.cutLine()).forEach(r -> pen.draw(line(r, false)));
        Tick.of(piece).forEach(t -> pen.draw(line(List.of(t.from(), t.to()), false)));
        name(piece, pen, face);
    }

    private static BasicStroke stroke(double wide) {
        return new BasicStroke((float) wide, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private static Path2D line(List<Point> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.subList(1, points.size()).forEach(p -> path.lineTo(p.x(), p.y()));
        if (closed) {
            path.closePath();
        }
        return path;
    }
}
