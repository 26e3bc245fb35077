package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/**
 * Drafts the pattern of a pair of stretch leggings without side seam: one leg piece (cut as a mirrored pair), a
 * straight folded waistband, a folded cuff. The method is docs/maths/draft.md.
 */
public final class Draft {
    private Draft() {}

    /** The pattern, on the 0.01 mm grid; empty where findings say which measures are at odds. */
    public static Optional<Pattern> of(Body body, Fabric fabric, Optional<Boot> boot, Style style, Findings findings) {
        Pattern.Reductions r = Reducing.of(fabric, style.hold());
        Frame frame = Frame.of(body, style, r);
        double crotchWidth = frame.crotchWidth(body.mm(Measure.THIGH_GIRTH) * (1 - r.across()));
        LegLine line = LegLine.of(body, fabric, boot, style, r, crotchWidth);
        if (!HeightsCheck.pass(line, body, boot, findings)) {
            return Optional.empty();
        }
        LegCurves curves = new LegCurves(line, frame);
        Path front = curves.inseam(-1, 0);
        double drop = Inseams.backDrop(curves, front.length());
        Path back = curves.inseam(1, drop);
        Optional<Top> top = Top.solve(
                body,
                style,
                r,
                frame,
                new TopCurves.Hook(front.start(), curves.flareAtCrotch(-1, 0)),
                new TopCurves.Hook(back.start(), curves.flareAtCrotch(1, drop)),
                findings);
        return top.map(t -> assemble(body, style, r, line, curves, front, back, t));
    }

    private static Pattern assemble(
            Body body,
            Style style,
            Pattern.Reductions r,
            LegLine line,
            LegCurves curves,
            Path front,
            Path back,
            Top top) {
        Piece leg = LegPiece.of(line, curves, front, back, top, style, r, body);
        double topEdge = 2 * leg.edge("waist edge").length();
        double band = Math.min(body.mm(Measure.WAIST_GIRTH) * (1 - r.waistband()), topEdge);
        if (style.dropBelowWaist() > 0) {
            band = Math.min(Frame.topGirth(body, style) * (1 - r.waistband()), topEdge);
        }
        List<Piece> pieces = new ArrayList<>();
        pieces.add(leg);
        pieces.add(Bands.waistband(band, style));
        style.cuffHeight().ifPresent(h -> pieces.add(Bands.cuff(leg.edge("hem").length(), h, style)));
        return new Pattern(pieces, Joins.of(pieces, style), levels(body, r, line, curves, top, leg, band), r);
    }

    private static List<Level> levels(
            Body body, Pattern.Reductions r, LegLine line, LegCurves curves, Top top, Piece leg, double band) {
        Path front = leg.edge("front inseam").line();
        Path back = leg.edge("back inseam").line();
        List<Level> out = new ArrayList<>();
        out.add(new Level(Level.Name.WAIST, body.mm(Measure.WAIST_HEIGHT) * (1 - r.along()), band));
        out.add(new Level(Level.Name.HIP, top.hipHeight(), 2 * hipWidth(leg, top.hipHeight())));
        out.add(new Level(
                Level.Name.CROTCH,
                front.start().y(),
                back.end().x() - front.start().x()));
        List<Node> below = new ArrayList<>(line.leg());
        below.add(line.narrow());
        for (Node node : below) {
            if (node.level() != null
                    && node.level() != Level.Name.CROTCH
                    && node.level() != Level.Name.HEM
                    && node.height() > curves.endHeight() + 1) {
                out.add(new Level(node.level(), node.height(), widthAt(front, back, node.height())));
            }
        }
        out.add(new Level(Level.Name.HEM, line.hemHeight(), leg.edge("hem").length()));
        return out;
    }

    private static double widthAt(Path front, Path back, double height) {
        Point a = front.at(front.alongAtHeight(height));
        Point b = back.at(back.alongAtHeight(height));
        return b.x() - a.x();
    }

    private static double hipWidth(Piece leg, double height) {
        Path front = leg.edge("front crotch").line();
        Path back = leg.edge("back crotch").line();
        return widthAt(front, back, height);
    }
}
