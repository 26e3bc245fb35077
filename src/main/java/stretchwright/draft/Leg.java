package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Measure;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.TopEnd;

/** One drafted leg: its inseams and its top. */
record Leg(Order order, LegLine line, LegCurves curves, Path front, Path back, Top top) {
    /**
     * Outwards per mm upwards, the back inseam runs at most like this at the crotch point: the most that any of 11,144
     * survey bodies asks for. A thigh too large for its mid-thigh would ask for more and leave the hooked crotch curve
     * no room below the waist; there the widths at the crotch line and the mid-thigh give way.
     */
    private static final double MOST_FLARE = 0.95;

    /** Growth of the width per mm of height that even the straightest leg has at the crotch. */
    private static final double LEAST_STEEPNESS = 0.5;

    /** A leg whose top is solved for the body's own crotch length. */
    static Optional<Leg> draft(Order order, Frame frame, Findings findings) {
        return legs(order, frame, findings)
                .flatMap(l -> Top.solve(
                                order.body(), order.style(), order.reductions(), frame, l.hook(-1), l.hook(1), findings)
                        .map(l::with));
    }

    /** A leg whose crotch curves are as long as those of another. */
    static Optional<Leg> matching(Order order, Frame frame, Leg other, Findings findings) {
        double hip =
                order.body().mm(Measure.HIP_HEIGHT) * (1 - order.reductions().along());
        Optional<Lower> lower = legs(order, frame, findings);
        Optional<Leg> leg = lower.flatMap(l -> Top.matching(other.top, order.waist(), frame, hip, l.hook(-1), l.hook(1))
                .map(l::with));
        if (leg.isEmpty() && lower.isPresent()) {
            findings.add(
                    "wearer.measurements.thigh girth",
                    Tell.said(
                            "leg.narrows",
                            Part.length(order.body().mm(Measure.THIGH_GIRTH)),
                            Part.length(order.body().mm(Measure.MID_THIGH_GIRTH)),
                            Part.length(other.order.body().mm(Measure.THIGH_GIRTH)),
                            Part.length(other.order.body().mm(Measure.MID_THIGH_GIRTH))),
                    Tell.said("leg.narrows-help"));
        }
        return leg;
    }

    /** Everything below the crotch line. */
    private record Lower(
            Order order, LegLine line, LegCurves curves, Path front, Path back, double drop, boolean closes) {
        TopCurves.Hook hook(int side) {
            return side < 0
                    ? new TopCurves.Hook(front.start(), curves.flareAtCrotch(-1, 0))
                    : new TopCurves.Hook(back.start(), curves.flareAtCrotch(1, drop));
        }

        Leg with(Top top) {
            return new Leg(order, line, curves, front, back, top);
        }
    }

    private static Optional<Lower> legs(Order order, Frame frame, Findings findings) {
        LegLine line = LegLine.of(order, frame.crotch(order).value());
        if (!HeightsCheck.pass(line, order, findings)) {
            return Optional.empty();
        }
        Lower lower = lower(order, line, frame, Double.POSITIVE_INFINITY);
        if (lower.hook(1).flare() > MOST_FLARE) {
            double steepest = Roots.between(
                            s -> lower(order, line, frame, s).hook(1).flare() - MOST_FLARE,
                            LEAST_STEEPNESS,
                            lower.curves.steepness())
                    .orElse(lower.curves.steepness());
            lower = lower(order, line, frame, steepest);
        }
        if (lower.closes) {
            return Optional.of(lower);
        }
        findings.add(
                "wearer.measurements.hip girth",
                Tell.said(
                        "leg.inseams",
                        Part.length(order.body().mm(Measure.HIP_GIRTH)),
                        Part.length(order.body().mm(Measure.CROTCH_HEIGHT))),
                Tell.said("leg.inseams-help"));
        return Optional.empty();
    }

    private static Lower lower(Order order, LegLine line, Frame frame, double steepest) {
        LegCurves curves = new LegCurves(line, frame, order.holding(), steepest);
        Path front = curves.inseam(-1, 0);
        OptionalDouble drop = Inseams.backDrop(curves, front.length());
        double d = drop.orElse(Inseams.most(curves));
        return new Lower(order, line, curves, front, curves.inseam(1, d), d, drop.isPresent());
    }

