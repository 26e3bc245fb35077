package stretchwright.print.sheets;

import java.util.List;
import java.util.stream.Collectors;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfCanvas;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SizeLine;
import stretchwright.print.kit.Tag;
import stretchwright.print.kit.Tiles;
import stretchwright.print.kit.Tiles.Tile;
import stretchwright.print.sheets.Plane.Spot;

/**
 * The pattern at true scale on sheets of paper, a page map first.
 *
 * <p>Promise: 1 mm is 1 mm; every sheet carries both test squares; nothing is drawn nearer to a sheet's edge than
 * the paper's margin. The geometry and its sources are in docs/maths/print.md.
 */
public final class TiledPdf {
    private TiledPdf() {}

    public static Document of(Job job, Paper paper) {
        List<Sheeted> pieces = job.pattern().pieces().stream()
                .map(p -> new Sheeted(Phrases.said(p.name().said()), p.cutLine(), PieceDrawing.of(job, p)::drawOn))
                .toList();
        String title = Phrases.of("pattern.title-paper", job.make(), paper.name());
        return of(fileName("pattern", paper), title, Whose.of(job), pieces, List.of(), paper);
    }

    /** @param sizes that the pieces are drawn in; none where it is one garment's pattern */
    public static Document of(
            String name, String title, Whose whose, List<Sheeted> pieces, List<SizeLine> sizes, Paper paper) {
        Plane plane = Plane.of(pieces, paper);
        Drawing whole = new Drawing();
        plane.spots().forEach(s -> s.sheeted().drawing().on(s.motion().on(whole)));
        try (PdfFile file = new PdfFile(title)) {
            MapPage.draw(whose, sizes, paper, plane, file);
            for (Tile tile : plane.sheets()) {
                sheet(whose, plane, tile, whole, file);
            }
            return file.finished(name, "pattern tiles");
        }
    }

    public static String fileName(String what, Paper paper) {
        return what + "-" + paper.name().replace(' ', '-') + ".pdf";
    }

    private static void sheet(Whose whose, Plane plane, Tile tile, Drawing whole, PdfFile file) {
        Paper paper = plane.tiles().sheet();
        PdfCanvas page = file.page(paper.width(), paper.height());
        page.clip(page.sheet().grown(-paper.margin()));
        page.spoken(
                Tag.FIGURE,
                shows(plane, tile),
                () -> whole.drawOn(toSheet(plane.tiles(), tile).on(page)));
        new SheetFrame(plane, tile, whole).draw(whose, page);
        for (Spot spot : plane.spots()) {
            if (plane.firstSheet(spot).filter(tile::equals).isPresent()) {
                file.bookmark(Phrases.of(
                        "pattern.from-sheet",
                        Letters.shortened(spot.sheeted().name(), Letters.LONGEST_NAME),
                        tile.name()));
            }
        }
    }

    /** For those who have the page read out: the pieces on it. */
    private static String shows(Plane plane, Tile tile) {
        String pieces = plane.spots().stream()
                .filter(s -> Crossing.meets(plane.tiles().window(tile), s.outline(), s.box()))
                .map(s -> Letters.shortened(s.sheeted().name(), Letters.LONGEST_NAME))
                .collect(Collectors.joining(", "));
        return Phrases.of("pattern.shows", pieces);
    }

    /** From the plane onto the sheet of paper. */
    static Motion toSheet(Tiles tiles, Tile tile) {
        Box window = tiles.window(tile);
        double margin = tiles.sheet().margin();
        return new Motion(0, new Point(margin - window.minX(), margin - window.minY()));
    }
}
