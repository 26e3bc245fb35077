package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;

/**
 * The wearer from the left side with the pair on: pencil where skin or boot is seen, cloth between the edges. Heights are mm
 * above the floor of the bare foot, so that a level line can run on to a table of numbers.
 */
public final class WornView {
    private static final double EDGE = 10;
    /** How far cloth is drawn off the skin, px: lines of two kinds must not run into one. */
    private static final double OFF = 3;
    /** How far above a boot's top edge cloth leaves the leg for it, mm (free drawing, no source). */
    private static final double EASES = 36;

    private final Body body;
    private final SideFigure figure;
    private final Optional<BootShape> boot;
    private final WornEdges edges;
    private Pen pen;
    private final double width;
    private final double height;

    private WornView(Body body, Optional<Boot> boot, WornEdges edges, double scale) {
        this.body = body;
        this.figure = new SideFigure(body);
        this.boot = boot.map(b -> new BootShape(BootKind.of(b.kind()), b));
        double top = figure.top();
        this.edges = new WornEdges(
                Math.min(edges.frontTop(), top), Math.min(edges.backTop(), top), edges.frontHem(), edges.backHem());
        double low = this.boot.map(b -> bone() + new BootUnder(b).ground()).orElse(0.0);
        double left = this.boot
                .map(b -> Math.min(b.toe(), new BootUnder(b).front()))
                .orElse(figure.foot().toe());
        double right = Math.max(
                widest(),
                this.boot.map(b -> new BootUnder(b).rear()).orElse(figure.foot().heel()));
        left = Math.min(left, deepest());
        this.width = 2 * (EDGE + OFF) + scale * (right - left);
        this.height = 2 * EDGE + scale * (top - low);
        this.pen = new Pen(new Point(EDGE + OFF - scale * left, EDGE + scale * top), scale);
    }

    /** @param scale px for a mm */
    public static WornView of(Body body, Optional<Boot> boot, WornEdges edges, double scale) {
        return new WornView(body, boot, edges, scale);
    }

    private double bone() {
        return body.mm(Measure.ANKLE_BONE_HEIGHT);
    }

    private double widest() {
        return figure.backs(figure.top(), figure.ankle()).stream()
                .mapToDouble(Point::x)
                .max()
                .orElseThrow();
    }

    private double deepest() {
        return figure.fronts(figure.top(), figure.ankle()).stream()
                .mapToDouble(Point::x)
                .min()
                .orElseThrow();
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** px from the upper edge of the drawing down to a height. */
    public double levelY(double mm) {
        return pen.at(new Point(0, mm)).y();
    }

    /** px from the left to the front of what is seen at a height. */
    public double frontX(double mm) {
        boolean cloth = mm <= edges.frontTop() && mm >= edges.frontHem();
        return pen.at(new Point(front(mm), mm)).x() - (cloth ? OFF : 0);
    }

    public double backX(double mm) {
        boolean cloth = mm <= edges.backTop() && mm >= edges.backHem();
        return pen.at(new Point(back(mm), mm)).x() + (cloth ? OFF : 0);
    }

    /** Of leg and boot together: the further forward of both, eased above the boot's top edge. */
    private double front(double mm) {
        double leg = mm >= figure.ankle() ? figure.front(mm) : figure.foot().frontAt(mm);
        return boot.map(b -> {
                    double top = bone() + b.top();
                    double share = Math.max(0, Math.min(1, (top + EASES - mm) / EASES));
                    double shell = mm >= top ? b.frontAt(b.top()) : b.frontAt(mm - bone());
                    return mm >= top
                            ? Math.min(leg, leg + share * (shell - leg))
                            : Math.min(shell, inside(leg, mm, b.top()));
                })
                .orElse(leg);
    }

    private double back(double mm) {
        double leg = mm >= figure.ankle() ? figure.back(mm) : figure.foot().backAt(mm);
        return boot.map(b -> {
                    double top = bone() + b.top();
                    double share = Math.max(0, Math.min(1, (top + EASES - mm) / EASES));
                    double shell = mm >= top ? b.backAt(b.top()) : b.backAt(mm - bone());
                    return mm >= top
                            ? Math.max(leg, leg + share * (shell - leg))
                            : Math.max(shell, -inside(-leg, mm, b.top()));
                })
                .orElse(leg);
    }

    /** A leg that is thicker than the boot is seen down to the ankle; a foot is not seen in a boot. */
    private double inside(double leg, double mm, double top) {
        return mm >= Math.min(figure.ankle(), bone() + top) ? leg : 0;
    }

    /** The pair's outline: front edge down, hem, back edge up; px. */
    List<Point> outline() {
        List<Point> out = new ArrayList<>();
        for (double h : Smooth.steps(edges.frontTop(), edges.frontHem(), 56)) {
            out.add(new Point(frontX(h), levelY(h)));
        }
        for (double h : Smooth.steps(edges.backHem(), edges.backTop(), 56)) {
            out.add(new Point(backX(h), levelY(h)));
        }
        return out;
    }

    /** In mm of the body, to draw more on it. */
    Pen pen() {
        return pen;
    }

    /** So many px further to the right, in a wider drawing; before it is drawn. */
    Pen shifted(double px) {
        pen = pen.from(new Point(pen.mm(px), 0));
        return pen;
    }

    SideFigure figure() {
        return figure;
    }

    public Drawing drawing(Voice voice) {
        draw();
        return new Drawing(
                voice.say(Tell.said("worn.title")),
                voice.say(boot.isPresent() ? Tell.said("worn.over-boot") : Tell.said("worn.bare")),
                width,
                height,
                pen.drawn());
    }

    void draw() {
        if (boot.isPresent()) {
            BootShape shape = boot.get();
            pen.curve(Look.BODY, figure.fronts(figure.top(), bone() + shape.top()));
            pen.curve(Look.BODY, figure.backs(bone() + shape.top(), figure.top()));
            Pen lifted = pen.from(new Point(0, bone()));
            new BootUnder(shape).draw(lifted, false);
            shape.shell(lifted, edges.frontHem() > bone() + shape.top());
            cloth();
            shape.hidden(lifted, edges.frontHem() - bone(), edges.backHem() - bone());
        } else {
            figure.draw(pen, -1, figure.top());
            cloth();
        }
    }

    private void cloth() {
        List<Point> all = outline().stream().map(pen::shownAt).toList();
        int half = all.size() / 2;
        pen.runs(Look.WORN, List.of(all.subList(0, half), all.subList(half, all.size())));
    }
}
