package stretchwright.many;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.fit.FitReport;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClubLay;
import stretchwright.pattern.Pattern;

/**
 * One pair of a club: a make that was drafted and judged.
 *
 * @param name no two pairs of a club share one
 */
record ClubMember(String name, MakeFile make, Pattern pattern, FitReport fit) {
    /** Longer names have no room on a piece of the drawing; letters. */
    private static final int LONGEST = 30;

    /** What is cut from the club's roll; contrasts are not. */
    ClubLay.Garment garment() {
        return new ClubLay.Garment(name, make.laidPieces(pattern));
    }

    /** What is cut from contrasts: "cuff, waistband"; empty where nothing is. */
    Optional<String> elsewhere() {
        String pieces =
                make.contrasts().stream().flatMap(c -> c.pieces().stream()).collect(Collectors.joining(", "));
        return Optional.of(pieces).filter(p -> !p.isEmpty());
    }

    List<String> stops() {
        return fit.verdicts().stream()
                .filter(v -> v.severity() == FitReport.Severity.STOP)
                .map(v -> Voice.of(make.unit()).say(Tell.said("sizes.stop", Part.text(name), v.line())))
                .toList();
    }

    /** The wearer's name, else the make's, else the file's; a number behind it where it stands twice. */
    static String name(MakeFile make, Set<String> taken) {
        String plain = Stream.of(
                        make.wearer(),
                        make.name(),
                        stem(make.file()),
                        Voice.plain().say(Tell.said("club.pair")))
                .map(ClubMember::shortened)
                .filter(n -> !n.isEmpty())
                .findFirst()
                .orElseThrow();
        String name = plain;
        for (int i = 2; !taken.add(name); i++) {
            name = plain + " " + i;
        }
        return name;
    }

    /** The names of all, in their order. */
    static List<String> names(List<MakeFile> makes) {
        Set<String> taken = new HashSet<>();
        return makes.stream().map(m -> name(m, taken)).toList();
    }

    private static String shortened(String name) {
        String one = name.strip().replaceAll("\\s+", " ");
        int letters = one.codePointCount(0, one.length());
        return letters <= LONGEST
                ? one
                : one.substring(0, one.offsetByCodePoints(0, LONGEST)).strip() + "\u2026";
    }

    private static String stem(String file) {
        return file.replaceFirst("^.*[/\\\\]", "").replaceFirst("\\.[^.]*$", "");
    }
}
