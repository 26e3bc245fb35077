package stretchwright.print.sheets;

import java.nio.charset.StandardCharsets;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.SvgText;

/** Many leg pieces side by side at an eighth of true scale, to be looked over: sew line, cut line, a few words each. */
public final class LegSheet {
    private static final double SCALE = 1.0 / 8;
    private static final int IN_A_ROW = 7;
    private static final double GAP = 8;
    private static final double LINE = 3.6;

    private LegSheet() {}

    /** A piece, and the lines under it. */
    public record Leg(List<String> words, Piece piece) {
        public Leg {
            words = List.copyOf(words);
        }
    }

    public static Document of(String name, String title, List<Leg> legs) {
        double width = 0;
        double height = 0;
        int lines = 0;
        for (Leg leg : legs) {
            Box box = leg.piece.cutLine().box();
            width = Math.max(width, box.width() * SCALE);
            height = Math.max(height, box.height() * SCALE);
            lines = Math.max(lines, leg.words.size());
        }
        double cellWidth = width + GAP;
        double cellHeight = height + GAP + lines * LINE;
        int rows = (legs.size() + IN_A_ROW - 1) / IN_A_ROW;
        SvgText svg = new SvgText();
        for (int i = 0; i < legs.size(); i++) {
            double x = GAP + (i % IN_A_ROW) * cellWidth;
            double y = GAP + (i / IN_A_ROW) * cellHeight;
            leg(svg, legs.get(i), x, y + height, width / 2);
        }
        String text = svg.finished(
                IN_A_ROW * cellWidth + GAP,
                rows * cellHeight + 2 * GAP,
                title,
                "path{fill:none;stroke:#000;stroke-width:.3}path.sew{stroke:#0072b2}" + SvgText.letters(2.6));
        return new Document(name, "drawing", 1, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Its lower left corner at x, foot. */
    private static void leg(SvgText svg, Leg leg, double x, double foot, double half) {
        Box box = leg.piece.cutLine().box();
        Point origin = new Point(x + half - SCALE * box.centre().x(), foot + SCALE * box.minY());
        svg.path("cut", leg.piece.cutLine().points(), origin, SCALE, true);
        svg.path("sew", leg.piece.sewLine().points(), origin, SCALE, true);
        for (int i = 0; i < leg.words.size(); i++) {
            svg.text(x, foot + (i + 1) * LINE, leg.words.get(i));
        }
    }
}
