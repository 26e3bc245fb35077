package stretchwright.workroom.jobs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.StripInstance;

/** Lays that are soon done: a few generated outlines, a few rounds. */
final class SmallLays {
    private SmallLays() {}

    /** Nine outlines of five to eight corners, three kinds of them, on a strip as wide as some three. */
    static StripInstance instance(int number) {
        RandomStream random = RandomStream.of(number, "small lays");
        List<StripInstance.Item> items = IntStream.range(0, 3)
                .mapToObj(k -> new StripInstance.Item("item " + k, 3, outline(random)))
                .toList();
        return new StripInstance("small " + number, 100, List.of(0.0, 180.0), items);
    }

    private static Polygon outline(RandomStream random) {
        int corners = 5 + random.below(4);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double radius = 8 + 14 * random.nextDouble();
            double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / corners;
            points.add(new Point(
                    Math.rint(100 * radius * Math.cos(angle)) / 100, Math.rint(100 * radius * Math.sin(angle)) / 100));
        }
        return new Polygon(points);
    }

    static Asked.Lay asked(int number, int explore, int compress) {
        return new Asked.Lay(instance(number), number, new Effort(explore, compress));
    }

    /** The file of the same lay without any database, in one go. */
    static Document direct(Asked.Lay asked, int spell) {
        LaySpells spells = new LaySpells(asked, 1, LayClock.NONE, spell);
        LaySpells.State state = spells.next(Optional.empty());
        while (!spells.over(state.reached())) {
            state = spells.next(Optional.of(state));
        }
        return LaidText.document(asked.instance(), asked.seed(), state.best());
    }
}
