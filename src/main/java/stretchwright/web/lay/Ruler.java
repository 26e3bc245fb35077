package stretchwright.web.lay;

import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.Lay;
import stretchwright.print.kit.Amounts;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.Svg;

/** The tape beside the cloth: where the lay ends now, and under what none can end. */
final class Ruler {
    private static final double X = 134;
    private static final double WORDS = 112;
    /** Labels nearer than this would stand on each other, px. */
    private static final double LINE = 17;

    private final Svg svg;
    private final Outline at;
    private final Voice voice;
    private final Unit unit;

    Ruler(Svg svg, Outline at, Voice voice, Unit unit) {
        this.svg = svg;
        this.at = at;
        this.voice = voice;
        this.unit = unit;
    }

    void draw(Lay lay, double reach) {
        boolean inches = unit == Unit.IN || unit == Unit.YD;
        double tick = inches ? 25.4 : 20;
        int major = inches ? 4 : 5;
        double now = at.y(lay.spreadLength());
        double factor = lay.length() / lay.spreadLength();
        double floor = at.y(lay.floor() / factor);
        StringBuilder d =
                new StringBuilder("M" + Outline.px(X) + " " + Outline.px(at.foot()) + "V" + Outline.px(at.y(reach)));
        for (int i = 0; i * tick <= reach; i++) {
            double y = at.y(i * tick);
            boolean big = i % major == 0;
            d.append('M')
                    .append(Outline.px(X))
                    .append(' ')
                    .append(Outline.px(y))
                    .append('h')
                    .append(big ? -14 : -6);
            boolean clear = y > Math.max(floor, now) + 3 * LINE || y < now - 2 * LINE;
            if (big && clear) {
                double value = inches ? i : i * tick / 10;
                svg.text("lab", X - 20, y + 5, "end", voice.say(Tell.said("lay.tick", Part.number(value * factor, 0))));
            }
        }
        svg.path("ruler", d.toString());
        svg.path("drawn", "M" + Outline.px(X - 16) + " " + Outline.px(now) + "H" + Outline.px(at.left()));
        svg.text(
                "name",
                WORDS,
                now - 4,
                "end",
                voice.say(Tell.said("lay.now", Part.text(Amounts.length(lay.length(), unit)))));
        if (!lay.shortest()) {
            double words = Math.max(floor, now + LINE - 12) + LINE;
            svg.path("thin", "M" + Outline.px(X - 16) + " " + Outline.px(floor) + "H" + Outline.px(at.left()));
            svg.text("lab", WORDS, words, "end", voice.say(Tell.said("lay.none-under")));
            svg.text(
                    "lab",
                    WORDS,
                    words + LINE,
                    "end",
                    voice.say(
                            new Part.Length(lay.floor(), Part.Told.WRITTEN, unit == Unit.MM ? 0 : 1, false).atMost()));
        }
    }
}
