package stretchwright.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/**
 * Several sizes of one pattern, point for point: every edge is cut at its notches, and each run carries as many points, at
 * the same shares of its length, in every size. So the sizes can be drawn over each other, and what lies between two of
 * them is a straight line per point.
 *
 * <p>Promise: no run lies further than {@link #TOLERANCE} from the drafted line. Sizes of another structure (other pieces
 * or edges) cannot be nested; ask {@link #structure} first.
 *
 * @param sizes names, in the order of the lists inside
 */
public record Nest(List<String> sizes, List<Nested> pieces) {
    /** How far a resampled line may lie from the drafted one, mm. */
    public static final double TOLERANCE = 0.05;

    /** Notches nearer to each other, or to a corner, than this are no runs of their own, mm. */
    private static final double SHORTEST = 1;

    /** One size before nesting. */
    public record Size(String name, Pattern pattern) {}

    /**
     * One piece in all sizes.
     *
     * @param anchors per size the place that lies on the same place in all of them: of a leg the side line at the height
     *     of the crotch point, of any other piece its own origin
     * @param cutLines per size, as drafted: their mitres have no common points
     */
    public record Nested(
            PieceName name, List<Point> anchors, List<Corner> corners, List<Run> runs, List<Polygon> cutLines) {
        public Nested {
            anchors = List.copyOf(anchors);
            corners = List.copyOf(corners);
            runs = List.copyOf(runs);
            cutLines = List.copyOf(cutLines);
        }
    }

    /**
     * Where two edges meet, from the anchor, per size.
     *
     * @param before the edge that ends here
     * @param after the edge that begins here
     */
    public record Corner(EdgeName before, EdgeName after, List<Point> at) {
        public Corner {
            at = List.copyOf(at);
        }

        /** The grade: how the corner moves from each size to the next one. */
        public List<Point> moves() {
            List<Point> out = new ArrayList<>();
            for (int i = 1; i < at.size(); i++) {
                out.add(at.get(i).minus(at.get(i - 1)).onGrid());
            }
            return out;
        }
    }

    /**
     * A stretch of an edge from corner or notch to notch or corner.
     *
     * @param from the notch; empty for a corner
     * @param lengths per size as drafted, mm
     * @param shares of the run's length, the same in every size
     * @param lines per size, in the piece's own coordinates
     */
    public record Run(
            EdgeName edge,
            Optional<NotchName> from,
            Optional<NotchName> to,
            List<Double> lengths,
            List<Double> shares,
            List<Path> lines) {
        public Run {
            lengths = List.copyOf(lengths);
            shares = List.copyOf(shares);
            lines = List.copyOf(lines);
        }
    }

    public Nest {
        sizes = List.copyOf(sizes);
        pieces = List.copyOf(pieces);
    }

    /** Pieces and edges by name: what must be the same in all sizes of a nest. */
    public static List<String> structure(Pattern pattern) {
        return pattern.pieces().stream()
                .flatMap(p -> p.edges().stream().map(e -> p.name() + ": " + e.name()))
                .toList();
    }

    /** Sizes of one structure, over each other. */
    public static Nest of(List<Size> sizes) {
        List<String> structure = structure(sizes.get(0).pattern);
        for (Size size : sizes) {
            if (!structure(size.pattern).equals(structure)) {
                throw new IllegalArgumentException(size.name + " has other pieces or edges than " + sizes.get(0).name);
            }
        }
        List<Nested> pieces = new ArrayList<>();
        for (Piece first : sizes.get(0).pattern.pieces()) {
            pieces.add(nested(
                    sizes.stream().map(s -> s.pattern.piece(first.name())).toList()));
        }
        return new Nest(sizes.stream().map(Size::name).toList(), pieces);
    }

    private static Nested nested(List<Piece> sizes) {
        Piece first = sizes.get(0);
        List<Point> anchors = sizes.stream().map(Nest::anchor).toList();
        List<Corner> corners = new ArrayList<>();
        List<Run> runs = new ArrayList<>();
        EdgeName before = first.edges().get(first.edges().size() - 1).name();
        for (Edge edge : first.edges()) {
            List<Point> at = new ArrayList<>();
            for (int i = 0; i < sizes.size(); i++) {
                at.add(sizes.get(i)
                        .edge(edge.name())
                        .line()
                        .start()
                        .minus(anchors.get(i))
                        .onGrid());
            }
            corners.add(new Corner(before, edge.name(), at));
            before = edge.name();
            runs.addAll(runs(edge.name(), sizes));
        }
        return new Nested(
                first.name(),
                anchors,
                corners,
                runs,
                sizes.stream().map(Piece::cutLine).toList());
    }

    private static Point anchor(Piece piece) {
        return piece.edges().stream()
                .filter(e -> e.name() == EdgeName.FRONT_INSEAM)
                .findFirst()
                .map(e -> new Point(0, e.line().start().y()))
                .orElse(Point.ORIGIN);
    }

    private static List<Run> runs(EdgeName edge, List<Piece> sizes) {
        List<NotchName> stops = stops(edge, sizes);
        List<Run> runs = new ArrayList<>();
        for (int k = 0; k <= stops.size(); k++) {
            Optional<NotchName> from = k == 0 ? Optional.empty() : Optional.of(stops.get(k - 1));
            Optional<NotchName> to = k == stops.size() ? Optional.empty() : Optional.of(stops.get(k));
            List<Path> lines = new ArrayList<>();
            for (Piece piece : sizes) {
                double start = from.map(n -> along(piece, edge, n)).orElse(0.0);
                double end = to.map(n -> along(piece, edge, n))
                        .orElseGet(() -> piece.edge(edge).length());
                lines.add(Resampling.part(piece.edge(edge).line(), start, end));
            }
            List<Double> shares = Resampling.shares(lines);
            runs.add(new Run(
                    edge,
                    from,
                    to,
                    lines.stream().map(Path::length).toList(),
                    shares,
                    lines.stream().map(l -> Resampling.through(l, shares)).toList()));
        }
        return runs;
    }

    /** Notches that every size has on this edge, in the same order, with room between them. */
    private static List<NotchName> stops(EdgeName edge, List<Piece> sizes) {
        List<NotchName> stops = new ArrayList<>();
        List<Notch> inOrder = sizes.get(0).notches().stream()
                .filter(n -> n.edge() == edge)
                .sorted(Comparator.comparingDouble(Notch::along))
                .toList();
        for (Notch notch : inOrder) {
            Optional<NotchName> before = stops.isEmpty() ? Optional.empty() : Optional.of(stops.get(stops.size() - 1));
            if (sizes.stream().allMatch(p -> fits(p, edge, before, notch.name()))) {
                stops.add(notch.name());
            }
        }
        return stops;
    }

    private static boolean fits(Piece piece, EdgeName edge, Optional<NotchName> before, NotchName notch) {
        double from = before.map(n -> along(piece, edge, n)).orElse(0.0);
        double at = along(piece, edge, notch);
        return at > from + SHORTEST && at < piece.edge(edge).length() - SHORTEST;
    }

    /** Distance of the notch from the edge's start; -1 where this size has none. */
    private static double along(Piece piece, EdgeName edge, NotchName notch) {
        return piece.notches().stream()
                .filter(n -> n.edge() == edge && n.name() == notch)
                .mapToDouble(Notch::along)
                .findFirst()
                .orElse(-1);
    }
}
