package stretchwright.print.steps;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Clipping;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.print.kit.Writing;
import stretchwright.sewing.SewingPlan.Operation;

/**
 * What one step of the sewing is about, drawn from the pieces themselves: the edges thick and lettered, with numbered
 * notches and pins, all pieces of one step to one scale; beside or below it what it looks like after.
 */
public final class StepDrawing {
    /** A drawing that is a file: for a telephone held upright, 18 pt where it is shown 344 px wide. */
    private static final double WIDTH = 90;

    private static final double TEXT = 6.8;
    private static final double BEFORE = 58;
    /** More height for each piece beyond two, and for each notch of an edge beyond three. */
    private static final double MORE_PIECES = 28;

    private static final double MORE_NOTCHES = 10;
    private static final double AFTER = 42;
    /** Wider rooms have the two pictures side by side. */
    private static final double WIDE = 110;
    /** Along the edge from pin to pin, mm of cloth; wider where that gave more than a dozen. */
    private static final double PIN_SPACING = 100;

    private static final int MOST_PINS = 12;
    private static final double PIN = 5;
    /** Where along its edge a letter stands. */
    private static final double LETTER_AT = 0.4;

    private final Canvas canvas;
    private final StepPanels step;
    private final Optional<StepAfter> after;
    private final List<String> notches;
    private final double text;
    private final Lettering lettering;
    private boolean complete = true;

    private StepDrawing(Canvas canvas, Job job, StepPanels step, Box room, double text) {
        this.canvas = canvas;
        this.step = step;
        this.text = text;
        after = StepAfter.of(job, step);
        notches = step.notches();
        lettering = new Lettering(canvas, room);
    }

    /** Whether the step has edges that can be shown. */
    public static boolean shows(Job job, Operation operation) {
        return !StepPanels.of(job, operation).panels().isEmpty();
    }

    public static Document svg(Job job, Operation operation) {
        String drawn = picture(job, operation).finished(description(StepPanels.of(job, operation)));
        return new Document(name(operation), "step drawing", 1, drawn.getBytes(StandardCharsets.UTF_8));
    }

    /** The same picture as part of a page. */
    static String inline(Job job, Operation operation) {
        return picture(job, operation).inline(description(StepPanels.of(job, operation)));
    }

    /** Of its file. */
    public static String name(Operation operation) {
        return name(operation.step());
    }

    public static String name(int number) {
        return String.format(Locale.ROOT, "step-%02d.svg", number);
    }

    private static SvgCanvas picture(Job job, Operation operation) {
        double height = height(job, operation, WIDTH, TEXT);
        SvgCanvas svg = new SvgCanvas(WIDTH, height, StepWords.of(job).title(operation));
        draw(job, operation, svg, new Box(0, 0, WIDTH, height), TEXT);
        return svg;
    }

    /** How high a room of that width must be. */
    static double height(Job job, Operation operation, double width, double text) {
        StepPanels step = StepPanels.of(job, operation);
        boolean stacked = width < WIDE && StepAfter.of(job, step).isPresent();
        return before(step) + (stacked ? AFTER + 4 * text : 0) + keyHeight(key(step), text, width) + 1.5 * text;
    }

    private static double before(StepPanels step) {
        long ticks = step.panels().stream()
                .flatMap(p -> p.sewn().stream())
                .mapToLong(s -> s.ticks().size())
                .max()
                .orElse(0);
        boolean oblong = step.panels().size() > 1
                && step.panels().stream()
                        .anyMatch(p -> p.window().width() > 2.5 * p.window().height());
        return BEFORE
                + (oblong ? 1.5 * MORE_PIECES : 0)
                + MORE_PIECES * Math.max(0, step.panels().size() - 2)
                + MORE_NOTCHES * Math.max(0, ticks - 3);
    }

    /** @return whether every letter and number found its place */
    static boolean draw(Job job, Operation operation, Canvas canvas, Box room, double text) {
        StepPanels step = StepPanels.of(job, operation);
        if (step.panels().isEmpty()) {
            return true;
        }
        StepDrawing drawing = new StepDrawing(canvas, job, step, room, text);
        drawing.draw(room);
        return drawing.complete;
    }

    private void draw(Box room) {
        double foot = room.minY() + key(room) + 0.5 * text;
        if (after.isEmpty()) {
            before(new Box(room.minX(), foot, room.maxX(), room.maxY()));
        } else if (room.width() < WIDE) {
            double middle = foot + AFTER + 3 * text;
            before(new Box(room.minX(), middle + text, room.maxX(), room.maxY()));
            after(new Box(room.minX(), foot, room.maxX(), middle), after.get());
        } else {
            double middle = room.minX() + 0.66 * room.width();
            before(new Box(room.minX(), foot, middle, room.maxY()));
            after(new Box(middle + 2, foot, room.maxX(), room.maxY()), after.get());
        }
    }

