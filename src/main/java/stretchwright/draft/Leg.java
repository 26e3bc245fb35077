package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Roots;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Shift;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.WhichLeg;

/** One drafted leg: its inseams and its top. */
record Leg(Order order, LegLine line, LegCurves curves, Fork fork, Top top) {
    /**
     * Outwards per mm upwards, an inseam runs at most like this at the crotch point: the most that any of 11,144 survey bodies
     * asks for. A thigh too slim for the hip would ask for more; it is cut wider at the fold.
     */
    private static final double MOST_FLARE = 0.95;

    /** From the fold up to the crotch line the leg grows at most by this per mm; else it is cut wider at the fold (no source). */
    private static final double MOST_GROWTH = 1.1;

    /** A fold wider than planned by more than this share is so for the room that the seat needs. */
    private static final double WIDER = 0.005;

    /** A thigh is cut wider at the fold by at most this share of itself. */
    private static final double MOST_WIDER = 0.6;

    /** A leg whose top is solved for the body's own crotch length. */
    static Optional<Leg> draft(Order order, Frame frame, Findings findings) {
        Optional<Lower> lower = lower(order, frame, findings);
        if (lower.isEmpty()) {
            return Optional.empty();
        }
        Lower l = lower.get();
        RiseTrial trial = new Rise(order, frame, l.curves, l.line.crotch()).solved();
        if (!closes(trial, order, findings)) {
            return Optional.empty();
        }
        if (MovesCheck.tooTight(order, trial, findings)) {
            return Optional.empty();
        }
        return Top.of(order, trial, findings)
                .map(t -> new Leg(order.given(t.crotchTaken(), t.riseTaken()), l.line, l.curves, trial.fork(), t));
    }

    /** A leg whose crotch curves are as long as those of another. */
    static Optional<Leg> matching(Order order, Frame frame, Leg other, Findings findings) {
        Optional<Lower> lower = lower(order, frame, findings);
        if (lower.isEmpty()) {
            return Optional.empty();
        }
        Lower l = lower.get();
        RiseTrial trial = new Rise(order, frame, l.curves, l.line.crotch()).matching(other.top, other.fork.share());
        if (!closes(trial, order, findings)) {
            return Optional.empty();
        }
        if (!trial.isDrawn(0)) {
            if (!MovesCheck.blamed(order, findings)) {
                narrows(order.body(), other.order.body(), findings);
            }
            return Optional.empty();
        }
        if (MovesCheck.tooTight(order, trial, findings)) {
            return Optional.empty();
        }
        Top top = Top.matching(other.top, trial, order.shift(Shift.SIDE_WAIST));
        return Optional.of(
                new Leg(order.given(top.crotchTaken(), top.riseTaken()), l.line, l.curves, trial.fork(), top));
    }

    private static void narrows(Body body, Body both, Findings findings) {
        findings.add(
                "wearer.measurements.thigh girth",
                Tell.said(
                        "leg.narrows",
                        Part.length(body.mm(Measure.THIGH_GIRTH)),
                        Part.length(body.mm(Measure.MID_THIGH_GIRTH)),
                        Part.length(both.mm(Measure.THIGH_GIRTH)),
                        Part.length(both.mm(Measure.MID_THIGH_GIRTH))),
                Tell.said("leg.narrows-help"));
    }

    private static boolean closes(RiseTrial trial, Order order, Findings findings) {
        if (!trial.fork().closes() && !MovesCheck.blamed(order, findings)) {
            findings.add(
                    "wearer.measurements.hip girth",
                    Tell.said(
                            "leg.inseams",
                            Part.length(order.body().mm(Measure.HIP_GIRTH)),
                            Part.length(order.body().mm(Measure.CROTCH_HEIGHT))),
                    Tell.said("leg.inseams-help"));
        }
        return trial.fork().closes();
    }

    /** Everything below the seat fold. */
    private record Lower(LegLine line, LegCurves curves) {}

    private static Optional<Lower> lower(Order order, Frame frame, Findings findings) {
        LegLine line = LegLine.of(order);
        if (!HeightsCheck.pass(line, order, findings)) {
            return Optional.empty();
        }
        LegCurves plain = new LegCurves(line, frame, order, 0);
        if (!MovesCheck.pass(order, frame, line, plain, findings)) {
            return Optional.empty();
        }
        double least = Math.max(plain.thighWidth(), frame.leastCrotch() - MOST_GROWTH * plain.foldBelow());
        if (least <= plain.thighWidth() && steepest(plain, frame) <= MOST_FLARE) {
            return Optional.of(new Lower(line, plain));
        }
        LegCurves roomy = new LegCurves(line, frame, order, least);
        if (steepest(roomy, frame) <= MOST_FLARE) {
            return Optional.of(new Lower(line, roomy));
        }
        double wide = Roots.between(
                        w -> steepest(new LegCurves(line, frame, order, w), frame) - MOST_FLARE,
                        least,
                        least * (1 + MOST_WIDER),
                        1e-3)
                .orElse(least);
        return Optional.of(new Lower(line, new LegCurves(line, frame, order, wide)));
    }

