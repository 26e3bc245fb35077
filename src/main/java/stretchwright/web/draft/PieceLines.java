package stretchwright.web.draft;

import stretchwright.ground.Box;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.web.draw.Outline;

/** Lines and words of a piece. */
final class PieceLines {
    private static final double NOTCH_MM = 18;
    private static final double LETTER = 13;

    /** Room that the words FRONT and BACK need, and how often a piece is cut, px; a narrower piece says it by its name, or on paper. */
    private static final double FOR_SIDES = 140;

    private static final double FOR_TIMES = 120;

    private static final double LETTER_SMALL = 7;

    private final Spread spread;

    PieceLines(Spread spread) {
        this.spread = spread;
    }

    void draw(Spread.Placed placed) {
        Piece p = placed.piece();
        Outline at = placed.at();
        spread.svg().path("cut", at.path(p.cutLine().points(), true));
        spread.svg().path("sew", at.path(p.sewLine().points(), true));
        for (Notch n : p.notches()) {
            Point edge = n.at().plus(n.outward().times(p.edge(n.edge()).allowance()));
            Point in = edge.minus(n.outward().times(NOTCH_MM));
            spread.svg().line("notch", at.x(edge.x()), at.y(edge.y()), at.x(in.x()), at.y(in.y()));
        }
        if (p.onFold()) {
            Box box = p.cutLine().box();
            spread.svg().line("fold", at.x(0), at.y(box.minY()), at.x(0), at.y(box.maxY()));
        }
        if (p.name().kind().isOfLeg()) {
            grain(p, at);
        }
    }

    /** Of a piece of the leg; after all outlines, as a name may be broader than a narrow piece. */
    void words(Spread.Placed placed) {
        sides(placed.piece(), placed.at());
    }

    private void grain(Piece p, Outline at) {
        double x = at.x(p.grain().from().x());
        double y1 = at.y(p.grain().from().y());
        double y2 = at.y(p.grain().to().y());
        spread.svg().line("grain", x, y1, x, y2);
        spread.svg().path("grain", head(x, Math.min(y1, y2), 1) + head(x, Math.max(y1, y2), -1));
    }

    private static String head(double x, double y, int down) {
        return "M" + Outline.px(x - 4) + " " + Outline.px(y + 8 * down) + "L" + Outline.px(x) + " " + Outline.px(y)
                + "L" + Outline.px(x + 4) + " " + Outline.px(y + 8 * down);
    }

    private void sides(Piece p, Outline at) {
        Box box = p.sewLine().box();
        double height = Math.min(
                        Spread.upper(p, EdgeName.FRONT_CROTCH, EdgeName.FRONT_EDGE),
                        Spread.upper(p, EdgeName.BACK_CROTCH, EdgeName.BACK_EDGE))
                - 0.09 * box.height();
        double room = at.x(box.maxX()) - at.x(box.minX());
        if (room > FOR_SIDES) {
            side(p, at, height, spread.say("draw.front"), EdgeName.FRONT_CROTCH, EdgeName.FRONT_EDGE);
            side(p, at, height, spread.say("draw.back"), EdgeName.BACK_CROTCH, EdgeName.BACK_EDGE);
        }
        double middle = at.x(box.centre().x());
        // between two others a panel says its name lower down than they do
        double down = (p.name().kind() == PieceKind.SIDE_PANEL ? 0.42 : 0.3) * box.height();
        spread.svg()
                .text(
                        "name onpiece",
                        middle,
                        at.y(box.maxY() - down),
                        "middle",
                        spread.make().voice().say(p.name().said()));
        if (spread.sheet().wide() && room > FOR_TIMES) {
            spread.svg()
                    .text(
                            "small",
                            middle,
                            at.y(box.maxY() - down) + 18,
                            "middle",
                            spread.make().voice().say(p.timesCut()));
        }
    }

    /** Beside the edge at that height, on the inside. */
    private void side(Piece p, Outline at, double height, String word, EdgeName... names) {
        for (EdgeName name : names) {
            if (p.has(name)) {
                Path line = p.edge(name).line();
                boolean toLeft = line.start().x() < p.sewLine().box().centre().x();
                double inside = spread.sheet().wide() ? LETTER : LETTER_SMALL;
                double x = at.x(line.at(line.alongAtHeight(height)).x());
                spread.svg()
                        .text(
                                spread.sheet().wide() ? "big" : "big least",
                                x + (toLeft ? inside : -inside),
                                at.y(height),
                                toLeft ? "start" : "end",
                                word);
                return;
            }
        }
    }
}
