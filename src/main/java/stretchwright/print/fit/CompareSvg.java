package stretchwright.print.fit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Part;
import stretchwright.ground.Point;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgText;

/**
 * Two patterns over each other at a quarter of true scale, sew lines only: A solid and black, B dashed and vermilion, so
 * they are told apart in grey and by every kind of colour sight (Okabe and Ito 2008). Legs lie on each other at the side
 * line and the crotch line, all other pieces at their middle or fold; beside a leg stands how much wider B is at each
 * level.
 */
public final class CompareSvg {
    private static final double SCALE = 0.25;
    private static final double GAP = 90;
    private static final double LETTER = 20;
    private static final double LABELS = 250;
    private static final double SAMPLE = 120;

    private final SvgText svg = new SvgText();
    private final Pattern a;
    private final Pattern b;
    private final Unit unit;

    private CompareSvg(Pattern a, Pattern b, Unit unit) {
        this.a = a;
        this.b = b;
        this.unit = unit;
    }

    public static Document of(Pattern a, Pattern b, String nameA, String nameB, Unit unit) {
        String text = new CompareSvg(a, b, unit).drawn(nameA, nameB);
        return new Document("compare.svg", "comparison", 1, text.getBytes(StandardCharsets.UTF_8));
    }

    private String drawn(String nameA, String nameB) {
        Set<String> names = new LinkedHashSet<>();
        a.pieces().forEach(p -> names.add(p.name()));
        b.pieces().forEach(p -> names.add(p.name()));
        double legend = GAP + 4.5 * LETTER * 1.5;
        legend(nameA, nameB);
        double x = GAP;
        double tallest = 0;
        for (String name : names) {
            Box box = box(name);
            double top = legend + box.maxY();
            piece(name, new Point(x - box.minX(), top), box);
            double labelled = isLeg(name)
                    ? LABELS
                    : Math.max(0, LETTER * 0.55 * label(name).length() - box.width());
            x += box.width() + labelled + GAP;
            tallest = Math.max(tallest, box.height());
        }
        double width = Math.max(x, 900);
        double height = legend + tallest + 3 * LETTER + GAP;
        return svg.finished(
                width,
                height,
                SCALE,
                Phrases.of("compare.title", nameA, nameB),
                "",
                "path{fill:none}.a{stroke:#000;stroke-width:2.4}.b{stroke:#d55e00;stroke-width:2.4;stroke-dasharray:14 8}"
                        + "path.a.area{fill:#000;fill-opacity:.05;stroke:none}.common{stroke:#777;stroke-width:1}\n"
                        + SvgText.letters(LETTER));
    }

    private void legend(String nameA, String nameB) {
        double line = LETTER * 1.5;
        svg.text(GAP, GAP, Phrases.of("compare.legend"));
        sample("a", "A  " + nameA, GAP + line);
        sample("b", "B  " + nameB, GAP + 2 * line);
    }

    private void sample(String css, String words, double y) {
        svg.path(css, List.of(Point.ORIGIN, new Point(SAMPLE, 0)), new Point(GAP, y - LETTER * 0.35), 1, false);
        svg.text(GAP + SAMPLE + LETTER, y, words);
    }

    private static boolean isLeg(String name) {
        return name.endsWith("leg");
    }

    private static Optional<Piece> piece(Pattern pattern, String name) {
        return pattern.pieces().stream().filter(p -> p.name().equals(name)).findFirst();
    }

    /** The place that lies on the same place in both. */
    private static Point anchor(Pattern pattern, Piece piece) {
        if (isLeg(piece.name()) || piece.name().endsWith("panel")) {
            return new Point(
                    0, pattern.level(Level.Name.CROTCH).map(Level::height).orElse(0.0));
        }
        Box box = Box.around(piece.sewLine().points());
        return new Point(piece.onFold() ? 0 : (box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    }

    private static List<Point> outline(Pattern pattern, Piece piece) {
        Point anchor = anchor(pattern, piece);
        return piece.sewLine().points().stream().map(p -> p.minus(anchor)).toList();
    }

    private Box box(String name) {
        List<Point> all = new ArrayList<>();
        piece(a, name).ifPresent(p -> all.addAll(outline(a, p)));
        piece(b, name).ifPresent(p -> all.addAll(outline(b, p)));
        return Box.around(all);
    }

    private String label(String name) {
        boolean inA = piece(a, name).isPresent();
        boolean inB = piece(b, name).isPresent();
        if (inA && inB) {
            return name;
        }
        return inA ? Phrases.of("compare.only-a", name) : Phrases.of("compare.only-b", name);
    }

    private void piece(String name, Point origin, Box box) {
        svg.begin(name.replace(' ', '-'));
        piece(a, name).ifPresent(p -> {
            svg.path("a area", outline(a, p), origin, 1, true);
            svg.path("a", outline(a, p), origin, 1, true);
        });
        piece(b, name).ifPresent(p -> svg.path("b", outline(b, p), origin, 1, true));
        svg.text(origin.x() + box.minX(), origin.y() - box.minY() + 1.6 * LETTER, label(name));
        if (isLeg(name)) {
            svg.path("common", List.of(new Point(box.minX() - 20, 0), new Point(box.maxX() + 20, 0)), origin, 1, false);
            if (label(name).equals(name)) {
                levels(name, origin, box);
            }
        }
        svg.end();
    }

    /** How much wider B is, from the top down; labels keep a line's distance. */
    private void levels(String name, Point origin, Box box) {
        double crotch = a.level(Level.Name.CROTCH).map(Level::height).orElse(0.0);
        String side = name.startsWith("left ") ? "left" : name.startsWith("right ") ? "right" : "";
        double last = Double.NEGATIVE_INFINITY;
        for (Level one : a.levels()) {
            Optional<Level> other = b.levels().stream()
                    .filter(l -> l.name() == one.name() && l.leg().equals(one.leg()))
                    .findFirst();
            if (other.isEmpty() || !(one.leg().isEmpty() || one.leg().equals(side))) {
                continue;
            }
            double y = Math.max(origin.y() - (one.height() - crotch), last + LETTER * 1.2);
            last = y;
            double by = other.get().width() - one.width();
            svg.text(origin.x() + box.maxX() + 25, y + LETTER * 0.35, one.name().word() + " " + amount(by));
        }
    }

    private String amount(double mm) {
        String own = unit == Unit.MM ? "" : " (" + Voice.of(unit).say(Part.signed(mm)) + ")";
        return Math.abs(mm) < 0.05 ? Phrases.of("compare.same") : String.format(Locale.ROOT, "%+.1f mm", mm) + own;
    }
}
