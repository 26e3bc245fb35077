package stretchwright.exchange;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;

/** What must be said on a piece for it to be used again, line by line; not yet in the letters of a format. */
final class Words {
    private static final int LONGEST_LINE = 44;

    private Words() {}

    /** How often it is cut, how it is laid, the stretch, what was taken off the body, the allowances. */
    static List<String> annotation(Handover handover, Piece piece) {
        Pattern.Reductions taken = handover.pattern().reductions();
        List<String> out = new ArrayList<>();
        out.add(Phrases.said(piece.timesCut()));
        out.add(Phrases.of(
                "piece.stretch", Plain.percent(handover.stretchAcross()), Plain.percent(handover.stretchAlong())));
        out.add(Phrases.of("piece.taken", across(handover.pattern())));
        out.add(Phrases.of("piece.taken-next", Plain.percent(taken.along()), Plain.percent(taken.crotch())));
        out.add(Phrases.of("piece.taken-last", Plain.percent(taken.waistband()), Plain.percent(taken.hem())));
        out.addAll(allowances(piece));
        return out;
    }

    private static String across(Pattern pattern) {
        DoubleSummaryStatistics shares = pattern.reductionsAcross();
        if (shares.getCount() == 0) {
            return Plain.percent(pattern.reductions().across());
        }
        String low = Plain.percent(shares.getMin());
        String high = Plain.percent(shares.getMax());
        return low.equals(high) ? low : Phrases.of("piece.by-level", low, high);
    }

    /** One line for each width: "allowance 7 mm: inseam, front rise". */
    private static List<String> allowances(Piece piece) {
        Map<Double, List<String>> widths = new LinkedHashMap<>();
        for (Edge edge : piece.edges()) {
            boolean fold = piece.onFold() && edge.allowance() == 0;
            if (!fold) {
                widths.computeIfAbsent(edge.allowance(), w -> new ArrayList<>())
                        .add(Phrases.said(edge.name().said()));
            }
        }
        List<String> out = new ArrayList<>();
        widths.forEach((width, names) -> out.addAll(broken(Phrases.of("piece.allowance", Plain.number(width)), names)));
        return out;
    }

    /** Names behind their head, in lines that are not too long for a small piece. */
    private static List<String> broken(String head, List<String> names) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder(head);
        for (int i = 0; i < names.size(); i++) {
            String next = " " + names.get(i) + (i + 1 < names.size() ? "," : "");
            if (line.length() + next.length() > LONGEST_LINE) {
                out.add(line.toString());
                line = new StringBuilder(" ");
            }
            line.append(next);
        }
        out.add(line.toString());
        return out;
    }
}
