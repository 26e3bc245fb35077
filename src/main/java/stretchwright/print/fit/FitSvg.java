package stretchwright.print.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Comfort;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport.CoursePoint;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;
import stretchwright.pattern.Level;
import stretchwright.pattern.WhichLeg;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.print.kit.Writing;

/**
 * Strain and pressure along the leg, beside its outline: one drawing for the page, the printed sheet and the file.
 *
 * <p>Lettering is a thirtieth of the width and more, so that it stays above 11 px on a telephone of 360 px.
 */
public final class FitSvg {
    static final double WIDTH = 118;
    static final double HEIGHT = 175;
    static final double TEXT = 4.1;

    private static final double FOOT = 37;
    private static final double HEAD = HEIGHT - 17;
    private static final double MIDDLE = 33;
    private static final double LEAST_GAP = 4.8;

    private final Job job;
    private final Canvas canvas;
    private final List<CoursePoint> course;
    private final Axis height;
    private final Axis strain;
    private final Axis pressure;

    private FitSvg(Job job, Canvas canvas) {
        this.job = job;
        this.canvas = canvas;
        course = job.fit().course();
        double top = course.stream().mapToDouble(CoursePoint::height).max().orElse(1);
        double low = course.stream().mapToDouble(CoursePoint::height).min().orElse(0);
        height = new Axis(low, Math.max(low + 1, top), FOOT, HEAD);
        double most = course.stream().mapToDouble(CoursePoint::across).max().orElse(0) * 100;
        double least = course.stream().mapToDouble(CoursePoint::across).min().orElse(0) * 100;
        double step = Axis.step(Math.max(5, most) - Math.min(0, least), 3);
        strain = new Axis(least < 0 ? -Axis.upTo(-least, step) : 0, Axis.upTo(Math.max(5, most), step), 53, 78);
        double press =
                course.stream().mapToDouble(p -> mmHg(p.pressure())).max().orElse(0);
        double wanted = job.pattern().holds().stream()
                .mapToDouble(h -> mmHg(h.wanted().orElse(0)))
                .max()
                .orElse(0);
        double range = Math.max(5, Math.max(press, wanted) * 1.05);
        pressure = new Axis(0, Axis.upTo(range, Axis.step(range, 3)), 84, 114);
    }

