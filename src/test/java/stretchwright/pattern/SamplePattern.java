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
        double top = 2 * leg.edge("waist edge").length();
        double bandLength = 2 * band.edge("lower edge").length();
        double hem = leg.edge("hem").length();
        List<Seam> seams = List.of(
                seam(Seam.Role.FRONT_RISE, "front rise", 1, side(leg, "front crotch"), side(leg, "front crotch")),
                seam(Seam.Role.BACK_RISE, "back rise", 1, side(leg, "back crotch"), side(leg, "back crotch")),
                seam(Seam.Role.INSEAM, "inseam", 2, side(leg, "front inseam"), side(leg, "back inseam")),
                seam(
                        Seam.Role.WAISTBAND_ENDS,
                        "waistband ends",
                        1,
                        side(band, "centre back end"),
                        side(band, "centre back end")),
                new Seam(
                        Seam.Role.WAISTBAND_JOIN,
                        "waistband join",
                        List.of(
                                new Seam.Side("leg", "waist edge", top),
                                new Seam.Side("waistband", "lower edge", bandLength)),
                        bandLength - top,
                        7,
                        1),
                seam(Seam.Role.CUFF_ENDS, "cuff ends", 2, side(cuff, "left end"), side(cuff, "right end")),
                new Seam(
                        Seam.Role.CUFF_JOIN,
                        "cuff join",
                        List.of(new Seam.Side("leg", "hem", hem), side(cuff, "lower edge")),
                        cuff.edge("lower edge").length() - hem,
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
                new Edge("hem", Path.of(hemFront, hemBack), 7),
                new Edge("back inseam", Path.of(hemBack, kneeBack, crotchBack), 7),
                new Edge("back crotch", Path.of(crotchBack, new Point(215, 745), waistBack), 7),
                new Edge("waist edge", Path.of(waistBack, waistFront), 7),
                new Edge("front crotch", Path.of(waistFront, new Point(-205, 745), crotchFront), 7),
                new Edge("front inseam", Path.of(crotchFront, kneeFront, hemFront), 7));
        List<Notch> notches = List.of(
                new Notch(
                        "knee",
                        "back inseam",
                        kneeBack.distance(hemBack),
                        kneeBack,
                        new Point(1, 0),
                        Notch.Mark.DOUBLE),
                new Notch(
                        "knee",
                        "front inseam",
                        kneeFront.distance(crotchFront),
                        kneeFront,
                        new Point(-1, 0),
                        Notch.Mark.SINGLE));
        return Piece.of(
                "leg",
                2,
                true,
                false,
                edges,
                new Grain(new Point(0, 150), new Point(0, 850)),
                notches,
                List.of(new Mark("knee", Mark.Kind.LEVEL, Path.of(kneeFront, kneeBack))));
    }

    static Piece waistband() {
        return rectangle("waistband", 1, true, 345, 130, "centre back end", "fold");
    }

    static Piece cuff() {
        return rectangle("cuff", 2, false, 344, 64, "right end", "left end");
    }

    private static Piece rectangle(
            String name, int cut, boolean onFold, double width, double height, String right, String left) {
        Point a = Point.ORIGIN;
        Point b = new Point(width, 0);
        Point c = new Point(width, height);
        Point d = new Point(0, height);
        return Piece.of(
                name,
                cut,
                false,
                onFold,
                List.of(
                        new Edge("lower edge", Path.of(a, b), 7),
                        new Edge(right, Path.of(b, c), 7),
                        new Edge("upper edge", Path.of(c, d), 7),
                        new Edge(left, Path.of(d, a), onFold ? 0 : 7)),
                new Grain(new Point(width / 2, 10), new Point(width / 2, height - 10)),
                List.of(),
                List.of(new Mark(
                        "fold here", Mark.Kind.FOLD, Path.of(new Point(0, height / 2), new Point(width, height / 2)))));
    }

    private static Seam seam(Seam.Role role, String name, int times, Seam.Side one, Seam.Side other) {
        return new Seam(role, name, List.of(one, other), other.length() - one.length(), 7, times);
    }

    private static Seam.Side side(Piece piece, String edge) {
        return new Seam.Side(piece.name(), edge, piece.edge(edge).length());
    }
}
