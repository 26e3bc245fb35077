package stretchwright.lay;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import stretchwright.body.SampleBody;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/** Laid garments of generated bodies, spread in every way, one-way and turned, for the properties of what follows from a lay. */
record SampleMakes(String name, List<Piece> pieces, Fabric fabric, Style.LayWay way, Lay lay) {
    private static final List<Style.LayWay> WAYS = List.of(
            Style.LayWay.OPEN, Style.LayWay.FOLDED_OFF_THE_MIDDLE, Style.LayWay.FOLDED, Style.LayWay.PART_FOLDED);
    private static List<SampleMakes> all = List.of();

    /** Drafted and laid once for all tests of a run. */
    static synchronized List<SampleMakes> all() {
        if (all.isEmpty()) {
            List<SampleMakes> out = new ArrayList<>();
            for (long seed = 1; seed <= 12; seed++) {
                of(seed).ifPresent(out::add);
            }
            all = List.copyOf(out);
        }
        return all;
    }

    private static Optional<SampleMakes> of(long seed) {
        Fabric fabric = SampleFabric.with(seed % 2 == 0 ? 1470 : 1620, 0.7, 0.5, seed % 3 != 0);
        Style.LayWay way = seed % 6 == 3 ? Style.LayWay.FOLDED_CROSSWISE : WAYS.get((int) (seed % WAYS.size()));
        Style style = Style.usual(seed % 3 == 0 ? Style.Leg.CALF : seed % 3 == 1 ? Style.Leg.ANKLE : Style.Leg.SHORT);
        return Draft.of(
                        SampleBody.random(seed),
                        fabric,
                        Optional.empty(),
                        style,
                        EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH),
                        new Findings("test"))
                .map(p -> pieces(p.pieces(), way))
                .flatMap(p -> Laying.lay(p, fabric, way, new Findings("test"))
                        .map(lay -> new SampleMakes("body " + seed, p, fabric, way, lay)));
    }

    /** Off the middle and part folded only what has a piece through one layer is laid so. */
    private static List<Piece> pieces(List<Piece> drafted, Style.LayWay way) {
        List<Piece> out = new ArrayList<>(drafted);
        if (way == Style.LayWay.FOLDED_OFF_THE_MIDDLE || way == Style.LayWay.PART_FOLDED) {
            out.add(SamplePieces.rectangle("gusset", 1, 100, 180));
        }
        return out;
    }
}