    public static Document of(Job job) {
        SvgCanvas svg = new SvgCanvas(WIDTH, HEIGHT, Phrases.of("fit-plot.title", job.make()));
        draw(job, svg);
        return new Document(
                "fit.svg",
                "stretch and pressure along the leg",
                1,
                svg.finished(says(job)).getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    /** For those who do not see the drawing. */
    static String says(Job job) {
        StringBuilder words = new StringBuilder(
                job.fabric().test().loadAcross().isAssumed()
                        ? Phrases.of("fit-plot.says-assumed")
                        : Phrases.of("fit-plot.says"));
        job.fit().levels().stream()
                .filter(l -> l.level() != Level.Name.WAIST)
                .forEach(l -> words.append(' ')
                        .append(Phrases.of(
                                "fit-plot.says-level",
                                Voice.plain().say(l.place()),
                                Amounts.percent(l.across()),
                                FitTables.pressure(l))));
        return words.toString();
    }

    static void draw(Job job, Canvas canvas) {
        if (job.fit().course().size() > 1) {
            new FitSvg(job, canvas).draw();
        }
    }

    private static double mmHg(double kilopascals) {
        return Laplace.toMmHg(kilopascals);
    }

    private void draw() {
        levels();
        frame(strain, Phrases.of("fit-plot.stretch"));
        frame(pressure, "mmHg");
        kilopascals();
        limits();
        List<WhichLeg> legs = course.stream().map(CoursePoint::leg).distinct().toList();
        for (WhichLeg leg : legs) {
            List<CoursePoint> own = of(leg);
            outline(own);
            run(own, p -> strain.at(100 * p.across()));
            run(own, p -> pressure.at(mmHg(p.pressure())));
        }
        if (legs.size() > 1) {
            names(of(WhichLeg.LEFT), of(WhichLeg.RIGHT));
        }
        wanted();
        legend(legs.size() > 1);
    }

    private List<CoursePoint> of(WhichLeg leg) {
        return course.stream().filter(p -> p.leg() == leg).toList();
    }

    private void frame(Axis x, String unit) {
        canvas.line(
                Ink.GRAIN,
                List.of(
                        new Point(x.start(), FOOT),
                        new Point(x.end(), FOOT),
                        new Point(x.end(), HEAD),
                        new Point(x.start(), HEAD)),
                true);
        double step = Axis.step(x.high() - x.low(), 3);
        for (double v = Math.ceil(x.low() / step) * step; v <= x.high() + 1e-9; v += step) {
            if (v > x.low() && v < x.high()) {
                canvas.line(Ink.FAINT, new Point(x.at(v), FOOT), new Point(x.at(v), HEAD));
            }
            canvas.text(Writing.middle(Ink.LABEL, x.at(v), FOOT - 5, TEXT, Amounts.number(v, 1)));
        }
        canvas.text(Writing.middle(Ink.LABEL, (x.start() + x.end()) / 2, FOOT - 10, TEXT, unit));
    }

    private void kilopascals() {
        double high = pressure.high() * Laplace.PASCALS_PER_MMHG / 1000;
        double step = Axis.step(high, 2);
        for (double v = 0; v <= high + 1e-9; v += step) {
            double x = pressure.start() + v / high * (pressure.end() - pressure.start());
            canvas.line(Ink.GRAIN, new Point(x, HEAD), new Point(x, HEAD + 1.5));
            canvas.text(Writing.middle(Ink.LABEL, x, HEAD + 2.5, TEXT, Amounts.number(v, 2)));
        }
        canvas.text(Writing.middle(Ink.LABEL, (pressure.start() + pressure.end()) / 2, HEAD + 7.5, TEXT, "kPa"));
    }

    private void limits() {
        for (double limit : List.of(Comfort.NOTE, Comfort.CAUTION, Comfort.DEVICE, Comfort.STOP)) {
            if (limit < pressure.high()) {
                canvas.line(Ink.JOIN, new Point(pressure.at(limit), FOOT), new Point(pressure.at(limit), HEAD));
            }
        }
    }

    /** Names from the top down, moved apart where levels lie close together. */
    private void levels() {
        double free = Double.MAX_VALUE;
        List<Level.Name> told = new ArrayList<>();
        for (Level level : job.pattern().levels()) {
            if (level.name() == Level.Name.WAIST || told.contains(level.name())) {
                continue;
            }
            told.add(level.name());
            double y = height.at(
                    Math.max(height.low(), Math.min(height.high(), job.pattern().onBody(level.height()))));
            double text = Math.min(y, free - LEAST_GAP);
            free = text;
            canvas.text(Writing.at(
                    Ink.LABEL, 0.5, text - 0.35 * TEXT, TEXT, level.name().word()));
            canvas.line(
                    Ink.SQUARE,
                    new Point(19, text),
                    new Point(22, y),
                    new Point(strain.start(), y),
                    new Point(pressure.end(), y));
        }
    }

    /** The leg as round as it is wide: half of girth / pi to either side. */
    private void outline(List<CoursePoint> own) {
        List<Point> right = new ArrayList<>();
        List<Point> left = new ArrayList<>();
        double widest =
                own.stream().skip(1).mapToDouble(CoursePoint::girth).max().orElse(1);
        for (CoursePoint p : own.subList(1, own.size())) {
            double half = 9 * p.girth() / widest;
            right.add(new Point(MIDDLE + half, height.at(p.height())));
            left.add(new Point(MIDDLE - half, height.at(p.height())));
        }
        canvas.line(Ink.CLOTH, right, false);
        canvas.line(Ink.CLOTH, left, false);
    }

    /** Where the legs differ most: which curve is whose. */
    private void names(List<CoursePoint> left, List<CoursePoint> right) {
        int most = 0;
        double far = 0;
        for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
            double off = Math.abs(left.get(i).across() - right.get(i).across());
            most = off > far ? i : most;
            far = Math.max(far, off);
        }
        CoursePoint l = left.get(most);
        CoursePoint r = right.get(most);
        name("L", l, l.across() < r.across());
        name("R", r, l.across() >= r.across());
    }

    private void name(String letter, CoursePoint p, boolean before) {
        double x = strain.at(100 * p.across()) + (before ? -2.5 : 2.5);
        canvas.text(Writing.middle(Ink.LABEL, x, height.at(p.height()) - 1.4, TEXT, letter));
    }

    private interface Across {
        public double of(CoursePoint p);
    }

    /** Solid where read, dashed where assumed, dotted beyond the readings and over the crotch, where no ring lies. */
    private void run(List<CoursePoint> own, Across x) {
        boolean assumed = job.fabric().test().loadAcross().isAssumed();
        double last = job.fabric().test().loadAcross().lastExtension();
        List<Point> line = new ArrayList<>();
        Ink before = Ink.CUT;
        for (int i = 1; i < own.size(); i++) {
            CoursePoint a = own.get(i - 1);
            CoursePoint b = own.get(i);
            boolean beyond = Math.max(a.across(), b.across()) > last;
            Ink ink = i == 1 || beyond ? Ink.MARK : assumed ? Ink.SEW : Ink.CUT;
            if (i == 1 || ink != before) {
                stroke(before, line);
                line.clear();
                line.add(new Point(x.of(a), height.at(a.height())));
            }
            line.add(new Point(x.of(b), height.at(b.height())));
            before = ink;
        }
        stroke(before, line);
    }

    private void stroke(Ink ink, List<Point> line) {
        if (line.size() > 1) {
            canvas.line(ink, line, false);
        }
    }

    /** An upright cross where a pressure was wanted. */
    private void wanted() {
        job.pattern().holds().stream().filter(h -> h.wanted().isPresent()).forEach(h -> {
            Optional<Level> level = job.pattern().levels().stream()
                    .filter(l -> l.name() == h.level() && l.leg() == h.leg())
                    .findFirst();
            level.filter(l -> l.name() != Level.Name.WAIST).ifPresent(l -> {
                double x = pressure.at(mmHg(h.wanted().getAsDouble()));
                double y = height.at(job.pattern().onBody(l.height()));
                canvas.line(Ink.CUT, new Point(x - 1.6, y), new Point(x + 1.6, y));
                canvas.line(Ink.CUT, new Point(x, y - 1.6), new Point(x, y + 1.6));
            });
        });
    }

    private void legend(boolean two) {
        List<String> words = new ArrayList<>();
        words.add(
                job.fabric().test().loadAcross().isAssumed()
                        ? Phrases.of("fit-plot.assumed")
                        : Phrases.of("fit-plot.readings"));
        if (pressure.high() > Comfort.NOTE) {
            words.add(Phrases.of("fit-plot.limits"));
        }
        if (job.pattern().holds().stream().anyMatch(h -> h.wanted().isPresent())) {
            words.add(two ? Phrases.of("fit-plot.wanted-two") : Phrases.of("fit-plot.wanted"));
        } else if (two) {
            words.add(Phrases.of("fit-plot.legs"));
        }
        if (strain.low() < 0) {
            words.add(Phrases.of("fit-plot.looser"));
        }
        double y = FOOT - 16;
        for (String line : words) {
            canvas.text(Writing.at(Ink.LABEL, 2, y, TEXT, line));
            y -= 5.3;
        }
    }
}