    /** Sentences below the drawing. */
    static List<String> key(StepPanels step) {
        List<String> letters = step.panels().stream()
                .flatMap(p -> p.sewn().stream())
                .map(StepPanel.Sewn::letter)
                .sorted()
                .toList();
        String all = String.join(", ", letters);
        String meets = String.join(
                "; ", step.meets().stream().map(StepPanels.Meeting::words).toList());
        List<String> out = new ArrayList<>();
        out.add(
                switch (step.deed()) {
                    case JOIN -> Phrases.of("picture.join", meets.isEmpty() ? all : meets);
                    case OVER -> Phrases.of("picture.over", meets.isEmpty() ? all : meets);
                    case TURN -> Phrases.of("picture.turn", all);
                    case FOLD -> Phrases.of("picture.fold", all);
                    case MARK -> Phrases.of("picture.mark", all);
                });
        List<String> names = step.notches();
        List<String> numbered = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            numbered.add((i + 1) + " " + names.get(i));
        }
        if (!numbered.isEmpty()) {
            out.add(Phrases.of("picture.notches", String.join(", ", numbered)));
        }
        return out;
    }

    /** For those who do not see the drawing. */
    static String description(StepPanels step) {
        List<String> edges = step.panels().stream()
                .flatMap(p -> p.sewn().stream()
                        .map(s -> s.letter() + ": " + p.name() + ", "
                                + Phrases.said(s.edge().name().said())))
                .sorted()
                .toList();
        return String.join("; ", edges) + ". " + String.join(" ", key(step));
    }

    private static double keyHeight(List<String> key, double text, double width) {
        return key.stream()
                .mapToDouble(k -> Letters.wrapped(k, text, width - 2).size() * text * Letters.LEADING)
                .sum();
    }

    private double key(Box room) {
        List<String> key = key(step);
        double height = keyHeight(key, text, room.width());
        double y = room.minY() + height;
        for (String words : key) {
            y = lines(words, room.minX() + 1, y, room.width() - 2, false);
        }
        return height;
    }

    /** Lines from the top down; gives the height reached. */
    private double lines(String words, double x, double top, double width, boolean middle) {
        double y = top;
        for (String line : Letters.wrapped(words, text, width)) {
            y -= text * Letters.LEADING;
            double base = y + 0.35 * text;
            lettering.put(
                    middle
                            ? Writing.middle(Ink.LABEL, x + width / 2, base, text, line)
                            : Writing.at(Ink.LABEL, x, base, text, line));
        }
        return y;
    }

    private double high(String words, double width) {
        return Letters.wrapped(words, text, width).size() * text * Letters.LEADING;
    }

    private void after(Box area, StepAfter picture) {
        double words = high(picture.words(), area.width());
        lines(picture.words(), area.minX(), area.minY() + words, area.width(), true);
        Box box = picture.box();
        double width = area.width() - 6;
        double height = area.height() - words - 4;
        double scale = Math.min(width / box.width(), height / box.height());
        Point middle = new Point(area.centre().x(), area.minY() + words + 2 + height / 2);
        UnaryOperator<Point> put = p -> p.minus(box.centre()).times(scale).plus(middle);
        picture.strokes()
                .forEach(s -> canvas.line(s.ink(), s.points().stream().map(put).toList(), s.closed()));
    }

    private void before(Box area) {
        List<StepPanel> panels = step.panels();
        StepCells cells = StepCells.best(area, panels, text);
        List<Runnable> words = new ArrayList<>();
        for (int i = 0; i < panels.size(); i++) {
            Box cell = cells.cell(i);
            lines(panels.get(i).name(), cell.minX() + 1, cell.minY() + cells.names(), cell.width() - 2, true);
            Point middle = new Point(cell.centre().x(), (cell.minY() + cells.names() + cell.maxY()) / 2);
            panel(panels.get(i), middle, cells.scale(), words);
        }
        words.forEach(Runnable::run);
    }

    private void panel(StepPanel panel, Point middle, double scale, List<Runnable> words) {
        Box window = panel.window();
        UnaryOperator<Point> put = p -> p.minus(window.centre()).times(scale).plus(middle);
        for (List<Point> run : Clipping.inside(panel.outline(), true, window.grown(0.01))) {
            canvas.line(Ink.LABEL, run.stream().map(put).toList(), false);
        }
        for (StepPanel.Sewn sewn : panel.sewn()) {
            canvas.line(Ink.CUT, sewn.line().points().stream().map(put).toList(), false);
            if (step.deed() == StepPanels.Deed.JOIN || step.deed() == StepPanels.Deed.TURN) {
                pins(sewn.line(), put);
            }
            sewn.ticks().forEach(t -> tick(t, put));
        }
        for (StepPanel.Sewn sewn : panel.sewn()) {
            double along = sewn.line().length() * LETTER_AT;
            Point at = put.apply(sewn.line().at(along));
            words.add(0, () -> placed(at, sewn.outward(along), 1.3 * text, sewn.letter()));
            sewn.ticks()
                    .forEach(t -> words.add(() -> placed(
                            put.apply(t.at()), t.outward(), text, String.valueOf(notches.indexOf(t.name()) + 1))));
        }
    }

    private void placed(Point at, Point outward, double size, String words) {
        complete &= lettering.near(at, outward, size, words);
    }

    /** Across the edge, to be pulled out as the needle comes. */
    private void pins(Path line, UnaryOperator<Point> put) {
        double length = line.length();
        int count = (int) Math.max(1, Math.min(MOST_PINS, Math.floor(length / PIN_SPACING)));
        for (int i = 0; i < count; i++) {
            double along = length * (i + 0.5) / count;
            Point at = put.apply(line.at(along));
            Point across = line.directionAt(along).left().times(PIN / 2);
            canvas.line(Ink.GRAIN, at.plus(across), at.minus(across));
        }
    }

    /** One short line or two, from the edge outwards, as it is cut. */
    private void tick(StepPanel.Tick tick, UnaryOperator<Point> put) {
        Point at = put.apply(tick.at());
        Point out = tick.outward().times(2.2);
        Point along = tick.outward().left().times(tick.twice() ? 0.6 : 0);
        canvas.line(Ink.NOTCH, at.plus(along), at.plus(along).plus(out));
        if (tick.twice()) {
            canvas.line(Ink.NOTCH, at.minus(along), at.minus(along).plus(out));
        }
    }
}
