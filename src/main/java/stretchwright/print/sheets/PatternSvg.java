package stretchwright.print.sheets;

import java.nio.charset.StandardCharsets;
import stretchwright.ground.Document;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;

/**
 * The pattern as one SVG drawing at true scale: one group per piece, side by side. Inside a group the coordinates are
 * the piece's own, y turned down; the classes are those of {@link Ink}.
 */
public final class PatternSvg {
    private PatternSvg() {}

    public static Document of(Job job) {
        SideBySide row = SideBySide.of(job.pattern().pieces());
        SvgCanvas svg = new SvgCanvas(row.width(), row.height(), Phrases.of("pattern.title", job.make(), job.wearer()));
        for (SideBySide.Spot spot : row.spots()) {
            svg.begin(spot.piece().name().word().replace(' ', '-'), "piece", spot.move());
            PieceDrawing.of(job, spot.piece()).drawOn(svg);
            svg.end();
        }
        return new Document("pattern.svg", "pattern drawing", 1, svg.finished().getBytes(StandardCharsets.UTF_8));
    }
}
