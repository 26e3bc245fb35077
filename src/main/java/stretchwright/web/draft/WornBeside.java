package stretchwright.web.draft;

import java.util.Optional;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.WornEdges;
import stretchwright.web.draw.WornView;

/** The pair on its wearer with its place on the sheet. */
record WornBeside(WornView view, double left, double down) {
    /** Of the pattern's scale. */
    private static final double WORN = 0.95;

    /** px at the left that she has. */
    private static final double WORN_ROOM = 186;

    /** The pair on its wearer, at the left, the hem about where that of the piece is. */
    static Optional<WornBeside> draw(Spread spread, double top) {
        Pattern pattern = spread.session().pattern();
        double band = spread.session().make().style().bandHeight();
        double front = pattern.onBody(Spread.upper(spread.front().piece(), EdgeName.FRONT_CROTCH, EdgeName.FRONT_EDGE));
        double back = pattern.onBody(Spread.upper(spread.back().piece(), EdgeName.BACK_CROTCH, EdgeName.BACK_EDGE));
        double hem = pattern.level(Level.Name.HEM)
                .or(() -> pattern.level(Level.Name.ANKLE))
                .map(l -> pattern.onBody(l.height()))
                .orElse(0.0);
        double drop = spread.session().make().style().lower().hemDrop();
        WornEdges edges = new WornEdges(front + band, back + band, hem + drop / 2, hem - drop / 2);
        WornView full = WornView.of(
                spread.session().body(),
                spread.session().make().boot(),
                edges,
                WORN * spread.front().at().scale());
        double fitting =
                Math.min(1, Math.min(WORN_ROOM / full.width(), (spread.sheet().height() - 8) / full.height()));
        WornView view = WornView.of(
                spread.session().body(),
                spread.session().make().boot(),
                edges,
                fitting * WORN * spread.front().at().scale());
        double left = Math.max(0, WORN_ROOM - view.width());
        double down = Math.max(0, top + (spread.front().at().y(0) - top) - view.levelY(0));
        WornBeside placed =
                new WornBeside(view, left, Math.min(down, spread.sheet().height() - view.height()));
        spread.svg()
                .open(
                        "g",
                        "class",
                        "onher",
                        "transform",
                        "translate(" + Outline.px(left) + " " + Outline.px(placed.down) + ")");
        spread.svg().drawn(view.drawing(spread.make().voice()).inside());
        spread.svg().close("g");
        return Optional.of(placed);
    }

    /** px to the right of her at a height of the body. */
    double x(double height) {
        return left + view.backX(height) + 4;
    }

    double y(double height) {
        return down + view.levelY(height);
    }
}
