package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Box;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.make.Session;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.Svg;
import stretchwright.web.draw.WornEdges;
import stretchwright.web.draw.WornView;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Opened;

/** The pattern on the screen, all pieces to one scale: lines, numbers on their levels, and what can be moved. */
final class PatternDrawing {
    private static final double NOTCH_MM = 18;
    private static final double LETTER = 13;

    private final Opened make;
    private final Session session;
    private final Optional<Session> before;
    private final Sheet sheet;
    private final Svg svg = new Svg();
    private final List<PlacedPiece> legs = new ArrayList<>();

    /** Of the pattern's scale. */
    private static final double WORN = 0.95;

    /** px at the left that she has. */
    private static final double WORN_ROOM = 186;

    private Optional<PlacedView> wornView = Optional.empty();

    /** Her picture with its place on the sheet. */
    private record PlacedView(WornView view, double left, double down) {}

    /** A piece with its place on the sheet. */
    private record PlacedPiece(Piece piece, Outline at) {}

    /**
     * The sheet that it is drawn on, px.
     *
     * @param left where the legs begin
     * @param room how wide they may be
     * @param aside where the other pieces stand; 0 for none
     */
    record Sheet(double width, double height, double left, double room, double aside, boolean wide) {
        static final Sheet WIDE = new Sheet(930, 660, 428, 280, 722, true);
        static final Sheet NARROW = new Sheet(390, 420, 150, 200, 0, false);
    }

    private PatternDrawing(Opened make, Optional<Session> before, Sheet sheet) {
        this.make = make;
        this.session = make.session();
        this.before = before;
        this.sheet = sheet;
    }

    /** @param before how it was, in tacking; empty where nothing is compared */
    static String of(Opened make, Optional<Session> before, Sheet sheet) {
        return new PatternDrawing(make, before, sheet).drawn();
    }

    private String drawn() {
        List<Piece> all = session.pattern().legs();
        double wide = all.stream().mapToDouble(p -> p.cutLine().box().width()).sum();
        double low =
                all.stream().mapToDouble(p -> p.cutLine().box().minY()).min().orElse(0);
        double high =
                all.stream().mapToDouble(p -> p.cutLine().box().maxY()).max().orElse(1);
        double top = sheet.wide() ? 52 : 34;
        double scale =
                Math.min((sheet.height() - top - 40) / (high - low), (sheet.room() - 12 * (all.size() - 1)) / wide);
        double x = sheet.left();
        for (Piece p : all) {
            Box box = p.cutLine().box();
            legs.add(new PlacedPiece(p, new Outline(scale, x - scale * box.minX(), top + scale * high)));
            x += scale * box.width() + 12;
        }
        svg.open(
                "svg",
                "class",
                sheet.wide() ? "wide" : "narrow",
                "viewBox",
                "0 0 " + Math.round(sheet.width()) + " " + Math.round(sheet.height()),
                "role",
                "group",
                "aria-label",
                say("draw.pattern"));
        if (sheet.wide()) {
            worn(top, scale);
        }
        levels(top, scale);
        legs.forEach(this::piece);
        tacking();
        if (sheet.aside() > 0) {
            others(scale);
        }
        if (!make.demo()) {
            grips();
        }
        return svg.close("svg").toString();
    }

    private void levels(double top, double scale) {
        Outline at = legs.get(0).at();
        double last = 0;
        if (sheet.wide()) {
            svg.text("lab", sheet.left() - 112, top - 24, "end", say("draw.on-her"));
            svg.text("lab", sheet.left() - 32, top - 24, "end", unitHead());
        }
        for (LevelRow row : LevelRow.of(session)) {
            double level = at.y(row.level().height());
            double y = Math.max(level, last + 18);
            last = y;
            String name = make.voice().say(row.level().name().said());
            double end = scale > 0 ? at.x(edgeAt(row.level().height())) : 0;
            wornLevel(row, y);
            svg.path(
                    "level",
                    "M" + Outline.px(sheet.left() - 26) + " " + Outline.px(y) + "L" + Outline.px(end) + " "
                            + Outline.px(level));
            svg.text(row.estimated() ? "est" : "", numbersAt(), y + 5, "start", name);
            if (sheet.wide()) {
                number(row, sheet.left() - 112, y + 5, say("draw.on-her"), row.onHer());
            }
            number(row, sheet.left() - 32, y + 5, say("draw.as-cut"), row.asCut());
            if (row.looks()) {
                svg.path("mark look", ring(end, level));
            }
        }
    }

