package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.LengthFit;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Level;
import stretchwright.pattern.Seam;

/** Finished lengths and widths, as cut and after the washing where the cloth was not washed before. */
final class Washing {
    /** Trade-values section 1.3: ask above 5 %. */
    static final double MUCH = 0.05;

    /** Less than this is not told, mm: within what sewing gives and takes (common practice, no source). */
    static final double TOLD = 5;

    private static final String FIRST = "Wash and dry it as the garment will be, before cutting.";

    private static final Subject SUBJECT = Subject.of(Subject.Kind.SHRINKAGE, "shrinkage");

    private Washing() {}

    /** What to cut for a finished length: 1000 at 5 % is 1052.6 (W20). */
    static double toCut(double finished, double shrinkage) {
        return finished / (1 - shrinkage);
    }

    static double washed(double cut, double shrinkage) {
        return cut * (1 - shrinkage);
    }

    static List<LengthFit> of(Worn worn) {
        List<LengthFit> out = new ArrayList<>();
        for (Seam seam : worn.pattern().seams()) {
            if (seam.role() == Seam.Role.INSEAM
                    || seam.role() == Seam.Role.FRONT_RISE
                    || seam.role() == Seam.Role.BACK_RISE) {
                out.add(row(seam.name(), "along", seam.length(), worn.fabric()));
            }
        }
        for (Level l : worn.pattern().levels()) {
            String leg = l.leg().isEmpty() ? "" : l.leg() + " ";
            out.add(row(leg + l.name().word() + " width", "across", l.width(), worn.fabric()));
        }
        return out;
    }

    private static LengthFit row(String what, String direction, double cut, Fabric fabric) {
        double share = direction.equals("along") ? fabric.quality().shrinkageAlong() : fabric.quality().shrinkageAcross();
        return new LengthFit(what, direction, cut, washed(cut, share));
    }

    static List<Verdict> judged(List<LengthFit> lengths, Worn worn) {
        Fabric fabric = worn.fabric();
        double share = Math.max(fabric.quality().shrinkageAcross(), fabric.quality().shrinkageAlong());
        if (share > MUCH) {
            return List.of(new Verdict(
                    CAUTION,
                    SUBJECT,
                    text(
                                    "The cloth shrinks %.0f %% across and %.0f %% along.",
                                    percent(fabric.quality().shrinkageAcross()), percent(fabric.quality().shrinkageAlong()))
                            + lost(lengths),
                    FIRST));
        }
        return lost(lengths).isEmpty()
                ? List.of()
                : List.of(new Verdict(
                        NOTE,
                        SUBJECT,
                        "Cut from cloth that was not washed," + lost(lengths).replaceFirst(" Unwashed,", ""),
                        FIRST + longer(lengths, fabric)));
    }

    /** What else could be done for the leg's length. */
    private static String longer(List<LengthFit> lengths, Fabric fabric) {
        return lengths.stream()
                .filter(l -> l.direction().equals("along") && l.cut() - l.washed() > TOLD)
                .max(Comparator.comparingDouble(LengthFit::cut))
                .map(l -> text(
                        " Where that cannot be, cut the %s %.0f mm for %.0f mm.",
                        l.what(), toCut(l.cut(), fabric.quality().shrinkageAlong()), l.cut()))
                .orElse("");
    }

    /** The length and the width that lose most. */
    private static String lost(List<LengthFit> lengths) {
        List<String> words = new ArrayList<>();
        for (String direction : List.of("along", "across")) {
            lengths.stream()
                    .filter(l -> l.direction().equals(direction) && l.cut() - l.washed() > TOLD)
                    .max(Comparator.comparingDouble(l -> l.cut() - l.washed()))
                    .ifPresent(l ->
                            words.add(text("the %s comes out %.0f mm and not %.0f mm", l.what(), l.washed(), l.cut())));
        }
        return words.isEmpty() ? "" : " Unwashed, " + String.join(", and ", words) + ".";
    }
}
