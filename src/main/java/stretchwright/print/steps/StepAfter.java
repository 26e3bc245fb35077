package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Box;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Mark;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Phrases;
import stretchwright.sewing.Joined;
import stretchwright.sewing.StepKind;
import stretchwright.sewing.StepName;

/**
 * What it looks like after a step, from the real outlines and lengths, in mm of cloth. There is no such picture where one
 * in the plane would not be true: a gusset, covers on a boot, curved bands, straps, legs in parts closed into tubes, marks.
 *
 * @param words how it lies in the picture
 */
record StepAfter(List<Stroke> strokes, String words) {
    private static final int ROUND = 48;
    /** How flat a ring's round is drawn, as seen from a little above. */
    private static final double FLAT = 0.18;
    /** A piece that fills less of its box than this is no strip. */
    private static final double STRIP = 0.97;
    /** Edges that differ by more than this share of their length do not lie flat side by side. */
    private static final double ALIKE = 0.1;

    /** Steps that fold a strip along its middle, marked or not. */
    private static final Set<StepName> FOLDS = Set.of(StepKind.BAND_FOLD, StepKind.CUFF_FOLD);

    record Stroke(Ink ink, List<Point> points, boolean closed) {}

    StepAfter {
        strokes = List.copyOf(strokes);
    }

    public Box box() {
        return Box.around(strokes.stream().flatMap(s -> s.points().stream()).toList());
    }

    static Optional<StepAfter> of(Job job, StepPanels step) {
        if (step.panels().isEmpty()) {
            return Optional.empty();
        }
        return switch (step.deed()) {
            case JOIN, OVER -> joined(job, step);
            case TURN -> Optional.of(turned(step));
            case FOLD -> folded(step);
            case MARK -> Optional.empty();
        };
    }

