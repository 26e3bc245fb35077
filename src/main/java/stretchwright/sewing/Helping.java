package stretchwright.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.fabric.Fabric;
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
                spread(seams),
                why,
                demand(step),
                mishap.map(Mishaps.Mishap::mistake).orElse(""),
                mishap.map(Mishaps.Mishap::undo).orElse(""));
    }

    private Optional<SewingPlan.Demand> demand(Step step) {
        return step.tool()
                .flatMap(tool -> demands.of(step)
                        .filter(s -> s.needed() >= LEAST)
                        .map(s -> new SewingPlan.Demand(
                                s.pose(), s.needed(), tool.stitch().extensibility())));
    }

    private String spread(List<Seam> seams) {
        List<String> all = new ArrayList<>();
        for (Seam seam : seams) {
            Seam.Side one = seam.sides().get(0);
            Seam.Side other = seam.sides().get(seam.sides().size() - 1);
            double more = one.length() - other.length();
            if (Math.abs(more) > LEVEL) {
                Seam.Side shorter = more < 0 ? one : other;
                all.add("the " + shorter.edge() + " of the " + shorter.piece() + " is " + Words.mm(Math.abs(more))
                        + " shorter; stretch it to the other edge, evenly " + between(seam));
            }
        }
        return String.join("; ", all.stream().distinct().toList());
    }

    private String between(Seam seam) {
        return switch (seam.role()) {
            case WAISTBAND_JOIN, CUFF_JOIN -> "between the four quarters";
            default -> {
                List<String> marks = Words.sharedNotches(pattern, seam);
                yield marks.isEmpty() ? "from end to end" : "between the marks " + String.join(", ", marks);
            }
        };
    }
}
