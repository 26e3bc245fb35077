package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.Layout;
import stretchwright.lay.nest.Part;

/** One stretch of a lay that is there: what may move on it, and what is pinned. */
final class Stretch {
    private final Spread free;
    private final List<Lay.Placement> moving = new ArrayList<>();
    private final List<Lay.Placement> pinned = new ArrayList<>();
    private final double foot;
    private final double pinnedTop;

    /**
     * @param own the placements on it, in the order of the spread's cuts
     * @param foot where it begins along the lay, mm
     * @param ids of the pieces that stay
     */
    Stretch(Spread spread, List<Lay.Placement> own, double foot, Set<String> ids) {
        this.foot = foot;
        List<Cut> cuts = new ArrayList<>();
        List<Cut> stillCuts = new ArrayList<>();
        for (int i = 0; i < own.size(); i++) {
            boolean stays = ids.contains(Placed.id(own.get(i)));
            (stays ? pinned : moving).add(own.get(i));
            (stays ? stillCuts : cuts).add(spread.cuts.get(i));
        }
        double top = 0;
        for (int i = 0; i < pinned.size(); i++) {
            Lay.Placement p = pinned.get(i);
            Point at = new Point(p.x(), p.y());
            top = Math.max(
                    top,
                    stillCuts
                                    .get(i)
                                    .outline()
                                    .placed(false, p.rotation(), at)
                                    .box()
                                    .maxY()
                            - foot);
        }
        this.pinnedTop = Grid.snap(top);
        this.free = pinned.isEmpty() ? spread : spread.around(cuts, stillCuts, pinned, foot);
    }

    /**
     * What was found on it.
     *
     * @param length of the stretch, mm
     */
    record Found(Stretch stretch, Layout layout, double length) {
        /** With the stretch beginning here. */
        List<Lay.Placement> placements(double from) {
            List<Lay.Placement> out =
                    new ArrayList<>(stretch.moving.isEmpty() ? List.of() : stretch.free.placements(layout, from));
            // those before a pinned piece kept their length, so it stays where it was
            out.addAll(stretch.pinned);
            return out;
        }
    }

    double gap() {
        return free.gap();
    }

    /** As it is. */
    double length() {
        return moving.isEmpty() ? pinnedTop : Math.max(pinnedTop, free.length(start()));
    }

    /** @param enough no lay is shorter, mm */
    Found search(long seed, Effort effort, double enough, LayClock clock) {
        if (moving.isEmpty()) {
            return new Found(this, new Layout(List.of(), 0), pinnedTop);
        }
        Layout layout = new LaySearch(free, seed, clock).longer(start(), effort, Math.max(enough, pinnedTop), clock);
        return new Found(this, layout, Grid.snap(Math.max(pinnedTop, free.length(layout))));
    }

    private Layout start() {
        List<Layout.Spot> spots = new ArrayList<>();
        for (int i = 0; i < moving.size(); i++) {
            spots.add(spot(free.parts.get(i), moving.get(i)));
        }
        return new Layout(
                spots, spots.stream().mapToLong(Layout.Spot::top).max().orElseThrow());
    }

    private Layout.Spot spot(Part part, Lay.Placement p) {
        int variant = 0;
        while (part.variants().get(variant).rotation() != p.rotation()) {
            variant++;
        }
        long y = free.along(p.y() - foot);
        return new Layout.Spot(
                part,
                variant,
                free.across(p.x()),
                y,
                y + part.variants().get(variant).exact().maxY);
    }
}
