package stretchwright.draft;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.ground.Box;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Parts.Pocket;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamName;

/**
 * Pockets: where each sits on the leg, and its piece. The places are docs/maths/draft.md, Parts.
 *
 * <p>A pocket that is sewn onto the leg is a rectangle as drawn on the flat leg, its opening up, wholly on one part and
 * clear of its seams. That for the tailbone pad would cross the back rise, so it is sewn to nothing there: it hangs from
 * the waist seam, its lower end turned up into a pouch.
 */
final class Pockets {
    /** A pocket's edge stays this far from every seam of the leg, mm. */
    static final double CLEAR = 8;

    /** Turned under at the opening, mm (common practice, no source). */
    static final double OPENING = 20;

    /** A pocket at the side of a leg with a side seam stands beside it, its edge this far off, mm. */
    private static final double BESIDE_SEAM = 12;

    /** A telephone ends this far above the middle of the knee, mm (common practice, no source). */
    private static final double ABOVE_KNEE = 40;

    /** The tailbone pouch ends this far above the crotch point, and its opening this far below the waist edge, mm. */
    private static final double ABOVE_CROTCH = 30;

    /** Less than this is no pocket for a telephone, no room beside one, no pad: it is left out, mm (no source). */
    private static final double LEAST_PHONE = 80;

    private static final double LEAST_ROOM = 20;
    private static final double LEAST_PAD = 30;

    private final Order order;
    private final Findings findings;
    private final Map<Pocket.Kind, Double> drops = new LinkedHashMap<>();
    private final Set<Said> told = new HashSet<>();

    Pockets(Order order, Findings findings) {
        this.order = order;
        this.findings = findings;
    }

    private record Place(Pocket pocket, Box box, Piece part) {}

    /** The parts of one leg with the outlines of the pockets they carry. */
    List<Piece> placed(Leg leg, Piece whole, List<Piece> parts) {
        List<Place> places = new ArrayList<>();
        for (Pocket pocket : order.style().parts().pockets()) {
            if (pocket.kind() == Pocket.Kind.TAILBONE_PAD) {
                hang(pocket, leg, whole);
                continue;
            }
            Piece part = part(pocket, parts);
            Place place = new Place(pocket, box(pocket, leg, whole, parts), part);
            if (fits(place, leg) && apart(place, places)) {
                places.add(place);
            }
        }
        List<Piece> out = new ArrayList<>();
        for (Piece part : parts) {
            List<Mark> marks = new ArrayList<>(part.marks());
            places.stream().filter(p -> p.part().equals(part)).forEach(p -> marks.add(mark(p)));
            out.add(part.with(part.notches(), marks));
        }
        return out;
    }

    private static Piece part(Pocket pocket, List<Piece> parts) {
        boolean onPanel = parts.size() == 3 && pocket.kind() != Pocket.Kind.KNEE_PAD;
        return parts.get(onPanel ? 1 : 0);
    }

    private Box box(Pocket pocket, Leg leg, Piece whole, List<Piece> parts) {
        double w = pocket.finishedWidth();
        double h = pocket.finishedHeight();
        double flat = 1 - leg.order().reductions().along();
        switch (pocket.kind()) {
            case PHONE -> {
                double top = whole.edge(EdgeName.FRONT_INSEAM).line().start().y();
                double right = parts.size() == 2 ? -BESIDE_SEAM : w / 2;
                return new Box(right - w, top - h, right, top);
            }
            case HIP_PAD -> {
                double middle = leg.top().hipHeight();
                return new Box(-w / 2, middle - h / 2, w / 2, middle + h / 2);
            }
            default -> {
                double knee = leg.order().body().mm(stretchwright.body.Measure.KNEE_HEIGHT) * flat;
                Path inseam = whole.edge(EdgeName.FRONT_INSEAM).line();
                double along = inseam.alongAtHeight(knee);
                double front = inseam.at(along < 0 ? inseam.length() : along).x();
                double side = order.style().parts().panelWidth().orElse(0) / 2;
                double x = (front - side) / 2;
                return new Box(x - w / 2, knee - h / 2, x + w / 2, knee + h / 2);
            }
        }
    }

