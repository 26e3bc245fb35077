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

/** Laid garments of generated bodies, folded, open and turned, for the properties of what follows from a lay. */
record SampleMakes(String name, List<Piece> pieces, Fabric fabric, Style.LayWay way, Lay lay) {
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
        Style.LayWay way = seed % 4 < 2 ? Style.LayWay.OPEN : Style.LayWay.FOLDED;
        Style style = Style.usual(seed % 3 == 0 ? Style.Leg.CALF : seed % 3 == 1 ? Style.Leg.ANKLE : Style.Leg.SHORT);
        return Draft.of(
                        SampleBody.random(seed),
                        fabric,
                        Optional.empty(),
                        style,
                        EnumSet.of(Machine.OVERLOCKER, Machine.COVERSTITCH),
                        new Findings("test"))
                .flatMap(p -> Laying.lay(p.pieces(), fabric, way, new Findings("test"))
                        .map(lay -> new SampleMakes("body " + seed, p.pieces(), fabric, way, lay)));
    }
}
