package stretchwright.print;

import java.util.LinkedHashMap;
import java.util.Map;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.Plane.Spot;
import stretchwright.print.Tiles.Tile;

/**
 * The pattern at true scale on sheets of paper, a page map first.
 *
 * <p>Promise: 1 mm is 1 mm; every sheet carries both test squares; nothing is drawn nearer to a sheet's edge than
 * the paper's margin. The geometry and its sources are in docs/maths/print.md.
 */
final class TiledPdf {
    private TiledPdf() {}

    static Document of(Job job, Paper paper) {
        Plane plane = Plane.of(job.pattern(), paper);
        Map<Spot, Drawing> drawings = new LinkedHashMap<>();
        plane.spots().forEach(s -> drawings.put(s, PieceDrawing.of(job, s.piece())));
        Drawing whole = new Drawing();
        drawings.forEach((spot, drawing) -> drawing.drawOn(spot.motion().on(whole)));
        try (PdfFile file = new PdfFile(Phrases.of("pattern.title-paper", job.make(), paper.name()))) {
            MapPage.draw(job, paper, plane, file);
            for (Tile tile : plane.sheets()) {
                sheet(job, plane, tile, whole, file);
            }
            return file.finished(fileName(paper), "pattern tiles");
        }
    }

    static String fileName(Paper paper) {
        return "pattern-" + paper.name().replace(' ', '-') + ".pdf";
    }

    private static void sheet(Job job, Plane plane, Tile tile, Drawing whole, PdfFile file) {
        Paper paper = plane.tiles().sheet();
        PdfCanvas page = file.page(paper.width(), paper.height());
        page.clip(page.sheet().grown(-paper.margin()));
        whole.drawOn(toSheet(plane.tiles(), tile).on(page));
        new SheetFrame(plane, tile, whole).draw(job, page);
        for (Spot spot : plane.spots()) {
            if (plane.firstSheet(spot).filter(tile::equals).isPresent()) {
                file.bookmark(Phrases.of(
                        "pattern.from-sheet",
                        Letters.shortened(spot.piece().name(), Letters.LONGEST_NAME),
                        tile.name()));
            }
        }
    }

    /** From the plane onto the sheet of paper. */
    static Motion toSheet(Tiles tiles, Tile tile) {
        Box window = tiles.window(tile);
        double margin = tiles.sheet().margin();
        return new Motion(0, new Point(margin - window.minX(), margin - window.minY()));
    }
}
