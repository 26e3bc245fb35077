package stretchwright.print.fit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import stretchwright.fabric.LoadCurve;
import stretchwright.fit.Direction;
import stretchwright.fit.FitReport;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.pattern.Level;
import stretchwright.pattern.WhichLeg;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.print.kit.Writing;

/** The load curves with their readings, and where on them the garment stands and is pulled to. */
public final class LoadSvg {
    static final double WIDTH = 118;
    static final double HEIGHT = 112;

    private static final double TEXT = FitSvg.TEXT;
    private static final double FOOT = 38;
    private static final double HEAD = HEIGHT - 12;

    private final Job job;
    private final Canvas canvas;
    private final Axis extension;
    private final Axis load;

    private LoadSvg(Job job, Canvas canvas) {
        this.job = job;
        this.canvas = canvas;
        double most = Math.max(Math.max(0.05, deepest(job, Direction.ACROSS)), deepest(job, Direction.ALONG));
        for (FitReport.LevelFit l : job.fit().levels()) {
            most = Math.max(most, l.across());
        }
        most = Math.max(most, reach(job.fabric().test().loadAcross()));
        most = Math.max(most, reach(job.fabric().test().loadAlong()));
        double step = Axis.step(100 * most, 5);
        extension = new Axis(0, Axis.upTo(100 * most, step), 14, 98);
        double top = Math.max(
                job.fabric().test().loadAcross().tension(extension.high() / 100),
                job.fabric().test().loadAlong().tension(extension.high() / 100));
        double newtons = top * LoadCurve.STRIP_WIDTH;
        load = new Axis(0, Axis.upTo(newtons, Axis.step(newtons, 5)), FOOT, HEAD);
    }

    public static Document of(Job job) {
        SvgCanvas svg = new SvgCanvas(WIDTH, HEIGHT, Phrases.of("load.title", job.make()));
        draw(job, svg);
        return new Document(
                "load.svg",
                "load curves of the cloth",
                1,
                svg.finished(says(job)).getBytes(StandardCharsets.UTF_8));
    }

    static void draw(Job job, Canvas canvas) {
        new LoadSvg(job, canvas).draw();
    }

    static String says(Job job) {
        LoadCurve across = job.fabric().test().loadAcross();
        LoadCurve along = job.fabric().test().loadAlong();
        return String.join(
                " ",
                Phrases.of("load.says"),
                across.isAssumed()
                        ? Phrases.of("load.across-assumed")
                        : Phrases.of("load.across-readings", readings(across)),
                along.isAssumed()
                        ? Phrases.of("load.along-assumed")
                        : Phrases.of("load.along-readings", readings(along)),
                Phrases.of(
                        "load.deepest",
                        Amounts.percent(deepest(job, Direction.ACROSS)),
                        Amounts.percent(deepest(job, Direction.ALONG))));
    }

    private static String readings(LoadCurve curve) {
        return curve.readings().stream()
                .map(r -> Phrases.of(
                        "load.reading",
                        Amounts.percent(r.extension()),
                        Amounts.number(r.tension() * LoadCurve.STRIP_WIDTH, 2)))
                .collect(Collectors.joining(", "));
    }

    /** The most that a pose asks of the cloth at the place itself, sliding along; 0 where none was judged. */
    static double deepest(Job job, Direction direction) {
        return job.fit().poses().stream()
                .filter(p -> p.direction() == direction)
                .mapToDouble(FitReport.Pose::local)
                .max()
                .orElse(0);
    }

    private static double reach(LoadCurve curve) {
        return curve.isAssumed() ? 0 : curve.lastExtension();
    }

    private void draw() {
        frame();
        LoadCurve across = job.fabric().test().loadAcross();
        LoadCurve along = job.fabric().test().loadAlong();
        curve(across, Ink.CUT);
        curve(along, Ink.GRAIN);
        dots(across, true);
        dots(along, false);
        boolean alongAbove = along.tension(0.006 * extension.high()) > across.tension(0.006 * extension.high());
        name(Phrases.of("load.across"), across, !alongAbove);
        name(Phrases.of("load.along"), along, alongAbove);
        marks();
        legend(across, along);
    }

    private void frame() {
        canvas.line(
                Ink.GRAIN,
                List.of(
                        new Point(extension.start(), FOOT),
                        new Point(extension.end(), FOOT),
                        new Point(extension.end(), HEAD),
                        new Point(extension.start(), HEAD)),
                true);
        double step = Axis.step(extension.high(), 5);
        for (double v = 0; v <= extension.high() + 1e-9; v += step) {
            canvas.text(Writing.middle(Ink.LABEL, extension.at(v), FOOT - 5, TEXT, Amounts.number(v, 1)));
        }
        double up = Axis.step(load.high(), 5);
        for (double v = 0; v <= load.high() + 1e-9; v += up) {
            double y = load.at(v);
            canvas.line(Ink.FAINT, new Point(extension.start(), y), new Point(extension.end(), y));
            canvas.text(new Writing(
                    Ink.LABEL,
                    new Point(extension.start() - 1, y - 1.4),
                    0,
                    TEXT,
                    Writing.Align.END,
                    Amounts.number(v, 2)));
            canvas.text(Writing.at(
                    Ink.LABEL, extension.end() + 1, y - 1.4, TEXT, Amounts.number(v / LoadCurve.STRIP_WIDTH, 1)));
        }
        canvas.text(Writing.middle(
                Ink.LABEL, (extension.start() + extension.end()) / 2, FOOT - 10, TEXT, Phrases.of("load.stretch")));
        canvas.text(Writing.at(Ink.LABEL, 1, HEAD + 4, TEXT, Phrases.of("load.newtons")));
        canvas.text(new Writing(Ink.LABEL, new Point(WIDTH - 2, HEAD + 4), 0, TEXT, Writing.Align.END, "N/m"));
    }

