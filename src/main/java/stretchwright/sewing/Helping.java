package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** What helps at each step, from the pattern, the cloth, the fit check and what the sewer kept. */
record Helping(Pattern pattern, Fabric fabric, SewingTerms terms, Demands demands) {
    /** Shorter differences than this are neither seen nor sewn, mm. */
    private static final double LEVEL = 1;
    /** A seam that is drawn less is not drawn at all. */
    private static final double LEAST = 0.005;

    SewingPlan.Help of(Step step, List<SewingPlan.Reason> why) {
        List<Seam> seams = step.tool().isPresent() ? Demands.seams(pattern, step) : List.of();
        Optional<Mishaps.Mishap> mishap = Mishaps.at(step);
        return new SewingPlan.Help(
                step.tool().map(t -> Settings.of(t.stitch(), fabric, terms.kept())),
                seams.stream().map(Seam::allowance).distinct().sorted().toList(),
                spread(pattern, seams),
                why,
                demand(step),
                mishap.map(Mishaps.Mishap::mistake).orElse(Said.NOTHING),
                mishap.map(Mishaps.Mishap::undo).orElse(Said.NOTHING));
    }

    private Optional<SewingPlan.Demand> demand(Step step) {
        return step.tool()
                .flatMap(tool -> demands.of(step)
                        .filter(s -> s.needed() >= LEAST)
                        .map(s -> new SewingPlan.Demand(
                                s.pose(), s.needed(), tool.stitch().extensibility())));
    }

    private static List<Said> spread(Pattern pattern, List<Seam> seams) {
        List<Said> all = new ArrayList<>();
        for (Seam seam : seams) {
            Seam.Side one = seam.sides().get(0);
            Seam.Side other = seam.sides().get(seam.sides().size() - 1);
            double more = one.length() - other.length();
            if (Math.abs(more) > LEVEL) {
                all.add(stretched(pattern, seam, more < 0 ? one : other, Math.abs(more)));
            }
        }
        return all.stream().distinct().toList();
    }

    private static Said stretched(Pattern pattern, Seam seam, Seam.Side shorter, double by) {
        Part edge = shorter.edge().said();
        Part piece = shorter.piece().said();
        if (seam.role() == Seam.Role.WAISTBAND_JOIN || seam.role() == Seam.Role.CUFF_JOIN) {
            return Tell.said("spread.quarters", edge, piece, Tell.mm(by));
        }
        List<NotchName> marks = Words.sharedNotches(pattern, seam);
        return marks.isEmpty()
                ? Tell.said("spread.ends", edge, piece, Tell.mm(by))
                : Tell.said("spread.marks", edge, piece, Tell.mm(by), Words.named(marks));
    }
}
