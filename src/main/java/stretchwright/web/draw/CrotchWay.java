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
        List<Point> all = new ArrayList<>();
        all.add(new Point(figure.front(leaves) - off, leaves));
        all.add(new Point(0.80 * figure.front(crotch), crotch + 0.25 * (leaves - crotch)));
        all.addAll(behind());
        return all;
    }

    List<Point> behind() {
        double depth = figure.back(crotch) - lowest().x();
        return List.of(
                lowest(),
                new Point(lowest().x() + 0.55 * depth, crotch + 0.04 * (returns - crotch)),
                new Point(lowest().x() + 0.98 * depth, crotch + 0.42 * (returns - crotch)),
                new Point(figure.back(returns) + off, returns));
    }
}