    /** The pair on its wearer, at the left, the hem about where that of the piece is. */
    private void worn(double top, double scale) {
        Pattern pattern = session.pattern();
        double band = session.make().style().bandHeight();
        double front = pattern.onBody(upper(legs.get(0).piece(), EdgeName.FRONT_CROTCH, EdgeName.FRONT_EDGE));
        double back =
                pattern.onBody(upper(legs.get(legs.size() - 1).piece(), EdgeName.BACK_CROTCH, EdgeName.BACK_EDGE));
        double hem = pattern.level(Level.Name.HEM)
                .or(() -> pattern.level(Level.Name.ANKLE))
                .map(l -> pattern.onBody(l.height()))
                .orElse(0.0);
        double drop = session.make().style().lower().hemDrop();
        WornEdges edges = new WornEdges(front + band, back + band, hem + drop / 2, hem - drop / 2);
        WornView full = WornView.of(session.body(), session.make().boot(), edges, WORN * scale);
        double fitting = Math.min(1, Math.min(WORN_ROOM / full.width(), (sheet.height() - 8) / full.height()));
        WornView view = WornView.of(session.body(), session.make().boot(), edges, fitting * WORN * scale);
        double left = Math.max(0, WORN_ROOM - view.width());
        double down = Math.max(0, top + (legs.get(0).at().y(0) - top) - view.levelY(0));
        wornView = Optional.of(new PlacedView(view, left, Math.min(down, sheet.height() - view.height())));
        svg.open(
                "g",
                "class",
                "onher",
                "transform",
                "translate(" + Outline.px(left) + " "
                        + Outline.px(wornView.get().down()) + ")");
        svg.drawn(view.drawing(make.voice()).inside());
        svg.close("g");
    }

    /** A level line from her to the numbers. */
    private void wornLevel(LevelRow row, double y) {
        wornView.ifPresent(v -> {
            double height = session.pattern().onBody(row.level().height());
            svg.path(
                    "level",
                    "M" + Outline.px(v.left() + v.view().backX(height) + 4) + " "
                            + Outline.px(v.down() + v.view().levelY(height)) + "L" + Outline.px(numbersAt() - 6) + " "
                            + Outline.px(y));
        });
    }

    private static double upper(Piece piece, EdgeName... names) {
        for (EdgeName name : names) {
            if (piece.has(name)) {
                Path line = piece.edge(name).line();
                return Math.max(line.start().y(), line.end().y());
            }
        }
        return piece.sewLine().box().maxY();
    }

    private double numbersAt() {
        return sheet.wide() ? sheet.left() - 238 : 8;
    }

    private String unitHead() {
        return make.voice()
                .say(Tell.said(
                        "draw.as-cut-unit", Part.text(session.make().unit().symbol())));
    }

    private void number(LevelRow row, double x, double y, String column, double mm) {
        String value = make.voice().say(Part.bare(mm));
        String told = (row.estimated() ? "~" : "") + value;
        String kind = row.estimated() ? "num est" : "num";
        String name = make.voice().say(row.level().name().said());
        if (row.why().isPresent()) {
            svg.open(
                    "a",
                    "href",
                    make.address() + "?why=" + row.why().get().name(),
                    "aria-label",
                    make.voice().say(Tell.said("draw.why", Part.text(name), Part.text(column), Part.text(told))));
            svg.text(kind, x, y, "end", told).close("a");
        } else {
            svg.text("lab", x, y, "end", told);
        }
    }

