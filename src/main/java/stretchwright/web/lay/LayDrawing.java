package stretchwright.web.lay;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.ClothShape;
import stretchwright.ground.Box;
import stretchwright.ground.Part;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.Lay;
import stretchwright.lay.Leftover;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Clipping;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.Svg;

/** Paper on the maker's own cloth: near end below, all of it to one scale; wide, and for a phone with simpler letters. */
final class LayDrawing {
    /**
     * Room on the page, px.
     *
     * @param most height of the cloth
     */
    record Room(String kind, double width, double left, double right, double most) {
        static final Room WIDE = new Room("wide", 930, 150, 62, 860);
        static final Room NARROW = new Room("narrow", 390, 26, 16, 620);

        boolean wide() {
            return this == WIDE;
        }
    }

    private static final double TOP = 34;
    private static final double BELOW = 34;

    private final Shown shown;
    private final Lay lay;
    private final Voice voice;
    private final Unit unit;
    private final Room room;
    private final double scale;
    private final Outline at;
    private final double height;
    private final Svg svg = new Svg();

    private LayDrawing(Shown shown, Voice voice, Unit unit, Room room) {
        this.shown = shown;
        this.lay = shown.lay();
        this.voice = voice;
        this.unit = unit;
        this.room = room;
        double across = lay.fabricWidth() + left() + right();
        double sides = room.width - room.left - room.right;
        scale = Math.min(sides / across, room.most / shown.reach());
        height = TOP + scale * shown.reach() + BELOW;
        double idle = room.wide() ? 0 : (sides - scale * across) / 2;
        at = new Outline(scale, room.left + scale * left() + idle, height - BELOW);
    }

    static String of(Shown shown, Voice voice, Unit unit, Room room, String address, String words) {
        return new LayDrawing(shown, voice, unit, room).drawn(address, words);
    }

    /** The strip beside the usable width on the left, mm. */
    private double left() {
        return lay.fold() > 0 || folded() ? 0 : selvage();
    }

    private double right() {
        return selvage();
    }

    private boolean folded() {
        return lay.method() == Lay.Method.FOLDED;
    }

    private double selvage() {
        ClothShape shape = shown.fabric().roll().shape();
        return shape.outline().isPresent() ? 0 : shape.selvage();
    }

    private String drawn(String address, String words) {
        opened();
        svg.open("g", "role", "img", "aria-label", words);
        cloth("rib-" + room.kind + "-" + shown.number());
        edges();
        if (room.wide()) {
            leftovers();
        }
        spoiled();
        if (room.wide()) {
            new Ruler(svg, at, voice, unit).draw(lay, shown.reach());
            direction();
        }
        below();
        svg.close("g");
        PieceDrawing pieces = new PieceDrawing(svg, at, shown, voice, room.wide());
        shown.placements().forEach(p -> pieces.draw(p, address));
        return svg.close("svg").toString();
    }

    /** With what turns a place on the screen into one on the cloth. */
    private void opened() {
        svg.open(
                "svg",
                "class",
                room.kind + " laid",
                "viewBox",
                "0 0 " + Outline.px(room.width) + " " + Outline.px(height),
                "role",
                "group",
                "aria-label",
                voice.say(Tell.said("lay.drawing")),
                "data-scale",
                String.valueOf(scale),
                "data-left",
                Outline.px(at.left()),
                "data-foot",
                Outline.px(at.foot()),
                "data-fold",
                String.valueOf(lay.fold()));
    }

    /** The ground, with selvages beside the usable width; of a remnant what there is of it. */
    private void cloth(String id) {
        svg.open("defs")
                .open("pattern", "id", id, "width", "7", "height", "7", "patternUnits", "userSpaceOnUse")
                .path("rib", "M3.5 0V7")
                .close("pattern")
                .close("defs");
        ClothShape shape = shown.fabric().roll().shape();
        List<String> grounds = new ArrayList<>();
        if (shape.outline().isPresent()) {
            for (Polygon part : layers(shape.outline().get())) {
                grounds.add(at.path(part.points(), true));
            }
        } else {
            grounds.add(at.path(new Box(-left(), 0, lay.fabricWidth() + right(), shown.reach()).corners(), true));
        }
        grounds.forEach(d -> svg.path("ground", d));
        grounds.forEach(d -> svg.empty("path", "fill", "url(#" + id + ")", "d", d));
    }

    /** A place of the open cloth as it lies: where it is folded lengthwise in both layers, the left part below. */
    private List<Polygon> layers(Polygon place) {
        double fold = lay.fold();
        return fold == 0
                ? List.of(place)
                : List.of(place.placed(false, 0, new Point(-fold, 0)), place.placed(true, 0, new Point(fold, 0)));
    }

