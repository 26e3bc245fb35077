package stretchwright.lay;

import java.util.List;
import java.util.Locale;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;

/** By which methods these pieces may be laid on this cloth, and what is wrong where by none. */
record Permitted(List<Piece> pieces, Fabric fabric, LayTerms terms) {
    /** None, with findings, where the cloth does not allow what is asked for. */
    List<Lay.Method> methods(Findings findings) {
        List<Lay.Method> out = asked().stream().filter(this::allowed).toList();
        if (out.isEmpty()) {
            refuse(asked().get(0), findings);
        }
        return out;
    }

    private List<Lay.Method> asked() {
        return switch (terms.way()) {
            case FOLDED -> List.of(Lay.Method.FOLDED);
            case OPEN -> List.of(Lay.Method.OPEN);
            case FOLDED_CROSSWISE -> List.of(Lay.Method.FOLDED_CROSSWISE);
            case FOLDED_OFF_THE_MIDDLE -> List.of(Lay.Method.FOLDED_OFF_THE_MIDDLE);
            case PART_FOLDED -> List.of(Lay.Method.PART_FOLDED);
            case ANY ->
                List.of(
                        Lay.Method.FOLDED,
                        Lay.Method.OPEN,
                        Lay.Method.FOLDED_OFF_THE_MIDDLE,
                        Lay.Method.PART_FOLDED,
                        Lay.Method.FOLDED_CROSSWISE);
        };
    }

    private boolean allowed(Lay.Method method) {
        return switch (method) {
            case FOLDED, OPEN, FOLDED_OFF_THE_MIDDLE -> true;
            case PART_FOLDED -> fabric.roll().shape().whole() && !matched();
            case FOLDED_CROSSWISE -> crosswise();
        };
    }

    private void refuse(Lay.Method method, Findings findings) {
        if (method == Lay.Method.FOLDED_CROSSWISE) {
            findings.add(
                    "style.lay",
                    "Folded crosswise the upper layer lies the other way round, which this cloth does not allow.",
                    "Lay it folded or open (style.lay), or take cloth without direction, repeat or flaws.");
            return;
        }
        findings.add(
                "style.lay",
                matched()
                        ? "Part folded the print cannot meet: where the open stretch begins hangs on the folded one."
                        : "A remnant with an outline and cloth with flaws are not part folded.",
                "Write style.lay: open, folded, folded off the middle or any.");
    }

    /** Whether the way of laying and the cloth allow to fold it crosswise: the upper layer then lies the other way round. */
    boolean crosswise() {
        return asked().contains(Lay.Method.FOLDED_CROSSWISE)
                && fabric.roll().shape().whole()
                && !fabric.roll().oneWay()
                && fabric.roll().repeatAlong() == 0;
    }

    private boolean matched() {
        return terms.matchAt().isPresent() && fabric.roll().repeatAlong() > 0;
    }

    /** What is said where a piece fits by none of the methods. */
    void tooWide(List<Lay.Method> methods, Findings findings) {
        Lay.Method method = methods.contains(Lay.Method.OPEN) ? Lay.Method.OPEN : methods.get(0);
        boolean folded = method == Lay.Method.FOLDED || method == Lay.Method.FOLDED_OFF_THE_MIDDLE;
        for (Cut cut : Plan.by(method, pieces, fabric, terms).get(0).tooWide()) {
            boolean whole = cut.atFold();
            double width = cut.width() * (whole ? 2 : 1);
            double cloth = folded && !whole ? fabric.roll().usableWidth() / 2 : fabric.roll().usableWidth();
            double need = Math.ceil(folded && !whole ? 2 * width : width);
            boolean openHelps = folded && width <= fabric.roll().usableWidth();
            String problem = String.format(
                    Locale.ROOT,
                    "%s is %.1f mm wide%s, wider than the %.1f mm of the cloth%s.",
                    cut.piece().name(),
                    width,
                    cut.piece().onFold() ? " unfolded" : "",
                    cloth,
                    folded && !whole ? " folded lengthwise" : "");
            String remedy = (openHelps ? "Lay it open (style.lay: open), or take" : "Take")
                    + String.format(Locale.ROOT, " cloth of at least %.0f mm usable width.", need);
            findings.add("fabric.usable width", problem, remedy);
        }
    }
}
