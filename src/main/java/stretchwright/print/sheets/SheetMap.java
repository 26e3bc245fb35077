package stretchwright.print.sheets;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceName;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.Tiles;
import stretchwright.print.kit.Tiles.Tile;
import stretchwright.print.sheets.Plane.Spot;

/**
 * Which sheets the pattern needs on a paper, how they lie side by side, and what shows on each: for whoever chooses some of them.
 *
 * <p>Promise: the same sheets, under the same names and in the same order, as {@link TiledPdf} draws behind its map.
 *
 * @param paper as it lies: turned, or cut from a roll
 * @param pieces where they lie on the plane of all sheets, mm, y up
 */
public record SheetMap(Paper paper, int rows, int columns, List<Sheet> sheets, List<Placed> pieces) {
    /** Letters by which one content of a sheet is told from another. */
    private static final int MARK = 16;

    public SheetMap {
        sheets = List.copyOf(sheets);
        pieces = List.copyOf(pieces);
    }

    /**
     * One sheet.
     *
     * @param row from 0 at the top
     * @param column from 0 at the left
     * @param window what it shows of the plane, what overlaps included
     * @param pieces that show on it
     * @param mark another one where anything of what it shows has changed or lies elsewhere
     */
    public record Sheet(String name, int row, int column, Box window, List<PieceName> pieces, String mark) {
        public Sheet {
            pieces = List.copyOf(pieces);
        }
    }

    public record Placed(PieceName name, List<Point> outline) {
        public Placed {
            outline = List.copyOf(outline);
        }
    }

    public static SheetMap of(Pattern pattern, Paper paper) {
        Map<Sheeted, Piece> drawn = new IdentityHashMap<>();
        List<Sheeted> all = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Sheeted sheeted = new Sheeted(piece.name().toString(), piece.cutLine(), canvas -> {});
            drawn.put(sheeted, piece);
            all.add(sheeted);
        }
        return of(Plane.of(all, paper), drawn);
    }

    private static SheetMap of(Plane plane, Map<Sheeted, Piece> drawn) {
        Tiles tiles = plane.tiles();
        Map<Spot, String> shapes = new IdentityHashMap<>();
        plane.spots().forEach(s -> shapes.put(s, digest(piece(drawn, s).toString())));
        List<Sheet> sheets = new ArrayList<>();
        for (Tile tile : plane.sheets()) {
            Box window = tiles.window(tile);
            List<Spot> shown = plane.spots().stream()
                    .filter(s -> Crossing.meets(window, s.outline(), s.box()))
                    .toList();
            StringBuilder content = new StringBuilder(tiles.sheet() + " " + window);
            shown.forEach(s -> content.append(shapes.get(s)).append(at(s.motion())));
            sheets.add(new Sheet(
                    tile.name(),
                    tile.row(),
                    tile.column(),
                    window,
                    shown.stream().map(s -> piece(drawn, s).name()).toList(),
                    digest(content.toString())));
        }
        List<Placed> pieces = plane.spots().stream()
                .map(s -> new Placed(piece(drawn, s).name(), s.outline().points()))
                .toList();
        return new SheetMap(tiles.sheet(), tiles.rows(), tiles.columns(), sheets, pieces);
    }

    private static String at(Motion motion) {
        return " " + motion.degrees() + " " + motion.move() + " ";
    }

    private static Piece piece(Map<Sheeted, Piece> drawn, Spot spot) {
        return Objects.requireNonNull(drawn.get(spot.sheeted()));
    }

    private static String digest(String content) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, MARK);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** How wide a part of the plane each sheet adds: its window without what overlaps. */
    public double stepX() {
        return new Tiles(paper, rows, columns).stepX();
    }

    public double stepY() {
        return new Tiles(paper, rows, columns).stepY();
    }
}