    private static Optional<StepAfter> joined(Job job, StepPanels step) {
        if (step.meets().isEmpty()) {
            return Optional.empty();
        }
        StepPanels.Meeting first = step.meets().get(0);
        boolean joins = step.deed() == StepPanels.Deed.JOIN;
        return switch (first.role()) {
            case WAISTBAND_ENDS, CUFF_ENDS ->
                joins && isStrip(step.panels().get(0)) ? Optional.of(ring(step)) : Optional.empty();
            case WAISTBAND_JOIN, CUFF_JOIN -> joins ? banded(job, step) : Optional.empty();
            case INSEAM ->
                joins && step.meets().stream().allMatch(m -> onePiece(step, m))
                        ? StepTubes.of(step, step.meets())
                        : Optional.empty();
            case FRONT_RISE, BACK_RISE, SIDE_SEAM ->
                alike(step, first) ? Optional.of(opened(step, first)) : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static boolean onePiece(StepPanels step, StepPanels.Meeting m) {
        return step.panel(m.one().get(0)) == step.panel(m.other().get(0));
    }

    /** Whether the piece is a strip, as bands and cuffs are. */
    static boolean isStrip(StepPanel panel) {
        Box box = panel.piece().sewLine().box();
        return panel.piece().sewLine().area() > STRIP * box.width() * box.height();
    }

    private static boolean foldedBand(Job job, StepPanels step, Joined place) {
        return step.panels().stream().anyMatch(p -> p.piece().name().equals(place.piece()) && isStrip(p))
                && job.sewing().operations().stream()
                        .filter(o -> o.step() < step.operation().step())
                        .anyMatch(o -> StepPanels.of(job, o).deed() == StepPanels.Deed.FOLD
                                && o.joins().contains(place));
    }

    private static boolean alike(StepPanels step, StepPanels.Meeting m) {
        double one = step.sewn(m.one().get(0)).line().length();
        double other = step.sewn(m.other().get(0)).line().length();
        return Math.abs(one - other) < ALIKE * Math.max(one, other);
    }

    /** Side by side, the seam between them; curved edges cannot lie flat and leave a gap or lap over. */
    private static StepAfter opened(StepPanels step, StepPanels.Meeting m) {
        StepPanel one = step.panel(m.one().get(0));
        StepPanel other = step.panel(m.other().get(0));
        Path seam = step.sewn(m.one().get(0)).line();
        Path theirs = step.sewn(m.other().get(0)).line();
        double side = seam.end().minus(seam.start()).cross(one.middle().minus(seam.start()));
        Motion motion = onto(theirs.start(), theirs.end(), seam.start(), seam.end());
        Point there = motion.apply(other.middle());
        if (seam.end().minus(seam.start()).cross(there.minus(seam.start())) * side > 0) {
            motion = onto(theirs.end(), theirs.start(), seam.start(), seam.end());
        }
        List<Stroke> out = new ArrayList<>();
        out.add(new Stroke(Ink.LABEL, one.piece().sewLine().points(), true));
        if (one.mirrored()) {
            out.set(0, new Stroke(Ink.LABEL, mirrored(one.piece().sewLine().points()), true));
        }
        List<Point> sewLine = other.piece().sewLine().points();
        out.add(new Stroke(Ink.LABEL, motion.apply(other.mirrored() ? mirrored(sewLine) : sewLine), true));
        out.add(new Stroke(Ink.CUT, seam.points(), false));
        if (step.deed() == StepPanels.Deed.OVER) {
            Box all = Box.around(out.stream().flatMap(s -> s.points().stream()).toList());
            double beside = 0.015 * Math.max(all.width(), all.height());
            out.add(new Stroke(Ink.MARK, beside(seam, beside), false));
            out.add(new Stroke(Ink.MARK, beside(seam, -beside), false));
            return new StepAfter(upright(out, seam), Phrases.of("after.rows"));
        }
        return new StepAfter(upright(out, seam), Phrases.of("after.opened"));
    }

    private static List<Stroke> upright(List<Stroke> strokes, Path seam) {
        boolean rises = seam.end().y() >= seam.start().y();
        Point foot = rises ? seam.start() : seam.end();
        Point head = rises ? seam.end() : seam.start();
        Motion motion = onto(foot, head, Point.ORIGIN, new Point(0, foot.distance(head)));
        return strokes.stream()
                .map(s -> new Stroke(s.ink(), motion.apply(s.points()), s.closed()))
                .toList();
    }

    private static List<Point> mirrored(List<Point> points) {
        return points.stream().map(Point::mirrored).toList();
    }

    /** Takes one chord's start and direction to the other's. */
    private static Motion onto(Point from, Point to, Point start, Point end) {
        Point have = to.minus(from);
        Point want = end.minus(start);
        double degrees = StrictMath.toDegrees(StrictMath.atan2(have.cross(want), have.dot(want)));
        Motion turn = new Motion(degrees, Point.ORIGIN);
        Point middle = turn.apply(from.towards(to, 0.5));
        return new Motion(degrees, start.towards(end, 0.5).minus(middle));
    }

    static List<Point> beside(Path line, double out) {
        List<Point> points = new ArrayList<>();
        double length = line.length();
        for (int i = 0; i <= ROUND; i++) {
            double along = length * i / ROUND;
            points.add(line.at(along).plus(line.directionAt(along).left().times(-out)));
        }
        return points;
    }

    /** As round and as high as the band is. */
    private static StepAfter ring(StepPanels step) {
        StepPanel panel = step.panels().get(0);
        List<Stroke> out = ring(round(panel), panel.piece().sewLine().box().height());
        out.add(new Stroke(Ink.CUT, List.of(front(round(panel), 0), front(round(panel), height(panel))), false));
        return new StepAfter(out, Phrases.of("after.ring"));
    }

    private static double height(StepPanel panel) {
        return panel.piece().sewLine().box().height();
    }

    /** The radius of the ring. */
    private static double round(StepPanel panel) {
        double half = panel.piece().sewLine().box().width();
        return (panel.piece().onFold() ? 2 * half : half) / (2 * StrictMath.PI);
    }

    private static Point front(double radius, double y) {
        return new Point(0, y - FLAT * radius);
    }

    private static List<Stroke> ring(double radius, double height) {
        List<Stroke> out = new ArrayList<>();
        out.add(new Stroke(Ink.LABEL, arc(radius, height, 0, 360), true));
        out.add(new Stroke(Ink.LABEL, arc(radius, 0, 180, 360), false));
        for (double x : new double[] {-radius, radius}) {
            out.add(new Stroke(Ink.LABEL, List.of(new Point(x, 0), new Point(x, height)), false));
        }
        return out;
    }

    private static List<Point> arc(double radius, double y, double from, double to) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= ROUND; i++) {
            double angle = StrictMath.toRadians(from + (to - from) * i / ROUND);
            points.add(new Point(radius * StrictMath.cos(angle), y + FLAT * radius * StrictMath.sin(angle)));
        }
        return points;
    }

