package stretchwright.web.draft;

import java.util.Optional;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.web.draw.Outline;
import stretchwright.web.form.Form;

/** Slabs of chalk at what can be moved. */
final class Grips {
    private final Spread spread;

    Grips(Spread spread) {
        this.spread = spread;
    }

    void draw() {
        Form form = Form.of(spread.make().text());
        Spread.Placed front = spread.front();
        Spread.Placed back = spread.back();
        grip(
                Handle.HEM,
                form,
                front.at().x(front.piece().cutLine().box().centre().x()),
                lowest(front) + 4);
        corner(front, EdgeName.FRONT_CROTCH).ifPresent(p -> grip(Handle.FRONT_WAIST, form, p.x(), p.y()));
        corner(back, EdgeName.BACK_CROTCH).ifPresent(p -> grip(Handle.BACK_WAIST, form, p.x(), p.y()));
    }

    private static double lowest(Spread.Placed placed) {
        return placed.at().y(placed.piece().cutLine().box().minY());
    }

    /** The upper end of an edge on the screen. */
    private static Optional<Point> corner(Spread.Placed placed, EdgeName name) {
        if (!placed.piece().has(name)) {
            return Optional.empty();
        }
        Edge edge = placed.piece().edge(name);
        Point up = edge.line().start().y() > edge.line().end().y()
                ? edge.line().start()
                : edge.line().end();
        return Optional.of(new Point(placed.at().x(up.x()), placed.at().y(up.y())));
    }

    private void grip(Handle handle, Form form, double x, double y) {
        double now = handle.value(form);
        String told = spread.make().voice().say(handle.now(now));
        spread.svg()
                .open(
                        "g",
                        "class",
                        "grip",
                        "transform",
                        "translate(" + Outline.px(x) + " " + Outline.px(y) + ")",
                        "role",
                        "slider",
                        "tabindex",
                        "0",
                        "id",
                        "grip-" + handle.name().toLowerCase(java.util.Locale.ROOT)
                                + (spread.sheet().wide() ? "" : "-small"),
                        "aria-label",
                        spread.make().voice().say(handle.label()),
                        "aria-valuemin",
                        Long.toString(Math.round(handle.least())),
                        "aria-valuemax",
                        Long.toString(Math.round(handle.most())),
                        "aria-valuenow",
                        Long.toString(Math.round(now)),
                        "aria-valuetext",
                        told,
                        "data-key",
                        handle.key(),
                        "data-mm",
                        Double.toString(now),
                        "data-px",
                        Outline.px(spread.front().at().scale() * 1000),
                        "data-up",
                        Boolean.toString(handle.upwards()));
        spread.svg().empty("rect", "class", "hit", "x", "-22", "y", "-22", "width", "44", "height", "44");
        spread.svg()
                .path(
                        "slab",
                        "M-12 -12H11Q15 -12 15.5 -8L17 7Q17.3 12 13 12H-13Q-17.3 12 -17 7L-15.5 -8Q-15 -12 -11 -12Z");
        spread.svg().path("arrow", "M0 -6.5V6.5M-4 -3L0 -7L4 -3M-4 3L0 7L4 3");
        spread.svg().close("g");
        if (Math.abs(now) > 0.05 && handle != Handle.BAND && spread.sheet().wide()) {
            spread.svg().text("chalktext halo", x + 24, y + 22, "start", told);
        }
    }
}