    private boolean fits(Place place, Leg leg) {
        Pocket p = place.pocket();
        boolean seamUnderPad =
                p.kind() == Pocket.Kind.HIP_PAD && place.part().name().is(PieceKind.FRONT_LEG);
        double knee = leg.order().body().mm(stretchwright.body.Measure.KNEE_HEIGHT)
                * (1 - leg.order().reductions().along());
        if (seamUnderPad) {
            atOdds(Tell.said("pocket.side-seam", with(p)), Tell.said("pocket.side-seam-help"));
            return false;
        }
        if (p.kind() == Pocket.Kind.PHONE && place.box().minY() < knee + ABOVE_KNEE) {
            double most = place.box().maxY() - knee - ABOVE_KNEE;
            atOdds(
                    Tell.said("pocket.knee", with(p)),
                    most < LEAST_PHONE
                            ? Tell.said("pocket.out-help")
                            : Tell.said(
                                    "pocket.height-help",
                                    Part.length(Math.floor(most)).atMost()));
            return false;
        }
        if (inside(place)) {
            return true;
        }
        double end = place.part().sewLine().box().minY();
        if (place.box().minY() - CLEAR < end) {
            Part missing = Part.length(end - place.box().minY() + CLEAR);
            atOdds(Tell.said("pocket.leg", with(p, missing)), Tell.said("pocket.leg-help"));
            return false;
        }
        double room = room(place) - 2 * CLEAR;
        atOdds(
                Tell.said("pocket.place", with(p, place.part().name().said(), Part.length(CLEAR))),
                room > LEAST_ROOM && room < p.finishedWidth()
                        ? Tell.said("pocket.room-help", Part.length(Math.floor(room)))
                        : Tell.said("pocket.smaller-help"));
        return false;
    }

    /** Each is told once, though it may be at odds with both legs. */
    private void atOdds(Said what, Said remedy) {
        if (told.add(what)) {
            findings.add("style.pockets", what, remedy);
        }
    }

    /** Kind, width and height of a pocket, and what else is told of it. */
    private static Part[] with(Pocket p, Part... further) {
        List<Part> all = new ArrayList<>(
                List.of(p.kind().said(), Part.length(p.finishedWidth()), Part.length(p.finishedHeight())));
        all.addAll(List.of(further));
        return all.toArray(Part[]::new);
    }

