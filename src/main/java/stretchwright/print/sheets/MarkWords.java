package stretchwright.print.sheets;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Box;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Unit;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Writing;

/** What is written along the lines inside a piece: their names, and on a level how long the line is that it stands on. */
final class MarkWords {
    static final double SMALL = 2.8;

    /** Words start so far from a line's left end, mm, or at a tenth of a short line. */
    private static final double ASIDE = 26;

    private static final double ABOVE = 1.2;

    /** Words are made no smaller than this to end before the grain line, mm. */
    private static final double SMALLEST = 2;

    private final Grain grain;
    private final List<Box> pockets;
    private final Optional<Unit> unit;
    private final Canvas drawing;

    /** @param unit that widths are told in; empty where several sizes lie over each other */
    MarkWords(Piece piece, Optional<Unit> unit, Canvas drawing) {
        this.grain = piece.grain();
        this.pockets = piece.marks().stream()
                .filter(m -> m.name().isPocket())
                .map(m -> Box.around(m.line().points()))
                .toList();
        this.unit = unit;
        this.drawing = drawing;
    }

    void name(Mark mark) {
        String words = Phrases.said(mark.name().said());
        if (mark.kind() == Mark.Kind.PLACEMENT) {
            placement(mark, words);
        } else if (mark.name().isChange()) {
            change(mark.line(), mark.name());
        } else if (mark.name().level().isPresent() && unit.isPresent()) {
            String width = Amounts.length(mark.line().length(), unit.get());
            along(mark.line(), Phrases.of("piece.level", words, width), true);
        } else {
            along(mark.line(), words, true);
        }
    }

    /** Where the line is too short for the sentence its second half stands below it. */
    private void change(Path line, MarkName name) {
        String whole = Phrases.said(name.said());
        if (Letters.width(whole, SMALL) < room(line)) {
            along(line, whole, true);
        } else {
            along(line, Phrases.of("piece.change", Phrases.said(name.what())), true);
            along(line, Phrases.said(name.how()), false);
        }
    }

    private static double aside(Path line) {
        return Math.min(ASIDE, 0.1 * line.length());
    }

    /** From where the words start to the grain line, or to as far from the line's other end. */
    private double room(Path line) {
        double left = Math.min(line.start().x(), line.end().x()) + aside(line);
        double y = line.start().y();
        double low = Math.min(grain.from().y(), grain.to().y());
        double high = Math.max(grain.from().y(), grain.to().y());
        boolean crosses = y > low && y < high && grain.from().x() > left;
        return crosses ? Math.min(grain.from().x() - left - 2, whole(line)) : whole(line);
    }

    private static double whole(Path line) {
        return line.length() - 2 * aside(line);
    }

    private void along(Path line, String words, boolean above) {
        boolean rightwards = line.start().x() <= line.end().x();
        Point a = rightwards ? line.start() : line.end();
        Point b = rightwards ? line.end() : line.start();
        double width = Letters.width(words, SMALL);
        double fitting = Math.max(SMALLEST, SMALL * room(line) / width);
        double size = Math.min(SMALL, Math.min(fitting, SMALL * whole(line) / width));
        Point direction = b.minus(a).unit();
        double up = above ? ABOVE : -ABOVE - 0.8 * size;
        double start = a.x() + aside(line);
        double moved = besidePocket(start, Letters.width(words, size), a.y()) - start;
        Point at = a.plus(direction.times(aside(line) + moved))
                .plus(direction.left().times(up));
        double degrees = Math.toDegrees(StrictMath.atan2(direction.y(), direction.x()));
        drawing.text(new Writing(Ink.MARK, at, degrees, size, Writing.Align.START, words));
    }

    /** Words that would run over the left side of a pocket's outline start inside of it. */
    private double besidePocket(double start, double width, double height) {
        return pockets.stream()
                .filter(b -> height > b.minY() - SMALL && height < b.maxY() + SMALL)
                .filter(b -> start < b.minX() + 1 && start + width > b.minX() && b.width() > width + 4)
                .mapToDouble(b -> b.minX() + 2)
                .findFirst()
                .orElse(start);
    }

    /** The name in the upper left corner of the outline, below its opening. */
    private void placement(Mark mark, String name) {
        Box box = Box.around(mark.line().points());
        String words = mark.name().isPocket() ? Phrases.of("piece.pocket", name) : name;
        double size = Math.min(SMALL, SMALL * 0.9 * box.width() / Letters.width(words, SMALL));
        Point at = new Point(box.minX() + 2, box.maxY() - 2 - size);
        drawing.text(new Writing(Ink.MARK, at, 0, size, Writing.Align.START, words));
    }
}
