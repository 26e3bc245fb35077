package stretchwright.web.lay;

import java.util.List;
import java.util.Set;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.ClothLay;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import stretchwright.lay.Trouble;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Piece;

/**
 * One cloth with its pieces, as it is shown.
 *
 * @param number of the cloth among the make's lays, from 0
 * @param troubles why it cannot be cut so
 * @param picked the piece that is held; may be none
 */
public record Shown(int number, ClothLay cloth, List<Trouble> troubles, Set<String> pinned, String picked) {
    public Shown {
        troubles = List.copyOf(troubles);
        pinned = Set.copyOf(pinned);
    }

    Lay lay() {
        return cloth.lay();
    }

    Fabric fabric() {
        return cloth.fabric();
    }

    List<Lay.Placement> placements() {
        return lay().placements();
    }

    Piece piece(Lay.Placement p) {
        return cloth.pieces().stream()
                .filter(q -> q.name().equals(p.piece()))
                .findFirst()
                .orElseThrow();
    }

    /** The cut line where it lies. */
    Polygon outline(Lay.Placement p) {
        Piece piece = piece(p);
        Polygon line = p.unfolded() ? Folded.whole(piece) : piece.cutLine();
        return line.placed(p.mirrored(), p.rotation(), new Point(p.x(), p.y()));
    }

    /** Both ends of the grain line. */
    List<Point> grain(Lay.Placement p) {
        Point move = new Point(p.x(), p.y());
        return List.of(piece(p).grain().from(), piece(p).grain().to()).stream()
                .map(q -> (p.mirrored() ? q.mirrored() : q).turned(p.rotation()).plus(move))
                .toList();
    }

    CuttingGuide.Step step(Lay.Placement p) {
        return cloth.use().guide().step(p.piece(), p.copy());
    }

    boolean isPicked(Lay.Placement p) {
        return Placed.id(p).equals(picked);
    }

    boolean isPinned(Lay.Placement p) {
        return pinned.contains(Placed.id(p));
    }

    boolean inTrouble(Lay.Placement p) {
        int i = placements().indexOf(p);
        return troubles.stream().anyMatch(t -> t.about(i));
    }

    /** How far along the cloth is drawn, mm: the lay and a little more, or all of a remnant. */
    double reach() {
        double remnant = fabric().roll().shape().outline().stream()
                .mapToDouble(o -> o.box().maxY())
                .findFirst()
                .orElse(0);
        return Math.max(lay().spreadLength() * 1.03, remnant);
    }
}
