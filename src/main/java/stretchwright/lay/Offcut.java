package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stretchwright.ground.Box;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Piece;

/**
 * Something small that can be cut from what is left; the stretch across goes round it, so it is not turned.
 *
 * @param name as written in the report
 * @param said what it is called
 * @param across its size across the cloth, mm
 * @param along its size along the cloth, mm
 * @param source of the size: this pattern, or common practice
 */
public record Offcut(String name, Said said, double across, double along, Said source) {
    private static final Said USUAL = Tell.said("offcut.usual");
    private static final Said OWN = Tell.said("offcut.own");

    /** Sizes as makers tell them; the strips are those of the load test. */
    private static final List<Offcut> LIST = List.of(
            new Offcut("headband", Tell.said("offcut.headband"), 380, 100, USUAL),
            new Offcut("hair loop", Tell.said("offcut.hair-loop"), 300, 75, USUAL),
            new Offcut("boot cover half", Tell.said("offcut.boot-cover-half"), 300, 250, USUAL),
            new Offcut("pad pocket", Tell.said("offcut.pad-pocket"), 180, 200, USUAL),
            new Offcut("gusset", Tell.said("offcut.gusset"), 100, 180, USUAL),
            new Offcut("test strip across", Tell.said("offcut.test-strip-across"), 300, 50, USUAL),
            new Offcut("test strip along", Tell.said("offcut.test-strip-along"), 50, 300, USUAL));

    /**
     * How many come out if nothing else is cut from the leftovers.
     *
     * @param counts for each leftover, in their order
     */
    public record Fit(Offcut what, List<Integer> counts) {
        public Fit {
            counts = List.copyOf(counts);
        }

        public int total() {
            return counts.stream().mapToInt(Integer::intValue).sum();
        }
    }

    /** The list, with the pattern's own piece where it has one of that kind. */
    static List<Offcut> list(List<Piece> pieces) {
        List<Offcut> out = new ArrayList<>();
        for (Offcut usual : LIST) {
            List<Offcut> own = pieces.stream()
                    .filter(p -> !p.onFold() && p.name().endsWith(usual.name().replace(" half", "")))
                    .map(Offcut::spare)
                    .toList();
            out.addAll(own.isEmpty() ? List.of(usual) : own);
        }
        return out;
    }

    private static Offcut spare(Piece piece) {
        Box box = piece.cutLine().box();
        String name = piece.name().toLowerCase(Locale.ROOT);
        return new Offcut("spare " + name, Tell.said("offcut.spare", Part.text(name)), box.width(), box.height(), OWN);
    }

    public static List<Fit> from(List<Leftover> leftovers, List<Piece> pieces) {
        return list(pieces).stream()
                .map(o -> new Fit(
                        o,
                        leftovers.stream()
                                .map(l -> l.yields(o.across(), o.along()))
                                .toList()))
                .toList();
    }
}
