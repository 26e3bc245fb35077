package stretchwright.pattern;

import java.util.List;
import stretchwright.ground.Path;
import stretchwright.ground.Point;

/** A hand-drawn over-boot pair with straight lines, for tests of the rooms that come after the draft. Invented. */
public final class SamplePattern {
    private SamplePattern() {}

    public static Pattern overBoot() {
        Piece leg = leg();
        Piece band = waistband();
        Piece cuff = cuff();
        double top = 2 * leg.edge(EdgeName.WAIST_EDGE).length();
        double bandLength = 2 * band.edge(EdgeName.LOWER_EDGE).length();
        double hem = leg.edge(EdgeName.HEM).length();
        List<Seam> seams = List.of(
                seam(
                        Seam.Role.FRONT_RISE,
                        SeamName.of(SeamKind.FRONT_RISE),
                        1,
                        side(leg, EdgeName.FRONT_CROTCH),
                        side(leg, EdgeName.FRONT_CROTCH)),
                seam(
                        Seam.Role.BACK_RISE,
                        SeamName.of(SeamKind.BACK_RISE),
                        1,
                        side(leg, EdgeName.BACK_CROTCH),
                        side(leg, EdgeName.BACK_CROTCH)),
                seam(
                        Seam.Role.INSEAM,
                        SeamName.of(SeamKind.INSEAM),
                        2,
                        side(leg, EdgeName.FRONT_INSEAM),
                        side(leg, EdgeName.BACK_INSEAM)),
                seam(
                        Seam.Role.WAISTBAND_ENDS,
                        SeamName.of(SeamKind.WAISTBAND_ENDS),
                        1,
                        side(band, EdgeName.CENTRE_BACK_END),
                        side(band, EdgeName.CENTRE_BACK_END)),
                new Seam(
                        Seam.Role.WAISTBAND_JOIN,
                        SeamName.of(SeamKind.WAISTBAND_JOIN),
                        List.of(
                                new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.WAIST_EDGE, top),
                                new Seam.Side(PieceName.of(PieceKind.WAISTBAND), EdgeName.LOWER_EDGE, bandLength)),
                        bandLength - top,
                        7,
                        1),
                seam(
                        Seam.Role.CUFF_ENDS,
                        SeamName.of(SeamKind.CUFF_ENDS),
                        2,
                        side(cuff, EdgeName.LEFT_END),
                        side(cuff, EdgeName.RIGHT_END)),
                new Seam(
                        Seam.Role.CUFF_JOIN,
                        SeamName.of(SeamKind.CUFF_JOIN),
                        List.of(
                                new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.HEM, hem),
                                side(cuff, EdgeName.LOWER_EDGE)),
                        cuff.edge(EdgeName.LOWER_EDGE).length() - hem,
                        7,
                        2));
        List<Level> levels = List.of(
                new Level(Level.Name.WAIST, 973, 690),
                new Level(Level.Name.HIP, 789, 846),
                new Level(Level.Name.CROTCH, 733, 485),
                new Level(Level.Name.KNEE, 423, 309),
                new Level(Level.Name.CALF, 273, 292),
                new Level(Level.Name.HEM, -6, 344));
        return new Pattern(
                List.of(leg, band, cuff), seams, levels, new Pattern.Reductions(0.13, 0.05, 0.14, 0.07, 0.107));
    }

    static Piece leg() {
        Point hemFront = new Point(-163, -6);
        Point hemBack = new Point(181, -6);
        Point crotchBack = new Point(262, 728);
        Point waistBack = new Point(182, 1038);
        Point waistFront = new Point(-188, 1008);
        Point crotchFront = new Point(-223, 733);
        Point kneeBack = new Point(164, 423);
        Point kneeFront = new Point(-145, 423);
        List<Edge> edges = List.of(
                new Edge(EdgeName.HEM, Path.of(hemFront, hemBack), 7),
                new Edge(EdgeName.BACK_INSEAM, Path.of(hemBack, kneeBack, crotchBack), 7),
                new Edge(EdgeName.BACK_CROTCH, Path.of(crotchBack, new Point(215, 745), waistBack), 7),
                new Edge(EdgeName.WAIST_EDGE, Path.of(waistBack, waistFront), 7),
                new Edge(EdgeName.FRONT_CROTCH, Path.of(waistFront, new Point(-205, 745), crotchFront), 7),
                new Edge(EdgeName.FRONT_INSEAM, Path.of(crotchFront, kneeFront, hemFront), 7));
        List<Notch> notches = List.of(
                new Notch(
                        NotchName.KNEE,
                        EdgeName.BACK_INSEAM,
                        kneeBack.distance(hemBack),
                        kneeBack,
                        new Point(1, 0),
                        Notch.Mark.DOUBLE),
                new Notch(
                        NotchName.KNEE,
                        EdgeName.FRONT_INSEAM,
                        kneeFront.distance(crotchFront),
                        kneeFront,
                        new Point(-1, 0),
                        Notch.Mark.SINGLE));
        return Piece.of(
                PieceName.of(PieceKind.LEG),
                2,
                true,
                false,
                edges,
                new Grain(new Point(0, 150), new Point(0, 850)),
                notches,
                List.of(new Mark(MarkName.KNEE, Mark.Kind.LEVEL, Path.of(kneeFront, kneeBack))));
    }

    static Piece waistband() {
        return rectangle(PieceKind.WAISTBAND, 1, true, 345, 130, EdgeName.CENTRE_BACK_END, EdgeName.FOLD);
    }

    static Piece cuff() {
        return rectangle(PieceKind.CUFF, 2, false, 344, 64, EdgeName.RIGHT_END, EdgeName.LEFT_END);
    }

    private static Piece rectangle(
            PieceKind name, int cut, boolean onFold, double width, double height, EdgeName right, EdgeName left) {
        Point a = Point.ORIGIN;
        Point b = new Point(width, 0);
        Point c = new Point(width, height);
        Point d = new Point(0, height);
        return Piece.of(
                PieceName.of(name),
                cut,
                false,
                onFold,
                List.of(
                        new Edge(EdgeName.LOWER_EDGE, Path.of(a, b), 7),
                        new Edge(right, Path.of(b, c), 7),
                        new Edge(EdgeName.UPPER_EDGE, Path.of(c, d), 7),
                        new Edge(left, Path.of(d, a), onFold ? 0 : 7)),
                new Grain(new Point(width / 2, 10), new Point(width / 2, height - 10)),
                List.of(),
                List.of(new Mark(
                        MarkName.FOLD_ALONG_HERE,
                        Mark.Kind.FOLD,
                        Path.of(new Point(0, height / 2), new Point(width, height / 2)))));
    }

    private static Seam seam(Seam.Role role, SeamName name, int times, Seam.Side one, Seam.Side other) {
        return new Seam(role, name, List.of(one, other), other.length() - one.length(), 7, times);
    }

    private static Seam.Side side(Piece piece, EdgeName edge) {
        return new Seam.Side(piece.name(), edge, piece.edge(edge).length());
    }
}
