package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.Seam;

/** Finished lengths and widths, as cut and after the washing where the cloth was not washed before. */
final class Washing {
    /** Trade-values section 1.3: ask above 5 %. */
    static final double MUCH = 0.05;

    /** Less than this is not told, mm: within what sewing gives and takes (common practice, no source). */
    static final double TOLD = 5;

    private static final Subject SUBJECT = Subject.of(Subject.Kind.SHRINKAGE, Tell.said("about.shrinkage"));

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
                out.add(row(seam.name().said(), Direction.ALONG, seam.length(), worn.fabric()));
            }
        }
        for (Level l : worn.pattern().levels()) {
            Said width = Tell.said("washed.width", Terms.place(l.name(), l.leg()));
            out.add(row(width, Direction.ACROSS, l.width(), worn.fabric()));
        }
        return out;
    }

    private static LengthFit row(Part what, Direction direction, double cut, Fabric fabric) {
        double share = direction == Direction.ALONG
                ? fabric.quality().shrinkageAlong()
                : fabric.quality().shrinkageAcross();
        return new LengthFit(what, direction, cut, washed(cut, share));
    }

    static List<Verdict> judged(List<LengthFit> lengths, Worn worn) {
        Fabric fabric = worn.fabric();
        double share =
                Math.max(fabric.quality().shrinkageAcross(), fabric.quality().shrinkageAlong());
        if (share > MUCH) {
            Said shrinks = Tell.said(
                    "washed.shrinks",
                    Part.share(fabric.quality().shrinkageAcross()),
                    Part.share(fabric.quality().shrinkageAlong()));
            return List.of(
                    new Verdict(CAUTION, SUBJECT, shrinks.and(unwashed(lost(lengths))), Tell.said("washed.first")));
        }
        List<Part> lost = lost(lengths);
        return lost.isEmpty()
                ? List.of()
                : List.of(new Verdict(
                        NOTE, SUBJECT, cut(lost), Tell.said("washed.first").and(longer(lengths, fabric))));
    }

    private static Said unwashed(List<Part> lost) {
        return switch (lost.size()) {
            case 0 -> Said.NOTHING;
            case 1 -> Tell.said("washed.unwashed", lost.get(0));
            default -> Tell.said("washed.unwashed-both", lost.get(0), lost.get(1));
        };
    }

    private static Said cut(List<Part> lost) {
        return lost.size() == 1
                ? Tell.said("washed.cut", lost.get(0))
                : Tell.said("washed.cut-both", lost.get(0), lost.get(1));
    }

    /** What else could be done for the leg's length. */
    private static Said longer(List<LengthFit> lengths, Fabric fabric) {
        return lengths.stream()
                .filter(l -> l.direction() == Direction.ALONG && l.cut() - l.washed() > TOLD)
                .max(Comparator.comparingDouble(LengthFit::cut))
                .map(l -> Tell.said(
                        "washed.longer",
                        l.what(),
                        Part.length(toCut(l.cut(), fabric.quality().shrinkageAlong())),
                        Part.length(l.cut())))
                .orElse(Said.NOTHING);
    }

    /** The length and the width that lose most. */
    private static List<Part> lost(List<LengthFit> lengths) {
        List<Part> out = new ArrayList<>();
        for (Direction direction : List.of(Direction.ALONG, Direction.ACROSS)) {
            lengths.stream()
                    .filter(l -> l.direction() == direction && l.cut() - l.washed() > TOLD)
                    .max(Comparator.comparingDouble(l -> l.cut() - l.washed()))
                    .ifPresent(l ->
                            out.add(Tell.said("washed.lost", l.what(), Part.length(l.washed()), Part.length(l.cut()))));
        }
        return out;
    }
}
