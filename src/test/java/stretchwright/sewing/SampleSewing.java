package stretchwright.sewing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.draft.TopStyles;
import stretchwright.fabric.SampleFabric;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;

/** Patterns and machine sets for the tests of this room. Invented. */
final class SampleSewing {
    private SampleSewing() {}

    /** The steps of a pattern in heavy knit, nothing known of strains. */
    static List<Step> steps(Pattern pattern, Set<Machine> machines) {
        return Steps.of(pattern, SampleFabric.heavyKnit(), SewingTerms.on(machines), new Demands(pattern, List.of()));
    }

    static Pattern withCuff() {
        return SamplePattern.overBoot();
    }

    /** The same pair without its cuff: the lower edge is turned up. */
    static Pattern plainHem() {
        Pattern pair = withCuff();
        List<Seam> seams = new ArrayList<>(pair.seams());
        seams.removeIf(s -> s.role() == Seam.Role.CUFF_ENDS || s.role() == Seam.Role.CUFF_JOIN);
        double hem = pair.piece(PieceName.of(PieceKind.LEG)).edge(EdgeName.HEM).length();
        seams.add(new Seam(
                Seam.Role.HEM,
                SeamName.of(SeamKind.HEM),
                List.of(new Seam.Side(PieceName.of(PieceKind.LEG), EdgeName.HEM, hem)),
                0,
                20,
                2));
        return without(pair, PieceKind.CUFF, seams);
    }

    static Pattern withoutWaistband() {
        Pattern pair = withCuff();
        List<Seam> seams = new ArrayList<>(pair.seams());
        seams.removeIf(s -> s.role() == Seam.Role.WAISTBAND_ENDS || s.role() == Seam.Role.WAISTBAND_JOIN);
        return without(pair, PieceKind.WAISTBAND, seams);
    }

    static Pattern without(Pattern pair, PieceKind piece, List<Seam> seams) {
        return new Pattern(
                pair.pieces().stream().filter(p -> !p.name().is(piece)).toList(),
                seams,
                pair.levels(),
                pair.reductions());
    }

    static Map<String, Pattern> patterns() {
        Map<String, Pattern> all = new LinkedHashMap<>();
        all.put("with cuff", withCuff());
        all.put("plain hem", plainHem());
        all.put("without waistband", withoutWaistband());
        return all;
    }

    /** These, and drafted ones with what a top edge may have. */
    static Map<String, Pattern> every() {
        Map<String, Pattern> all = new LinkedHashMap<>(patterns());
        Map<String, Pattern> tops = TopStyles.drafted();
        for (String name : List.of(
                "straight with elastic, cord and pocket",
                "casing with cord",
                "darts under a contoured band",
                "darts in a casing, raised behind")) {
            all.put(name, tops.get(name));
        }
        return all;
    }

    /** All 32, the empty one too. */
    static List<Set<Machine>> machineSets() {
        List<Set<Machine>> all = new ArrayList<>();
        for (int bits = 0; bits < 1 << Machine.values().length; bits++) {
            Set<Machine> set = EnumSet.noneOf(Machine.class);
            for (int i = 0; i < Machine.values().length; i++) {
                if ((bits >> i & 1) == 1) {
                    set.add(Machine.values()[i]);
                }
            }
            all.add(set);
        }
        return all;
    }
}
