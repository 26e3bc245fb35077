package stretchwright.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import stretchwright.print.kit.FileGroup;
import stretchwright.print.kit.Paper;

/**
 * How the make is put on paper.
 *
 * @param paper its name
 * @param margin that the printer leaves white, mm; empty for the usual
 * @param overlap of neighbouring sheets, mm, 0 is edge to edge; empty for the usual
 * @param grid squares of the pattern cloth to trace onto, such as "2 cm"; empty for what is usual in the maker's unit
 * @param preview points per inch of the preview, true to scale; empty for one of a usual size
 * @param files which are made; report.json is made always
 */
public record PrintTerms(
        String paper,
        OptionalDouble margin,
        OptionalDouble overlap,
        Optional<String> grid,
        OptionalInt preview,
        Set<FileGroup> files) {
    public PrintTerms {
        files = Set.copyOf(files);
    }

    /** The same with other files. */
    public PrintTerms with(Set<FileGroup> other) {
        return new PrintTerms(paper, margin, overlap, grid, preview, other);
    }

    /** The paper with these margins; empty where what must stand on every sheet has no room between them. */
    public Optional<Paper> sheet() {
        return Paper.of(paper).flatMap(p -> p.with(margin.orElse(p.margin()), overlap.orElse(p.overlap())));
    }
}
