package stretchwright.print;

import java.nio.charset.StandardCharsets;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.pattern.Piece;

/**
 * The pattern as one SVG drawing at true scale: one group per piece, side by side. Inside a group the coordinates are
 * the piece's own, y turned down; the classes are those of {@link Ink}.
 */
final class PatternSvg {
    private static final double GAP = 20;

    private PatternSvg() {}

    static Document of(Job job) {
        double width = GAP;
        double height = 0;
        for (Piece piece : job.pattern().pieces()) {
            width += piece.cutLine().box().width() + GAP;
            height = Math.max(height, piece.cutLine().box().height());
        }
        SvgCanvas svg = new SvgCanvas(width, height + 2 * GAP, job.make() + " - pattern for " + job.wearer());
        double x = GAP;
        for (Piece piece : job.pattern().pieces()) {
            Box box = piece.cutLine().box();
            svg.begin(piece.name().replace(' ', '-'), "piece", new Point(x - box.minX(), GAP - box.minY()));
            PieceDrawing.of(job, piece).drawOn(svg);
            svg.end();
            x += box.width() + GAP;
        }
        return new Document("pattern.svg", "pattern drawing", 1, svg.finished().getBytes(StandardCharsets.UTF_8));
    }
}
