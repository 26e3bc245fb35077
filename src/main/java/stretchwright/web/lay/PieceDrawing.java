package stretchwright.web.lay;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Voice;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.Svg;

/** One piece of paper on the cloth, with as many words as it has room for. */
final class PieceDrawing {
    /** Of a letter 15 px high in the mean. */
    private static final double LETTER = 8.6;
    /** Below this a grain line would be all arrow heads, px. */
    private static final double GRAIN = 46;
    /** A piece no higher than this has its words in its middle, px. */
    private static final double LOW = 140;

    private static final double[] MIDDLE_FIRST = {0.5, 0.4, 0.6};
    private static final double[] HIGH_FIRST = {0.3, 0.22, 0.4, 0.5, 0.6, 0.7};

    private final Svg svg;
    private final Outline at;
    private final Shown shown;
    private final PieceNames names;
    private final boolean wide;

    PieceDrawing(Svg svg, Outline at, Shown shown, Voice voice, boolean wide) {
        this.svg = svg;
        this.at = at;
        this.shown = shown;
        this.names = new PieceNames(shown, voice);
        this.wide = wide;
    }

    /** @param address of the page: with the piece behind it, it is held */
    void draw(Lay.Placement p, String address) {
        String id = Placed.id(p);
        String held = address + (address.contains("?") ? "&" : "?") + "piece="
                + URLEncoder.encode(id, StandardCharsets.UTF_8) + "#piece";
        Polygon outline = shown.outline(p);
        svg.open(
                "a",
                "class",
                "held-by" + (shown.isPicked(p) ? " held" : ""),
                "href",
                held,
                "data-id",
                id,
                "aria-label",
                names.label(p),
                "aria-current",
                shown.isPicked(p) ? "true" : "");
        String kind = (shown.step(p).turnedOver() ? "paper over" : "paper")
                + (shown.isPicked(p) ? " picked" : "")
                + (shown.inTrouble(p) ? " wrongly" : "");
        svg.path(kind, at.path(outline.points(), true));
        grain(p);
        words(p, outline);
        if (shown.isPinned(p)) {
            pin(outline);
        }
        if (shown.inTrouble(p)) {
            cross(outline);
        }
        svg.close("a");
    }

    private void grain(Lay.Placement p) {
        List<Point> ends = shown.grain(p);
        double x = at.x((ends.get(0).x() + ends.get(1).x()) / 2);
        double low = at.y(Math.min(ends.get(0).y(), ends.get(1).y()));
        double high = at.y(Math.max(ends.get(0).y(), ends.get(1).y()));
        if (low - high < GRAIN) {
            return;
        }
        svg.line(
                "cardline",
                at.x(ends.get(0).x()),
                at.y(ends.get(0).y()),
                at.x(ends.get(1).x()),
                at.y(ends.get(1).y()));
        // to the top of the piece, whichever way that lies
        boolean down = shown.step(p).headDown();
        double tip = down ? low : high;
        double back = down ? -9 : 9;
        svg.path(
                "cardline",
                "M" + Outline.px(x - 5) + " " + Outline.px(tip + back) + "L" + Outline.px(x) + " " + Outline.px(tip)
                        + "L" + Outline.px(x + 5) + " " + Outline.px(tip + back));
        if (wide) {
            shown.step(p)
                    .weights()
                    .forEach(w -> svg.empty(
                            "rect",
                            "class",
                            "weight",
                            "x",
                            Outline.px(at.x(w.x()) - 4),
                            "y",
                            Outline.px(at.y(w.y()) - 4),
                            "width",
                            "8",
                            "height",
                            "8"));
        }
    }

    /** A free stretch across the piece, px. */
    private record Chord(double from, double to, double y) {
        double width() {
            return to - from;
        }

        double middle() {
            return (from + to) / 2;
        }
    }

    private void words(Lay.Placement p, Polygon outline) {
        List<Line> lines = lines(p);
        for (int fewer = lines.size(); fewer > 0; fewer--) {
            List<Line> some = lines.subList(0, fewer);
            double high = some.stream().mapToDouble(Line::height).sum();
            double broad = some.stream().mapToDouble(Line::width).max().orElse(0);
            Chord room = room(p, outline, high + 3, broad);
            if (room.width() >= broad) {
                write(some, room.middle(), room.y - high / 2);
                return;
            }
        }
        upright(p, outline);
    }

    /**
     * A line of words.
     *
     * @param width about, px
     */
    private record Line(String kind, String words, double height, double width) {}

    private List<Line> lines(Lay.Placement p) {
        CuttingGuide.Step step = shown.step(p);
        List<Line> out = new ArrayList<>();
        String name = step.number() + "  " + (wide ? names.plain(p).toUpperCase(Locale.ROOT) : names.plain(p));
        double letter = wide ? LETTER + 2 : LETTER - 1;
        out.add(new Line(
                wide ? "name oncard onpaper" : "oncard onpaper f13 strong",
                name,
                wide ? 20 : 15,
                letter * name.length()));
        String hand = names.hand(p);
        if (!hand.isEmpty()) {
            boolean big = hand.length() == 1;
            out.add(new Line(
                    "oncard onpaper strong " + (big ? wide ? "f44" : "f34" : "f16"),
                    hand,
                    big ? wide ? 46 : 36 : 22,
                    big ? 36 : LETTER * hand.length()));
        }
        for (String lies : names.lies(p)) {
            out.add(new Line("oncard onpaper " + (wide ? "f14" : "f13"), lies, 18, (LETTER - 1.4) * lies.length()));
        }
        return out;
    }