    /** Half as high, the fold on top, two raw edges below, a clip on each quarter in sight. */
    private static Optional<StepAfter> folded(StepPanels step) {
        StepPanel panel = step.panels().get(0);
        boolean folds = isStrip(panel)
                && (panel.piece().marks().stream().anyMatch(m -> m.kind() == Mark.Kind.FOLD)
                        || FOLDS.contains(step.operation().name()));
        if (!folds) {
            return Optional.empty();
        }
        double radius = round(panel);
        double height = height(panel) / 2;
        double raw = 0.06 * height;
        List<Stroke> out = ring(radius, height);
        out.add(new Stroke(Ink.LABEL, arc(radius, -raw, 180, 360), false));
        out.add(new Stroke(Ink.CUT, arc(radius, height, 180, 360), false));
        for (Point at : List.of(front(radius, 0), new Point(-radius, 0), new Point(radius, 0))) {
            out.add(new Stroke(
                    Ink.CUT, List.of(at.plus(new Point(0, -4 * raw)), at.plus(new Point(0, 5 * raw))), false));
        }
        return Optional.of(new StepAfter(out, Phrases.of("after.folded")));
    }

    /** One part of the garment, with the share of the band that stands on its edge, half as high as it was cut. */
    private static Optional<StepAfter> banded(Job job, StepPanels step) {
        Optional<StepPanel> band = step.panels().stream()
                .filter(p -> p.sewn().stream()
                        .anyMatch(s -> foldedBand(
                                job, step, new Joined(p.piece().name(), s.edge().name()))))
                .findFirst();
        Optional<StepPanel> leg =
                step.panels().stream().filter(p -> !p.equals(band.orElse(p))).findFirst();
        if (band.isEmpty() || leg.isEmpty()) {
            return Optional.empty();
        }
        StepPanel.Sewn edge = leg.get().sewn().get(0);
        double height = height(band.get()) / 2;
        List<Point> top = beside(edge.line(), edge.forward() ? height : -height);
        List<Point> strip = new ArrayList<>(edge.line().points());
        for (int i = top.size() - 1; i >= 0; i--) {
            strip.add(top.get(i));
        }
        List<Point> outline = leg.get().piece().sewLine().points();
        List<Stroke> out = new ArrayList<>();
        out.add(new Stroke(Ink.LABEL, leg.get().mirrored() ? mirrored(outline) : outline, true));
        out.add(new Stroke(Ink.LABEL, strip, true));
        out.add(new Stroke(Ink.CUT, edge.line().points(), false));
        return Optional.of(new StepAfter(
                out,
                Phrases.of(
                        "after.band",
                        Phrases.said(band.get().piece().name().said()),
                        Phrases.said(leg.get().piece().name().said()))));
    }

    /** The edge is the fold now; the row of stitches shows outside. */
    private static StepAfter turned(StepPanels step) {
        StepPanel panel = step.panels().get(0);
        List<Stroke> out = new ArrayList<>();
        List<Point> outline = panel.piece().sewLine().points();
        out.add(new Stroke(Ink.LABEL, panel.mirrored() ? mirrored(outline) : outline, true));
        for (StepPanel.Sewn sewn : panel.sewn()) {
            out.add(new Stroke(Ink.CUT, sewn.line().points(), false));
            double in = -0.85 * sewn.edge().allowance();
            out.add(new Stroke(Ink.MARK, beside(sewn.line(), sewn.forward() ? in : -in), false));
        }
        return new StepAfter(out, Phrases.of("after.turned"));
    }
}