    private static double steepest(LegCurves curves, Frame frame) {
        double width = Math.max(curves.grown(), frame.leastCrotch());
        return Fork.of(curves, width, Frame.FRONT_EXTENSION_SHARE).steepest();
    }

    Path front() {
        return fork.front();
    }

    Path back() {
        return fork.back();
    }

    Piece piece(int cut, boolean mirrored) {
        Piece plain = LegPiece.of(PieceName.of(PieceKind.LEG, order.leg()), cut, mirrored, this);
        Piece darted = dart().map(d -> Darts.into(plain, d, order.style())).orElse(plain);
        return Casing.marked(darted, order.style());
    }

    /** The dart in the back of the waist edge, where one was asked for. */
    Optional<Darts.Dart> dart() {
        if (order.style().top().back() != TopEnd.BackShape.DARTS) {
            return Optional.empty();
        }
        double hip = Frame.of(order).hip();
        return Optional.of(Darts.of(top.waistEdge(), top.hipHeight(), hip, Frame.band(order)));
    }

    List<Reason> dartReasons() {
        return dart().filter(Darts.Dart::drawn)
                .map(d -> Darts.reasons(order, d, Frame.of(order).hip()))
                .orElse(List.of());
    }

    /**
     * What decided each width, once the pattern is drawn: the plan, or the curve, or the room that the seat needs.
     */
    List<LevelHold> holds(Frame frame, List<Level> levels) {
        boolean seam = order.hemStretch() < order.fabric().test().stretchAcross();
        List<LevelHold> out = new ArrayList<>();
        for (Level level : levels) {
            if (level.name() == Level.Name.HIP || Holding.LEG.contains(level.name())) {
                Held at = order.holding().at(level.name());
                boolean room = level.name() == Level.Name.CROTCH
                        && curves.isRoomy()
                        && curves.thighWidth() > at.width() * (1 + WIDER);
                LevelHold.Bound bound = room ? LevelHold.Bound.FRAME : at.decided(level, seam);
                if (bound == LevelHold.Bound.SHAPE && curves.isNoTighter(level.name())) {
                    bound = LevelHold.Bound.TOURNIQUET;
                }
                WhichLeg leg = level.name() == Level.Name.HIP ? WhichLeg.BOTH : order.leg();
                out.add(new LevelHold(level.name(), leg, at.reduction(), at.wanted(), bound));
            }
        }
        return out;
    }

    /**
     * Why the leg, still in one piece, is as wide and as long as it is.
     *
     * @param frame whose hip and waist the leg shares with the other one
     */
    List<Reason> reasons(Piece piece, Frame frame, List<Level> levels) {
        List<Reason> out = new ArrayList<>();
        levels.forEach(l -> width(l, frame).ifPresent(out::add));
        out.addAll(line.reasons(order, piece));
        out.addAll(top.reasons(order, piece));
        out.addAll(Inseams.reasons(order, piece, line.crotch(), fork.lower()));
        out.add(frame.crotchWidth(order, fork.across(), curves.thighWidth()));
        out.add(frame.waistEdge(order, piece));
        return out;
    }

    private Optional<Reason> width(Level level, Frame frame) {
        Holding holding = order.holding();
        double drawn = level.width();
        return switch (level.name()) {
            case WAIST, HEM, BOOT_TOP, ANKLE -> Optional.empty();
            case HIP ->
                Optional.of(order.moves()
                        .told(holding.width(level.name()).with(drawn), Shift.FRONT_HIP, Shift.BACK_HIP)
                        .reason(order.hipWidth()));
            case CROTCH ->
                Optional.of(girth(level, Shift.FRONT_CROTCH_POINT, Shift.BACK_CROTCH_POINT)
                        .reason(order.its(What.THIGH_WIDTH)));
            case MID_THIGH ->
                Optional.of(girth(
                                level,
                                Shift.FRONT_CROTCH_POINT,
                                Shift.BACK_CROTCH_POINT,
                                Shift.FRONT_MID_THIGH,
                                Shift.BACK_MID_THIGH)
                        .reason(order.its(What.MID_THIGH_WIDTH)));
            case KNEE ->
                Optional.of(girth(level, Shift.FRONT_KNEE, Shift.BACK_KNEE).reason(order.its(What.KNEE_WIDTH)));
            case CALF ->
                Optional.of(girth(level, Shift.FRONT_CALF, Shift.BACK_CALF).reason(order.its(What.CALF_WIDTH)));
        };
    }

    private Ruled girth(Level level, Shift... points) {
        double moved = curves.moved(level.name());
        Ruled evened = order.holding().width(level.name()).evened(level.width() - moved);
        return order.moves().told(evened.with(level.width()), points);
    }
}