    /** Where the first leg's left outline is at a height, mm. */
    private double edgeAt(double height) {
        List<Point> points = legs.get(0).piece().cutLine().points();
        double left = Double.MAX_VALUE;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            if (Math.min(a.y(), b.y()) <= height && Math.max(a.y(), b.y()) >= height && a.y() != b.y()) {
                left = Math.min(left, a.x() + (b.x() - a.x()) * (height - a.y()) / (b.y() - a.y()));
            }
        }
        return left == Double.MAX_VALUE ? legs.get(0).piece().cutLine().box().minX() : left;
    }

    private static String ring(double x, double y) {
        return "M" + Outline.px(x - 14) + " " + Outline.px(y) + "a22 13 0 1 1 30 9a22 13 0 0 1 -29 -6";
    }

    private void piece(PlacedPiece placed) {
        Piece p = placed.piece();
        Outline at = placed.at();
        svg.path("cut", at.path(p.cutLine().points(), true));
        svg.path("sew", at.path(p.sewLine().points(), true));
        for (Notch n : p.notches()) {
            Point edge = n.at().plus(n.outward().times(p.edge(n.edge()).allowance()));
            Point in = edge.minus(n.outward().times(NOTCH_MM));
            svg.line("notch", at.x(edge.x()), at.y(edge.y()), at.x(in.x()), at.y(in.y()));
        }
        if (p.onFold()) {
            Box box = p.cutLine().box();
            svg.line("fold", at.x(0), at.y(box.minY()), at.x(0), at.y(box.maxY()));
        }
        if (p.name().kind().isOfLeg()) {
            grain(p, at);
            sides(p, at);
        }
    }

    private void grain(Piece p, Outline at) {
        double x = at.x(p.grain().from().x());
        double y1 = at.y(p.grain().from().y());
        double y2 = at.y(p.grain().to().y());
        svg.line("grain", x, y1, x, y2);
        svg.path("grain", head(x, Math.min(y1, y2), 1) + head(x, Math.max(y1, y2), -1));
    }

    private static String head(double x, double y, int down) {
        return "M" + Outline.px(x - 4) + " " + Outline.px(y + 8 * down) + "L" + Outline.px(x) + " " + Outline.px(y)
                + "L" + Outline.px(x + 4) + " " + Outline.px(y + 8 * down);
    }

    private void sides(Piece p, Outline at) {
        Box box = p.sewLine().box();
        double height = Math.min(
                        upper(p, EdgeName.FRONT_CROTCH, EdgeName.FRONT_EDGE),
                        upper(p, EdgeName.BACK_CROTCH, EdgeName.BACK_EDGE))
                - 0.09 * box.height();
        side(p, at, height, say("draw.front"), EdgeName.FRONT_CROTCH, EdgeName.FRONT_EDGE);
        side(p, at, height, say("draw.back"), EdgeName.BACK_CROTCH, EdgeName.BACK_EDGE);
        double middle = at.x(box.centre().x());
        svg.text(
                "name",
                middle,
                at.y(box.maxY() - 0.3 * box.height()),
                "middle",
                make.voice().say(p.name().said()));
        if (sheet.wide()) {
            svg.text(
                    "small",
                    middle,
                    at.y(box.maxY() - 0.3 * box.height()) + 18,
                    "middle",
                    make.voice().say(p.timesCut()));
        }
    }

    /** Beside the edge at that height, on the inside. */
    private void side(Piece p, Outline at, double height, String word, EdgeName... names) {
        for (EdgeName name : names) {
            if (p.has(name)) {
                Path line = p.edge(name).line();
                boolean toLeft = line.start().x() < p.sewLine().box().centre().x();
                double x = at.x(line.at(line.alongAtHeight(height)).x());
                svg.text(
                        sheet.wide() ? "big" : "big less",
                        x + (toLeft ? LETTER : -LETTER),
                        at.y(height),
                        toLeft ? "start" : "end",
                        word);
                return;
            }
        }
    }

    /** The legs as they were, where they are otherwise now. */
    private void tacking() {
        before.ifPresent(s -> {
            List<Piece> then = s.pattern().legs();
            for (int i = 0; i < Math.min(then.size(), legs.size()); i++) {
                Outline at = legs.get(i).at();
                Moved.runs(then.get(i).cutLine(), legs.get(i).piece().cutLine())
                        .forEach(run -> svg.path("before", at.path(run, false)));
            }
        });
    }

    private void others(double scale) {
        double y = 70;
        for (Piece p : session.pattern().pieces()) {
            if (p.name().kind().isOfLeg() || y > sheet.height() - 60) {
                continue;
            }
            Box box = p.cutLine().box();
            boolean tall = box.height() > box.width() && scale * box.height() > 150;
            if (scale * box.width() <= sheet.width() - sheet.aside() && !tall) {
                y += 22;
                svg.text(
                        "name",
                        sheet.aside(),
                        y - 8,
                        "start",
                        make.voice().say(p.name().said()));
                svg.text("small", sheet.width() - 10, y - 8, "end", make.voice().say(p.timesCut()));
                piece(new PlacedPiece(
                        p, new Outline(scale, sheet.aside() - scale * box.minX(), y + scale * box.maxY())));
                y += scale * box.height() + 26;
            }
        }
    }

    private void grips() {
        Form form = Form.of(make.text());
        PlacedPiece front = legs.get(0);
        PlacedPiece back = legs.get(legs.size() - 1);
        grip(
                Handle.HEM,
                form,
                front.at().x(front.piece().cutLine().box().centre().x()),
                lowest(front) + 4);
        corner(front, EdgeName.FRONT_CROTCH).ifPresent(p -> grip(Handle.FRONT_WAIST, form, p.x(), p.y()));
        corner(back, EdgeName.BACK_CROTCH).ifPresent(p -> grip(Handle.BACK_WAIST, form, p.x(), p.y()));
    }

    private static double lowest(PlacedPiece placed) {
        return placed.at().y(placed.piece().cutLine().box().minY());
    }

    /** The upper end of an edge on the screen. */
    private static Optional<Point> corner(PlacedPiece placed, EdgeName name) {
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
        String told = make.voice().say(handle.now(now));
        svg.open(
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
                "grip-" + handle.name().toLowerCase(java.util.Locale.ROOT) + (sheet.wide() ? "" : "-small"),
                "aria-label",
                make.voice().say(handle.label()),
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
                Outline.px(front().scale() * 1000),
                "data-up",
                Boolean.toString(handle.upwards()));
        svg.empty("rect", "class", "hit", "x", "-22", "y", "-22", "width", "44", "height", "44");
        svg.path("slab", "M-12 -12H11Q15 -12 15.5 -8L17 7Q17.3 12 13 12H-13Q-17.3 12 -17 7L-15.5 -8Q-15 -12 -11 -12Z");
        svg.path("arrow", "M0 -6.5V6.5M-4 -3L0 -7L4 -3M-4 3L0 7L4 3");
        svg.close("g");
        if (Math.abs(now) > 0.05 && handle != Handle.BAND && sheet.wide()) {
            svg.text("chalktext halo", x + 24, y + 22, "start", told);
        }
    }

    private Outline front() {
        return legs.get(0).at();
    }

    private String say(String key) {
        return make.voice().say(Tell.said(key));
    }
}
