package stretchwright.lay;

import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
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
            findings.add("style.lay", Tell.said("crosswise.not"), Tell.said("crosswise.instead"));
            return;
        }
        findings.add(
                "style.lay",
                matched() ? Tell.said("part-folded.print") : Tell.said("part-folded.shape"),
                Tell.said("part-folded.instead"));
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
            double cloth = folded && !whole
                    ? fabric.roll().usableWidth() / 2
                    : fabric.roll().usableWidth();
            double need = Math.ceil(folded && !whole ? 2 * width : width);
            boolean openHelps = folded && width <= fabric.roll().usableWidth();
            Said remedy = openHelps
                    ? Tell.said("wider-cloth-or-open", Part.length(need).atLeast())
                    : Tell.said("wider-cloth", Part.length(need).atLeast());
            Part name = cut.piece().name().said();
            Said problem =
                    wide(cut.piece().onFold(), folded && !whole, name, Part.length(width, 1), Part.length(cloth, 1));
            findings.add("fabric.usable width", problem, remedy);
        }
    }

    private static Said wide(boolean unfolded, boolean folded, Part name, Part width, Part cloth) {
        if (folded) {
            return unfolded
                    ? Tell.said("too-wide.unfolded-folded", name, width, cloth)
                    : Tell.said("too-wide.folded", name, width, cloth);
        }
        return unfolded
                ? Tell.said("too-wide.unfolded", name, width, cloth)
                : Tell.said("too-wide.open", name, width, cloth);
    }
}
