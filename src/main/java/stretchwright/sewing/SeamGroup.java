package stretchwright.sewing;

import java.util.List;
import java.util.Optional;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;

/** The seams of one role, sewn in one step: usually one seam that happens once or twice. */
record SeamGroup(List<Seam> seams) {
    SeamGroup {
        seams = List.copyOf(seams);
    }

    static Optional<SeamGroup> of(Pattern pattern, Seam.Role role) {
        List<Seam> found =
                pattern.seams().stream().filter(s -> s.role() == role).toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(new SeamGroup(found));
    }

    Seam first() {
        return seams.get(0);
    }

    /** All repetitions together, mm. */
    double length() {
        return seams.stream().mapToDouble(s -> s.length() * s.times()).sum();
    }

    int times() {
        return seams.stream().mapToInt(Seam::times).sum();
    }

    List<Joined> joins() {
        return seams.stream().flatMap(s -> s.sides().stream()).map(Joined::of).toList();
    }

    /** The same, an edge that runs over several parts of a leg named on each. */
    List<Joined> places(Pattern pattern) {
        return seams.stream()
                .flatMap(s -> s.sides().stream())
                .flatMap(side -> Words.places(pattern, side).stream())
                .toList();
    }
}
