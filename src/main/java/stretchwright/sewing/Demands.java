package stretchwright.sewing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Stitch;

/** What the worst pose asks of the seams of a step, and of a stitch in all steps. */
record Demands(Pattern pattern, List<SeamStrain> strains) {
    /** The seams that a step sews, or sews over. */
    static List<Seam> seams(Pattern pattern, Step step) {
        return pattern.seams().stream()
                .filter(seam -> seam.sides().stream()
                        .allMatch(side -> step.joins().contains(Joined.of(side))
                                || Words.places(pattern, side).stream()
                                        .anyMatch(place -> step.joins().contains(place))))
                .toList();
    }

    /** The most that any seam of the step is drawn; empty where nothing was computed. */
    Optional<SeamStrain> of(Step step) {
        List<SeamName> names = seams(pattern, step).stream().map(Seam::name).toList();
        return strains.stream()
                .filter(s -> names.contains(s.seam()))
                .max(Comparator.comparingDouble(SeamStrain::needed));
    }

    /** The most that any seam sewn in this stitch is drawn. */
    Optional<SeamStrain> of(Stitch stitch, List<Step> steps) {
        return steps.stream()
                .filter(step -> step.tool().map(Tool::stitch).equals(Optional.of(stitch)))
                .flatMap(step -> of(step).stream())
                .max(Comparator.comparingDouble(SeamStrain::needed));
    }
}
