package stretchwright.web.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Point;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import stretchwright.lay.Relaying;
import stretchwright.make.Laid;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.jobs.PieceSearch;

/**
 * One of a make's cloths on the table.
 *
 * @param cloth its number among the make's lays, from 0
 * @param standing the lay that papers are made from
 * @param search the newest that was asked for it
 * @param kept the lay that was put by hand or found for it, which may hold no more
 */
public record Table(
        Opened make, int cloth, Laid laid, ClothLay standing, Optional<PieceSearch> search, Optional<Placed> kept) {
    static Table of(Opened make, int cloth, Optional<PieceSearch> search, Optional<Placed> kept) {
        return new Table(
                make, cloth, make.session().laid(cloth), make.session().lays().get(cloth), search, kept);
    }

    Lay usual() {
        return laid.usual().lay();
    }

    private Buying.Counter counter() {
        return Buying.Counter.of(make.session().make().unit());
    }

    /** As put by hand, or as a search that is under way has it, or as it stands. */
    Shown shown(Touched touched) {
        if (touched.placed().isPresent()) {
            Relaying.Tried tried = tried(touched.placed().get());
            return new Shown(
                    cloth, laid.with(tried.lay(), counter()), tried.troubles(), touched.pinned(), touched.picked());
        }
        Set<String> pinned = touched.pinned().isEmpty()
                ? search.filter(s -> !s.over()).map(s -> s.asked().pinned()).orElse(Set.of())
                : touched.pinned();
        return new Shown(
                cloth, best().map(l -> laid.with(l, counter())).orElse(standing), List.of(), pinned, touched.picked());
    }

    /** @throws Touched.Refused where it is a lay of other pieces */
    Relaying.Tried tried(Placed placed) {
        return laid.tried(placed).orElseThrow(() -> new Touched.Refused("lay.other-pieces"));
    }

    /** What a search under way has found, where it holds for the make as it is now. */
    private Optional<Lay> best() {
        return search.filter(s -> !s.over())
                .flatMap(PieceSearch::best)
                .flatMap(laid::tried)
                .filter(Relaying.Tried::holds)
                .map(Relaying.Tried::lay)
                .filter(l -> l.length() < standing.lay().length());
    }

    /** Whether what was kept had to give way to the usual lay. */
    boolean gaveWay() {
        return kept.isPresent() && laid.instead(kept.get()).isEmpty();
    }

    List<Shown> others() {
        List<Shown> out = new ArrayList<>();
        List<ClothLay> lays = make.session().lays();
        for (int i = 0; i < lays.size(); i++) {
            if (i != cloth) {
                out.add(new Shown(i, lays.get(i), List.of(), Set.of(), ""));
            }
        }
        return out;
    }

    List<Lay.Way> ways() {
        return standing.lay().ways();
    }

    /** By half a turn round the middle of its box; of what lies at the fold there is no other way. */
    Placed.Spot turned(Shown at, Placed.Spot spot) {
        Lay.Placement p = at.placements().stream()
                .filter(q -> Placed.id(q).equals(spot.id()))
                .findFirst()
                .orElseThrow();
        if (!laid.turns() || at.piece(p).onFold() && !p.unfolded()) {
            throw new Touched.Refused("lay.one-way");
        }
        Point middle = at.outline(p).box().centre();
        double turned = spot.rotation() > 90 ? spot.rotation() - 180 : spot.rotation() + 180;
        return spot.at(2 * middle.x() - spot.x(), 2 * middle.y() - spot.y(), turned);
    }
}
