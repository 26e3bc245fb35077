package stretchwright.print.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Voice;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Writing;

/**
 * What is written on a piece, and where: the largest lettering that fits inside the sew line without touching a drawn
 * line. An outline without its stretch cannot be used again, so stretch and reductions are always among the words.
 */
public final class PieceLabel {
    private static final double[] SIZES = {6, 5, 4.5, 4, 3.5, 3, 2.6, 2.2};
    private static final double[] WIDTHS = {0, 110, 160, 220, 300};
    private static final double[] NARROW = {30, 45, 60};
    private static final double SMALLEST = 2.2;
    private static final double AIR = 3;

    private PieceLabel() {}

    static List<String> words(Job job, Piece piece) {
        Pattern.Reductions taken = job.pattern().reductions();
        return List.of(
                Letters.shortened(Phrases.said(piece.name().said()), Letters.LONGEST_NAME) + ": "
                        + Voice.plain().say(piece.timesCut()),
                job.make(),
                Phrases.of("piece.for", job.wearer()),
                Phrases.of("piece.cloth", job.clothOf(piece)),
                Phrases.of(
                        "piece.stretch",
                        Amounts.percent(job.fabric().asLaid().test().stretchAcross()),
                        Amounts.percent(job.fabric().asLaid().test().stretchAlong())),
                Phrases.of("piece.taken", across(job.pattern()), Amounts.percent(taken.along())),
                Phrases.of(
                        "piece.taken-more",
                        Amounts.percent(taken.crotch()),
                        Amounts.percent(taken.waistband()),
                        Amounts.percent(taken.hem())),
                allowance(piece),
                Phrases.of("piece.date"));
    }

    /** "13 %", or where the levels differ "11 to 16 %, by level"; the band and the hem stand apart. */
    public static String across(Pattern pattern) {
        DoubleSummaryStatistics shares = pattern.reductionsAcross();
        String low = Amounts.number(100 * shares.getMin(), 0);
        String high = Amounts.number(100 * shares.getMax(), 0);
        return shares.getCount() == 0 || low.equals(high)
                ? Amounts.percent(pattern.reductions().across())
                : Phrases.of("piece.by-level", low, high);
    }

    /** "the cut line is 7 mm outside the sew line", exceptions named: the width of the most edges first. */
    public static String allowance(Piece piece) {
        Map<Double, List<String>> widths = new LinkedHashMap<>();
        for (Edge edge : piece.edges()) {
            if (!(piece.onFold() && edge.allowance() == 0)) {
                widths.computeIfAbsent(edge.allowance(), w -> new ArrayList<>())
                        .add(Phrases.said(edge.name().said()));
            }
        }
        double most = widths.entrySet().stream()
                .max(Comparator.comparingInt(e -> e.getValue().size()))
                .map(Map.Entry::getKey)
                .orElse(0.0);
        String words = Phrases.of("piece.cut-line", Amounts.mm(most));
        for (Map.Entry<Double, List<String>> other : widths.entrySet()) {
            if (other.getKey() != most) {
                String edges = String.join(", ", other.getValue());
                words = Phrases.of("piece.cut-line-at", words, Amounts.mm(other.getKey()), edges);
            }
        }
        return words;
    }

    /** Puts the label into the piece, clear of everything already drawn. */
    static void draw(List<String> words, Polygon inside, Drawing drawing) {
        for (double size : SIZES) {
            for (double width : WIDTHS) {
                List<String> lines = width == 0 ? words : packed(words, size, width);
                if (place(lines, size, inside, drawing)) {
                    return;
                }
            }
        }
        List<String> broken = broken(words);
        for (double width : NARROW) {
            if (place(packed(broken, SMALLEST, width), SMALLEST, inside, drawing)) {
                return;
            }
        }
        // a piece too small for all of it says what it is; the rest stands on the larger pieces
        List<String> name = words.subList(0, Math.min(2, words.size()));
        for (double size : SIZES) {
            if (place(name, size, inside, drawing)) {
                return;
            }
        }
        write(name, SIZES[SIZES.length - 1], inside.box().centre(), drawing);
    }

    /** The long sentence about allowances in its parts, for a small piece. */
    private static List<String> broken(List<String> words) {
        List<String> out = new ArrayList<>();
        for (String phrase : words) {
            out.addAll(List.of(phrase.split("(?<=,) (?=\\d)")));
        }
        return out;
    }

    /** Several phrases to a line, none of them broken. */
    private static List<String> packed(List<String> phrases, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String phrase : phrases) {
            String longer = line.isEmpty() ? phrase : line + " \u00B7 " + phrase;
            if (!line.isEmpty() && Letters.width(longer, size) > width) {
                lines.add(line);
                line = phrase;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    private static boolean place(List<String> lines, double size, Polygon inside, Drawing drawing) {
        double width =
                lines.stream().mapToDouble(l -> Letters.width(l, size)).max().orElse(0) + 2 * AIR;
        double height = lines.size() * size * Letters.LEADING + 2 * AIR;
        Box room = inside.box();
        double step = Math.max(2, Math.min(room.width(), room.height()) / 30);
        Box best = null;
        double nearest = Double.MAX_VALUE;
        for (double y = room.minY(); y + height <= room.maxY(); y += step) {
            for (double x = room.minX(); x + width <= room.maxX(); x += step) {
                Box box = new Box(x, y, x + width, y + height);
                double off = box.centre().distance(room.centre());
                if (off < nearest && drawing.leavesClear(box) && inside.contains(box.centre())) {
                    best = box;
                    nearest = off;
                }
            }
        }
        if (best == null) {
            return false;
        }
        write(lines, size, best.centre(), drawing);
        return true;
    }

    private static void write(List<String> lines, double size, Point centre, Drawing drawing) {
        double leading = size * Letters.LEADING;
        double y = centre.y() + lines.size() * leading / 2 - 0.8 * leading;
        for (String line : lines) {
            drawing.text(Writing.middle(Ink.LABEL, centre.x(), y, size, line));
            y -= leading;
        }
    }
}