    /** Every point of the pocket's outline, moved out by the clearance, lies inside the part's sew line. */
    private static boolean inside(Place place) {
        Box b = place.box();
        for (int i = 0; i <= 16; i++) {
            double x = b.minX() - CLEAR + (b.width() + 2 * CLEAR) * i / 16;
            double y = b.minY() - CLEAR + (b.height() + 2 * CLEAR) * i / 16;
            for (Point p : List.of(
                    new Point(x, b.minY() - CLEAR),
                    new Point(x, b.maxY() + CLEAR),
                    new Point(b.minX() - CLEAR, y),
                    new Point(b.maxX() + CLEAR, y))) {
                if (!place.part().sewLine().contains(p)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The part's least width beside the pocket. */
    private static double room(Place place) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 10; i++) {
            double y = place.box().minY() + place.box().height() * i / 10;
            least = Math.min(
                    least,
                    Outline.across(place.part().edges(), y).map(Path::length).orElse(0.0));
        }
        return least;
    }

    private boolean apart(Place place, List<Place> others) {
        for (Place other : others) {
            Box a = place.box();
            Box b = other.box();
            boolean apart = a.maxX() + CLEAR < b.minX()
                    || b.maxX() + CLEAR < a.minX()
                    || a.maxY() + CLEAR < b.minY()
                    || b.maxY() + CLEAR < a.minY();
            if (other.part().equals(place.part()) && !apart) {
                atOdds(
                        Tell.said(
                                "pocket.over",
                                with(place.pocket(), other.pocket().kind().said())),
                        Tell.said("pocket.over-help"));
                return false;
            }
        }
        return true;
    }

    private static Mark mark(Place place) {
        Box b = place.box();
        Path line = Path.of(
                new Point(b.minX(), b.maxY()),
                new Point(b.minX(), b.minY()),
                new Point(b.maxX(), b.minY()),
                new Point(b.maxX(), b.maxY()),
                new Point(b.minX(), b.maxY()));
        return new Mark(place.pocket().kind().mark(), Mark.Kind.PLACEMENT, line.onGrid());
    }

    /** How far the tailbone pouch hangs down: its middle lies where the back rise crosses the hip line. */
    private void hang(Pocket p, Leg leg, Piece whole) {
        Path rise = whole.edge(EdgeName.BACK_CROTCH).line().reversed();
        double toHip = rise.alongAtHeight(leg.top().hipHeight());
        double h = p.finishedHeight();
        double most = 2 * Math.min(toHip - ABOVE_CROTCH, rise.length() - toHip - ABOVE_CROTCH);
        if (h > most) {
            atOdds(
                    Tell.said("pocket.tall", with(p)),
                    most < LEAST_PAD
                            ? Tell.said("pocket.raise-help")
                            : Tell.said(
                                    "pocket.pad-help",
                                    Part.length(Math.floor(most - Pocket.ROOM_FOR_PAD))
                                            .atMost()));
        }
        drops.merge(p.kind(), toHip + h / 2, Math::min);
    }

    List<Piece> pieces() {
        return order.style().parts().pockets().stream().map(this::piece).toList();
    }

    private Piece piece(Pocket p) {
        double side = order.style().allowance(Seam.Role.POCKET);
        double w = p.finishedWidth();
        double h = p.finishedHeight();
        boolean hangs = p.kind() == Pocket.Kind.TAILBONE_PAD;
        double top = hangs ? h + drops.getOrDefault(p.kind(), h) : h;
        Point b = new Point(w, 0);
        Point c = new Point(w, top);
        Point d = new Point(0, top);
        List<Edge> edges = List.of(
                new Edge(EdgeName.LOWER_EDGE, Path.of(Point.ORIGIN, b), hangs ? OPENING : side),
                new Edge(EdgeName.RIGHT_EDGE, Path.of(b, c), side),
                new Edge(
                        EdgeName.UPPER_EDGE,
                        Path.of(c, d),
                        hangs ? order.style().allowance(Seam.Role.WAISTBAND_JOIN) : OPENING),
                new Edge(EdgeName.LEFT_EDGE, Path.of(d, Point.ORIGIN), side));
        List<Mark> marks = hangs
                ? List.of(new Mark(
                        MarkName.FOLD_UP_HERE,
                        Mark.Kind.FOLD,
                        Path.of(new Point(0, h), new Point(w, h)).onGrid()))
                : List.of();
        Grain grain = new Grain(new Point(0.88 * w, 0.15 * top).onGrid(), new Point(0.88 * w, 0.85 * top).onGrid());
        return Piece.of(p.kind().piece(), p.kind().inAPair(), false, false, edges, grain, List.of(), marks);
    }

    /** Each edge is turned in for itself; the tailbone pouch's upper edge goes into the waist seam. */
    List<Seam> seams() {
        List<Seam> out = new ArrayList<>();
        for (Piece piece : pieces()) {
            boolean hangs = piece.name().equals(Pocket.Kind.TAILBONE_PAD.piece());
            for (Edge edge : piece.edges()) {
                boolean opening = edge.name() == (hangs ? EdgeName.LOWER_EDGE : EdgeName.UPPER_EDGE);
                out.add(new Seam(
                        opening ? Seam.Role.POCKET_OPENING : Seam.Role.POCKET,
                        SeamName.turned(piece.name(), edge.name()),
                        List.of(new Seam.Side(piece.name(), edge.name(), edge.length())),
                        0,
                        edge.allowance(),
                        piece.cut()));
            }
        }
        return out;
    }

    List<Reason> reasons() {
        return order.style().parts().pockets().stream()
                .flatMap(p -> reasons(p).stream())
                .toList();
    }

    private static List<Reason> reasons(Pocket p) {
        Said rule = p.kind() == Pocket.Kind.PHONE
                ? Tell.said("rule.as-asked")
                : Tell.said("rule.pad", Part.length(Pocket.ROOM_FOR_PAD));
        PieceName piece = p.kind().piece();
        Said source = Tell.said("source.parts");
        return List.of(
                Ruled.of(p.finishedWidth(), rule, source, Inputs.style(Tell.said("input.width"), p.width()))
                        .reason(Dimension.of(piece, Dimension.What.WIDTH)),
                Ruled.of(p.finishedHeight(), rule, source, Inputs.style(Tell.said("input.height"), p.height()))
                        .reason(Dimension.of(piece, Dimension.What.HEIGHT)));
    }
}
