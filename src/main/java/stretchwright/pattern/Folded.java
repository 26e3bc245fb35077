package stretchwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** What a piece's outline is off its fold, and what the whole piece is. The fold lies on x = 0. */
public final class Folded {
    private Folded() {}

    /** The outline as lines to be cut or sewn: nothing runs along a fold. Closed ones end where they start. */
    public static List<List<Point>> runs(Piece piece, Polygon outline) {
        List<Point> p = outline.points();
        int n = p.size();
        int start = firstOnFold(piece, p);
        if (start < 0) {
            List<Point> closed = new ArrayList<>(p);
            closed.add(p.get(0));
            return List.of(closed);
        }
        List<List<Point>> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (int k = 1; k <= n; k++) {
            run.add(p.get((start + k) % n));
            if (onFold(p.get((start + k) % n), p.get((start + k + 1) % n))) {
                if (run.size() > 1) {
                    runs.add(run);
                }
                run = new ArrayList<>();
            }
        }
        return runs;
    }

    /** The fold itself, from its lower to its upper end. */
    public static Optional<List<Point>> fold(Piece piece) {
        List<Point> p = piece.cutLine().points();
        if (firstOnFold(piece, p) < 0) {
            return Optional.empty();
        }
        double low =
                p.stream().filter(q -> q.x() == 0).mapToDouble(Point::y).min().orElseThrow();
        double high =
                p.stream().filter(q -> q.x() == 0).mapToDouble(Point::y).max().orElseThrow();
        return Optional.of(List.of(new Point(0, low), new Point(0, high)));
    }

    /** The cut line of the piece as it leaves the cloth: of a half piece both halves. */
    public static Polygon whole(Piece piece) {
        List<List<Point>> runs = runs(piece, piece.cutLine());
        List<Point> run = runs.get(0);
        if (firstOnFold(piece, piece.cutLine().points()) < 0) {
            return piece.cutLine();
        }
        if (runs.size() != 1) {
            throw new IllegalArgumentException(piece.name() + " has several folds and cannot be unfolded");
        }
        List<Point> all = new ArrayList<>(run);
        for (int i = run.size() - 2; i > 0; i--) {
            all.add(run.get(i).mirrored());
        }
        return new Polygon(all);
    }

    private static int firstOnFold(Piece piece, List<Point> p) {
        for (int i = 0; piece.onFold() && i < p.size(); i++) {
            if (onFold(p.get(i), p.get((i + 1) % p.size()))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean onFold(Point a, Point b) {
        return a.x() == 0 && b.x() == 0;
    }
}
