package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Seam;
import stretchwright.pattern.TopEnd;
import stretchwright.web.form.Form;

/** Slabs of chalk at what can be moved. */
final class Grips {
    /** A finger needs so much, px of the sheet; on a phone the sheet is shown a little smaller. */
    private static final double TARGET = 44;

    private static final double TARGET_SMALL = 49;

    /** From the line that is moved to the middle of its slab, px. */
    private static final double BESIDE = 16;

    /** Of the amount that an edge moves at a level: a leg has two edges, the hip four. */
    private static final double OF_LEG = 0.5;

    private static final double OF_HIP = 0.25;

    /** Where there is no room for all, the first ones stay. */
    private static final List<Handle> LEVELS = List.of(
            Handle.AT_KNEE, Handle.AT_CALF, Handle.AT_HIP, Handle.AT_MID_THIGH, Handle.AT_ANKLE, Handle.AT_CROTCH);

    private final Spread spread;
    private final Form form;
    private final double target;
    private final List<Grip> grips = new ArrayList<>();

    Grips(Spread spread) {
        this.spread = spread;
        this.form = Form.of(spread.make().text());
        this.target = spread.sheet().wide() ? TARGET : TARGET_SMALL;
    }

    /** One with its place, px. */
    private record Grip(Handle handle, double x, double y) {}

    void draw() {
        Spread.Placed front = spread.front();
        double hem = front.at().y(front.piece().cutLine().box().minY());
        put(Handle.HEM, front.at().x(front.piece().cutLine().box().centre().x()), hem + 4);
        corner(front, EdgeName.FRONT_CROTCH).ifPresent(p -> put(Handle.FRONT_WAIST, p.x(), p.y()));
        corner(spread.back(), EdgeName.BACK_CROTCH).ifPresent(p -> put(Handle.BACK_WAIST, p.x(), p.y()));
        band();
        if (spread.session().pattern().seam(Seam.Role.COVER_JOIN).isEmpty()) {
            width(Handle.AT_HEM);
        }
        LEVELS.forEach(this::width);
        grips.sort(Comparator.comparingInt(g -> g.handle().ordinal()));
        grips.forEach(g -> new Slab(spread, form, target).draw(g.handle(), g.x(), g.y(), pxPerMm(g.handle())));
    }

    /** Unless it would lie on another one. */
    private void put(Handle handle, double x, double y) {
        if (grips.stream().allMatch(g -> Math.abs(g.x() - x) >= target || Math.abs(g.y() - y) >= target)) {
            grips.add(new Grip(handle, x, y));
        }
    }

    /** How far it moves on the sheet for each mm in the make. */
    private double pxPerMm(Handle handle) {
        double share = handle.way() != Handle.Way.OUT ? 1 : handle == Handle.AT_HIP ? OF_HIP : OF_LEG;
        return share * spread.front().at().scale();
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

    /** The band as it will stand on the legs, and a slab on its upper edge. */
    private void band() {
        TopEnd.Band band = spread.session().make().style().top().band();
        if (band.shape() == TopEnd.Band.Shape.CASING) {
            return;
        }
        for (Spread.Placed placed : spread.legs()) {
            for (Edge edge : placed.piece().edges()) {
                if (edge.name().isWaist()) {
                    Path waist = edge.line();
                    List<Point> line = new ArrayList<>();
                    line.add(waist.start());
                    waist.points().forEach(p -> line.add(p.plus(new Point(0, band.height()))));
                    line.add(waist.end());
                    spread.svg().path("thin", placed.at().path(line, false));
                }
            }
        }
        Spread.Placed front = spread.front();
        if (front.piece().has(EdgeName.WAIST_EDGE)) {
            Path waist = front.piece().edge(EdgeName.WAIST_EDGE).line();
            Point middle = waist.at(waist.length() / 2);
            put(Handle.BAND, front.at().x(middle.x()), front.at().y(middle.y() + band.height()) - BESIDE + 2);
        }
    }

    /** At the right of the last leg, where the garment has the level. */
    private void width(Handle handle) {
        Level.Name name = handle.level().orElseThrow();
        spread.session().pattern().levels().stream()
                .filter(l -> l.name() == name)
                .findFirst()
                .ifPresent(level -> {
                    Spread.Placed back = spread.back();
                    double height = handle == Handle.AT_HEM
                            ? back.piece().edge(EdgeName.HEM).line().start().y()
                            : level.height();
                    double x = back.at().x(Spread.edgeAt(back.piece(), height, false));
                    put(handle, x + BESIDE, back.at().y(height));
                });
    }
}
