package stretchwright.web.things;

import java.util.stream.Collectors;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.web.draw.Drawing;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.Svg;

/** How hard a cloth pulls as it is stretched: what was read as dots, what is assumed dashed. */
final class LoadPlot {
    private static final double WIDTH = 390;
    private static final double HEIGHT = 270;
    private static final double LEFT = 46;
    private static final double FOOT = 226;
    private static final double TOP = 26;
    private static final double RIGHT = 322;

    /** Points of a curve. */
    private static final int STEPS = 48;

    /** What an axis is divided by, of its power of ten. */
    private static final double[] STEP = {0.02, 0.05, 0.1, 0.2, 0.5, 1};

    private final Fabric.Test test;
    private final Voice voice;
    private final double most;
    private final double pull;
    private final Svg svg = new Svg();

    private LoadPlot(Fabric.Test test, Voice voice) {
        this.test = test;
        this.voice = voice;
        this.most = Math.max(test.loadAcross().lastExtension(), test.loadAlong().lastExtension());
        this.pull = Math.max(
                strip(test.loadAcross(), most(test.loadAcross())), strip(test.loadAlong(), most(test.loadAlong())));
    }

    /** @param test as the cloth lies on the table */
    static String of(Fabric.Test test, Voice voice) {
        return new LoadPlot(test, voice).drawn();
    }

    private static double most(LoadCurve curve) {
        return curve.lastExtension();
    }

    /** N on a strip of 50 mm. */
    private static double strip(LoadCurve curve, double extension) {
        return curve.tension(extension) * LoadCurve.STRIP_WIDTH;
    }

    private double x(double extension) {
        return LEFT + (RIGHT - LEFT) * extension / most;
    }

    private double y(double newtons) {
        return FOOT - (FOOT - TOP) * newtons / pull;
    }

    private String drawn() {
        axes();
        curve(test.loadAcross(), "cloth.across");
        curve(test.loadAlong(), "cloth.along");
        String described = voice.say(Tell.said("cloth.curve-shows", told(test.loadAcross()), told(test.loadAlong())));
        Drawing drawing = new Drawing(voice.say(Tell.said("cloth.curve")), described, WIDTH, HEIGHT, svg.toString());
        return drawing.svg("load", "plot");
    }

    private Part told(LoadCurve curve) {
        if (curve.isAssumed()) {
            return Tell.said("cloth.curve-assumed");
        }
        return Part.text(curve.readings().stream()
                .map(r -> voice.say(Tell.said(
                        "cloth.curve-reading",
                        Part.share(r.extension()),
                        Part.number(r.tension() * LoadCurve.STRIP_WIDTH, 1))))
                .collect(Collectors.joining(", ")));
    }

    private void axes() {
        svg.line("thin", LEFT, FOOT, RIGHT + 12, FOOT);
        svg.line("thin", LEFT, FOOT, LEFT, TOP - 10);
        for (double e = step(most); e <= most + 1e-9; e += step(most)) {
            svg.line("thin", x(e), FOOT, x(e), FOOT + 5);
            svg.text("lab", x(e), FOOT + 20, "middle", voice.say(Part.share(e)));
        }
        for (double n = step(pull); n <= pull + 1e-9; n += step(pull)) {
            svg.line("thin", LEFT - 5, y(n), LEFT, y(n));
            svg.text("lab", LEFT - 9, y(n) + 5, "end", voice.say(Part.number(n, 1)));
        }
        svg.text("lab", LEFT + 6, TOP - 4, "start", voice.say(Tell.said("cloth.pull")));
        svg.text("lab", RIGHT + 12, FOOT + 38, "end", voice.say(Tell.said("cloth.stretch")));
    }

    private static double step(double most) {
        double ten = Math.pow(10, Math.ceil(Math.log10(most)));
        for (double step : STEP) {
            if (most / (step * ten) <= 5) {
                return step * ten;
            }
        }
        return ten;
    }

    private void curve(LoadCurve curve, String word) {
        StringBuilder path = new StringBuilder("M" + Outline.px(x(0)) + " " + Outline.px(y(0)));
        double end = curve.lastExtension();
        for (int i = 1; i <= STEPS; i++) {
            double e = end * i / STEPS;
            path.append('L').append(Outline.px(x(e))).append(' ').append(Outline.px(y(strip(curve, e))));
        }
        svg.path(curve.isAssumed() ? "pencilled" : "drawn", path.toString());
        if (!curve.isAssumed()) {
            curve.readings()
                    .forEach(r -> svg.empty(
                            "circle",
                            "class",
                            "dot",
                            "cx",
                            Outline.px(x(r.extension())),
                            "cy",
                            Outline.px(y(r.tension() * LoadCurve.STRIP_WIDTH)),
                            "r",
                            "5"));
        }
        svg.text(
                curve.isAssumed() ? "lab est halo" : "small halo",
                x(end) + 8,
                y(strip(curve, end)) + 5,
                "start",
                voice.say(Tell.said(word)));
    }
}