    private void edges() {
        double w = lay.fabricWidth();
        double h = shown.reach();
        boolean remnant = shown.fabric().roll().shape().outline().isPresent();
        boolean part = lay.method() == Lay.Method.PART_FOLDED;
        if (lay.fold() > 0 || part) {
            edge("chalked folded", 0, 0, 0, part ? lay.doubled() : h);
        } else if (!remnant) {
            edge("selvage", 0, 0, 0, h);
        }
        if (!remnant) {
            edge("selvage", w, 0, w, h);
        }
        if (lay.method() == Lay.Method.FOLDED_OFF_THE_MIDDLE) {
            edge("chalked dots", lay.doubled(), 0, lay.doubled(), h);
        }
        if (part) {
            edge(
                    "selvage",
                    shown.fabric().roll().usableWidth() / 2,
                    0,
                    shown.fabric().roll().usableWidth() / 2,
                    lay.doubled());
            edge("chalked dots", 0, lay.doubled(), w, lay.doubled());
        }
        String end = lay.method() == Lay.Method.FOLDED_CROSSWISE ? "chalked folded" : "chalked ends";
        edge(end, 0, lay.spreadLength(), w, lay.spreadLength());
    }

    private void edge(String kind, double x0, double y0, double x1, double y1) {
        // what runs along the edge of the cloth is seen on it
        double in = x0 != x1 ? 0 : x0 == 0 ? 2.5 : x0 == lay.fabricWidth() ? -2.5 : 0;
        svg.line(kind, at.x(x0) + in, at.y(y0), at.x(x1) + in, at.y(y1));
    }

    private void leftovers() {
        List<Leftover> left = shown.cloth().use().leftovers();
        for (int i = 0; i < left.size() && shown.troubles().isEmpty(); i++) {
            Leftover l = left.get(i);
            Box box = new Box(l.x(), l.y(), l.x() + l.width(), l.y() + l.height()).grown(-2 / scale);
            svg.path("chalked dots", at.path(box.corners(), true));
            svg.text("oncloth", at.x(box.minX()) + 8, at.y(box.minY()) - 8, "start", String.valueOf((char) ('A' + i)));
        }
    }

    private void spoiled() {
        Box all = new Box(0, 0, lay.fabricWidth(), shown.reach());
        for (Polygon flaw : shown.fabric().roll().shape().flaws()) {
            for (Polygon layer : layers(flaw)) {
                if (layer.box().meets(all)
                        && !Clipping.inside(layer.points(), true, all).isEmpty()) {
                    flaw(layer.box());
                }
            }
        }
    }

    private void flaw(Box box) {
        double x = at.x(box.centre().x());
        double y = at.y(box.centre().y());
        double rx = Math.max(8, scale * box.width() / 2);
        double ry = Math.max(8, scale * box.height() / 2);
        svg.empty(
                "ellipse",
                "class",
                "chalked",
                "cx",
                Outline.px(x),
                "cy",
                Outline.px(y),
                "rx",
                Outline.px(rx),
                "ry",
                Outline.px(ry));
        svg.path("chalked", "M" + Outline.px(x - 5) + " " + Outline.px(y - 5) + "l10 10m0 -10l-10 10");
        if (room.wide()) {
            svg.text("oncloth", x + rx + 5, y + 5, "start", say("lay.flaw"));
        }
    }

    /** Which way the print or the nap runs. */
    private void direction() {
        if (!shown.fabric().roll().oneWay()) {
            return;
        }
        double x = at.x(lay.fabricWidth() + right()) + 22;
        double foot = at.y(shown.reach() * 0.35);
        double tip = at.y(shown.reach() * 0.65);
        svg.path("grain", "M" + Outline.px(x) + " " + Outline.px(foot) + "V" + Outline.px(tip) + "m-8 12l8 -12l8 12");
        svg.text("lab", x, foot + 18, "middle", say("lay.tops"));
    }

    private void below() {
        double y = at.foot() + 20;
        double middle = at.x(lay.fabricWidth() / 2);
        svg.text(
                room.wide() ? "lab" : "lab f13",
                middle,
                y,
                "middle",
                voice.say(Tell.said(below(lay.method()), Part.text(Amounts.length(lay.fabricWidth(), unit)))));
    }

    private static String below(Lay.Method method) {
        return switch (method) {
            case OPEN -> "lay.below-open";
            case FOLDED -> "lay.below-folded";
            case FOLDED_CROSSWISE -> "lay.below-crosswise";
            case FOLDED_OFF_THE_MIDDLE -> "lay.below-off";
            case PART_FOLDED -> "lay.below-part";
        };
    }

    private String say(String key) {
        return voice.say(Tell.said(key));
    }
}