    private Point at(LoadCurve curve, double share) {
        return new Point(extension.at(100 * share), load.at(curve.tension(share) * LoadCurve.STRIP_WIDTH));
    }

    private void curve(LoadCurve curve, Ink read) {
        double end = extension.high() / 100;
        double last = Math.min(end, curve.lastExtension());
        canvas.line(curve.isAssumed() ? Ink.SEW : read, samples(curve, 0, last), false);
        if (last < end) {
            canvas.line(Ink.MARK, samples(curve, last, end), false);
        }
    }

    private List<Point> samples(LoadCurve curve, double from, double to) {
        List<Point> line = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            line.add(at(curve, from + (to - from) * i / 40));
        }
        return line;
    }

    /** Across as round dots, along as small squares standing on a corner. */
    private void dots(LoadCurve curve, boolean round) {
        if (curve.isAssumed()) {
            return;
        }
        for (LoadCurve.Reading r : curve.readings()) {
            Point centre = at(curve, r.extension());
            List<Point> rim = new ArrayList<>();
            int corners = round ? 12 : 4;
            for (int i = 0; i < corners; i++) {
                rim.add(centre.plus(new Point(1.2, 0).turned(360.0 * i / corners)));
            }
            canvas.line(Ink.CUT, rim, true);
        }
    }

    private void name(String name, LoadCurve curve, boolean above) {
        Point at = at(curve, (above ? 0.0056 : 0.0036) * extension.high());
        canvas.text(
                above
                        ? new Writing(Ink.LABEL, at.plus(new Point(-2, 1)), 0, TEXT, Writing.Align.END, name)
                        : Writing.at(
                                Ink.LABEL, at.x() + 1.5, at.y() < FOOT + 6.5 ? at.y() + 2.5 : at.y() - 5, TEXT, name));
    }

    private record Stand(String name, double share) {}

    /** Where knee and thigh stand and how far the deepest pose goes; names side by side where they would run together. */
    private void marks() {
        List<Stand> all = new ArrayList<>();
        job.fit().levels().stream()
                .filter(l -> l.level() == Level.Name.KNEE || l.level() == Level.Name.CROTCH)
                .filter(l -> l.leg() != WhichLeg.RIGHT)
                .forEach(l -> all.add(new Stand(
                        l.level() == Level.Name.KNEE ? Phrases.of("load.knee") : Phrases.of("load.thigh"),
                        l.across())));
        all.add(new Stand(Phrases.of("load.deepest-pose"), deepest(job, Direction.ACROSS)));
        all.removeIf(s -> !(s.share > 0.001 && 100 * s.share <= extension.high()));
        all.sort(Comparator.comparingDouble(Stand::share));
        double free = extension.start() + TEXT;
        for (Stand s : all) {
            Point foot = new Point(extension.at(100 * s.share), FOOT);
            double x = Math.max(free, foot.x() - 0.8);
            double y = clear(s);
            double up = Math.max(at(job.fabric().test().loadAcross(), s.share).y(), y - 1);
            canvas.line(Ink.JOIN, foot, new Point(foot.x(), up));
            canvas.text(new Writing(Ink.LABEL, new Point(x, y), 90, TEXT, Writing.Align.START, s.name));
            free = x + 1.15 * TEXT;
        }
    }

    /** Where an upright name starts: the first room it fits in, below, between or above the curves; else the largest. */
    private double clear(Stand s) {
        double one = at(job.fabric().test().loadAcross(), s.share).y();
        double other = at(job.fabric().test().loadAlong(), s.share).y();
        double[] from = {FOOT + 2, Math.min(one, other) + 4, Math.max(one, other) + 4};
        double[] to = {Math.min(one, other) - 1, Math.max(one, other) - 1, HEAD};
        int largest = 0;
        for (int i = 0; i < from.length; i++) {
            if (to[i] - from[i] >= Letters.width(s.name, TEXT)) {
                return from[i];
            }
            largest = to[i] - from[i] > to[largest] - from[largest] ? i : largest;
        }
        return Math.min(from[largest], HEAD - Letters.width(s.name, TEXT));
    }

    private void legend(LoadCurve across, LoadCurve along) {
        List<String> words = new ArrayList<>();
        words.add(across.isAssumed() ? Phrases.of("load.legend-across-assumed") : Phrases.of("load.legend-across"));
        words.add(along.isAssumed() ? Phrases.of("load.legend-along-assumed") : Phrases.of("load.legend-along"));
        words.add(Phrases.of("load.legend-beyond"));
        double y = FOOT - 17;
        for (String line : words) {
            canvas.text(Writing.at(Ink.LABEL, 2, y, TEXT, line));
            y -= 5.6;
        }
    }
}
