package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.ground.Point;

/** The way of the tape from the ribbon in front, between the legs, to the ribbon behind. */
final class CrotchWay {
    private final SideFigure figure;
    private final double off;
    private final double crotch;
    private final double waist;
    private final double leaves;
    private final double returns;

    /** @param off how far beside the figure it is drawn, mm */
    CrotchWay(SideFigure figure, double off) {
        this.figure = figure;
        this.off = off;
        this.crotch = figure.body().mm(Measure.CROTCH_HEIGHT);
        this.waist = figure.body().mm(Measure.WAIST_HEIGHT);
        double rise = waist - crotch;
        this.leaves = crotch + 0.14 * rise;
        this.returns = crotch + 0.12 * rise;
    }

    List<Point> front() {
        return figure.fronts(waist, leaves).stream()
                .map(p -> p.plus(new Point(-off, 0)))
                .toList();
    }

    List<Point> back() {
        return figure.backs(returns, waist).stream()
                .map(p -> p.plus(new Point(off, 0)))
                .toList();
    }

    Point lowest() {
        return new Point(0.5 * figure.front(crotch) + 0.5 * figure.back(crotch), crotch);
    }

    List<Point> between() {
        Point from = new Point(figure.front(leaves) - off, leaves);
        double span = lowest().x() - from.x();
        double fall = leaves - crotch;
        List<Point> all = new ArrayList<>();
        all.add(from);
        all.add(new Point(from.x() + 0.07 * span, crotch + 0.50 * fall));
        all.add(new Point(from.x() + 0.32 * span, crotch + 0.13 * fall));
        all.addAll(behind());
        return all;
    }

    List<Point> behind() {
        Point to = new Point(figure.back(returns) + off, returns);
        double span = to.x() - lowest().x();
        double fall = returns - crotch;
        return List.of(
                lowest(),
                new Point(lowest().x() + 0.58 * span, crotch + 0.13 * fall),
                new Point(lowest().x() + 0.90 * span, crotch + 0.50 * fall),
                to);
    }
}