    Piece piece(String name, int cut, boolean mirrored) {
        Piece plain = LegPiece.of(name, cut, mirrored, this);
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
     *
     * @param name of the leg where they differ
     */
    List<LevelHold> holds(Frame frame, String name, List<Level> levels) {
        boolean seam = order.hemStretch() < order.fabric().test().stretchAcross();
        List<LevelHold> out = new ArrayList<>();
        for (Level level : levels) {
            if (level.name() == Level.Name.HIP || Holding.LEG.contains(level.name())) {
                Held at = order.holding().at(level.name());
                boolean room =
                        level.name() == Level.Name.CROTCH && frame.crotch(order).value() > at.width();
                LevelHold.Bound bound = room ? LevelHold.Bound.FRAME : at.decided(level, seam);
                String leg = level.name() == Level.Name.HIP ? "" : name;
                out.add(new LevelHold(level.name(), leg, at.reduction(), at.wanted(), bound));
            }
        }
        return out;
    }

    /** Hip, then the levels of this leg from the crotch down; the hip is the whole body's and named once. */
    List<Level> levels(String name) {
        Piece piece = piece("leg", 2, true);
        Path frontInseam = piece.edge("front inseam").line();
        Path backInseam = piece.edge("back inseam").line();
        List<Level> out = new ArrayList<>();
        if (!name.equals("right")) {
            double hip = widthAt(
                    piece.edge("front crotch").line(), piece.edge("back crotch").line(), top.hipHeight());
            out.add(new Level(Level.Name.HIP, top.hipHeight(), 2 * hip));
        }
        Point start = frontInseam.start();
        out.add(new Level(Level.Name.CROTCH, start.y(), backInseam.end().x() - start.x(), name));
        double midThigh = (order.body().mm(Measure.CROTCH_HEIGHT) + order.body().mm(Measure.KNEE_HEIGHT))
                / 2
                * (1 - order.reductions().along());
        if (line.leg().stream().noneMatch(n -> n.level() == Level.Name.MID_THIGH)
                && midThigh > curves.endHeight() + 1) {
            out.add(new Level(Level.Name.MID_THIGH, midThigh, widthAt(frontInseam, backInseam, midThigh), name));
        }
        List<Node> below = new ArrayList<>(line.leg());
        below.add(line.narrow());
        for (Node node : below) {
            if (node.level() != null
                    && node.level() != Level.Name.CROTCH
                    && node.level() != Level.Name.HEM
                    && node.height() > curves.endHeight() + 1) {
                out.add(new Level(node.level(), node.height(), widthAt(frontInseam, backInseam, node.height()), name));
            }
        }
        if (line.narrow().level() != Level.Name.BOOT_TOP && line.bootTop().isPresent()) {
            double height = line.bootTop().getAsDouble();
            out.add(new Level(Level.Name.BOOT_TOP, height, widthAt(frontInseam, backInseam, height), name));
        }
        if (!Cover.wanted(order.style())) {
            out.add(new Level(
                    Level.Name.HEM, line.hemHeight(), piece.edge("hem").length(), name));
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
        out.addAll(Inseams.reasons(
                order,
                piece,
                front.start().y(),
                front.start().y() - back.start().y()));
        out.add(frame.waistEdge(order, piece));
        return out;
    }

    private Optional<Reason> width(Level level, Frame frame) {
        Holding holding = order.holding();
        double drawn = level.width();
        return switch (level.name()) {
            case WAIST, HEM, BOOT_TOP, ANKLE -> Optional.empty();
            case HIP -> Optional.of(holding.width(level.name()).with(drawn).reason(order.hipWidth()));
            case CROTCH -> Optional.of(frame.crotch(order).evened(drawn).reason(order.its(What.CROTCH_WIDTH)));
            case MID_THIGH -> Optional.of(girth(level).reason(order.its(What.MID_THIGH_WIDTH)));
            case KNEE -> Optional.of(girth(level).reason(order.its(What.KNEE_WIDTH)));
            case CALF -> Optional.of(girth(level).reason(order.its(What.CALF_WIDTH)));
        };
    }

    private Ruled girth(Level level) {
        return order.holding().width(level.name()).evened(level.width());
    }

    private static double widthAt(Path front, Path back, double height) {
        Point a = front.at(front.alongAtHeight(height));
        Point b = back.at(back.alongAtHeight(height));
        return b.x() - a.x();
    }
}