    private void write(List<Line> lines, double x, double top) {
        double y = top;
        for (Line l : lines) {
            y += l.height;
            svg.text(l.kind, x, y - l.height * 0.24, "middle", l.words);
        }
    }

    /** Where on the middle of the piece so much height is free, the broadest. */
    private Chord room(Lay.Placement p, Polygon outline, double high, double broad) {
        Box box = outline.box();
        double top = at.y(box.maxY());
        double foot = at.y(box.minY());
        Chord best = new Chord(0, 0, 0);
        for (double share : foot - top < LOW ? MIDDLE_FIRST : HIGH_FIRST) {
            double y = top + share * (foot - top);
            if (y - high / 2 < top || y + high / 2 > foot) {
                y = (top + foot) / 2;
            }
            Chord here = free(p, outline, y, high);
            if (here.width() > best.width()) {
                best = here;
            }
            if (best.width() >= 1.5 * broad) {
                break;
            }
        }
        return best;
    }

    private Chord free(Lay.Placement p, Polygon outline, double y, double high) {
        Chord out = chord(outline, y);
        for (double part : new double[] {-0.5, -0.25, 0.25, 0.5}) {
            Chord other = chord(outline, y + part * high);
            out = new Chord(Math.max(out.from, other.from), Math.min(out.to, other.to), y);
        }
        List<Point> ends = shown.grain(p);
        double grain = at.x(ends.get(0).x());
        double foot = at.y(Math.min(ends.get(0).y(), ends.get(1).y()));
        double head = at.y(Math.max(ends.get(0).y(), ends.get(1).y()));
        boolean beside = foot - head >= GRAIN && y + high / 2 > head && y - high / 2 < foot;
        if (beside && grain > out.from && grain < out.to) {
            boolean left = grain - out.from > out.to - grain;
            out = left ? new Chord(out.from, grain - 6, y) : new Chord(grain + 6, out.to, y);
        }
        return out.width() > 8 ? new Chord(out.from + 4, out.to - 4, y) : new Chord(0, 0, y);
    }

    /** The broadest stretch inside the outline on this level. */
    private Chord chord(Polygon outline, double y) {
        List<Double> cuts = new ArrayList<>();
        List<Point> points = outline.points();
        for (int i = 0; i < points.size(); i++) {
            double y0 = at.y(points.get(i).y());
            double y1 = at.y(points.get((i + 1) % points.size()).y());
            if (y0 <= y != y1 <= y) {
                double x0 = at.x(points.get(i).x());
                double x1 = at.x(points.get((i + 1) % points.size()).x());
                cuts.add(x0 + (x1 - x0) * (y - y0) / (y1 - y0));
            }
        }
        cuts.sort(null);
        Chord best = new Chord(0, 0, y);
        for (int i = 0; i + 1 < cuts.size(); i += 2) {
            if (cuts.get(i + 1) - cuts.get(i) > best.width()) {
                best = new Chord(cuts.get(i), cuts.get(i + 1), y);
            }
        }
        return best;
    }

    /** Too narrow for words side by side: along the piece, or its number alone. */
    private void upright(Lay.Placement p, Polygon outline) {
        Box box = outline.box();
        double y = at.y(box.centre().y());
        double along = at.y(box.minY()) - at.y(box.maxY());
        Chord room = free(p, outline, y, Math.min(along - 4, 60));
        int number = shown.step(p).number();
        Optional<String> words = Stream.of(names.name(p), names.plain(p))
                .map(n -> number + "  " + n)
                .filter(n -> room.width() >= 17 && along >= LETTER * n.length())
                .findFirst();
        if (words.isPresent()) {
            String where = "translate(" + Outline.px(room.middle() + 5) + " " + Outline.px(y) + ") rotate(-90)";
            svg.open("text", "class", "oncard onpaper f13 strong", "transform", where, "text-anchor", "middle")
                    .words(words.get())
                    .close("text");
        } else if (room.width() >= 6 && along >= 14) {
            svg.text("oncard onpaper f13 strong", room.middle(), y + 5, "middle", String.valueOf(number));
        }
    }

    private void pin(Polygon outline) {
        Chord top = chord(outline, at.y(outline.box().maxY()) + 12);
        double x = top.width() > 24 ? top.to - 16 : at.x(outline.box().centre().x());
        double y = at.y(outline.box().maxY()) + 22;
        svg.path("pin", "M" + Outline.px(x - 9) + " " + Outline.px(y) + "l9 -17");
        svg.empty("circle", "class", "pin-head", "cx", Outline.px(x + 1), "cy", Outline.px(y - 19), "r", "4.5");
    }

    private void cross(Polygon outline) {
        double y = at.y(outline.box().maxY()) + 16;
        Chord here = chord(outline, y);
        double x =
                here.width() > 40 ? here.from + 16 : at.x(outline.box().centre().x());
        svg.path("crossed", "M" + Outline.px(x - 8) + " " + Outline.px(y - 8) + "l16 16m0 -16l-16 16");
    }
}
